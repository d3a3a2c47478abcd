package org.satline.transfer.hookup;

/** The margins of hooking up, each with its basis. All are orders of magnitude: a maker's instruction prevails. */
public enum HookUpPractice {
    /** A gas that sweeps stands above the atmosphere by this, bar. */
    SWEEP_ABOVE_ATMOSPHERE_BAR(0.3, Basis.JUDGEMENT),
    /** A difference that is certain in spite of the errors of both readings, bar. */
    CERTAIN_DIFFERENCE_BAR(0.5, Basis.JUDGEMENT),
    /** Saturation temperatures closer than this count as equal, K. */
    EQUAL_TEMPERATURES_K(3, Basis.JUDGEMENT),
    /** No shut volume may be full of liquid below this, degC. */
    LIQUID_FULL_CELSIUS(65, Basis.JUDGEMENT),
    /** Volumes let out until a hose is free of what it held. */
    SWEEP_VOLUMES(3, Basis.COMMON_PRACTICE),
    /** Limit of one sweep, beyond which the hose is evacuated instead, g. */
    MOST_SWEPT_G(30, Basis.JUDGEMENT),
    /** Vapour through a loose joint or a cracked valve, g in one to two seconds. */
    VAPOUR_PER_OPENING_G(4, Basis.JUDGEMENT),
    /** Liquid through a loose joint or a cracked valve, g in one to two seconds. */
    LIQUID_PER_OPENING_G(45, Basis.JUDGEMENT),
    /** Content of a coupling: air taken in, or refrigerant spilt, as it is joined or parted, mL. */
    COUPLING_ML(0.5, Basis.COMMON_PRACTICE),
    /** Part of a hose that stays liquid while it is open to a cylinder no colder than it is. */
    LIQUID_LEFT_IN_HOSE(0.4, Basis.JUDGEMENT),
    /** Partial pressure of air in a cylinder that may hold air and shows none, bar. */
    SUSPECTED_AIR_BAR(0.3, Basis.JUDGEMENT),
    /** Volume on either side of a recovery machine, mL. */
    MACHINE_SIDE_ML(20, Basis.JUDGEMENT);

    /** What a margin rests on. */
    public enum Basis {
        /** Common practice, no source. */
        COMMON_PRACTICE("common practice, no source"),
        /** Judgement: an order of magnitude chosen for safety. */
        JUDGEMENT("judgement");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        @Override
        public String toString() {
            return words;
        }
    }

    private final double value;
    private final Basis basis;

    HookUpPractice(double value, Basis basis) {
        this.value = value;
        this.basis = basis;
    }

    /**
     * Returns the number.
     *
     * @return in the unit that the name ends in; a ratio where it ends in none
     */
    public double value() {
        return value;
    }

    /**
     * Returns what it rests on.
     *
     * @return the basis
     */
    public Basis basis() {
        return basis;
    }
}
