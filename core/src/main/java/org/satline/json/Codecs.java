package org.satline.json;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;

/** Finds the codec of a type; those of records, enumerations and sealed interfaces are made when first asked for. Thread-safe. */
final class Codecs {
    /** Only types below this package have a form of their own. */
    private static final String OURS = Temperature.class.getName().replaceFirst("\\.[a-z]+\\.[A-Za-z]+$", ".");

    private final Map<Type, Codec<?>> known = new HashMap<>();

    private Codecs() {}

    static Codecs standard() {
        Codecs codecs = new Codecs();
        PlainCodecs.putInto(codecs.known);
        QuantityCodecs.putInto(codecs.known);
        BoundCodecs.putInto(codecs);
        return codecs;
    }

    synchronized <T> void bind(Class<T> type, Codec<T> codec) {
        known.put(type, codec);
    }

    /** The root of the quantities is met where any of them may stand. */
    synchronized void bindAnyQuantity() {
        known.put(Quantity.class, QuantityCodecs.any(known, of(Forms.Amount.class)));
    }

    /** Whether a class has a form that is ours to write. */
    synchronized boolean covers(Class<?> type) {
        return type.getName().startsWith(OURS)
                && (known.containsKey(type)
                        || (isOpen(type)
                                && (Shapes.isRecord(type)
                                        || type.isEnum()
                                        || !Shapes.cases(type).isEmpty()))
                        || BoundCodecs.boundSupertype(type).isPresent());
    }

    /** The codec of a class. */
    @SuppressWarnings("unchecked") // the map is filled type by type
    <T> Codec<T> of(Class<T> type) {
        return (Codec<T>) ofType(type);
    }

    /** The codec of the type of a component. */
    synchronized Codec<?> ofType(Type type) {
        Codec<?> codec = known.get(type);
        if (codec == null) {
            codec = made(type);
            known.put(type, codec);
        }
        return codec;
    }

    private Codec<?> made(Type type) {
        if (type instanceof ParameterizedType parameterized) {
            if (parameterized.getRawType() == Quantity.class) {
                return ofType(Quantity.class);
            }
            if (parameterized.getRawType() == Map.class) {
                return map(
                        ofType(parameterized.getActualTypeArguments()[0]),
                        ofType(parameterized.getActualTypeArguments()[1]));
            }
            Codec<?> content = ofType(parameterized.getActualTypeArguments()[0]);
            if (parameterized.getRawType() == Set.class) {
                return set(content);
            }
            if (parameterized.getRawType() == List.class) {
                return new ListCodec<>(content);
            }
            if (parameterized.getRawType() == Optional.class) {
                return optional(content);
            }
            if (parameterized.getRawType() instanceof Class<?> raw
                    && Record.class.isAssignableFrom(raw)
                    && raw.getName().startsWith(OURS)) {
                return record(raw, parameterized.getActualTypeArguments());
            }
        }
        if (type instanceof Class<?> raw && raw.getName().startsWith(OURS) && isOpen(raw)) {
            Optional<Class<?>> bound = BoundCodecs.boundSupertype(raw);
            if (bound.isPresent()) {
                return ofType(bound.get());
            }
            if (raw.isEnum()) {
                return enumeration(raw);
            }
            if (Shapes.isRecord(raw)) {
                return record(raw, bounds(raw));
            }
            if (!Shapes.cases(raw).isEmpty()) {
                return sealed(raw);
            }
        }
        throw new IllegalArgumentException(
                type + " has no form in JSON; it computes and holds no result, or is none of this library's types");
    }

    /** Public, or one of the forms of this package; a curve's class need not be. */
    private static boolean isOpen(Class<?> type) {
        return Modifier.isPublic(type.getModifiers())
                || type.getPackage() == Codecs.class.getPackage()
                || BoundCodecs.boundSupertype(type).isPresent();
    }

    private static <T> Codec<Optional<T>> optional(Codec<T> content) {
        return new MaybeCodec<>(content, Function.identity(), Function.identity());
    }

    @SuppressWarnings("unchecked") // names of a map are texts or constants
    private static <K> Codec<?> map(Codec<K> key, Codec<?> value) {
        return new MapCodec<>((Codec.Text<K>) key, value);
    }

    private static <T> Codec<?> set(Codec<T> content) {
        // a set has no order of its own: written in the order of its texts, it is the same file each time
        return new Codec.Via<Set<T>, List<T>>(
                new ListCodec<>(content),
                values -> values.stream()
                        .sorted(Comparator.comparing(
                                value -> content.write(value).toString()))
                        .toList(),
                Set::copyOf);
    }

    private static <E> Codec<E> enumeration(Class<E> type) {
        E[] constants = type.getEnumConstants();
        return Codec.Text.choice(type.getSimpleName(), constants, constant -> ((Enum<?>) constant).name());
    }

    /** What stands for the parameters of a type of which they are not known: the raw class of their bounds. */
    private static Type[] bounds(Class<?> type) {
        return java.util.Arrays.stream(type.getTypeParameters())
                .map(each -> each.getBounds()[0])
                .map(bound -> bound instanceof ParameterizedType parameterized ? parameterized.getRawType() : bound)
                .toArray(Type[]::new);
    }

    private static Type filledIn(Type component, Class<?> type, Type[] arguments) {
        int at = java.util.Arrays.asList(type.getTypeParameters()).indexOf(component);
        return at < 0 ? component : arguments[at];
    }

    private <T> RecordCodec<T> record(Class<T> type, Type[] arguments) {
        List<RecordCodec.Field> fields = new ArrayList<>();
        for (Shapes.Part part : Shapes.parts(type)) {
            boolean mayBeNull = BoundCodecs.mayBeNull(type, part.name());
            Type filled = filledIn(part.genericType(), type, arguments);
            fields.add(field(part.name(), accessor(type, part.name()), filled, ofType(filled), mayBeNull));
        }
        boolean oneOfSeveral = List.of(type.getInterfaces()).stream()
                .anyMatch(each -> Shapes.cases(each).contains(type));
        return new RecordCodec<>(type, oneOfSeveral, Shapes.constructor(type), fields);
    }

    private static Method accessor(Class<?> type, String name) {
        try {
            return type.getDeclaredMethod(name);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(type + " has no accessor " + name + "; keep it from the shrinker", e);
        }
    }

    @SuppressWarnings("unchecked") // the codec is that of the type of the component
    private static RecordCodec.Field field(String name, Method accessor, Type type, Codec<?> codec, boolean mayBeNull) {
        return new RecordCodec.Field(name, type, accessor, (Codec<Object>) codec, mayBeNull);
    }

    private <T> SealedCodec<T> sealed(Class<T> type) {
        List<RecordCodec<? extends T>> records = new ArrayList<>();
        for (Class<?> permitted : Shapes.cases(type)) {
            if (ofType(permitted) instanceof RecordCodec<?> codec) {
                records.add(caseOf(codec));
            } else {
                throw new IllegalArgumentException(permitted + " of " + type + " is no record");
            }
        }
        return new SealedCodec<>(type, records);
    }

    @SuppressWarnings("unchecked") // a permitted subclass extends its sealed interface
    private static <T> RecordCodec<? extends T> caseOf(RecordCodec<?> codec) {
        return (RecordCodec<? extends T>) codec;
    }
}
