package org.satline.program.proof;

import java.util.Random;
import org.satline.charge.OperatingConditions;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.simulation.AirConditions;
import org.satline.simulation.SteadyState;

/**
 * Instruments of one visit: each is off by a fixed amount drawn from its stated standard uncertainty. Sizes from good digital to poor dial
 * instruments; common practice, no source.
 */
final class Instruments {
    private static final int PROBES = 7;

    private final double relative;
    private final double kelvins;
    private final double suctionOff;
    private final double liquidOff;
    private final double[] probesOff = new double[PROBES];

    Instruments(Random random) {
        relative = 0.003 + 0.012 * random.nextDouble();
        kelvins = 0.2 + 0.6 * random.nextDouble();
        suctionOff = relative * random.nextGaussian();
        liquidOff = relative * random.nextGaussian();
        for (int i = 0; i < PROBES; i++) {
            probesOff[i] = kelvins * random.nextGaussian();
        }
    }

    SystemReadings read(SteadyState state, AirConditions air) {
        return SystemReadings.builder()
                .suction(
                        pressure(state.suctionPressure(), suctionOff, "low side"),
                        probe(0, state.suctionLine(), "suction line"))
                .liquid(
                        pressure(state.liquidPressure(), liquidOff, "high side"),
                        probe(1, state.liquidLine(), "liquid line"))
                .put(Place.DISCHARGE_LINE, probe(2, state.dischargeLine(), "discharge line"))
                .put(Place.RETURN_DRY_BULB, probe(3, air.returnDryBulb(), "return air"))
                .put(Place.RETURN_WET_BULB, probe(4, air.returnWetBulb(), "return air, wet bulb"))
                .put(Place.SUPPLY_DRY_BULB, probe(5, state.supplyDryBulb(), "supply air"))
                .put(Place.OUTDOOR_AIR, probe(6, air.outdoor(), "outdoor air"))
                .build();
    }

    /** At rest at the temperature of the outdoor air, by the gauge of the high side. */
    OperatingConditions.Standing standing(Pressure atRest, AirConditions air) {
        return new OperatingConditions.Standing(
                pressure(atRest, liquidOff, "high side"), probe(6, air.outdoor(), "outdoor air"));
    }

    private Reading<Pressure> pressure(Pressure exact, double off, String name) {
        return Reading.of(
                Pressure.ofPascals(exact.pascals() * (1 + off)), relative * exact.pascals(), "gauge, " + name);
    }

    private Reading<Temperature> probe(int which, Temperature exact, String name) {
        return Reading.of(Temperature.ofKelvins(exact.kelvins() + probesOff[which]), kelvins, "probe, " + name);
    }
}
