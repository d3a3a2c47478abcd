package org.satline.json;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
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
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonText.boundedFactory())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .build();

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
        try {
            JsonNode node = MAPPER.readTree(json);
            if (node == null || !node.isObject()) {
                throw new UnreadableJsonException(Place.ROOT, "a JSON object is expected: { \"site\": ... }");
            }
            return (FieldValue.Fields) value(node);
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            String where = at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr() + ": ";
            throw new UnreadableJsonException(Place.ROOT, where + "broken JSON: " + firstLine(e));
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
        try {
            return MAPPER.writeValueAsString(node(fields));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("fields without a form in JSON", e);
        }
    }

    /**
     * The schema of the fields of {@link org.satline.visit.file.ReportFields}: JSON Schema, draft 2020-12.
     *
     * @return the schema, as JSON
     */
    public static String reportSchema() {
        return new String(SealedResources.core().bytes(JsonFields.class, REPORT_SCHEMA), StandardCharsets.UTF_8);
    }

    private static FieldValue value(JsonNode node) {
        if (node.isObject()) {
            Map<String, FieldValue> fields = new LinkedHashMap<>();
            node.properties().forEach(each -> fields.put(each.getKey(), value(each.getValue())));
            return new FieldValue.Fields(fields);
        } else if (node.isArray()) {
            List<FieldValue> items = new ArrayList<>();
            node.forEach(each -> items.add(value(each)));
            return new FieldValue.Items(items);
        } else if (node.isTextual()) {
            return new FieldValue.Text(node.textValue());
        } else if (node.isBoolean()) {
            return new FieldValue.Flag(node.booleanValue());
        }
        return node.isNumber() ? new FieldValue.Plain(node.doubleValue()) : new FieldValue.Nothing();
    }

    private static JsonNode node(FieldValue value) {
        if (value instanceof FieldValue.Fields fields) {
            ObjectNode node = JsonNodeFactory.instance.objectNode();
            fields.values().forEach((name, each) -> node.set(name, node(each)));
            return node;
        } else if (value instanceof FieldValue.Items items) {
            ArrayNode node = JsonNodeFactory.instance.arrayNode();
            items.values().forEach(each -> node.add(node(each)));
            return node;
        } else if (value instanceof FieldValue.Text text) {
            return TextNode.valueOf(text.value());
        } else if (value instanceof FieldValue.Flag flag) {
            return BooleanNode.valueOf(flag.value());
        } else if (value instanceof FieldValue.Plain number) {
            boolean whole = number.value() == Math.rint(number.value()) && Math.abs(number.value()) < 1e15;
            return whole ? LongNode.valueOf((long) number.value()) : DoubleNode.valueOf(number.value());
        }
        return NullNode.instance;
    }
}
