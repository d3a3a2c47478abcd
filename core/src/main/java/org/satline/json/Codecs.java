package org.satline.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;

/** Finds the codec of a type; those of records, enumerations and sealed interfaces are made when first asked for. Thread-safe. */
final class Codecs {
    /** Only types below this package have a form of their own. */
    private static final String OURS = Temperature.class.getPackageName().replaceFirst("\\.[a-z]+$", ".");

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
                        || (isOpen(type) && (type.isRecord() || type.isEnum() || type.isSealed()))
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
            Codec<?> content = ofType(parameterized.getActualTypeArguments()[0]);
            if (parameterized.getRawType() == List.class) {
                return new ListCodec<>(content);
            }
            if (parameterized.getRawType() == Optional.class) {
                return optional(content);
            }
            if (parameterized.getRawType() instanceof Class<?> raw
                    && raw.isRecord()
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
            if (raw.isRecord()) {
                return record(raw, bounds(raw));
            }
            if (raw.isSealed()) {
                return sealed(raw);
            }
        }
        throw new IllegalArgumentException(type.getTypeName()
                + " has no form in JSON; it computes and holds no result, or is none of this library's types");
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

    private static <E> Codec<E> enumeration(Class<E> type) {
        E[] constants = type.getEnumConstants();
        return Codec.Text.choice(type.getSimpleName(), constants, constant -> ((Enum<?>) constant).name());
    }

    /** What stands for the parameters of a type of which they are not known: the raw class of their bounds. */
    private static Type[] bounds(Class<?> type) {
        return Arrays.stream(type.getTypeParameters())
                .map(each -> each.getBounds()[0])
                .map(bound -> bound instanceof ParameterizedType parameterized ? parameterized.getRawType() : bound)
                .toArray(Type[]::new);
    }

    private static Type filledIn(Type component, Class<?> type, Type[] arguments) {
        int at = Arrays.asList(type.getTypeParameters()).indexOf(component);
        return at < 0 ? component : arguments[at];
    }

    private <T> RecordCodec<T> record(Class<T> type, Type[] arguments) {
        List<RecordCodec.Field> fields = new ArrayList<>();
        List<Class<?>> types = new ArrayList<>();
        for (RecordComponent component : type.getRecordComponents()) {
            types.add(component.getType());
            boolean mayBeNull = BoundCodecs.mayBeNull(type, component.getName());
            Type filled = filledIn(component.getGenericType(), type, arguments);
            fields.add(field(component, filled, ofType(filled), mayBeNull));
        }
        try {
            Constructor<T> constructor = type.getDeclaredConstructor(types.toArray(new Class<?>[0]));
            boolean oneOfSeveral = List.of(type.getInterfaces()).stream().anyMatch(Class::isSealed);
            return new RecordCodec<>(type, oneOfSeveral, constructor, fields);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(type + " has no canonical constructor", e);
        }
    }

    @SuppressWarnings("unchecked") // the codec is that of the type of the component
    private static RecordCodec.Field field(RecordComponent component, Type type, Codec<?> codec, boolean mayBeNull) {
        return new RecordCodec.Field(
                component.getName(), type, component.getAccessor(), (Codec<Object>) codec, mayBeNull);
    }

    private <T> SealedCodec<T> sealed(Class<T> type) {
        List<RecordCodec<? extends T>> records = new ArrayList<>();
        Class<?>[] permittedOnes = type.getPermittedSubclasses();
        // their order in the class file is up to the compiler; the schema and the messages should not be
        Arrays.sort(permittedOnes, Comparator.comparing(Class::getName));
        for (Class<?> permitted : permittedOnes) {
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
