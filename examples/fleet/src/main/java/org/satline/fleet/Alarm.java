package org.satline.fleet;

import java.util.Locale;

/** A piece of news about an alarm. Mutable and public as the serializer of the engine asks for. */
public class Alarm {
    /** Number of the unit. */
    public long unit;
    /** Its model. */
    public UnitModel model = UnitModel.HOME;
    /** What it is about. */
    public Cause cause = Cause.NONE;
    /** What is new about it. */
    public News news = News.RAISED;
    /** Last day of the evidence, days since 1970. */
    public int day;
    /** First day of the evidence, days since 1970. */
    public int firstDay;
    /** Evidence: the cumulative sum of a leak in spreads, else the mean probability of the cause on the day. */
    public double evidence;
    /** What the evidence had to pass, or to fall below. */
    public double limit;
    /** Leak: charge lost against the baseline, share of the rated charge. */
    public double lost;
    /** Leak: rate, per cent of the rated charge a year, and its standard uncertainty. */
    public double percentPerYear, uncertainty;
    /** Leak: carbon dioxide equivalent of a year at this rate, t. */
    public double tonnesPerYear;
    /** Leak: trigger of the rule on leak rates, per cent a year; 0 where the charge is below the least of the rule. */
    public double triggerPercent;
    /** Leak: how the rate stands to the trigger. */
    public Stand stand = Stand.NO_TRIGGER;
    /** Leak: months between leak checks by carbon dioxide equivalent of the charge; 0 where none is asked for. */
    public int checkMonths;

    /** What is new. */
    public enum News {
        /** The alarm is raised. */
        RAISED,
        /** The rate of a leak whose alarm stands is known well enough. */
        RATE_KNOWN,
        /** What it was about has gone. */
        GONE
    }

    /** How a rate stands to the trigger of the law, with its doubt. */
    public enum Stand {
        /** The charge is below the least of the rule. */
        NO_TRIGGER,
        /** Above it by more than two standard uncertainties. */
        ABOVE,
        /** Below it by more than two standard uncertainties. */
        BELOW,
        /** The doubt does not decide. */
        OPEN
    }

    /** First line of the files of alarms. */
    public static final String HEAD = "unit,model,cause,news,day,first_day,evidence,limit,lost,percent_per_year,"
            + "u_percent_per_year,t_co2e_per_year,trigger_percent,stand,check_months";

    /**
     * Returns the line of the file.
     *
     * @return the fields in the order of {@link #HEAD}
     */
    public String line() {
        return String.format(
                Locale.ROOT,
                "%d,%s,%s,%s,%d,%d,%.4g,%.4g,%.5f,%.2f,%.2f,%.4f,%.0f,%s,%d",
                unit,
                model,
                cause,
                news,
                day,
                firstDay,
                evidence,
                limit,
                lost,
                percentPerYear,
                uncertainty,
                tonnesPerYear,
                triggerPercent,
                stand,
                checkMonths);
    }
}
