package org.satline.saturation;

import java.util.Objects;
import java.util.Optional;
import java.util.ServiceLoader;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Refrigerant;

/** Gives saturation curves. Keep the curve you get: preparing one takes milliseconds, asking it takes micro- or nanoseconds. */
public final class SaturationCurves {
    private SaturationCurves() {}

    /**
     * Returns the fastest curve at hand: a certified table if a provider on the class path has one, else the solving engine.
     *
     * @param refrigerant substance or blend
     * @return its curve
     * @throws org.satline.equation.MissingEquationException if a component has no equation and no provider has a table
     */
    public static SaturationCurve of(Refrigerant refrigerant) {
        Objects.requireNonNull(refrigerant, "refrigerant");
        for (SaturationCurveProvider provider :
                ServiceLoader.load(SaturationCurveProvider.class, SaturationCurves.class.getClassLoader())) {
            Optional<SaturationCurve> curve = provider.curve(refrigerant);
            if (curve.isPresent()) {
                return curve.get();
            }
        }
        return solving(refrigerant);
    }

    /**
     * Returns a curve that solves the equation of state for each answer.
     *
     * @param refrigerant substance or blend
     * @return its curve
     * @throws org.satline.equation.MissingEquationException if a component has no equation
     */
    public static SaturationCurve solving(Refrigerant refrigerant) {
        return new SolvingCurve(FluidModel.of(refrigerant));
    }

    /**
     * Returns a curve on a model at hand, with its interaction model and reference state.
     *
     * @param model a prepared model
     * @return its curve
     */
    public static SaturationCurve solving(FluidModel model) {
        return new SolvingCurve(Objects.requireNonNull(model, "model"));
    }
}
