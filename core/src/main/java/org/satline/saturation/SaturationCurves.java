package org.satline.saturation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.ServiceLoader;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Refrigerant;

/** Gives saturation curves. Keep the curve you get: preparing one takes milliseconds, asking it takes micro- or nanoseconds. */
public final class SaturationCurves {
    private static final String OURS = "org.satline.";

    private SaturationCurves() {}

    /**
     * Returns the fastest curve at hand: that of the first provider that has one, else the solving engine.
     *
     * <p>Providers are found by the service loader, in the class loader of the calling thread's context and in that of this library. The
     * one with the higher {@link SaturationCurveProvider#priority()} is asked first; of equal ones those of this library, then by the
     * name of their class.
     *
     * @param refrigerant substance or blend
     * @return its curve
     * @throws org.satline.equation.MissingEquationException if a component has no equation and no provider has a curve
     * @throws IllegalStateException if a provider answers with the curve of another refrigerant
     */
    public static SaturationCurve of(Refrigerant refrigerant) {
        Objects.requireNonNull(refrigerant, "refrigerant");
        for (SaturationCurveProvider provider : providers()) {
            Optional<SaturationCurve> curve = provider.curve(refrigerant);
            if (curve.isPresent()) {
                if (!curve.get().refrigerant().equals(refrigerant)) {
                    throw new IllegalStateException(
                            provider.getClass().getName() + " was asked for " + refrigerant.designation()
                                    + " and gave the curve of "
                                    + curve.get().refrigerant().designation() + "; mend or remove that provider");
                }
                return curve.get();
            }
        }
        return solving(refrigerant);
    }

    /** Each class of provider once, in the order in which they are asked. */
    private static List<SaturationCurveProvider> providers() {
        ClassLoader own = SaturationCurves.class.getClassLoader();
        ClassLoader callers = Thread.currentThread().getContextClassLoader();
        Map<Class<?>, SaturationCurveProvider> found = new LinkedHashMap<>();
        for (ClassLoader loader : callers == null || callers == own ? List.of(own) : List.of(own, callers)) {
            for (SaturationCurveProvider provider : ServiceLoader.load(SaturationCurveProvider.class, loader)) {
                found.putIfAbsent(provider.getClass(), provider);
            }
        }
        if (found.size() == 1) {
            return List.copyOf(found.values());
        }
        List<SaturationCurveProvider> ordered = new ArrayList<>(found.values());
        ordered.sort(Comparator.comparingInt((SaturationCurveProvider each) -> -each.priority())
                .thenComparing(each -> !each.getClass().getName().startsWith(OURS))
                .thenComparing(each -> each.getClass().getName()));
        return ordered;
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
