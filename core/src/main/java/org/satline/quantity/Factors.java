package org.satline.quantity;

/**
 * Conversion factors that more than one quantity needs, each written down once. Exact by definition: NIST SP 811 (2008 ed.),
 * appendix B, after the 1959 yard and pound agreement; the derived ones carry only rounding.
 */
final class Factors {
    /** Standard acceleration of free fall g_n, m/s2 (CGPM 1901). */
    static final double STANDARD_GRAVITY = 9.80665;
    /** International avoirdupois pound, kg. */
    static final double POUND_KG = 0.45359237;
    /** International foot, m. */
    static final double FOOT_M = 0.3048;
    /** International inch, m. */
    static final double INCH_M = 0.0254;
    /** Cubic foot, m3. */
    static final double CUBIC_FOOT_M3 = FOOT_M * FOOT_M * FOOT_M;
    /** Pound-force per square inch, Pa; 6894.757. */
    static final double PSI_PA = POUND_KG * STANDARD_GRAVITY / (INCH_M * INCH_M);
    /** Conventional millimetre of mercury, Pa: 13 595.1 kg/m3 at g_n; 133.3224. */
    static final double MILLIMETRE_OF_MERCURY_PA = 13595.1 * STANDARD_GRAVITY / 1000;
    /** Conventional inch of mercury, Pa; 3386.389. */
    static final double INCH_OF_MERCURY_PA = 25.4 * MILLIMETRE_OF_MERCURY_PA;
    /** International Table Btu per pound, J/kg. */
    static final double BTU_PER_POUND = 2326;
    /** International Table Btu, J; 1055.05585262. */
    static final double BTU_J = BTU_PER_POUND * POUND_KG;
    /** Degrees Fahrenheit in five kelvins of difference. */
    static final double FAHRENHEIT_DEGREES_PER_FIVE_KELVINS = 9;
    /** Standard atmosphere, Pa (10th CGPM 1954). */
    static final double STANDARD_ATMOSPHERE_PA = 101325;

    private Factors() {}
}
