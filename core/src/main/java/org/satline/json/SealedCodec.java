package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A sealed interface: one of its records, told apart by the property {@code type}. */
final class SealedCodec<T> implements Codec<T> {
    private final Class<T> type;
    private final Map<String, RecordCodec<? extends T>> cases = new LinkedHashMap<>();

    SealedCodec(Class<T> type, List<RecordCodec<? extends T>> records) {
        this.type = type;
        for (RecordCodec<? extends T> each : records) {
            if (cases.put(each.type().getSimpleName(), each) != null) {
                throw new IllegalStateException(
                        type + " has two records named " + each.type().getSimpleName());
            }
        }
    }

    Class<T> type() {
        return type;
    }

    List<RecordCodec<? extends T>> cases() {
        return List.copyOf(cases.values());
    }

    @Override
    public JsonNode write(T value) {
        return write(cases.get(value.getClass().getSimpleName()), value);
    }

    private static <R> JsonNode write(@org.jspecify.annotations.Nullable RecordCodec<R> codec, Object value) {
        if (codec == null) {
            throw new IllegalStateException(value.getClass() + " is no record of its sealed interface");
        }
        return codec.write(codec.type().cast(value));
    }

    @Override
    public T read(JsonNode node, Place at) {
        if (!node.isObject()) {
            throw Codec.expected("an object: " + type.getSimpleName(), node, at);
        }
        JsonNode name = node.path(RecordCodec.TYPE);
        RecordCodec<? extends T> codec = name.isTextual() ? cases.get(name.textValue()) : null;
        if (codec == null) {
            throw Codec.expected("one of " + cases.keySet(), name, at.in(RecordCodec.TYPE));
        }
        return codec.read(node, at);
    }
}
