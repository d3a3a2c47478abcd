package org.satline.program.proof;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.satline.charge.OperatingConditions;
import org.satline.charge.margin.Margins;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.Thermometer;
import org.satline.measurement.ThermometerClass;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;
import org.satline.simulation.AirConditions;

/**
 * Instruments of one visit, those of the sample kit: digital gauges within 0.5 % and 0.5 psi, thermocouples of type K and class 1 (1.5 K)
 * with display steps of 0.1 K, and 0.5 K of contact on pipes. Each is off by a fixed amount drawn evenly within its limits; the thermometer
 * by the same amount wherever it is put.
 */
final class Instruments {
    private static final double CONTACT_K = 0.5;
    private static final double RESOLUTION_K = 0.1;
    private static final DigitalGauge LOW = new DigitalGauge("gauge, low side", 0.5, PressureDifference.ofPsi(0.5));
    private static final DigitalGauge HIGH = new DigitalGauge("gauge, high side", 0.5, PressureDifference.ofPsi(0.5));
    private static final Thermometer THERMOMETER =
            new Thermometer("thermometer", ThermometerClass.named("thermocouple-k-class-1"), RESOLUTION_K);

    private final double lowOff;
    private final double highOff;
    private final double thermometerOff;
    private final Map<Place, Double> contact = new EnumMap<>(Place.class);

    Instruments(Random random) {
        lowOff = even(random);
        highOff = even(random);
        thermometerOff = even(random);
        for (Place place : Place.values()) {
            contact.put(place, CONTACT_K * even(random));
        }
    }

    private static double even(Random random) {
        return 2 * random.nextDouble() - 1;
    }

    SystemReadings read(Ports ports, AirConditions air) {
        return SystemReadings.builder()
                .put(Place.SUCTION_PRESSURE, pressure(LOW, ports.suction(), lowOff))
                .put(Place.SUCTION_LINE, pipe(Place.SUCTION_LINE, ports.suctionLine()))
                .put(Place.LIQUID_PRESSURE, pressure(HIGH, ports.liquid(), highOff))
                .put(Place.LIQUID_LINE, pipe(Place.LIQUID_LINE, ports.liquidLine()))
                .put(Place.DISCHARGE_LINE, pipe(Place.DISCHARGE_LINE, ports.dischargeLine()))
                .put(Place.RETURN_DRY_BULB, air(air.returnDryBulb(), "return"))
                .put(Place.RETURN_WET_BULB, air(air.returnWetBulb(), "return, wet bulb"))
                .put(Place.SUPPLY_DRY_BULB, air(ports.supply(), "supply"))
                .put(Place.OUTDOOR_AIR, air(air.outdoor(), "outdoor"))
                .build();
    }

    /** Superheat and subcooling by exact instruments. */
    static Margins exact(SaturationCurve curve, Ports ports) {
        return Margins.of(
                curve,
                SystemReadings.builder()
                        .suction(Reading.exact(ports.suction()), Reading.exact(ports.suctionLine()))
                        .liquid(Reading.exact(ports.liquid()), Reading.exact(ports.liquidLine()))
                        .build());
    }

    /** At rest at the temperature of the outdoor air, by the gauge of the high side. */
    OperatingConditions.Standing standing(Pressure atRest, AirConditions air) {
        return new OperatingConditions.Standing(pressure(HIGH, atRest, highOff), air(air.outdoor(), "outdoor"));
    }

    private static Reading<Pressure> pressure(DigitalGauge gauge, Pressure exact, double off) {
        GaugePressure there = GaugePressure.ofPascals(
                exact.pascals() - Atmosphere.standard().pressure().pascals());
        double error = off * gauge.permittedError(there).pascals();
        return gauge.read(GaugePressure.ofPascals(there.pascals() + error), Atmosphere.standard());
    }

    private Reading<Temperature> pipe(Place place, Temperature exact) {
        double off = contact.getOrDefault(place, 0.0);
        return THERMOMETER.readOnPipe(shown(exact, off), place.field(), CONTACT_K);
    }

    private Reading<Temperature> air(Temperature exact, String where) {
        return THERMOMETER.read(shown(exact, 0), where + " air");
    }

    private Temperature shown(Temperature exact, double off) {
        double celsius =
                exact.celsius() + off + thermometerOff * THERMOMETER.accuracy().permittedErrorK(exact);
        return Temperature.ofCelsius(Math.round(celsius / RESOLUTION_K) * RESOLUTION_K);
    }
}
