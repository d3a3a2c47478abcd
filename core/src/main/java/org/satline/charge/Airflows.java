package org.satline.charge;

import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.TemperatureDifference;

/** The airflow gate: by measured flow where there is one, else by the temperature split. Source: California Energy Code, RA3.2 (2008). */
final class Airflows {
    private Airflows() {}

    static Gate check(SystemReadings readings, OperatingConditions conditions) {
        if (conditions.airflow().isPresent()) {
            return byFlow(conditions.airflow().get());
        }
        if (readings.returnDryBulb().isEmpty()
                || readings.supplyDryBulb().isEmpty()
                || readings.returnWetBulb().isEmpty()) {
            return Gate.notChecked(
                    Gate.Kind.AIRFLOW,
                    "airflow not checked",
                    "read return dry bulb and wet bulb and supply dry bulb, or measure the airflow");
        }
        return bySplit(readings);
    }

    /** Measured less target split with its uncertainty, K; empty where something was not read or lies outside the table. */
    static Optional<SplitDeviation> split(SystemReadings readings) {
        return readings.returnDryBulb()
                .flatMap(returned -> readings.supplyDryBulb()
                        .flatMap(supply -> readings.returnWetBulb()
                                .flatMap(wet -> TargetTemperatureSplit.target(returned, wet)
                                        .map(target -> new SplitDeviation(
                                                returned.value().minus(supply.value()),
                                                target.value(),
                                                returned.budget()
                                                        .minus(supply.budget())
                                                        .minus(target.budget()))))));
    }

    record SplitDeviation(TemperatureDifference split, TemperatureDifference target, UncertaintyBudget budget) {
        double kelvins() {
            return split.minus(target).kelvins();
        }
    }

    /**
     * Probability that a closed airflow gate means low airflow: 1 where the flow was measured; by the split, that it exceeds the published tolerance in truth;
     * 0 where the supply air is not colder at all.
     */
    static double probabilityOfLow(SystemReadings readings, OperatingConditions conditions) {
        if (conditions.airflow().isPresent()) {
            return 1;
        }
        return split(readings)
                .filter(d -> d.split().kelvins() > 0)
                .map(Airflows::beyond)
                .orElse(0.0);
    }

    private static double beyond(SplitDeviation deviation) {
        double excess = deviation.kelvins() - toleranceK();
        double u = deviation.budget().combined();
        return u > 0 ? new NormalDistribution(null, excess, u).probability(0, 1e3) : excess > 0 ? 1 : 0;
    }

    private static double toleranceK() {
        return TemperatureDifference.ofFahrenheitDegrees(PublishedLimits.high("temperature split minus target"))
                .kelvins();
    }

    private static Gate byFlow(OperatingConditions.Airflow airflow) {
        double least = PublishedLimits.low("airflow per ton of nominal cooling");
        double cfmPerTon =
                airflow.flow().cubicFeetPerMinute() / airflow.nominalCooling().tonsOfRefrigeration();
        String found = String.format(
                Locale.ROOT, "airflow %.0f cfm per ton of nominal cooling, at least %.0f needed", cfmPerTon, least);
        return cfmPerTon >= least
                ? Gate.open(Gate.Kind.AIRFLOW, found)
                : Gate.closed(Gate.Kind.AIRFLOW, found, lowAirflow());
    }

    private static Gate bySplit(SystemReadings readings) {
        Optional<SplitDeviation> deviation = split(readings);
        if (deviation.isEmpty()) {
            return Gate.notChecked(
                    Gate.Kind.AIRFLOW,
                    "return air lies outside the temperature-split table (" + TargetTemperatureSplit.range() + ")",
                    "measure the airflow");
        }
        SplitDeviation d = deviation.get();
        double tolerance = toleranceK();
        String found = String.format(
                Locale.ROOT,
                "temperature split %.1f K against a target of %.1f K +/- %.1f K",
                d.split().kelvins(),
                d.target().kelvins(),
                tolerance);
        if (!(d.split().kelvins() > 0)) {
            return Gate.closed(
                    Gate.Kind.AIRFLOW,
                    found + ": supply air is not colder than return air",
                    "find out why the system does not cool before judging its charge");
        }
        if (d.kelvins() > tolerance + 1e-9) {
            return Gate.closed(Gate.Kind.AIRFLOW, found + ": airflow is low", lowAirflow());
        }
        return Gate.open(
                Gate.Kind.AIRFLOW,
                d.kelvins() < -tolerance - 1e-9
                        ? found
                                + ": airflow is high, or the system lacks capacity, as it does when it is short of refrigerant"
                        : found);
    }

    private static String lowAirflow() {
        return "mend the airflow first (filter, coil, blower, ducts), then judge the charge";
    }
}
