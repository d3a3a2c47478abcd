package org.satline.charge.belief;

/**
 * What the clues depend on beside charge and faults, with where it usually lies; the doubt stands in where it was not
 * read. Our choice, of the order of a cooling season.
 */
enum Around {
    /** Target of the judged quantity, K. */
    TARGET(6, 3),
    /** Air entering the condenser, degC. */
    OUTDOOR(32, 6),
    /** Wet bulb of the return air, degC. */
    WET_BULB(17, 2.5),
    /** Dry bulb of the return air, degC. */
    DRY_BULB(25, 2);

    private final double usual;
    private final double doubt;

    Around(double usual, double doubt) {
        this.usual = usual;
        this.doubt = doubt;
    }

    double usual() {
        return usual;
    }

    double doubt() {
        return doubt;
    }

    /** Its place in the behaviour table, whose columns stand in the order of these constants. */
    @SuppressWarnings("EnumOrdinal")
    int column() {
        return ordinal();
    }
}
