package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.charge.SystemReadings;
import org.satline.explanation.Step;
import org.satline.measurement.Reading;
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
        readings.suctionPressure().ifPresent(reading -> readouts.add(readout("suction", reading)));
        readings.liquidPressure().ifPresent(reading -> readouts.add(readout("liquid line", reading)));
        return List.copyOf(readouts);
    }

    private PressureReadout readout(String name, Reading<Pressure> reading) {
        Pressure absolute = reading.value();
        GaugePressure gauge = absolute.gauge(site);
        double p = absolute.pascals();
        double bubble = curve.bubbleTemperatureK(p);
        double dew = curve.dewTemperatureK(p);
        return new PressureReadout(
                name,
                gauge,
                absolute,
                Temperature.ofKelvins(bubble),
                Temperature.ofKelvins(dew),
                TemperatureDifference.ofKelvins(dew - bubble),
                List.of(
                        new Step(
                                "absolute pressure, " + name,
                                "p = p_gauge + p_atm",
                                figure(
                                        "%.2f kPa (%.2f psig) + %.2f kPa",
                                        gauge.kilopascals(),
                                        gauge.psig(),
                                        site.pressure().kilopascals()),
                                figure("%.2f kPa (%.2f psia)", absolute.kilopascals(), absolute.psia()),
                                "gauge reading; atmosphere: " + site.description()),
                        saturation("bubble point, " + name, "T_bubble(p)", absolute, bubble),
                        saturation("dew point, " + name, "T_dew(p)", absolute, dew)));
    }

    private Step saturation(String name, String formula, Pressure pressure, double kelvins) {
        Temperature temperature = Temperature.ofKelvins(kelvins);
        return new Step(
                name,
                formula,
                figure("%s at p = %.2f kPa", curve.refrigerant().designation(), pressure.kilopascals()),
                figure("%.2f degC (%.2f degF)", temperature.celsius(), temperature.fahrenheit()),
                curve.source());
    }

    private static String figure(String format, Object... numbers) {
        return String.format(Locale.ROOT, format, numbers);
    }
}
