package org.satline.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.satline.equation.EquationSource;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.PhaseSplit;
import org.satline.explanation.FindingCode;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillRule;
import org.satline.filling.FillRules;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Atmosphere;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** The codecs of the classes that are no records: each is written as a form. */
final class BoundCodecs {
    /**
     * The few components that may be null. Their annotation says so too, but it need not be there at run time: on a module path its module
     * is absent unless somebody asks for it.
     */
    private static final Map<Class<?>, Set<String>> MAY_BE_NULL =
            Map.of(EquationSource.class, Set.of("doi", "uncertainty", "note"));

    private BoundCodecs() {}

    static boolean mayBeNull(Class<?> type, String component) {
        return MAY_BE_NULL.getOrDefault(type, Set.of()).contains(component);
    }

    /** The type whose form a class takes; only saturation curves, which have a class for each engine. */
    static Optional<Class<?>> boundSupertype(Class<?> type) {
        return type != SaturationCurve.class && SaturationCurve.class.isAssignableFrom(type)
                ? Optional.of(SaturationCurve.class)
                : Optional.empty();
    }

    static void putInto(Codecs codecs) {
        codecs.bind(Refrigerant.class, new RefrigerantCodec(codecs.of(Forms.OwnBlend.class)));
        codecs.bind(
                Composition.class,
                new Codec.Via<>(new ListCodec<>(codecs.of(Forms.Part.class)), Forms.Part::of, Forms.Part::composition));
        codecs.bind(
                UncertaintyBudget.class,
                new Codec.Via<>(
                        new ListCodec<>(codecs.of(Forms.Contribution.class)),
                        Forms.Contribution::of,
                        Forms.Contribution::budget));
        codecs.bindAnyQuantity();
        bind(codecs, Atmosphere.class, Forms.Air.class, Forms.Air::of, Forms.Air::atmosphere);
        codecs.bind(
                SystemReadings.class,
                new Codec.Via<>(
                        new ListCodec<>(codecs.of(Forms.PlaceReading.class)),
                        Forms.PlaceReading::of,
                        Forms.PlaceReading::readings));
        codecs.bind(
                CylinderStamps.class,
                new Codec.Via<>(
                        new ListCodec<>(codecs.of(Forms.StampValue.class)),
                        Forms.StampValue::of,
                        Forms.StampValue::stamps));
        codecs.bind(FindingCode.class, FindingCodes.codec());
        bind(codecs, FluidState.class, FluidState.Values.class, FluidState::values, FluidState::of);
        bind(codecs, PhaseSplit.class, PhaseSplit.Values.class, PhaseSplit::values, PhaseSplit::of);
        bind(codecs, SaturationCurve.class, Refrigerant.class, SaturationCurve::refrigerant, SaturationCurves::of);
        List<FillRule> rules = FillRules.standard().all();
        codecs.bind(FillRule.class, Codec.Text.choice("fill rule", rules.toArray(new FillRule[0]), FillRule::name));
    }

    private static <T, F> void bind(
            Codecs codecs, Class<T> type, Class<F> form, Function<T, F> toForm, Function<F, T> ofForm) {
        codecs.bind(type, new Codec.Via<>(codecs.of(form), toForm, ofForm));
    }
}
