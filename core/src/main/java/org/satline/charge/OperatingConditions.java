package org.satline.charge;

import java.time.Duration;
import java.util.Objects;
import java.util.Optional;
import org.satline.measurement.Reading;
import org.satline.measurement.SettlingTest;
import org.satline.quantity.Parts;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.VolumeFlow;

/**
 * What is known about how a system ran while it was read; everything optional. Immutable, thread-safe.
 *
 * @param running time in cooling before the readings
 * @param settled outcome of the settling test on a series of readings
 * @param watchedSettled whether the person watched the readings stand still, where there is no series
 * @param outdoorMinimumMet whether the maker's own outdoor minimum for this method is met
 * @param airflow measured airflow over the evaporator with the nominal cooling capacity
 * @param standing pressure at rest with the temperature of the whole system
 */
public record OperatingConditions(
        Optional<Duration> running,
        Optional<SettlingTest.Outcome> settled,
        Optional<Boolean> watchedSettled,
        Optional<Boolean> outdoorMinimumMet,
        Optional<Airflow> airflow,
        Optional<Standing> standing) {
    /** {@inheritDoc} */
    public OperatingConditions {
        Parts.required("running settled watchedSettled", running, settled, watchedSettled);
        Parts.required("outdoorMinimumMet airflow standing", outdoorMinimumMet, airflow, standing);
    }

    /**
     * Measured airflow.
     *
     * @param flow volume flow of air over the evaporator
     * @param nominalCooling nominal cooling capacity
     */
    public record Airflow(VolumeFlow flow, Power nominalCooling) {
        /** {@inheritDoc} */
        public Airflow {
            Parts.required("nominalCooling", nominalCooling);
            Objects.requireNonNull(flow, "flow");
            if (!(nominalCooling.watts() > 0)) {
                throw new IllegalArgumentException(
                        "nominal cooling capacity " + nominalCooling + " is not above 0 W; take it from the plate");
            }
        }
    }

    /**
     * A system at rest, long enough that all of it has one temperature.
     *
     * @param pressure absolute pressure
     * @param temperature temperature of the whole system
     */
    public record Standing(Reading<Pressure> pressure, Reading<Temperature> temperature) {
        /** {@inheritDoc} */
        public Standing {
            Parts.required("pressure temperature", pressure, temperature);
        }
    }

    /**
     * Returns conditions of which nothing is known.
     *
     * @return the conditions
     */
    public static OperatingConditions unknown() {
        Optional<Boolean> open = Optional.empty();
        return new OperatingConditions(
                Optional.empty(), Optional.empty(), open, open, Optional.empty(), Optional.empty());
    }

    /**
     * Returns the same with the maker's outdoor minimum answered.
     *
     * @param met whether it is met
     * @return the conditions
     */
    public OperatingConditions withOutdoorMinimumMet(boolean met) {
        return new OperatingConditions(running, settled, watchedSettled, Optional.of(met), airflow, standing);
    }

    /**
     * Returns the same with another finding on whether the system has settled.
     *
     * @param finding what a series of readings, held against the readings, says
     * @return the conditions
     */
    public OperatingConditions withSettled(SettlingTest.Outcome finding) {
        return new OperatingConditions(
                running, Optional.of(finding), watchedSettled, outdoorMinimumMet, airflow, standing);
    }

    /**
     * Returns the same with a reading at rest.
     *
     * @param atRest pressure at rest with the temperature of the whole system
     * @return the conditions
     */
    public OperatingConditions withStanding(Standing atRest) {
        return new OperatingConditions(
                running, settled, watchedSettled, outdoorMinimumMet, airflow, Optional.of(atRest));
    }
}
