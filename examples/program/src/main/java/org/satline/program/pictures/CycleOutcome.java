package org.satline.program.pictures;

import java.util.List;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.PhaseSplit;
import org.satline.explanation.Figure;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Parts;
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
     * @param why in the word of its key
     * @param refused what the equation says where it refuses a state; empty otherwise
     */
    record None(String why, String refused) implements CycleOutcome {
        /** {@inheritDoc} */
        public None {
            Parts.required("why refused", why, refused);
        }

        /** In words, without a full stop. */
        String told(PictureUnits units) {
            return units.text("cycle." + why, Figure.of("refused", refused));
        }
    }

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
            return new None("incomplete", "");
        }
        try {
            return drawn(
                    model,
                    readings,
                    readings.pressure(Place.SUCTION_PRESSURE).get(),
                    readings.temperature(Place.SUCTION_LINE).get(),
                    readings.pressure(Place.LIQUID_PRESSURE).get(),
                    readings.temperature(Place.LIQUID_LINE).get());
        } catch (IllegalArgumentException | ConvergenceException e) {
            return new None("refused", String.valueOf(e.getMessage()));
        }
    }

    private static CycleOutcome drawn(
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
            return new None("wetSuction", "");
        }
        FluidState liquid = model.stateAt(liquidLine.value().kelvins(), high);
        if (!(liquid.temperatureK() < model.bubbleAtPressure(high).temperatureK())) {
            return new None("vapourInLiquid", "");
        }
        PhaseSplit throttled = model.states().atPressureAndEnthalpy(evaporating, liquid.specificEnthalpy());
        return new Drawn(List.of(
                new CycleCorner("suction", true, "read", low, suction.temperatureK(), suction.specificEnthalpy()),
                discharge(model, readings, suction, condensing),
                new CycleCorner("liquid", true, "read", high, liquid.temperatureK(), liquid.specificEnthalpy()),
                new CycleCorner(
                        "expanded",
                        false,
                        "expansion",
                        evaporating,
                        throttled.temperatureK(),
                        liquid.specificEnthalpy())));
    }

    private static CycleCorner discharge(
            FluidModel model, SystemReadings readings, FluidState suction, double condensingPa) {
        if (readings.temperature(Place.DISCHARGE_LINE).isPresent()) {
            double line =
                    readings.temperature(Place.DISCHARGE_LINE).get().value().kelvins();
            FluidState state = model.stateAt(line, condensingPa);
            return new CycleCorner("discharge", true, "discharge", condensingPa, line, state.specificEnthalpy());
        }
        PhaseSplit least = model.states().atPressureAndEntropy(condensingPa, suction.specificEntropy());
        return new CycleCorner(
                "discharge", false, "compression", condensingPa, least.temperatureK(), least.specificEnthalpy());
    }
}
