package org.satline.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;

/** What {@link SatlineJson} does with Jackson; a class of its own, so that the other can be loaded and say what is missing where Jackson is. */
final class JsonText {
    private final Codecs codecs = Codecs.standard();
    private final ObjectMapper mapper = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    String write(Object result) {
        return written(codecs.of(result.getClass()), result).toString();
    }

    <T> T read(String json, Class<T> type) {
        Codec<T> codec = codecs.of(type);
        JsonNode tree;
        try {
            tree = mapper.readTree(json);
        } catch (JsonProcessingException e) {
            throw new UnreadableJsonException("cannot be read: " + e.getOriginalMessage(), e);
        }
        return codec.read(tree, Place.ROOT);
    }

    @SuppressWarnings("unchecked") // the codec is that of the class of the value
    private static <T> JsonNode written(Codec<T> codec, Object value) {
        return codec.write((T) value);
    }
}
