package org.satline.equation;

/** Where the interaction parameters of a pair of substances come from. */
public enum PairStatus {
    /** Regressed to measured data in the cited paper. */
    FITTED("fitted"),
    /** Carried with published data, but not a regression that can be cited. */
    ESTIMATED("estimated"),
    /** Adjusted in this project to measured or published points; the record names them and the points it was checked on. */
    ADJUSTED("adjusted"),
    /** No parameters are known: the default combining rule (Lorentz-Berthelot) stands in. */
    DEFAULTED("defaulted");

    private final String word;

    PairStatus(String word) {
        this.word = word;
    }

    /**
     * Returns the word to print.
     *
     * @return the status in lower case
     */
    public String word() {
        return word;
    }
}
