package org.satline.equilibrium;

import java.util.List;

/** A blend was asked for whose liquid splits in two; such blends are outside the scope. */
public final class TwoLiquidsException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private TwoLiquidsException(String message) {
        super(message);
    }

    static TwoLiquidsException of(List<String> substances, List<String> others) {
        return new TwoLiquidsException(String.join(" + ", substances) + " and " + String.join(" + ", others)
                + " do not mix as liquids: such blends are outside the scope; choose substances that mix");
    }

    static TwoLiquidsException everywhere(List<String> substances) {
        return new TwoLiquidsException(
                "the liquid of " + String.join(" + ", substances)
                        + " in these proportions splits in two at every temperature of its saturation lines; choose substances that mix");
    }
}
