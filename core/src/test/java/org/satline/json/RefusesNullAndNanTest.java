package org.satline.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.satline.equation.EquationLibrary;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.explanation.Figure;
import org.satline.ledger.Ledger;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.WorkingFluid;
import org.satline.step.LineCharge;
import org.satline.transfer.hookup.GasProperties;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpGas;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.simulator.HookUpFixture;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * Every public constructor and factory of core refuses null and NaN by an exception that names the parameter or shows the NaN. A house
 * rule of DEVELOPERS.md, no source.
 */
class RefusesNullAndNanTest {
    /** So many draws of the other arguments, since one of them may be refused before the one that is tried. */
    private static final int DRAWS = 200;
    /** Parameters that may be null or NaN, as {@code type.method.parameter}, each with the reason. */
    private static final Map<String, String> EXEMPT = Map.of(
            "audit.answer.AuditRow.atTemperature.temperatureK",
                    "a row of another calculator as it is; one without a number is an outcome",
            "audit.answer.AuditRow.atPressure.pressurePa",
                    "a row of another calculator as it is; one without a number is an outcome",
            "audit.answer.AuditRow.atState.temperatureK",
                    "a row of another calculator as it is; one without a number is an outcome",
            "audit.answer.AuditRow.atState.pressurePa",
                    "a row of another calculator as it is; one without a number is an outcome");

    @TestFactory
    Stream<DynamicTest> eachConstructorAndFactory() {
        AnyInstance any = any();
        return ResultTypes.publicTypes().stream()
                .filter(type -> !type.isEnum())
                .flatMap(type -> makers(type).stream())
                .filter(maker -> maker.getParameterCount() > 0)
                .map(maker -> DynamicTest.dynamicTest(
                        name(maker)
                                + Stream.of(maker.getParameterTypes())
                                        .map(Class::getSimpleName)
                                        .toList(),
                        () -> assertThat(IntStream.range(0, maker.getParameterCount())
                                        .mapToObj(i -> fault(any, maker, i))
                                        .flatMap(Optional::stream))
                                .isEmpty()));
    }

    /** Makes what has no form in JSON too. */
    private static AnyInstance any() {
        AnyInstance any = new AnyInstance(20_261_130);
        Refrigerant r134a = Catalogue.standard().find("R-134a");
        SaturationCurve curve = SaturationCurves.of(r134a);
        FluidModel model = FluidModel.of(r134a);
        any.put(FluidModel.class, () -> model);
        any.put(ReferenceState.class, () -> ReferenceState.IIR);
        any.put(EquationLibrary.class, EquationLibrary::standard);
        any.put(WorkingFluid.class, () -> WorkingFluid.of(r134a));
        any.put(GasProperties.class, () -> GasProperties.of(curve));
        any.put(HookUpGas.class, () -> new HookUpGas(SafetyGroup.A1, false, false, GasProperties.of(curve)));
        HookUpFixture fixture = new HookUpFixture();
        any.put(HookUp.class, fixture::hookUp);
        any.put(HookUpState.class, fixture::start);
        any.put(LineCharge.Filling.class, () -> LineCharge.liquid(curve, Temperature.ofCelsius(40)));
        any.put(Ledger.class, Ledger::new);
        any.put(Language.class, () -> Language.ENGLISH);
        any.put(Wording.class, () -> Wording.of(Language.ENGLISH, UnitSystem.SI));
        any.put(DoubleUnaryOperator.class, () -> t -> 1200 - t);
        any.put(Class.class, () -> RefusesNullAndNanTest.class);
        any.put(byte[].class, () -> new byte[] {'a'});
        any.put(String[].class, () -> new String[] {"a"});
        any.put(Figure[].class, () -> new Figure[0]);
        any.put(SaturationCurve[].class, () -> new SaturationCurve[0]);
        return any;
    }

    @Test
    void everyExemptionNamesAParameter() {
        List<String> known = ResultTypes.publicTypes().stream()
                .flatMap(type -> makers(type).stream())
                .flatMap(maker -> IntStream.range(0, maker.getParameterCount())
                        .mapToObj(i -> name(maker) + "." + parameter(maker, i)))
                .toList();
        assertThat(known).hasSizeGreaterThan(500).containsAll(EXEMPT.keySet());
    }

    private static List<Executable> makers(Class<?> type) {
        List<Executable> makers = new ArrayList<>();
        if (!Modifier.isAbstract(type.getModifiers())) {
            makers.addAll(List.of(type.getConstructors()));
        }
        Stream.of(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && Modifier.isStatic(method.getModifiers()))
                .filter(method -> type.isAssignableFrom(method.getReturnType()))
                .filter(method -> !method.isSynthetic())
                .forEach(makers::add);
        return makers;
    }

    /** What is wrong with the answer to null or NaN in that place; a part marked as nullable may be null. */
    private static Optional<String> fault(AnyInstance any, Executable maker, int place) {
        Class<?> type = maker.getParameterTypes()[place];
        String parameter = parameter(maker, place);
        boolean number = type == double.class;
        boolean mayBeNull =
                maker instanceof Constructor<?> && BoundCodecs.mayBeNull(maker.getDeclaringClass(), parameter);
        if (mayBeNull || (type.isPrimitive() && !number) || EXEMPT.containsKey(name(maker) + "." + parameter)) {
            return Optional.empty();
        }
        String last = "";
        for (int draw = 0; draw < DRAWS; draw++) {
            Object[] arguments = new Object[maker.getParameterCount()];
            for (int i = 0; i < arguments.length; i++) {
                arguments[i] = i == place ? number ? Double.NaN : null : any.ofType(drawn(maker, i));
            }
            Throwable thrown = thrown(maker, arguments);
            if (thrown == null) {
                return Optional.of(parameter + ": accepted");
            }
            last = thrown.toString();
            String message = String.valueOf(thrown.getMessage());
            boolean typed = number
                    ? thrown instanceof IllegalArgumentException
                            && (names(message, parameter) || message.contains("NaN"))
                    : (thrown instanceof NullPointerException || thrown instanceof IllegalArgumentException)
                            && names(message, parameter)
                            && !message.startsWith("Cannot invoke");
            if (typed) {
                return Optional.empty();
            }
        }
        return Optional.of(parameter + ": " + last);
    }

    private static Type drawn(Executable maker, int place) {
        Type type = maker.getGenericParameterTypes()[place];
        Class<?> raw = maker.getParameterTypes()[place];
        return type instanceof TypeVariable<?> || raw == Class.class || raw.isArray() ? raw : type;
    }

    /** Whether the message says which: by the parameter, or by the last word of its name. */
    private static boolean names(String message, String parameter) {
        String[] words = parameter.split("(?=[A-Z])", -1);
        return message.contains(parameter)
                || message.toLowerCase(Locale.ROOT).contains(words[words.length - 1].toLowerCase(Locale.ROOT));
    }

    private static @Nullable Throwable thrown(Executable maker, Object[] arguments) {
        try {
            if (maker instanceof Constructor<?> constructor) {
                constructor.newInstance(arguments);
            } else {
                ((Method) maker).invoke(null, arguments);
            }
            return null;
        } catch (InvocationTargetException e) {
            return e.getCause();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String name(Executable maker) {
        String type = SchemaWriter.name(maker.getDeclaringClass());
        return maker instanceof Constructor<?> ? type : type + "." + maker.getName();
    }

    private static String parameter(Executable maker, int place) {
        RecordComponent[] parts = maker.getDeclaringClass().getRecordComponents();
        Parameter parameter = maker.getParameters()[place];
        return parts != null && maker instanceof Constructor<?> && parts.length == maker.getParameterCount()
                ? parts[place].getName()
                : parameter.getName();
    }
}
