package org.satline.cylinder;

/** How a fill rule arrives at its limit. The names in {@code fill-rules.csv} are these, in lower case with hyphens. */
enum FillMethod {
    /** Largest mass: liquid at a stated temperature fills at most a fraction of the volume. */
    LIQUID_FRACTION,
    /** The same with a strict inequality. */
    LIQUID_FRACTION_BELOW,
    /** Largest mass: a fraction of the water capacity, whatever the refrigerant. */
    WATER_FRACTION,
    /** Largest mass: a fraction of the mass for which the container is rated. */
    RATING_FRACTION,
    /** Largest mass: printed filling density by gas and cylinder type. */
    FILLING_DENSITY_TABLE,
    /** Largest mass: printed filling density by specific gravity of liquefied petroleum gas. */
    LPG_TABLE,
    /** Largest mass: printed filling ratio by gas and test pressure. */
    FILLING_RATIO_TABLE,
    /** Largest mass: printed figure for portable tanks. */
    TANK_TABLE,
    /** Largest mass: settled pressure at a stated temperature within a fraction of the test pressure. */
    SETTLED_PRESSURE,
    /** Largest mass: formula for a low-pressure liquefied gas without an entry. */
    LOW_PRESSURE_FORMULA,
    /** Largest mass: formula for a high-pressure liquefied gas without an entry. */
    HIGH_PRESSURE_FORMULA,
    /** Pass or fail: vapour pressure against the marked service pressure. */
    SERVICE_PRESSURE,
    /** Pass or fail: vapour pressure against the test pressure. */
    TEST_PRESSURE,
    /** Pass or fail: a least test pressure. */
    LEAST_TEST_PRESSURE
}
