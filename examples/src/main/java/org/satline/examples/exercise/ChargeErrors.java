package org.satline.examples.exercise;

/** How far a charge is off: too little, right and too much come up equally often. */
final class ChargeErrors {
    private ChargeErrors() {}

    /** Charge less rated charge, over rated charge. */
    static double draw(Draw draw) {
        return switch (draw.whole(0, 2)) {
            case 0 -> draw.between(-0.35, -0.06);
            case 1 -> draw.between(-0.04, 0.04);
            default -> draw.between(0.06, 0.3);
        };
    }
}
