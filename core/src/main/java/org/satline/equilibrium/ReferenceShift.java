package org.satline.equilibrium;

import org.satline.equation.FixedComposition;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;

/**
 * What is added to the equation's own enthalpy and entropy so that they count from a reference state. Immutable.
 *
 * @param reference the reference state
 * @param enthalpy J/kg
 * @param entropy J/(kg K)
 */
record ReferenceShift(ReferenceState reference, double enthalpy, double entropy) {
    static ReferenceShift of(String designation, Envelope envelope, ReferenceState reference) {
        PhaseBoundary bubble = envelope.bubble;
        if (!exists(envelope, reference)) {
            throw missing(designation, bubble, reference);
        }
        IncipientPhase point = reference
                .temperature()
                .map(t -> bubble.atTemperature(t.kelvins()))
                .orElseGet(() -> bubble.atPressure(ReferenceState.NORMAL_PRESSURE_PA));
        FixedComposition composition = envelope.composition;
        FluidState raw = new FluidState(composition, point.temperature(), point.feedDensity(), point.pressure(), 0, 0);
        return new ReferenceShift(
                reference, reference.enthalpy() - raw.specificEnthalpy(), reference.entropy() - raw.specificEntropy());
    }

    /** IIR where it exists, else the normal boiling point, else the coldest saturated liquid. */
    static ReferenceState usual(Envelope envelope) {
        if (exists(envelope, ReferenceState.IIR)) {
            return ReferenceState.IIR;
        }
        return exists(envelope, ReferenceState.NORMAL_BOILING_POINT)
                ? ReferenceState.NORMAL_BOILING_POINT
                : ReferenceState.ofSaturatedLiquid(
                        Temperature.ofKelvins(envelope.bubble.minTemperature()),
                        SpecificEnthalpy.ofJoulesPerKilogram(0),
                        SpecificEntropy.ofJoulesPerKilogramKelvin(0));
    }

    static boolean exists(Envelope envelope, ReferenceState reference) {
        PhaseBoundary bubble = envelope.bubble;
        return reference
                .temperature()
                .map(t -> t.kelvins() >= bubble.minTemperature() && t.kelvins() <= bubble.maxTemperature())
                .orElse(ReferenceState.NORMAL_PRESSURE_PA >= bubble.minPressure()
                        && ReferenceState.NORMAL_PRESSURE_PA <= bubble.maxPressure());
    }

    private static OutOfValidityException missing(String designation, PhaseBoundary bubble, ReferenceState reference) {
        String advice = "choose another reference state for " + designation;
        return reference.temperature().isPresent()
                ? OutOfValidityException.of(
                        "reference temperature",
                        reference.temperature().get().kelvins(),
                        "K",
                        bubble.minTemperature(),
                        bubble.maxTemperature(),
                        "the bubble line",
                        advice)
                : OutOfValidityException.of(
                        "reference pressure",
                        ReferenceState.NORMAL_PRESSURE_PA,
                        "Pa",
                        bubble.minPressure(),
                        bubble.maxPressure(),
                        "the bubble line",
                        advice);
    }
}
