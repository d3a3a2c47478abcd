package org.satline.charge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.satline.charge.margin.Margins;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * Fault-free values against which symptoms are read. Immutable, thread-safe. From a model or the maker's data where there are any;
 * otherwise {@link #usual()}, wide ranges of common practice without a source.
 */
final class Expectations {
    /** A sound system may show a split within the published tolerance, 3 degF either way, taken as limits (JCGM 100:2008, 4.3.7). */
    private static final double SPLIT_DOUBT_K =
            TemperatureDifference.ofFahrenheitDegrees(PublishedLimits.high("split minus target"))
                            .kelvins()
                    / Math.sqrt(3);

    private final Map<Symptom, Value> values;
    private final Optional<Value> evaporatingFromWetBulb;

    private Expectations(Map<Symptom, Value> values, Optional<Value> evaporatingFromWetBulb) {
        this.values = Collections.unmodifiableMap(values);
        this.evaporatingFromWetBulb = evaporatingFromWetBulb;
    }

    private record Value(double kelvins, double standardUncertaintyK) {
        /** Limits of a rectangular distribution (JCGM 100:2008, 4.3.7) in degrees Fahrenheit. */
        static Value between(double lowF, double highF) {
            double middleK = TemperatureDifference.ofFahrenheitDegrees((lowF + highF) / 2)
                    .kelvins();
            double halfK = TemperatureDifference.ofFahrenheitDegrees((highF - lowF) / 2)
                    .kelvins();
            return new Value(middleK, halfK / Math.sqrt(3));
        }
    }

    /**
     * Returns common practice, no source: condensing 15 to 30 degF over ambient, evaporating 19 K under the return air (u = 3 K) or, where
     * its wet bulb was read, which a wet coil answers to, 12.2 K under that (u = 2 K: 40 to 50 degF at 67 degF, and weather), subcooling 8
     * to 15 degF (u = 1.5 K with weather), superheat at an expansion valve 6 K (u = 3 K).
     *
     * @return the expectations
     */
    public static Expectations usual() {
        Map<Symptom, Value> values = new EnumMap<>(Symptom.class);
        values.put(Symptom.CONDENSING, Value.between(15, 30));
        values.put(Symptom.EVAPORATING, new Value(-19, 3));
        values.put(Symptom.SUBCOOLING, new Value(6.4, 1.5));
        values.put(Symptom.SUPERHEAT, new Value(6, 3));
        return new Expectations(values, Optional.of(new Value(-12.2, 2)));
    }

    /**
     * Returns the same with one value replaced.
     *
     * @param symptom which quantity; the evaporating temperature counts from the dry bulb of the return air, the condensing temperature
     *     from the condenser air
     * @param kelvins fault-free value, K; discharge: degC
     * @param standardUncertaintyK its standard uncertainty, K
     * @return the expectations
     */
    public Expectations with(Symptom symptom, double kelvins, double standardUncertaintyK) {
        Objects.requireNonNull(symptom, "symptom");
        if (!(Double.isFinite(kelvins) && standardUncertaintyK >= 0 && standardUncertaintyK < 1e6)) {
            throw new IllegalArgumentException("expected " + symptom.word() + " " + kelvins + " K with u = "
                    + standardUncertaintyK + " K is not usable; give finite numbers");
        }
        Map<Symptom, Value> changed = new EnumMap<>(values);
        changed.put(symptom, new Value(kelvins, standardUncertaintyK));
        return new Expectations(changed, symptom == Symptom.EVAPORATING ? Optional.empty() : evaporatingFromWetBulb);
    }

    /** Residuals of all symptoms that were read and for which something is expected. */
    List<Residual> residuals(SaturationCurve curve, SystemReadings readings, Margins margins) {
        List<Residual> residuals = new ArrayList<>();
        margins.superheat()
                .ifPresent(m -> add(residuals, Symptom.SUPERHEAT, m.value().kelvins(), m.standardUncertaintyK()));
        margins.subcooling()
                .ifPresent(m -> add(residuals, Symptom.SUBCOOLING, m.value().kelvins(), m.standardUncertaintyK()));
        readings.pressure(Place.SUCTION_PRESSURE)
                .ifPresent(p -> evaporating(curve, readings, p).ifPresent(residuals::add));
        readings.pressure(Place.LIQUID_PRESSURE)
                .ifPresent(p -> readings.temperature(Place.OUTDOOR_AIR).ifPresent(air -> {
                    double pa = p.value().pascals();
                    double u = p.budget().combined() * Margins.bubbleSlope(curve, pa);
                    add(
                            residuals,
                            Symptom.CONDENSING,
                            curve.bubbleTemperatureK(pa) - air.value().kelvins(),
                            hypot(u, air));
                }));
        readings.temperature(Place.DISCHARGE_LINE)
                .ifPresent(
                        line -> add(residuals, Symptom.DISCHARGE, line.value().celsius(), line.standardUncertainty()));
        readings.temperature(Place.OUTDOOR_AIR_LEAVING)
                .ifPresent(out -> readings.temperature(Place.OUTDOOR_AIR)
                        .ifPresent(in -> add(
                                residuals,
                                Symptom.CONDENSER_AIR_RISE,
                                out.value().minus(in.value()).kelvins(),
                                out.budget().minus(in.budget()).combined())));
        Airflows.split(readings)
                .ifPresent(split -> residuals.add(new Residual(
                        Symptom.EVAPORATOR_AIR_DROP,
                        split.kelvins(),
                        Math.hypot(SPLIT_DOUBT_K, split.budget().combined()))));
        return List.copyOf(residuals);
    }

    private Optional<Residual> evaporating(SaturationCurve curve, SystemReadings readings, Reading<Pressure> pressure) {
        boolean wet = evaporatingFromWetBulb.isPresent()
                && readings.temperature(Place.RETURN_WET_BULB).isPresent();
        Optional<Reading<Temperature>> air =
                wet ? readings.temperature(Place.RETURN_WET_BULB) : readings.temperature(Place.RETURN_DRY_BULB);
        Optional<Value> expected = wet ? evaporatingFromWetBulb : Optional.ofNullable(values.get(Symptom.EVAPORATING));
        double pa = pressure.value().pascals();
        double u = pressure.budget().combined() * Margins.dewSlope(curve, pa);
        return air.flatMap(a -> expected.map(e -> new Residual(
                Symptom.EVAPORATING,
                curve.dewTemperatureK(pa) - a.value().kelvins() - e.kelvins(),
                Math.hypot(hypot(u, a), e.standardUncertaintyK()))));
    }

    private void add(List<Residual> residuals, Symptom symptom, double measuredK, double standardUncertaintyK) {
        Value expected = values.get(symptom);
        if (expected != null) {
            residuals.add(new Residual(
                    symptom,
                    measuredK - expected.kelvins(),
                    Math.hypot(standardUncertaintyK, expected.standardUncertaintyK())));
        }
    }

    private static double hypot(double saturationK, Reading<Temperature> air) {
        return Math.hypot(saturationK, air.standardUncertainty());
    }
}
