package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.Map;

/** A map by names, in the order of its entries. */
record MapCodec<K, V>(Codec.Text<K> key, Codec<V> value) implements Codec<Map<K, V>> {
    @Override
    public JsonNode write(Map<K, V> values) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        values.forEach((name, each) -> node.set(key.toText().apply(name), value.write(each)));
        return node;
    }

    @Override
    public Map<K, V> read(JsonNode node, Place at) {
        if (!node.isObject()) {
            throw Codec.expected("an object", node, at);
        }
        Map<K, V> values = new LinkedHashMap<>();
        node.properties().forEach(each -> {
            Place place = at.in(each.getKey());
            values.put(
                    Codec.guarded(place, () -> key.ofText().apply(each.getKey())), value.read(each.getValue(), place));
        });
        return values;
    }
}
