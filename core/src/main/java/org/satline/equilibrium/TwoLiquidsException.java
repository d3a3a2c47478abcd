package org.satline.equilibrium;

import java.util.List;

/** A blend was asked for whose liquid splits in two at every temperature of its bubble or dew line; such blends are outside the scope. */
public final class TwoLiquidsException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /**
     * Creates the exception.
     *
     * @param substances designations of the components
     */
    TwoLiquidsException(List<String> substances) {
        super(
                "the liquid of " + String.join(" + ", substances)
                        + " in these proportions splits in two at every temperature of its saturation lines; choose substances that mix");
    }
}
