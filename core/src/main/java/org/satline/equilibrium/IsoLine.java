package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * One isotherm or isobar: where it enters and leaves the two-phase region. Immutable.
 *
 * @param ends solved, an isotherm's by rising pressure, an isobar's by rising temperature
 * @param besideCriticalPoint true where an end lies in the small stretch beside the critical point that the traced
 *     lines leave out
 */
record IsoLine(List<StretchEnd> ends, boolean besideCriticalPoint) {
    /** The traced lines end closer to the critical point than this, relative in T and p. */
    private static final double BESIDE = 5e-3;

    /** Nearer than this, relative, a line only touches the two-phase region where temperature or pressure turn. */
    private static final double TOUCHES = 1e-9;

    /** Solves the ends on the isotherm or isobar. */
    static IsoLine of(Envelope envelope, Specified specified, double value) {
        if (touches(envelope, specified, value)) {
            return new IsoLine(List.of(), false);
        }
        PhaseBoundary bubble = envelope.bubble;
        PhaseBoundary dew = envelope.dew;
        List<StretchEnd> ends = new ArrayList<>();
        boolean onBubble = within(bubble, specified, value);
        boolean onDew = within(dew, specified, value);
        double logValue = Math.log(value);
        if (onDew && dew != bubble) {
            ends.add(StretchEnd.of(solve(dew, specified, value), envelope.composition));
        }
        if (onBubble) {
            IncipientPhase point = solve(bubble, specified, value);
            if (dew == bubble) {
                ends.add(StretchEnd.vapourOf(point));
            }
            ends.add(StretchEnd.of(point, envelope.composition));
        }
        if (!(onBubble && onDew)) {
            for (IncipientPhase point : envelope.beyond(specified, logValue)) {
                ends.add(StretchEnd.of(point, envelope.composition));
            }
        }
        boolean beside = addEndBesideCriticalPoint(envelope, specified, value, ends);
        if (specified == Specified.TEMPERATURE) {
            ends.sort(Comparator.comparingDouble(StretchEnd::pressure).thenComparingDouble(StretchEnd::molarDensity));
        } else {
            ends.sort(Comparator.comparingDouble(StretchEnd::temperature).thenComparingDouble(e -> -e.molarDensity()));
        }
        return new IsoLine(List.copyOf(ends), beside);
    }

    private static boolean touches(Envelope envelope, Specified specified, double value) {
        return specified == Specified.TEMPERATURE
                ? envelope.warmest().kind() == BoundaryEnd.Kind.LARGEST_TEMPERATURE
                        && value >= envelope.warmest().temperatureK() * (1 - TOUCHES)
                : envelope.highest().kind() == BoundaryEnd.Kind.LARGEST_PRESSURE
                        && value >= envelope.highest().pressurePa() * (1 - TOUCHES);
    }

    private static boolean addEndBesideCriticalPoint(
            Envelope envelope, Specified specified, double value, List<StretchEnd> ends) {
        Optional<CriticalPoint> critical = envelope.critical();
        if (critical.isEmpty() || ends.size() % 2 == 0) {
            return false;
        }
        double there = specified == Specified.TEMPERATURE
                ? critical.get().temperatureK()
                : critical.get().pressurePa();
        // an isobar below the whole bubble line is cut by the coldest temperature, not by the critical point
        boolean cut = specified == Specified.PRESSURE && value < envelope.bubble.minPressure();
        if (cut || Math.abs(value / there - 1) > BESIDE) {
            return false;
        }
        ends.add(StretchEnd.of(critical.get(), envelope.composition.moleFractions()));
        return true;
    }

    private static IncipientPhase solve(PhaseBoundary line, Specified specified, double value) {
        return specified == Specified.TEMPERATURE ? line.atTemperature(value) : line.atPressure(value);
    }

    private static boolean within(PhaseBoundary line, Specified specified, double value) {
        return specified == Specified.TEMPERATURE
                ? value >= line.minTemperature() && value <= line.maxTemperature()
                : value >= line.minPressure() && value <= line.maxPressure();
    }

    /** Starting values of both ends read from the traced lines; null where either line does not hold the value. */
    static @Nullable IsoLine estimated(Envelope envelope, Specified specified, double value) {
        PhaseBoundary bubble = envelope.bubble;
        PhaseBoundary dew = envelope.dew;
        if (!(within(bubble, specified, value) && within(dew, specified, value))) {
            return null;
        }
        double logValue = Math.log(value);
        double[] z = envelope.feed();
        PhaseBoundary.Estimate liquid = bubble.estimate(specified, logValue);
        StretchEnd vapour = dew == bubble
                ? StretchEnd.vapourOf(liquid)
                : StretchEnd.of(dew.estimate(specified, logValue), false, z);
        return new IsoLine(
                specified == Specified.TEMPERATURE
                        ? List.of(vapour, StretchEnd.of(liquid, true, z))
                        : List.of(StretchEnd.of(liquid, true, z), vapour),
                false);
    }
}
