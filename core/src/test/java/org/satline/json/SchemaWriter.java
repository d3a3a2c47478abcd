package org.satline.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Writes the JSON Schema (draft 2020-12) of the forms: one definition for each type, from the codecs themselves. */
final class SchemaWriter {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Codecs codecs = Codecs.standard();
    private final TreeMap<String, ObjectNode> definitions = new TreeMap<>();

    /** The name of the definition of a type: its package below ours and its simple names. */
    static String name(Class<?> type) {
        return type.getName()
                .replaceFirst("^org\\.satline\\.", "")
                .replaceFirst("^json\\.Forms\\$", "form.")
                .replace('$', '.');
    }

    ObjectNode schema(List<Class<?>> types) {
        types.forEach(this::reference);
        ObjectNode schema = NODES.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:satline:results:1");
        schema.put("title", "Results of Satline");
        schema.put(
                "description",
                "One definition for each type, named as in the API: validate against #/$defs/charge.Judgement and the like."
                        + " A number whose name ends in a unit is in that unit; others are quantities with their unit beside them.");
        ObjectNode all = schema.putObject("$defs");
        definitions.forEach(all::set);
        return schema;
    }

    private ObjectNode reference(Class<?> type) {
        return reference(name(type), type);
    }

    private ObjectNode reference(String name, Type type) {
        if (!definitions.containsKey(name)) {
            definitions.put(name, NODES.objectNode()); // holds the place while its parts are described
            definitions.put(name, described(codecs.ofType(type)));
        }
        return NODES.objectNode().put("$ref", "#/$defs/" + name);
    }

    private ObjectNode ofType(Type type) {
        if (type instanceof Class<?> raw && raw.getName().startsWith("org.satline.")) {
            return reference(raw);
        }
        if (type instanceof ParameterizedType parameterized
                && parameterized.getRawType() instanceof Class<?> raw
                && raw.getName().startsWith("org.satline.")) {
            return parameterized.getActualTypeArguments()[0] instanceof Class<?> of
                    ? reference(name(raw) + "." + of.getSimpleName(), type)
                    : reference(raw);
        }
        if (type instanceof ParameterizedType parameterized && parameterized.getRawType() == Map.class) {
            return byName(ofType(parameterized.getActualTypeArguments()[1]));
        }
        if (type instanceof ParameterizedType parameterized) {
            ObjectNode content = ofType(parameterized.getActualTypeArguments()[0]);
            boolean several = parameterized.getRawType() == List.class || parameterized.getRawType() == Set.class;
            return several ? arrayOf(content) : content;
        }
        return described(codecs.ofType(type));
    }

    private static ObjectNode byName(ObjectNode values) {
        ObjectNode node = NODES.objectNode().put("type", "object");
        node.set("additionalProperties", values);
        return node;
    }

    private static ObjectNode arrayOf(ObjectNode items) {
        ObjectNode node = NODES.objectNode().put("type", "array");
        node.set("items", items);
        return node;
    }

    private ObjectNode described(Codec<?> codec) {
        if (codec instanceof Codec.Text<?> text) {
            return described(text);
        }
        if (codec instanceof Codec.Numeric<?> number) {
            return NODES.objectNode().put("type", number.whole() ? "integer" : "number");
        }
        if (codec instanceof Codec.Flag) {
            return NODES.objectNode().put("type", "boolean");
        }
        if (codec instanceof Codec.Quantity<?> quantity) {
            return described(quantity);
        }
        if (codec instanceof Codec.Via<?, ?> via) {
            return described(via.form());
        }
        if (codec instanceof ListCodec<?> list) {
            return arrayOf(
                    list.element() instanceof RecordCodec<?> each ? reference(each.type()) : described(list.element()));
        }
        if (codec instanceof MapCodec<?, ?> map) {
            return byName(described(map.value()));
        }
        if (codec instanceof MaybeCodec<?, ?> maybe) {
            return described(maybe.content());
        }
        if (codec instanceof RecordCodec<?> each) {
            return described(each);
        }
        if (codec instanceof SealedCodec<?> several) {
            ObjectNode node = NODES.objectNode();
            ArrayNode cases = node.putArray("oneOf");
            several.cases().forEach(each -> cases.add(reference(each.type())));
            return node;
        }
        RefrigerantCodec refrigerant = (RefrigerantCodec) codec;
        ObjectNode node = NODES.objectNode();
        node.putArray("oneOf").add(NODES.objectNode().put("type", "string")).add(described(refrigerant.ownBlend()));
        return node;
    }

    private static ObjectNode described(Codec.Text<?> text) {
        ObjectNode node = NODES.objectNode();
        if (text.choices().isPresent()) {
            ArrayNode names = node.putArray("enum");
            text.choices().get().keySet().forEach(names::add);
            return node;
        }
        node.put("type", "string");
        if (text.format().equals("decimal")) {
            node.put("pattern", "^-?[0-9]+(\\.[0-9]+)?(E[-+]?[0-9]+)?$");
        } else if (!text.format().isEmpty()) {
            node.put("format", text.format());
        }
        return node;
    }

    private static ObjectNode described(Codec.Quantity<?> quantity) {
        ObjectNode node = NODES.objectNode().put("type", "object");
        ObjectNode properties = node.putObject("properties");
        properties.putObject(Codec.Quantity.VALUE).put("type", "number").put("description", "its size in the unit");
        properties.putObject(Codec.Quantity.UNIT).put("const", quantity.unit()).put("description", "its SI unit");
        node.putArray("required").add(Codec.Quantity.VALUE).add(Codec.Quantity.UNIT);
        node.put("additionalProperties", false);
        return node;
    }

    private ObjectNode described(RecordCodec<?> codec) {
        ObjectNode node = NODES.objectNode().put("type", "object");
        ObjectNode properties = node.putObject("properties");
        ArrayNode required = NODES.arrayNode();
        if (codec.isOneOfSeveral()) {
            properties
                    .putObject(RecordCodec.TYPE)
                    .put("const", codec.type().getSimpleName())
                    .put("description", "which of the types it is");
            required.add(RecordCodec.TYPE);
        }
        for (RecordCodec.Field field : codec.fields()) {
            properties.set(
                    field.name(),
                    ofType(field.type()).put("description", FieldDescriptions.of(codec.type(), field.name())));
            if (!field.mayBeNull() && field.codec().absent().isEmpty()) {
                required.add(field.name());
            }
        }
        if (!required.isEmpty()) {
            node.set("required", required);
        }
        node.put("additionalProperties", false);
        return node;
    }
}
