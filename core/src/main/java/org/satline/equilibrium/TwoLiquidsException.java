package org.satline.equilibrium;

import java.util.List;
import java.util.Locale;
import org.satline.SatlineException;

/** A blend was asked for whose liquid splits in two; such blends are outside the scope. */
public final class TwoLiquidsException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    private TwoLiquidsException(String message) {
        super(message);
    }

    static TwoLiquidsException of(List<String> substances, List<String> others) {
        return new TwoLiquidsException(String.join(" + ", substances) + " and " + String.join(" + ", others)
                + " do not mix as liquids: such blends are outside the scope; choose substances that mix");
    }

    static TwoLiquidsException everywhere(List<String> substances) {
        return new TwoLiquidsException("the liquid of " + String.join(" + ", substances)
                + " in these proportions splits in two at every temperature of its saturation lines; choose"
                + " substances that mix");
    }

    static TwoLiquidsException at(List<String> substances, double temperatureK, double pressurePa) {
        return new TwoLiquidsException(String.format(
                Locale.ROOT,
                "the liquid of %s in these proportions splits in two, at %.2f K and %.1f MPa for instance, and no"
                        + " bubble line that rises with temperature was found; "
                        + "choose substances that mix, or less of the more volatile one",
                String.join(" + ", substances),
                temperatureK,
                pressurePa / 1e6));
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
