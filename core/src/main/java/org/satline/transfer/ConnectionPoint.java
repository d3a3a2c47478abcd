package org.satline.transfer;

import java.util.List;
import java.util.Locale;
import org.satline.explanation.Step;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * A point to which a hose may be connected, with its pressure. Immutable, thread-safe.
 *
 * @param kind what it is
 * @param pressure its pressure, absolute
 * @param expandedUncertainty the expanded uncertainty of that pressure, k = 2, not below zero
 * @param steps how the pressure was found
 */
public record ConnectionPoint(
        PointKind kind, Pressure pressure, PressureDifference expandedUncertainty, List<Step> steps) {
    /** {@inheritDoc} */
    public ConnectionPoint {
        Parts.required("kind pressure", kind, pressure);
        steps = List.copyOf(steps);
        if (!(expandedUncertainty.pascals() >= 0)) {
            throw new IllegalArgumentException("uncertainty " + expandedUncertainty + " of the pressure at the " + kind
                    + " is below zero; give its amount");
        }
    }

    /**
     * A point whose pressure a gauge shows.
     *
     * @param kind what it is
     * @param reading the gauge reading
     * @param atmosphere the local atmosphere
     * @param expandedUncertainty of the reading, k = 2
     * @return the point
     */
    public static ConnectionPoint byGauge(
            PointKind kind, GaugePressure reading, Atmosphere atmosphere, PressureDifference expandedUncertainty) {
        Pressure absolute = Pressure.ofGauge(reading, atmosphere);
        return new ConnectionPoint(
                kind,
                absolute,
                expandedUncertainty,
                List.of(new Step(
                        "pressure at the " + kind,
                        "p = p_gauge + p_atm",
                        String.format(
                                Locale.ROOT,
                                "%.2f kPa + %.2f kPa",
                                reading.kilopascals(),
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
     * @param expandedUncertainty of the temperature, k = 2
     * @return the point
     */
    public static ConnectionPoint bySaturation(
            PointKind kind, SaturationCurve curve, Temperature temperature, TemperatureDifference expandedUncertainty) {
        double t = temperature.kelvins();
        double bubble = curve.bubblePressurePa(t);
        double dew = curve.dewPressurePa(t);
        double middle = (bubble + dew) / 2;
        double half = Math.abs(bubble - dew) / 2;
        double spread = slope(curve, t) * Math.abs(expandedUncertainty.kelvins());
        // the liquid level is not known: anywhere between dew and bubble is equally likely, u = half / sqrt(3), U = 2 u
        double expanded = Math.hypot(spread, 2 * half / Math.sqrt(3));
        String gas = curve.refrigerant().designation();
        return new ConnectionPoint(
                kind,
                Pressure.ofPascals(middle),
                PressureDifference.ofPascals(expanded),
                List.of(new Step(
                        "pressure in the " + kind,
                        "p = (p_bubble(T) + p_dew(T)) / 2",
                        String.format(
                                Locale.ROOT,
                                "%s at %.2f degC: (%.2f kPa + %.2f kPa) / 2",
                                gas,
                                temperature.celsius(),
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
     * @param expandedUncertainty of the reading, k = 2
     * @return the point
     */
    public static ConnectionPoint byVacuumGauge(
            PointKind kind, Pressure absolute, PressureDifference expandedUncertainty) {
        return new ConnectionPoint(
                kind,
                absolute,
                expandedUncertainty,
                List.of(new Step(
                        "pressure at the " + kind,
                        "p",
                        "vacuum gauge",
                        FlowCheck.figure(absolute.pascals()),
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
                atmosphere.pressure(),
                PressureDifference.ZERO,
                List.of(new Step(
                        "pressure of the atmosphere",
                        "p_atm",
                        atmosphere.description(),
                        FlowCheck.figure(atmosphere.pressure().pascals()),
                        "ISO 2533 or measured")));
    }
}
