package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NumericNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Writes and reads one type. Stateless, thread-safe.
 *
 * @param <T> the type
 */
sealed interface Codec<T>
        permits Codec.Text,
                Codec.Numeric,
                Codec.Flag,
                Codec.Quantity,
                Codec.Via,
                ListCodec,
                MapCodec,
                MaybeCodec,
                RecordCodec,
                SealedCodec,
                RefrigerantCodec {
    JsonNode write(T value);

    T read(JsonNode node, Place at);

    /** What stands for a missing field; empty where a field must not be missing. */
    default Optional<T> absent() {
        return Optional.empty();
    }

    /**
     * A type that is one text, such as an enumeration or a date. {@code pattern} is what the schema calls its format; empty for any text.
     */
    record Text<T>(
            String what,
            Function<T, String> toText,
            Function<String, T> ofText,
            Optional<Map<String, T>> choices,
            String format)
            implements Codec<T> {
        static <T> Text<T> of(String what, Function<T, String> toText, Function<String, T> ofText, String format) {
            return new Text<>(what, toText, ofText, Optional.empty(), format);
        }

        static <E> Text<E> choice(String what, E[] constants, Function<E, String> name) {
            Map<String, E> byName = new LinkedHashMap<>();
            for (E constant : constants) {
                byName.put(name.apply(constant), constant);
            }
            return new Text<>(
                    what,
                    name,
                    text -> {
                        E found = byName.get(text);
                        if (found == null) {
                            throw new IllegalArgumentException(
                                    what + " \"" + shown(text) + "\" is unknown; known are " + byName.keySet());
                        }
                        return found;
                    },
                    Optional.of(byName),
                    "");
        }

        private static String shown(String text) {
            String line = text.replaceAll("[\\p{Cntrl}\\p{Cf}]", "?");
            return line.length() <= 60 ? line : line.substring(0, 60) + "...";
        }

        @Override
        public JsonNode write(T value) {
            return TextNode.valueOf(toText.apply(value));
        }

        @Override
        public T read(JsonNode node, Place at) {
            if (!node.isTextual()) {
                throw expected("a text: " + what, node, at);
            }
            return guarded(at, () -> ofText.apply(node.textValue()));
        }
    }

    /** A number; whole or finite. */
    record Numeric<T>(boolean whole, Function<T, NumericNode> toNode, Function<JsonNode, T> ofNode)
            implements Codec<T> {
        @Override
        public JsonNode write(T value) {
            NumericNode node = toNode.apply(value);
            finite(node.doubleValue());
            return node;
        }

        @Override
        public T read(JsonNode node, Place at) {
            if (!node.isNumber() || (whole && !node.canConvertToExactIntegral())) {
                throw expected(whole ? "a whole number" : "a number", node, at);
            }
            return guarded(at, () -> {
                finite(node.doubleValue());
                return ofNode.apply(node);
            });
        }
    }

    /** True or false. */
    record Flag() implements Codec<Boolean> {
        @Override
        public JsonNode write(Boolean value) {
            return JsonNodeFactory.instance.booleanNode(value);
        }

        @Override
        public Boolean read(JsonNode node, Place at) {
            if (!node.isBoolean()) {
                throw expected("true or false", node, at);
            }
            return node.booleanValue();
        }
    }

    /** A number with its SI unit. */
    record Quantity<T>(String unit, Function<T, Double> toSi, Function<Double, T> ofSi) implements Codec<T> {
        static final String VALUE = "value";
        static final String UNIT = "unit";

        @Override
        public JsonNode write(T value) {
            ObjectNode node = JsonNodeFactory.instance.objectNode();
            node.set(VALUE, DoubleNode.valueOf(finite(toSi.apply(value))));
            node.put(UNIT, unit);
            return node;
        }

        @Override
        public T read(JsonNode node, Place at) {
            JsonNode value = node.get(VALUE);
            JsonNode given = node.get(UNIT);
            if (value == null || given == null || node.size() != 2 || !value.isNumber()) {
                throw expected("a quantity such as {\"value\": 1.0, \"unit\": \"" + unit + "\"}", node, at);
            }
            if (!given.isTextual() || !given.textValue().equals(unit)) {
                throw expected("the unit \"" + unit + "\"", given, at.in(UNIT));
            }
            return guarded(at, () -> ofSi.apply(finite(value.doubleValue())));
        }
    }

    /** A type that is written as another. */
    record Via<T, F>(Codec<F> form, Function<T, F> toForm, Function<F, T> ofForm) implements Codec<T> {
        @Override
        public JsonNode write(T value) {
            return form.write(toForm.apply(value));
        }

        @Override
        public T read(JsonNode node, Place at) {
            F read = form.read(node, at);
            return guarded(at, () -> ofForm.apply(read));
        }
    }

    /** No NaN and no infinity goes in or out. */
    static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("number " + value + " is not finite; JSON has no such numbers");
        }
        return value;
    }

    /** Refuses with the place what a type refuses. */
    static <T> T guarded(Place at, Supplier<T> made) {
        try {
            return made.get();
        } catch (UnreadableJsonException e) {
            throw e;
        } catch (IllegalArgumentException e) {
            throw new UnreadableJsonException(at, e);
        }
    }

    static UnreadableJsonException expected(String what, JsonNode found, Place at) {
        String text = found.isMissingNode() ? "nothing" : found.toString();
        return new UnreadableJsonException(
                at, "expected " + what + ", found " + (text.length() <= 60 ? text : text.substring(0, 60) + "..."));
    }
}
