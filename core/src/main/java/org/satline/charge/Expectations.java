package org.satline.charge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.satline.measurement.TemperatureReading;
import org.satline.saturation.SaturationCurve;

/**
 * Fault-free values against which symptoms are read. Immutable, thread-safe. From a model or the maker's data where there are any; otherwise
 * {@link #usual()}, wide ranges of common practice without a source.
 */
public final class Expectations {
    private final Map<Symptom, Value> values;

    private Expectations(Map<Symptom, Value> values) {
        this.values = Collections.unmodifiableMap(values);
    }

    private record Value(double kelvins, double standardUncertaintyK) {}

    /**
     * Returns common practice, no source: condensing 12 K over ambient (u = 4 K), evaporating 19 K under the return air (u = 3 K), subcooling 6.4 K
     * (u = 2 K), superheat at an expansion valve 6 K (u = 3 K).
     *
     * @return the expectations
     */
    public static Expectations usual() {
        Map<Symptom, Value> values = new EnumMap<>(Symptom.class);
        values.put(Symptom.CONDENSING, new Value(12, 4));
        values.put(Symptom.EVAPORATING, new Value(-19, 3));
        values.put(Symptom.SUBCOOLING, new Value(6.4, 2));
        values.put(Symptom.SUPERHEAT, new Value(6, 3));
        return new Expectations(values);
    }

    /**
     * Returns the same with one value replaced.
     *
     * @param symptom which quantity; the evaporating temperature counts from the return air, the condensing temperature from the condenser air
     * @param kelvins fault-free value, K; discharge: degC
     * @param standardUncertaintyK its standard uncertainty, K
     * @return the expectations
     */
    public Expectations with(Symptom symptom, double kelvins, double standardUncertaintyK) {
        Objects.requireNonNull(symptom, "symptom");
        if (!(Double.isFinite(kelvins) && standardUncertaintyK >= 0 && standardUncertaintyK < 1e6)) {
            throw new IllegalArgumentException("expected " + symptom.label() + " " + kelvins + " K with u = "
                    + standardUncertaintyK + " K is not usable; give finite numbers");
        }
        Map<Symptom, Value> changed = new EnumMap<>(values);
        changed.put(symptom, new Value(kelvins, standardUncertaintyK));
        return new Expectations(changed);
    }

    /** Residuals of all symptoms that were read and for which something is expected. */
    List<Residual> residuals(SaturationCurve curve, SystemReadings readings, Margins margins) {
        List<Residual> residuals = new ArrayList<>();
        margins.superheat()
                .ifPresent(m -> add(residuals, Symptom.SUPERHEAT, m.value().kelvins(), m.standardUncertaintyK()));
        margins.subcooling()
                .ifPresent(m -> add(residuals, Symptom.SUBCOOLING, m.value().kelvins(), m.standardUncertaintyK()));
        readings.suctionPressure()
                .ifPresent(p -> readings.returnDryBulb().ifPresent(air -> {
                    double pa = p.value().pascals();
                    double u = p.budget().combined() * Margins.dewSlope(curve, pa);
                    add(
                            residuals,
                            Symptom.EVAPORATING,
                            curve.dewTemperatureK(pa) - air.value().kelvins(),
                            hypot(u, air));
                }));
        readings.liquidPressure()
                .ifPresent(p -> readings.condenserAir().ifPresent(air -> {
                    double pa = p.value().pascals();
                    double u = p.budget().combined() * Margins.bubbleSlope(curve, pa);
                    add(
                            residuals,
                            Symptom.CONDENSING,
                            curve.bubbleTemperatureK(pa) - air.value().kelvins(),
                            hypot(u, air));
                }));
        readings.dischargeLine()
                .ifPresent(
                        line -> add(residuals, Symptom.DISCHARGE, line.value().celsius(), line.standardUncertaintyK()));
        readings.condenserAirLeaving()
                .ifPresent(out -> readings.condenserAir()
                        .ifPresent(in -> add(
                                residuals,
                                Symptom.CONDENSER_AIR_RISE,
                                out.value().minus(in.value()).kelvins(),
                                out.budget().minus(in.budget()).combined())));
        Airflows.split(readings)
                .ifPresent(split -> residuals.add(new Residual(
                        Symptom.EVAPORATOR_AIR_DROP,
                        split.kelvins(),
                        split.budget().combined())));
        return List.copyOf(residuals);
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

    private static double hypot(double saturationK, TemperatureReading air) {
        return Math.hypot(saturationK, air.standardUncertaintyK());
    }
}
