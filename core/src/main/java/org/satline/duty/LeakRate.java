package org.satline.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.CsvResource;

/**
 * The leak rate of an appliance, per cent of its full charge a year. Immutable, thread-safe.
 *
 * @param percentPerYear the rate
 * @param fullCharge the full charge that it refers to
 * @param steps the derivation
 */
public record LeakRate(double percentPerYear, Mass fullCharge, List<Step> steps) {
    private static final int YEAR_DAYS = 365;

    /** Which rule's triggers apply. */
    public enum Rule {
        /** Ozone-depleting refrigerants, 40 CFR 82.157. */
        OZONE_DEPLETING,
        /**
         * HFC and substitutes with a GWP above 53 (AR4), 40 CFR 84.106, from 1 January 2026; homes and light commerce excluded (from
         * memory).
         */
        HFC_AND_SUBSTITUTES
    }

    /** What the appliance is used for. */
    public enum Use {
        /** Industrial process refrigeration. */
        INDUSTRIAL_PROCESS,
        /** Commercial refrigeration. */
        COMMERCIAL_REFRIGERATION,
        /** Comfort cooling and everything else. */
        COMFORT_COOLING_AND_OTHER
    }

    /**
     * Where a rate stands against its trigger.
     *
     * @param triggerPercent the trigger, per cent a year
     * @param exceeded true where the rate is above it: repair within 30 days
     * @param citation where the trigger stands
     */
    public record Trigger(double triggerPercent, boolean exceeded, String citation) {
        /** {@inheritDoc} */
        public Trigger {
            Parts.numbers("triggerPercent", triggerPercent);
            Objects.requireNonNull(citation, "citation");
        }
    }

    /** {@inheritDoc} */
    public LeakRate {
        Parts.numbers("percentPerYear", percentPerYear);
        Objects.requireNonNull(fullCharge, "fullCharge");
        steps = Parts.list("steps", steps);
    }

    /**
     * The annualising method: what was added, scaled from the days since the last addition to a year.
     *
     * @param added the refrigerant added
     * @param fullCharge the full charge, above zero
     * @param daysSinceLastAddition days since refrigerant was last added, at least 1
     * @return the rate
     */
    public static LeakRate annualised(Mass added, Mass fullCharge, int daysSinceLastAddition) {
        Parts.required("added fullCharge", added, fullCharge);
        if (!(daysSinceLastAddition >= 1)) {
            throw new IllegalArgumentException("days since the last addition " + daysSinceLastAddition
                    + " is outside [1, 365]; longer spans count as 365");
        }
        int days = Math.min(daysSinceLastAddition, YEAR_DAYS);
        double rate = 100 * share(added, fullCharge) * YEAR_DAYS / days;
        return new LeakRate(
                rate,
                fullCharge,
                List.of(new Step(
                        "leakRateAnnualised",
                        "100 (m_added / m_full) 365 / min(days, 365)",
                        List.of(
                                Figure.of("m_added", added),
                                Figure.of("m_full", fullCharge),
                                Figure.of("days", days, "1")),
                        Figure.of("rate", rate, "%/a"),
                        "40 CFR 82.152 (read in a secondary text)")));
    }

    /**
     * The rolling average: what was added in the past 365 days, or since the last successful follow-up test if that is shorter.
     *
     * @param added the refrigerant added in that span
     * @param fullCharge the full charge, above zero
     * @return the rate
     */
    public static LeakRate rollingAverage(Mass added, Mass fullCharge) {
        Parts.required("added fullCharge", added, fullCharge);
        double rate = 100 * share(added, fullCharge);
        return new LeakRate(
                rate,
                fullCharge,
                List.of(new Step(
                        "leakRateRolling",
                        "100 m_added / m_full",
                        List.of(Figure.of("m_added", added), Figure.of("m_full", fullCharge)),
                        Figure.of("rate", rate, "%/a"),
                        "40 CFR 82.152 (from memory)")));
    }

    private static double share(Mass added, Mass fullCharge) {
        if (!(fullCharge.kilograms() > 0)) {
            throw new IllegalArgumentException(
                    "full charge " + fullCharge + " is not above zero; read it on the nameplate");
        }
        return added.kilograms() / fullCharge.kilograms();
    }

    /**
     * Holds the rate against the trigger. One method is used for all appliances of a facility.
     *
     * @param rule which rule
     * @param use what the appliance is used for
     * @return the trigger; nothing where the full charge is below the least of the rule
     */
    public Optional<Trigger> against(Rule rule, Use use) {
        for (CsvResource.Row row : thresholds().rows()) {
            if (row.text("rule").equals(key(rule)) && row.text("appliance").equals(key(use))) {
                if (fullCharge.kilograms()
                        < Mass.ofPounds(row.number("least_charge_lb")).kilograms()) {
                    return Optional.empty();
                }
                double trigger = row.number("trigger_percent");
                return Optional.of(new Trigger(trigger, percentPerYear > trigger, row.text("citation")));
            }
        }
        return Optional.empty();
    }

    /**
     * What a leak asks for: the test, the rate from which the law wants it mended, and when to look again, in the United States and in the
     * European Union, since the place is not known here.
     *
     * @param system the name of the system that leaks
     * @param refrigerant what is in it
     * @param fullCharge the charge of its plate, where it is known; above zero
     * @param use what it is used for
     * @return what to do, as cautions
     */
    public static List<Finding> followUp(String system, Refrigerant refrigerant, Optional<Mass> fullCharge, Use use) {
        Parts.required("system refrigerant fullCharge use", system, refrigerant, fullCharge, use);
        return new LeakDuties(system, refrigerant, fullCharge, use).findings();
    }

    private static CsvResource thresholds() {
        return CsvResource.read(
                LeakRate.class,
                "leak-thresholds.csv",
                "rule",
                "appliance",
                "least_charge_lb",
                "trigger_percent",
                "citation",
                "confirmation");
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The rows of the thresholds, for their test. */
    static List<String> thresholdKeys() {
        List<String> keys = new ArrayList<>();
        thresholds().rows().forEach(row -> keys.add(row.text("rule") + " " + row.text("appliance")));
        return keys;
    }
}
