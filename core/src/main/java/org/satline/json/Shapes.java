package org.satline.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.satline.measurement.DialGauge;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.PressureInstrument;

/**
 * What records and sealed interfaces consist of, from constructors, fields and nesting alone: the platform's own questions about records
 * and sealed types came to Android with API level 34 only, and the build tools drop what they would answer.
 */
final class Shapes {
    /** Interfaces whose records lie neither in them nor beside them in one class. */
    private static final Map<Class<?>, List<Class<?>>> ELSEWHERE =
            Map.of(PressureInstrument.class, List.of(DialGauge.class, DigitalGauge.class));

    /** A component of a record. */
    record Part(String name, Class<?> type, Type genericType) {}

    private Shapes() {}

    static boolean isRecord(Class<?> type) {
        return type.getSuperclass() == Record.class;
    }

    /**
     * The constructor whose parameters are the fields. Their names stand in the class files of this library, since it is compiled so.
     *
     * @throws IllegalStateException if there is none, as after a shrinker that drops the names of parameters
     */
    @SuppressWarnings("unchecked") // the constructors of a class make its instances
    static <T> Constructor<T> constructor(Class<T> type) {
        Map<String, Field> fields = fields(type);
        for (Constructor<?> constructor : type.getDeclaredConstructors()) {
            if (takes(constructor.getParameters(), fields)) {
                return (Constructor<T>) constructor;
            }
        }
        throw new IllegalStateException(
                type
                        + " has no canonical constructor with the names of its parameters; keep the attribute MethodParameters");
    }

    /** Components in the order of the constructor. */
    static List<Part> parts(Class<?> type) {
        Map<String, Field> fields = fields(type);
        List<Part> parts = new ArrayList<>();
        for (Parameter parameter : constructor(type).getParameters()) {
            Field field = fields.get(parameter.getName());
            if (field != null) {
                parts.add(new Part(field.getName(), field.getType(), field.getGenericType()));
            }
        }
        return parts;
    }

    private static Map<String, Field> fields(Class<?> type) {
        Map<String, Field> fields = new HashMap<>();
        for (Field field : type.getDeclaredFields()) {
            if (!Modifier.isStatic(field.getModifiers()) && !field.isSynthetic()) {
                fields.put(field.getName(), field);
            }
        }
        return fields;
    }

    private static boolean takes(Parameter[] parameters, Map<String, Field> fields) {
        if (parameters.length != fields.size()) {
            return false;
        }
        for (Parameter parameter : parameters) {
            Field field = fields.get(parameter.getName());
            if (field == null || field.getType() != parameter.getType()) {
                return false;
            }
        }
        return true;
    }

    /** The records of a sealed interface, by name; empty for every other type. */
    static List<Class<?>> cases(Class<?> type) {
        if (!type.isInterface()) {
            return List.of();
        }
        Class<?> around = type.getDeclaringClass();
        Stream<Class<?>> nested = Stream.concat(
                Stream.of(type.getDeclaredClasses()),
                around == null ? Stream.empty() : Stream.of(around.getDeclaredClasses()));
        // their order in the class file is up to the compiler; the schema and the messages should not be
        return Stream.concat(nested, ELSEWHERE.getOrDefault(type, List.of()).stream())
                .filter(each -> isRecord(each) && List.of(each.getInterfaces()).contains(type))
                .sorted(Comparator.comparing(Class::getName))
                .toList();
    }
}
