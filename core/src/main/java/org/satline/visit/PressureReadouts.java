package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/** Turns the pressures that were read into absolute pressures and saturation temperatures. */
final class PressureReadouts {
    private final SaturationCurve curve;
    private final Atmosphere site;

    PressureReadouts(SaturationCurve curve, Atmosphere site) {
        this.curve = curve;
        this.site = site;
    }

    List<PressureReadout> of(SystemReadings readings) {
        List<PressureReadout> readouts = new ArrayList<>();
        readings.pressure(Place.SUCTION_PRESSURE)
                .ifPresent(each -> readouts.add(readout(Place.SUCTION_PRESSURE, each)));
        readings.pressure(Place.LIQUID_PRESSURE).ifPresent(each -> readouts.add(readout(Place.LIQUID_PRESSURE, each)));
        return List.copyOf(readouts);
    }

    private PressureReadout readout(Place place, Reading<Pressure> reading) {
        Pressure absolute = reading.value();
        GaugePressure gauge = absolute.gauge(site);
        double p = absolute.pascals();
        double bubble = curve.bubbleTemperatureK(p);
        double dew = curve.dewTemperatureK(p);
        return new PressureReadout(
                place,
                gauge,
                absolute,
                Temperature.ofKelvins(bubble),
                Temperature.ofKelvins(dew),
                TemperatureDifference.ofKelvins(dew - bubble),
                List.of(
                        new Step(
                                "absolutePressure",
                                "p = p_gauge + p_atm",
                                List.of(
                                        Figure.of("place", place.field()),
                                        Figure.of("p_gauge", gauge),
                                        Figure.of("p_atm", site.pressure())),
                                Figure.of("p", absolute),
                                site.description()),
                        saturation("bubblePoint", "T_bubble(p)", absolute, bubble),
                        saturation("dewPoint", "T_dew(p)", absolute, dew)));
    }

    private Step saturation(String key, String formula, Pressure pressure, double kelvins) {
        return new Step(
                key,
                formula,
                List.of(Figure.of("refrigerant", curve.refrigerant().designation()), Figure.of("p", pressure)),
                Figure.of("T", Temperature.ofKelvins(kelvins)),
                curve.source());
    }
}
