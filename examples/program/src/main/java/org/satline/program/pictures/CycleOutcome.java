package org.satline.program.pictures;

import java.util.List;
import java.util.Objects;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.PhaseSplit;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/** The cycle that the readings of a visit describe, or the reason why they describe none. */
public sealed interface CycleOutcome {
    /**
     * A cycle.
     *
     * @param corners suction line, discharge line, liquid line, behind the expansion device, in this order
     */
    record Drawn(List<CycleCorner> corners) implements CycleOutcome {
        /** {@inheritDoc} */
        public Drawn {
            corners = List.copyOf(corners);
        }
    }

    /**
     * No cycle.
     *
     * @param reason why, without a full stop
     */
    record None(String reason) implements CycleOutcome {
        /** {@inheritDoc} */
        public None {
            Objects.requireNonNull(reason, "reason");
        }
    }

    /** What is taken as so and was not measured, whatever was read. */
    String ASSUMPTIONS =
            "Assumed: no heat is lost at the expansion device (constant enthalpy), pressure falls in the coils only as far as stated in"
                    + " the visit, and refrigerant alone flows (no oil)";

    /**
     * Finds the cycle.
     *
     * @param model the refrigerant
     * @param readings readings on the system
     * @return four corners, or the reason why there are none
     */
    static CycleOutcome of(FluidModel model, SystemReadings readings) {
        if (readings.pressure(Place.SUCTION_PRESSURE).isEmpty()
                || readings.temperature(Place.SUCTION_LINE).isEmpty()
                || readings.pressure(Place.LIQUID_PRESSURE).isEmpty()
                || readings.temperature(Place.LIQUID_LINE).isEmpty()) {
            return new None("pressure and temperature of both the suction and the liquid line are needed");
        }
        try {
            return new Drawn(corners(
                    model,
                    readings,
                    readings.pressure(Place.SUCTION_PRESSURE).get(),
                    readings.temperature(Place.SUCTION_LINE).get(),
                    readings.pressure(Place.LIQUID_PRESSURE).get(),
                    readings.temperature(Place.LIQUID_LINE).get()));
        } catch (IllegalArgumentException | ConvergenceException e) {
            return new None(String.valueOf(e.getMessage()));
        }
    }

    private static List<CycleCorner> corners(
            FluidModel model,
            SystemReadings readings,
            Reading<Pressure> suctionPressure,
            Reading<Temperature> suctionLine,
            Reading<Pressure> liquidPressure,
            Reading<Temperature> liquidLine) {
        double low = suctionPressure.value().pascals();
        double high = liquidPressure.value().pascals();
        double condensing = high + readings.drop(Place.LIQUID_DROP).pascals();
        double evaporating = low + readings.drop(Place.SUCTION_DROP).pascals();
        FluidState suction = model.stateAt(suctionLine.value().kelvins(), low);
        double dew = model.dewAtPressure(low).temperatureK();
        if (!(suction.temperatureK() > dew)) {
            throw new IllegalArgumentException(
                    "the suction line is not warmer than the dew point at its pressure, so that the readings do not say how much of it is liquid");
        }
        FluidState liquid = model.stateAt(liquidLine.value().kelvins(), high);
        if (!(liquid.temperatureK() < model.bubbleAtPressure(high).temperatureK())) {
            throw new IllegalArgumentException(
                    "the liquid line is not colder than the bubble point at its pressure, so that the readings do not say how much of it is vapour");
        }
        PhaseSplit throttled = model.states().atPressureAndEnthalpy(evaporating, liquid.specificEnthalpy());
        return List.of(
                new CycleCorner("suction line", true, "read", low, suction.temperatureK(), suction.specificEnthalpy()),
                discharge(model, readings, suction, condensing),
                new CycleCorner("liquid line", true, "read", high, liquid.temperatureK(), liquid.specificEnthalpy()),
                new CycleCorner(
                        "behind the expansion device",
                        false,
                        "assumed: enthalpy of the liquid line, pressure of the suction side",
                        evaporating,
                        throttled.temperatureK(),
                        liquid.specificEnthalpy()));
    }

    private static CycleCorner discharge(
            FluidModel model, SystemReadings readings, FluidState suction, double condensingPa) {
        if (readings.temperature(Place.DISCHARGE_LINE).isPresent()) {
            double line =
                    readings.temperature(Place.DISCHARGE_LINE).get().value().kelvins();
            FluidState state = model.stateAt(line, condensingPa);
            return new CycleCorner(
                    "discharge line",
                    true,
                    "temperature read; assumed: pressure of the liquid side",
                    condensingPa,
                    line,
                    state.specificEnthalpy());
        }
        PhaseSplit least = model.states().atPressureAndEntropy(condensingPa, suction.specificEntropy());
        return new CycleCorner(
                "discharge line",
                false,
                "assumed: compression at constant entropy, so a real one lies farther right",
                condensingPa,
                least.temperatureK(),
                least.specificEnthalpy());
    }
}
