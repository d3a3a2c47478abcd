package org.satline.fleet;

/**
 * All that is remembered of a unit between its windows: sums, never lists. State of the engine, version 2: fields may
 * be added, see the README. Mutable and public as its serializer asks for.
 */
public class UnitState {
    /** Model of the unit; added in version 2. */
    public UnitModel model = UnitModel.HOME;
    /** The day that is being summed up, days since 1970. */
    public int day = Integer.MIN_VALUE;
    /** Windows of this day, and how many of them are evidence about the charge. */
    public int windows, alike;
    /**
     * Sums over this day: charge error and outdoor air of the windows that are evidence, superheat and subcooling of
     * all.
     */
    public double chargeErrors, outdoorC, superheatK, subcoolingK;
    /** Sums over this day: probability of each {@link Cause}. */
    public double[] causes = new double[Cause.COUNT];
    /** Days in a row on which a cause was likelier than not, and on which it was unlikely. */
    public byte[] present = new byte[Cause.COUNT], absent = new byte[Cause.COUNT];
    /** Bit {@code i} tells that an alarm about cause {@code i} stands. */
    public int standing;

    /** Days of evidence that the baseline has, and the sums of its straight line over outdoor air. */
    public int baselineDays;
    /** Sums of the baseline: outdoor air less 30 degC in tens of kelvins, charge error, their products. */
    public double sumX, sumXx, sumY, sumXy, sumYy;
    /** The baseline once it is learned, and the spread of single days about it. */
    public double intercept, slope, spread;

    /** Cumulative sum of the evidence for a leak, in spreads. */
    public double evidence;
    /** First day of the climb. */
    public int climbFrom;
    /** Sums over the days of the climb: number, days, days squared, lost charge, days times lost charge. */
    public double climbN, climbT, climbTt, climbY, climbTy;
    /** Days in a row on which the charge was back at the baseline while an alarm stood. */
    public int backDays;
    /** Begin of the latest window, s since 1970. */
    public long latest;
    /** Whether the rate of the leak that stands was told; added in version 2. */
    public boolean rateTold;
}
