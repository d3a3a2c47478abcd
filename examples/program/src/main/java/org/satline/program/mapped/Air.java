package org.satline.program.mapped;

/**
 * Air at both coils, degC.
 *
 * @param outdoor entering the condenser, dry bulb
 * @param dryBulb return air
 * @param wetBulb return air
 */
public record Air(double outdoor, double dryBulb, double wetBulb) {
    /** The rating point of air conditioners: 95 degF outdoors, 80 and 67 degF indoors (AHRI 210/240, A test). */
    static final Air RATED = new Air(35, 26.7, 19.4);

    /**
     * Enthalpy of air of a wet bulb, kJ/kg: a parabola through 5, 15 and 25 degC of printed tables of moist air (from memory: 18.6, 42.1
     * and 76.5).
     */
    static double saturated(double celsius) {
        return 9.555 + celsius * (1.5365 + 0.0457 * celsius);
    }
}
