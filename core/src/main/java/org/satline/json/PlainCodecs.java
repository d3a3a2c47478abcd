package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.LongNode;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/** The codecs of the plain types of Java that results are made of. */
final class PlainCodecs {
    private static final Codec<Double> DOUBLE = new Codec.Numeric<>(false, DoubleNode::valueOf, JsonNode::doubleValue);
    private static final Codec<Integer> INT = new Codec.Numeric<>(true, IntNode::valueOf, PlainCodecs::intOf);

    private PlainCodecs() {}

    static void putInto(Map<Type, Codec<?>> known) {
        known.put(double.class, DOUBLE);
        known.put(Double.class, DOUBLE);
        known.put(int.class, INT);
        known.put(Integer.class, INT);
        Codec<Long> whole = new Codec.Numeric<>(true, LongNode::valueOf, PlainCodecs::longOf);
        known.put(long.class, whole);
        known.put(Long.class, whole);
        known.put(boolean.class, new Codec.Flag());
        known.put(Boolean.class, new Codec.Flag());
        known.put(String.class, Codec.Text.of("text", Function.identity(), Function.identity(), ""));
        known.put(
                double[].class,
                new Codec.Via<>(
                        new ListCodec<>(DOUBLE),
                        PlainCodecs::listOf,
                        list -> list.stream().mapToDouble(Double::doubleValue).toArray()));
        known.put(
                OptionalDouble.class,
                new MaybeCodec<OptionalDouble, Double>(
                        DOUBLE,
                        value -> value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty(),
                        value -> value.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
        known.put(
                OptionalInt.class,
                new MaybeCodec<OptionalInt, Integer>(
                        INT,
                        value -> value.isPresent() ? Optional.of(value.getAsInt()) : Optional.empty(),
                        value -> value.map(OptionalInt::of).orElse(OptionalInt.empty())));
        // as a text, since a number of JSON does not keep the zeros at its end, and they count here
        known.put(
                BigDecimal.class,
                Codec.Text.of("decimal number", BigDecimal::toString, PlainCodecs::decimal, "decimal"));
        known.put(LocalDate.class, Codec.Text.of("date", LocalDate::toString, timed("date", LocalDate::parse), "date"));
        known.put(Instant.class, Codec.Text.of("time", Instant::toString, timed("time", Instant::parse), "date-time"));
        known.put(
                Duration.class,
                Codec.Text.of("duration", Duration::toString, timed("duration", Duration::parse), "duration"));
    }

    private static List<Double> listOf(double[] values) {
        List<Double> list = new ArrayList<>(values.length);
        for (double value : values) {
            list.add(value);
        }
        return list;
    }

    private static int intOf(JsonNode node) {
        if (!node.canConvertToInt()) {
            throw new IllegalArgumentException(
                    "number " + node + " is outside [" + Integer.MIN_VALUE + ", " + Integer.MAX_VALUE + "]");
        }
        return node.intValue();
    }

    private static long longOf(JsonNode node) {
        if (!node.canConvertToLong()) {
            throw new IllegalArgumentException(
                    "number " + node + " is outside [" + Long.MIN_VALUE + ", " + Long.MAX_VALUE + "]");
        }
        return node.longValue();
    }

    private static BigDecimal decimal(String text) {
        if (!text.matches("-?\\d{1,40}(\\.\\d{1,40})?(E[-+]?\\d{1,3})?")) {
            throw new IllegalArgumentException("text is no decimal number; write it like \"1.30\"");
        }
        return new BigDecimal(text);
    }

    private static <T> Function<String, T> timed(String what, Function<String, T> parse) {
        return text -> {
            try {
                return parse.apply(text);
            } catch (DateTimeException e) {
                throw new IllegalArgumentException("text is no " + what + " of ISO 8601: " + e.getMessage(), e);
            }
        };
    }
}
