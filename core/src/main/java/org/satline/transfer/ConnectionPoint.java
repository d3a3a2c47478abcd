package org.satline.transfer;

import java.util.List;
import org.satline.explanation.Figure;
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
        steps = Parts.list("steps", steps);
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
        Parts.required("kind reading", kind, reading);
        Pressure absolute = Pressure.ofGauge(reading.value(), atmosphere);
        return new ConnectionPoint(
                kind,
                new Reading<>(absolute, reading.budget(), reading.shown()),
                List.of(new Step(
                        "pressureAtPoint",
                        "p = p_gauge + p_atm",
                        List.of(
                                Figure.of("point", kind.word()),
                                Figure.of("p_gauge", reading.value()),
                                Figure.of("p_atm", atmosphere.pressure())),
                        Figure.of("p", absolute),
                        atmosphere.description())));
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
        Parts.required("kind curve temperature", kind, curve, temperature);
        double t = temperature.value().kelvins();
        double bubble = curve.bubblePressurePa(t);
        double dew = curve.dewPressurePa(t);
        double middle = (bubble + dew) / 2;
        double half = Math.abs(bubble - dew) / 2;
        // the liquid level is not known: anywhere between dew and bubble is equally likely
        UncertaintyBudget budget = temperature
                .budget()
                .scaled(slope(curve, t))
                .plus(UncertaintyBudget.of(kind.word() + ".liquidLevel", StandardUncertainty.ofLimits(half)));
        return new ConnectionPoint(
                kind,
                new Reading<>(Pressure.ofPascals(middle), budget, temperature.shown()),
                List.of(new Step(
                        "pressureInCylinder",
                        "p = (p_bubble + p_dew) / 2",
                        List.of(
                                Figure.of("refrigerant", curve.refrigerant().designation()),
                                Figure.of("T", temperature.value()),
                                Figure.of("p_bubble", Pressure.ofPascals(bubble)),
                                Figure.of("p_dew", Pressure.ofPascals(dew))),
                        Figure.of("p", Pressure.ofPascals(middle)),
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
        Parts.required("kind absolute", kind, absolute);
        return new ConnectionPoint(
                kind,
                absolute,
                List.of(new Step(
                        "pressureAtPoint",
                        "p",
                        List.of(Figure.of("point", kind.word())),
                        Figure.of("p", absolute.value()),
                        "vacuum gauge")));
    }

    /**
     * The air around.
     *
     * @param atmosphere the local atmosphere
     * @return the point, taken as exact
     */
    public static ConnectionPoint atmosphere(Atmosphere atmosphere) {
        Parts.required("atmosphere", atmosphere);
        return new ConnectionPoint(
                PointKind.ATMOSPHERE,
                Reading.exact(atmosphere.pressure()),
                List.of(new Step(
                        "pressureOfAtmosphere",
                        "p_atm",
                        List.of(),
                        Figure.of("p_atm", atmosphere.pressure()),
                        atmosphere.description())));
    }
}
