package org.satline.charge;

import java.util.Optional;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.satline.explanation.Figure;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** The airflow gate: by measured flow where there is one, else by the temperature split. Source: California Energy Code, RA3.2 (2008). */
final class Airflows {
    /**
     * The printed target leaves out that colder air outdoors makes the system stronger. Slope over the fault-free conditions of one split
     * with sound airflow, 20.9 to 37.8 degC outdoors, where the split less the printed target fell from +1.8 to +0.6 K with a wet and from
     * +1.1 to -0.1 K with a dry coil: Kim, Payne, Domanski and Hermes 2006, NISTIR 7350.
     */
    private static final double PER_KELVIN_OUTDOORS = 0.07;

    /** The middle of wet and dry coil there. */
    private static final double AT_RATED_OUTDOORS_K = 0.5;

    private static final double RATED_OUTDOORS_C = 35;
    private static final double COLDEST_C = 20.9;
    private static final double WARMEST_C = 37.8;
    /** The same conditions scatter by 0.5 K about that slope. */
    private static final UncertaintyBudget MACHINES = UncertaintyBudget.of("temperature split", 0.5);

    private Airflows() {}

    static Gate check(SystemReadings readings, OperatingConditions conditions) {
        if (conditions.airflow().isPresent()) {
            return byFlow(conditions.airflow().get());
        }
        return split(readings)
                .map(Airflows::bySplit)
                .orElseGet(() -> Gate.notRead(Gate.Kind.AIRFLOW, "conditions.airflow", "conditions.nominalCooling"));
    }

    /** Measured less target split with its uncertainty; empty where something was not read or lies outside the table. */
    static Optional<SplitDeviation> split(SystemReadings readings) {
        Optional<Reading<Temperature>> returned = readings.temperature(Place.RETURN_DRY_BULB);
        Optional<Reading<Temperature>> supply = readings.temperature(Place.SUPPLY_DRY_BULB);
        Optional<Reading<Temperature>> wet = readings.temperature(Place.RETURN_WET_BULB);
        if (returned.isEmpty() || supply.isEmpty() || wet.isEmpty()) {
            return Optional.empty();
        }
        double weather = readings.temperature(Place.OUTDOOR_AIR)
                .map(air -> AT_RATED_OUTDOORS_K
                        + PER_KELVIN_OUTDOORS
                                * (RATED_OUTDOORS_C
                                        - Math.min(
                                                WARMEST_C,
                                                Math.max(COLDEST_C, air.value().celsius()))))
                .orElse(0.0);
        return TargetTemperatureSplit.target(returned.get(), wet.get())
                .map(target -> new SplitDeviation(
                        returned.get().value().minus(supply.get().value()),
                        target.value().plus(TemperatureDifference.ofKelvins(weather)),
                        returned.get()
                                .budget()
                                .minus(supply.get().budget())
                                .minus(target.budget())
                                .plus(MACHINES)));
    }

    record SplitDeviation(TemperatureDifference split, TemperatureDifference target, UncertaintyBudget budget) {
        double kelvins() {
            return split.minus(target).kelvins();
        }
    }

    /**
     * Probability that an airflow gate that is not met means low airflow: 1 where the flow was measured; by the split, that it exceeds the
     * published tolerance in truth; 0 where the supply air is not colder at all.
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
        double excess = deviation.kelvins() - tolerance().kelvins();
        double u = deviation.budget().combined();
        return u > 0 ? new NormalDistribution(null, excess, u).probability(0, 1e3) : excess > 0 ? 1 : 0;
    }

    private static TemperatureDifference tolerance() {
        return TemperatureDifference.ofFahrenheitDegrees(PublishedLimits.high("split minus target"));
    }

    private static Gate byFlow(OperatingConditions.Airflow airflow) {
        double least = PublishedLimits.low("airflow per ton");
        double cfmPerTon =
                airflow.flow().cubicFeetPerMinute() / airflow.nominalCooling().tonsOfRefrigeration();
        return Gate.of(
                Gate.Kind.AIRFLOW,
                cfmPerTon >= least,
                Figure.of("flow", cfmPerTon, "cfm/ton"),
                Figure.of("least", least, "cfm/ton"));
    }

    /** Supply air that is not colder than return air is not met either: why the system does not cool comes before its charge. */
    private static Gate bySplit(SplitDeviation d) {
        return Gate.of(
                Gate.Kind.AIRFLOW,
                d.split().kelvins() > 0 && d.kelvins() <= tolerance().kelvins() + 1e-9,
                Figure.of("split", d.split()),
                Figure.of("target", d.target()),
                Figure.of("tolerance", tolerance()));
    }
}
