package org.satline.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.satline.resource.SealedResources;
import org.satline.visit.file.FieldValue;

/** Plain fields of a visit file or report as JSON and back. Stateless, thread-safe. */
public final class JsonFields {
    /** Token by token, not as a tree: the tree's library alone would cost a visit of the command line a tenth of its time. */
    private static final JsonFactory FACTORY = JsonText.boundedFactory();

    private static final String REPORT_SCHEMA = "visit-report.schema.json";

    private JsonFields() {}

    /**
     * Reads fields.
     *
     * @param json one JSON object
     * @return its fields
     * @throws UnreadableJsonException if it is no JSON object, or a name stands twice in it; the message names line and column
     */
    public static FieldValue.Fields read(String json) {
        Objects.requireNonNull(json, "json");
        try (JsonParser parser = FACTORY.createParser(json)) {
            parser.enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION);
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new UnreadableJsonException(Place.ROOT, "a JSON object is expected: { \"site\": ... }");
            }
            FieldValue.Fields fields = fields(parser);
            if (parser.nextToken() != null) {
                throw new JsonParseException(parser, "something follows the end of the object");
            }
            return fields;
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String where = at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": ";
            throw new UnreadableJsonException(Place.ROOT, where + "broken JSON: " + firstLine(e));
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory", e);
        }
    }

    private static String firstLine(JsonProcessingException e) {
        String message = String.valueOf(e.getOriginalMessage());
        int end = message.indexOf('\n');
        return (end < 0 ? message : message.substring(0, end))
                .replaceAll("\\s*\\((`[^`]*`|start marker at )[^)]*\\)", "");
    }

    /**
     * Writes fields.
     *
     * @param fields the fields
     * @return a JSON object, indented, in the order of the fields
     */
    public static String write(FieldValue.Fields fields) {
        Objects.requireNonNull(fields, "fields");
        StringWriter text = new StringWriter();
        try (JsonGenerator generator = FACTORY.createGenerator(text).useDefaultPrettyPrinter()) {
            write(fields, generator);
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory", e);
        }
        return text.toString();
    }

    /**
     * The schema of the fields of {@link org.satline.visit.file.ReportFields}: JSON Schema, draft 2020-12.
     *
     * @return the schema, as JSON
     */
    public static String reportSchema() {
        return new String(SealedResources.core().bytes(JsonFields.class, REPORT_SCHEMA), StandardCharsets.UTF_8);
    }

    private static FieldValue.Fields fields(JsonParser parser) throws IOException {
        Map<String, FieldValue> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            fields.put(name, value(parser));
        }
        return new FieldValue.Fields(fields);
    }

    private static FieldValue value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> fields(parser);
            case START_ARRAY -> items(parser);
            case VALUE_STRING -> new FieldValue.Text(parser.getText());
            case VALUE_TRUE, VALUE_FALSE -> new FieldValue.Flag(parser.getBooleanValue());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new FieldValue.Plain(parser.getDoubleValue());
            default -> new FieldValue.Nothing();
        };
    }

    private static FieldValue.Items items(JsonParser parser) throws IOException {
        List<FieldValue> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(parser));
        }
        return new FieldValue.Items(items);
    }

    private static void write(FieldValue value, JsonGenerator generator) throws IOException {
        if (value instanceof FieldValue.Fields fields) {
            generator.writeStartObject();
            for (Map.Entry<String, FieldValue> each : fields.values().entrySet()) {
                generator.writeFieldName(each.getKey());
                write(each.getValue(), generator);
            }
            generator.writeEndObject();
        } else if (value instanceof FieldValue.Items items) {
            generator.writeStartArray();
            for (FieldValue each : items.values()) {
                write(each, generator);
            }
            generator.writeEndArray();
        } else if (value instanceof FieldValue.Text text) {
            generator.writeString(text.value());
        } else if (value instanceof FieldValue.Flag flag) {
            generator.writeBoolean(flag.value());
        } else if (value instanceof FieldValue.Plain number) {
            write(number.value(), generator);
        } else {
            generator.writeNull();
        }
    }

    private static void write(double number, JsonGenerator generator) throws IOException {
        if (number == Math.rint(number) && Math.abs(number) < 1e15) {
            generator.writeNumber((long) number);
        } else {
            generator.writeNumber(number);
        }
    }
}
