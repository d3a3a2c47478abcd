package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A record: its components by name, and its type where it is one of several. */
final class RecordCodec<T> implements Codec<T> {
    /** The property that tells the records of a sealed interface apart. */
    static final String TYPE = "type";

    /**
     * One component.
     *
     * @param name of the component and of the property
     * @param type of it, with the parameters of the record filled in
     * @param accessor reads it
     * @param codec of its type
     * @param mayBeNull whether null is allowed; it is left out, like an empty optional
     */
    record Field(String name, Type type, Method accessor, Codec<Object> codec, boolean mayBeNull) {
        @Nullable
        Object absent(Place place) {
            return mayBeNull
                    ? null
                    : codec.absent().orElseThrow(() -> new UnreadableJsonException(place, "is missing"));
        }
    }

    private final Class<T> type;
    private final boolean oneOfSeveral;
    private final Constructor<T> constructor;
    private final List<Field> fields;

    RecordCodec(Class<T> type, boolean oneOfSeveral, Constructor<T> constructor, List<Field> fields) {
        this.type = type;
        this.oneOfSeveral = oneOfSeveral;
        this.constructor = constructor;
        this.fields = List.copyOf(fields);
        if (oneOfSeveral && fields.stream().anyMatch(field -> field.name().equals(TYPE))) {
            throw new IllegalStateException(type + " has a component that hides the property " + TYPE);
        }
    }

    Class<T> type() {
        return type;
    }

    boolean isOneOfSeveral() {
        return oneOfSeveral;
    }

    List<Field> fields() {
        return fields;
    }

    @Override
    public JsonNode write(T value) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        if (oneOfSeveral) {
            node.put(TYPE, type.getSimpleName());
        }
        for (Field field : fields) {
            Object component = valueOf(field, value);
            JsonNode written = component == null
                    ? MissingNode.getInstance()
                    : field.codec().write(component);
            if (!written.isMissingNode()) {
                node.set(field.name(), written);
            }
        }
        return node;
    }

    private @Nullable Object valueOf(Field field, T value) {
        try {
            return field.accessor().invoke(value);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("component " + field.name() + " of " + type + " cannot be read", e);
        }
    }

    @Override
    public T read(JsonNode node, Place at) {
        if (!node.isObject()) {
            throw Codec.expected("an object: " + type.getSimpleName(), node, at);
        }
        if (at.strict()) {
            refuseUnknown(node, at);
        }
        if (oneOfSeveral && !type.getSimpleName().equals(node.path(TYPE).textValue())) {
            throw Codec.expected("\"" + type.getSimpleName() + "\"", node.path(TYPE), at.in(TYPE));
        }
        List<@Nullable Object> values = new ArrayList<>();
        for (Field field : fields) {
            JsonNode found = node.path(field.name());
            Place place = at.in(field.name());
            values.add(
                    found.isMissingNode() ? field.absent(place) : field.codec().read(found, place));
        }
        return made(values, at);
    }

    private void refuseUnknown(JsonNode node, Place at) {
        Set<String> known = new HashSet<>();
        fields.forEach(field -> known.add(field.name()));
        if (oneOfSeveral) {
            known.add(TYPE);
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (!known.contains(name)) {
                throw new UnreadableJsonException(
                        at.in(name),
                        "is unknown; " + type.getSimpleName() + " has "
                                + fields.stream().map(Field::name).toList());
            }
        }
    }

    private T made(List<@Nullable Object> values, Place at) {
        try {
            return constructor.newInstance(values.toArray());
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof IllegalArgumentException refused) {
                throw new UnreadableJsonException(at, refused);
            }
            throw new IllegalStateException(type + " cannot be made", e);
        } catch (InstantiationException | IllegalAccessException e) {
            throw new IllegalStateException(type + " cannot be made", e);
        }
    }
}
