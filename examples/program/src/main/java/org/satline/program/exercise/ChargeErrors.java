package org.satline.program.exercise;

/**
 * How far a charge is off. Too little is drawn more often than it comes up: a system short of refrigerant soon shows what no question can
 * use, so that in the end the three are asked about equally often.
 */
final class ChargeErrors {
    private ChargeErrors() {}

    /** Charge less rated charge, over rated charge. */
    static double draw(Draw draw) {
        return switch (draw.whole(0, 9)) {
            case 0, 1 -> draw.between(-0.04, 0.04);
            case 2, 3 -> draw.between(0.06, 0.3);
            default -> draw.between(-0.3, -0.06);
        };
    }

    /** The same without what is right already. */
    static double offTarget(Draw draw) {
        return draw.chance(0.25) ? draw.between(0.12, 0.32) : draw.between(-0.3, -0.08);
    }
}
