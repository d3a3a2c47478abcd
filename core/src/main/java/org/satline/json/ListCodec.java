package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.List;

/** A list, in order. */
record ListCodec<T>(Codec<T> element) implements Codec<List<T>> {
    @Override
    public JsonNode write(List<T> values) {
        ArrayNode node = JsonNodeFactory.instance.arrayNode(values.size());
        values.forEach(value -> node.add(element.write(value)));
        return node;
    }

    @Override
    public List<T> read(JsonNode node, Place at) {
        if (!node.isArray()) {
            throw Codec.expected("a list", node, at);
        }
        List<T> values = new ArrayList<>(node.size());
        for (int i = 0; i < node.size(); i++) {
            values.add(element.read(node.get(i), at.at(i)));
        }
        return List.copyOf(values);
    }
}
