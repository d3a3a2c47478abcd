package org.satline.fleet;

import java.util.Locale;

/** One day of one unit. Mutable and public as the serializer of the engine asks for. */
public class UnitDay {
    /** Number of the unit. */
    public long unit;
    /** Its model. */
    public UnitModel model = UnitModel.HOME;
    /** Days since 1970. */
    public int day;
    /** Settled windows, and how many of them are evidence about the charge. */
    public int windows, alike;
    /** Means over the settled windows, K. */
    public double superheatK, subcoolingK;
    /** Charge against the baseline, share of the rated charge; 0 while the baseline is learned or without evidence. */
    public double change;
    /** Cumulative sum of the evidence for a leak, in spreads. */
    public double evidence;
    /** The likeliest cause of the day, and its mean probability. */
    public Cause cause = Cause.NONE;
    /** Its mean probability. */
    public double probability;

    /** First line of the files of days. */
    public static final String HEAD =
            "unit,model,day,windows,alike,superheat_k,subcooling_k,change,evidence,cause,probability";

    /**
     * Returns the line of the file.
     *
     * @return the fields in the order of {@link #HEAD}
     */
    public String line() {
        return String.format(
                Locale.ROOT,
                "%d,%s,%d,%d,%d,%.3f,%.3f,%.5f,%.4f,%s,%.4f",
                unit,
                model,
                day,
                windows,
                alike,
                superheatK,
                subcoolingK,
                change,
                evidence,
                cause,
                probability);
    }
}
