package org.satline.json;

import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.satline.resource.SealedResources;

/**
 * Writes results as JSON and reads them back equal, exact to the last bit. Immutable, thread-safe; make one and keep it.
 *
 * <pre>{@code
 * SatlineJson json = new SatlineJson();
 * String text = json.write(judgement);
 * Judgement again = json.read(text, Judgement.class);
 * }</pre>
 *
 * <p>Fields that this version does not know are passed over, so that what a later release writes can be read; {@link #strict()} refuses
 * them.
 *
 * <p>It needs Jackson databind, which core does not bring along; the rest of the library works without.
 *
 * <p>A program that has an {@code ObjectMapper} of its own registers {@link SatlineModule} there instead; the forms are the same.
 */
public final class SatlineJson {
    private static final String SCHEMA = "satline.schema.json";

    private final JsonText text;
    private final boolean strict;

    /**
     * Makes a writer and reader.
     *
     * @throws MissingLibraryException if the program does not bring Jackson databind, which this package alone needs
     */
    public SatlineJson() {
        JsonLibrary.require();
        text = new JsonText();
        strict = false;
    }

    private SatlineJson(JsonText text) {
        this.text = text;
        strict = true;
    }

    /**
     * Returns the same that refuses fields which it does not know, such as one that is misspelt.
     *
     * @return a strict reader
     */
    public SatlineJson strict() {
        return new SatlineJson(text);
    }

    /**
     * Writes a result.
     *
     * @param result a record, an enumeration's constant, a quantity, a refrigerant or another type with a form
     * @return JSON on one line
     * @throws IllegalArgumentException if its type has no form, or a number in it is not finite
     */
    public String write(Object result) {
        Objects.requireNonNull(result, "result");
        return text.write(result);
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
        return text.read(json, type, strict ? Place.STRICT_ROOT : Place.ROOT);
    }

    /**
     * The schema of all forms, with what each field means: JSON Schema, draft 2020-12. Each type has its definition, such as
     * {@code #/$defs/charge.Judgement}. Its {@code $id} ends in the number of the version, which rises where a form that was written before
     * could no longer be read.
     *
     * @return the schema, as JSON
     */
    public static String schema() {
        return new String(SealedResources.core().bytes(SatlineJson.class, SCHEMA), StandardCharsets.UTF_8);
    }
}
