package org.satline.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * Writes results as JSON and reads them back equal, exact to the last bit. Immutable, thread-safe; make one and keep it.
 *
 * <pre>{@code
 * SatlineJson json = new SatlineJson();
 * String text = json.write(verdict);
 * Verdict again = json.read(text, Verdict.class);
 * }</pre>
 *
 * <p>A program that has an {@code ObjectMapper} of its own registers {@link SatlineModule} there instead; the forms are the same.
 */
public final class SatlineJson {
    private static final String SCHEMA = "satline.schema.json";

    private final Codecs codecs = Codecs.standard();
    private final ObjectMapper mapper = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    /** Makes a writer and reader. */
    public SatlineJson() {}

    /**
     * Writes a result.
     *
     * @param result a record, an enumeration's constant, a quantity, a refrigerant or another type with a form
     * @return JSON on one line
     * @throws IllegalArgumentException if its type has no form, or a number in it is not finite
     */
    public String write(Object result) {
        Objects.requireNonNull(result, "result");
        return written(codecs.of(result.getClass()), result).toString();
    }

    /**
     * Reads what {@link #write} wrote.
     *
     * @param <T> what is expected
     * @param json the text, one JSON value
     * @param type what is expected; for a result of several types their sealed interface
     * @return an equal result
     * @throws UnreadableJsonException if the text is no JSON or is not of that type
     * @throws IllegalArgumentException if that type has no form
     */
    public <T> T read(String json, Class<T> type) {
        Objects.requireNonNull(json, "json");
        Objects.requireNonNull(type, "type");
        Codec<T> codec = codecs.of(type);
        JsonNode tree;
        try {
            tree = mapper.readTree(json);
        } catch (JsonProcessingException e) {
            throw new UnreadableJsonException("cannot be read: " + e.getOriginalMessage(), e);
        }
        return codec.read(tree, Place.ROOT);
    }

    /**
     * The schema of all forms: JSON Schema, draft 2020-12. Each type has its definition, such as {@code #/$defs/charge.Verdict}.
     *
     * @return the schema, as JSON
     */
    public static String schema() {
        try (InputStream in = Objects.requireNonNull(SatlineJson.class.getResourceAsStream(SCHEMA), SCHEMA)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("schema " + SCHEMA + " cannot be read; the jar is damaged", e);
        }
    }

    @SuppressWarnings("unchecked") // the codec is that of the class of the value
    private static <T> JsonNode written(Codec<T> codec, Object value) {
        return codec.write((T) value);
    }
}
