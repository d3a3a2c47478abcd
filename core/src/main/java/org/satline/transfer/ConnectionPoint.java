package org.satline.transfer;

import java.util.List;
import java.util.Locale;
import org.satline.explanation.Step;
import org.satline.measurement.Reading;
import org.satline.measurement.StandardUncertainty;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/**
 * A point to which a hose may be connected, with its pressure. Immutable, thread-safe.
 *
 * @param kind what it is
 * @param pressure its pressure, absolute
 * @param steps how the pressure was found
 */
public record ConnectionPoint(PointKind kind, Reading<Pressure> pressure, List<Step> steps) {
    /** {@inheritDoc} */
    public ConnectionPoint {
        Parts.required("kind pressure", kind, pressure);
        steps = List.copyOf(steps);
    }

    /**
     * A point whose pressure a gauge shows.
     *
     * @param kind what it is
     * @param reading the gauge reading
     * @param atmosphere the local atmosphere, taken as exact
     * @return the point
     */
    public static ConnectionPoint byGauge(PointKind kind, Reading<GaugePressure> reading, Atmosphere atmosphere) {
        Pressure absolute = Pressure.ofGauge(reading.value(), atmosphere);
        return new ConnectionPoint(
                kind,
                new Reading<>(absolute, reading.budget(), reading.shown()),
                List.of(new Step(
                        "pressure at the " + kind,
                        "p = p_gauge + p_atm",
                        String.format(
                                Locale.ROOT,
                                "%.2f kPa + %.2f kPa",
                                reading.value().kilopascals(),
                                atmosphere.pressure().kilopascals()),
                        FlowCheck.figure(absolute.pascals()),
                        "gauge reading; atmosphere: " + atmosphere.description())));
    }

    /**
     * A cylinder at rest that holds liquid: its pressure lies between the dew and the bubble pressure at its temperature.
     *
     * @param kind one of its valves
     * @param curve the saturation curve of what it holds
     * @param temperature the temperature of the cylinder
     * @return the point
     */
    public static ConnectionPoint bySaturation(
            PointKind kind, SaturationCurve curve, Reading<Temperature> temperature) {
        double t = temperature.value().kelvins();
        double bubble = curve.bubblePressurePa(t);
        double dew = curve.dewPressurePa(t);
        double middle = (bubble + dew) / 2;
        double half = Math.abs(bubble - dew) / 2;
        // the liquid level is not known: anywhere between dew and bubble is equally likely
        UncertaintyBudget budget = temperature
                .budget()
                .scaled(slope(curve, t))
                .plus(UncertaintyBudget.of("liquid level in the " + kind, StandardUncertainty.ofLimits(half)));
        String gas = curve.refrigerant().designation();
        return new ConnectionPoint(
                kind,
                new Reading<>(Pressure.ofPascals(middle), budget, temperature.shown()),
                List.of(new Step(
                        "pressure in the " + kind,
                        "p = (p_bubble(T) + p_dew(T)) / 2",
                        String.format(
                                Locale.ROOT,
                                "%s at %.2f degC: (%.2f kPa + %.2f kPa) / 2",
                                gas,
                                temperature.value().celsius(),
                                bubble / 1000,
                                dew / 1000),
                        FlowCheck.figure(middle),
                        curve.source())));
    }

    /** Slope of the bubble line in Pa/K over one kelvin, taken inwards at the ends of the line. */
    private static double slope(SaturationCurve curve, double t) {
        double low = Math.max(t - 0.5, curve.minTemperatureK());
        double high = Math.min(t + 0.5, curve.maxTemperatureK());
        return (curve.bubblePressurePa(high) - curve.bubblePressurePa(low)) / (high - low);
    }

    /**
     * A point under vacuum, by a vacuum gauge.
     *
     * @param kind what it is
     * @param absolute the absolute pressure
     * @return the point
     */
    public static ConnectionPoint byVacuumGauge(PointKind kind, Reading<Pressure> absolute) {
        return new ConnectionPoint(
                kind,
                absolute,
                List.of(new Step(
                        "pressure at the " + kind,
                        "p",
                        "vacuum gauge",
                        FlowCheck.figure(absolute.value().pascals()),
                        "reading")));
    }

    /**
     * The air around.
     *
     * @param atmosphere the local atmosphere
     * @return the point, taken as exact
     */
    public static ConnectionPoint atmosphere(Atmosphere atmosphere) {
        return new ConnectionPoint(
                PointKind.ATMOSPHERE,
                Reading.exact(atmosphere.pressure()),
                List.of(new Step(
                        "pressure of the atmosphere",
                        "p_atm",
                        atmosphere.description(),
                        FlowCheck.figure(atmosphere.pressure().pascals()),
                        "ISO 2533 or measured")));
    }
}
