package org.satline.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import org.satline.charge.margin.MeteringDevice;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.PhaseSplit;
import org.satline.explanation.FindingCode;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillRule;
import org.satline.filling.FillRules;
import org.satline.filling.Stamp;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Power;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.DataVersion;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.CautionId;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.SystemDesign;

/** Makes instances of any type that has a form, with numbers of all bits and texts of all kinds. The same seed makes the same. */
final class AnyInstance {
    private static final int TRIES = 2_000;
    private static final List<String> TEXTS = List.of(
            "R-410A",
            "a \"quoted\" word",
            "back\\slash",
            "line\nbreak",
            "\u00e4\u20ac\ud83d\ude00",
            "<b>&amp;",
            "\u2028",
            "x");

    private final Random random;
    private final Codecs codecs = Codecs.standard();
    private final Map<Type, Supplier<?>> makers = new HashMap<>();
    private final SaturationCurve curve =
            SaturationCurves.of(Catalogue.standard().find("R-134a"));

    private int curves;

    AnyInstance(long seed) {
        random = new Random(seed);
        put(double.class, this::number);
        put(int.class, () -> random.nextInt(20));
        put(long.class, () -> (long) (random.nextDouble() * 1e11));
        put(boolean.class, random::nextBoolean);
        put(Double.class, this::number);
        put(Integer.class, () -> random.nextInt(20));
        put(Long.class, () -> (long) (random.nextDouble() * 1e11));
        put(Boolean.class, random::nextBoolean);
        put(String.class, () -> TEXTS.get(random.nextInt(TEXTS.size())));
        put(double[].class, () -> random.doubles(3).toArray());
        put(BigDecimal.class, () -> new BigDecimal("1.30").movePointLeft(random.nextInt(20)));
        put(LocalDate.class, () -> LocalDate.ofEpochDay(random.nextInt(40_000)));
        put(Instant.class, () -> Instant.ofEpochSecond(random.nextInt(), random.nextInt(1_000_000_000)));
        put(Duration.class, () -> Duration.ofNanos(random.nextInt()).abs());
        put(OptionalDouble.class, () -> random.nextBoolean() ? OptionalDouble.of(number()) : OptionalDouble.empty());
        put(OptionalInt.class, () -> random.nextBoolean() ? OptionalInt.of(random.nextInt(20)) : OptionalInt.empty());
        put(Length.class, () -> Length.ofMillimetres(50 * random.nextDouble()));
        put(Temperature.class, () -> Temperature.ofKelvins(230 + 100 * random.nextDouble()));
        put(Pressure.class, () -> Pressure.ofPascals(1e3 + 4e6 * random.nextDouble()));
        put(GaugePressure.class, () -> GaugePressure.ofPascals(4e6 * random.nextDouble()));
        put(SaturationCurve.class, () -> {
            curves++;
            return curve;
        });
        put(Refrigerant.class, this::refrigerant);
        put(Composition.class, () -> ownBlend().composition());
        put(Atmosphere.class, this::atmosphere);
        put(UncertaintyBudget.class, this::budget);
        put(
                FillRule.class,
                () -> FillRules.standard()
                        .all()
                        .get(random.nextInt(FillRules.standard().all().size())));
        put(SystemReadings.class, this::readings);
        put(CylinderStamps.class, this::stamps);
        put(FindingCode.class, this::code);
        put(
                DataVersion.class,
                () -> new DataVersion(
                        of(String.class), Integer.toHexString(0x1000_0000 | random.nextInt(0x1000_0000))));
        put(
                SystemDesign.class,
                () -> SystemDesign.typical(
                        refrigerant(), of(MeteringDevice.class), Power.ofKilowatts(1 + 100 * random.nextDouble())));
        put(FluidState.class, () -> FluidState.of(of(FluidState.Values.class)));
        put(PhaseSplit.class, () -> PhaseSplit.of(of(PhaseSplit.Values.class)));
    }

    /** How often a saturation curve was drawn: it is made anew when read, and equal to itself alone. */
    int curves() {
        return curves;
    }

    <T> void put(Class<T> type, Supplier<? extends T> maker) {
        makers.put(type, maker);
    }

    /** Mostly of the size that fractions and probabilities have; now and then of any size. */
    private double number() {
        double fraction = random.nextDouble();
        return random.nextInt(4) == 0 ? fraction * Math.pow(10, random.nextInt(40) - 20) : fraction;
    }

    @SuppressWarnings("unchecked") // made for this type
    <T> T of(Class<T> type) {
        return (T) ofType(type);
    }

    Object ofType(Type type) {
        Supplier<?> maker = makers.get(type);
        if (maker != null) {
            return retried(maker, type);
        }
        if (type instanceof ParameterizedType parameterized) {
            Type content = parameterized.getActualTypeArguments()[0];
            if (parameterized.getRawType() == Quantity.class) {
                return ofType(Quantity.class);
            }
            if (parameterized.getRawType() instanceof Class<?> raw && raw.isRecord()) {
                return retried(() -> record(raw, content), type);
            }
            if (parameterized.getRawType() == Optional.class) {
                return random.nextBoolean() ? Optional.of(ofType(content)) : Optional.empty();
            }
            if (parameterized.getRawType() == Map.class) {
                Map<Object, Object> map = new LinkedHashMap<>();
                map.put(ofType(content), ofType(parameterized.getActualTypeArguments()[1]));
                return map;
            }
            List<Object> list = new ArrayList<>();
            for (int i = 1 + random.nextInt(2); i > 0; i--) {
                list.add(ofType(content));
            }
            return parameterized.getRawType() == Set.class ? Set.copyOf(list) : list;
        }
        Class<?> raw = (Class<?>) type;
        if (raw.isEnum()) {
            return raw.getEnumConstants()[random.nextInt(raw.getEnumConstants().length)];
        }
        if (raw.isSealed()) {
            return ofType(raw.getPermittedSubclasses()[random.nextInt(raw.getPermittedSubclasses().length)]);
        }
        if (codecs.of(raw) instanceof Codec.Quantity<?> quantity) {
            return retried(() -> quantity.ofSi().apply(1e4 * random.nextDouble()), type);
        }
        return retried(() -> record(raw, Quantity.class), type);
    }

    /** Until the type accepts what chance has drawn. */
    private static Object retried(Supplier<?> maker, Type type) {
        IllegalArgumentException last = new IllegalArgumentException("no try");
        for (int i = 0; i < TRIES; i++) {
            try {
                return maker.get();
            } catch (IllegalArgumentException e) {
                last = e;
            }
        }
        throw new IllegalStateException("nothing that " + type + " accepts was drawn", last);
    }

    private Object record(Class<?> type, Type parameter) {
        List<Object> values = new ArrayList<>();
        List<Class<?>> types = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            types.add(component.getType());
            boolean isNull = BoundCodecs.mayBeNull(type, component.getName()) && random.nextBoolean();
            Type wanted =
                    component.getGenericType() instanceof TypeVariable<?> ? parameter : component.getGenericType();
            values.add(isNull ? null : ofType(wanted));
        }
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types.toArray(new Class<?>[0]));
            constructor.setAccessible(true);
            return constructor.newInstance(values.toArray());
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw refused;
            }
            throw new IllegalStateException(e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private FindingCode code() {
        List<FindingCode> codes = FindingCodes.all();
        return random.nextInt(5) == 0
                ? new CautionId(TEXTS.get(random.nextInt(TEXTS.size())))
                : codes.get(random.nextInt(codes.size()));
    }

    private SystemReadings readings() {
        SystemReadings.Builder builder = SystemReadings.builder();
        for (org.satline.measurement.Place place : org.satline.measurement.Place.values()) {
            if (random.nextBoolean()) {
                builder.put(
                        place,
                        switch (place.kind()) {
                            case PRESSURE -> new Reading<>(of(Pressure.class), budget(), Optional.empty());
                            case PIPE, AIR -> new Reading<>(of(Temperature.class), budget(), Optional.empty());
                            case DROP -> Reading.exact(PressureDifference.ofPascals(1e4 * random.nextDouble()));
                        });
            }
        }
        return builder.build();
    }

    private CylinderStamps stamps() {
        Map<Stamp, Object> values = new EnumMap<>(Stamp.class);
        for (Stamp stamp : Stamp.values()) {
            if (stamp == Stamp.TARE || stamp == Stamp.WATER_CAPACITY || random.nextBoolean()) {
                values.put(stamp, ofType(stamp.type()));
            }
        }
        return new CylinderStamps(values);
    }

    private Refrigerant refrigerant() {
        List<Refrigerant> listed = Catalogue.standard().all();
        return random.nextInt(3) == 0 ? ownBlend() : listed.get(random.nextInt(listed.size()));
    }

    private Refrigerant ownBlend() {
        Catalogue catalogue = Catalogue.standard();
        double share = 0.01 + 0.9 * random.nextDouble();
        Map<Refrigerant, Double> fractions =
                Map.of(catalogue.find("R-32"), share, catalogue.find("R-1234yf"), 1 - share);
        return Refrigerant.blend(
                "blend of drum " + random.nextInt(100),
                random.nextBoolean() ? Composition.ofMassFractions(fractions) : Composition.ofMoleFractions(fractions));
    }

    private Atmosphere atmosphere() {
        return switch (random.nextInt(3)) {
            case 0 -> Atmosphere.standard();
            case 1 -> Atmosphere.measured(Pressure.ofKilopascals(60 + 50 * random.nextDouble()));
            default -> Atmosphere.atAltitude(Length.ofMetres(11_000 * random.nextDouble()));
        };
    }

    private UncertaintyBudget budget() {
        UncertaintyBudget gauge = UncertaintyBudget.of("gauge", number());
        UncertaintyBudget probe = UncertaintyBudget.of("probe", number());
        return switch (random.nextInt(4)) {
            case 0 -> UncertaintyBudget.none();
            case 1 -> gauge.minus(gauge).plus(probe);
            case 2 -> gauge.minus(probe);
            default -> gauge.plus(probe);
        };
    }
}
