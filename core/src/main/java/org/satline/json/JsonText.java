package org.satline.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;

/**
 * What {@link SatlineJson} does with Jackson; a class of its own, so that the other can be loaded and say what is missing where Jackson is.
 */
final class JsonText {
    /** Well above every form of this package; what lies beyond is no result. */
    private static final int DEEPEST = 100;

    private static final int LONGEST_NUMBER = 100;
    private static final int LONGEST_STRING = 100_000;
    private static final int LONGEST_NAME = 1000;

    private final Codecs codecs = Codecs.standard();
    private final ObjectMapper mapper = JsonMapper.builder(boundedFactory())
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    static JsonFactory boundedFactory() {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(DEEPEST)
                        .maxNumberLength(LONGEST_NUMBER)
                        .maxStringLength(LONGEST_STRING)
                        .maxNameLength(LONGEST_NAME)
                        .build())
                .build();
    }

    String write(Object result) {
        return written(codecs.of(result.getClass()), result).toString();
    }

    <T> T read(String json, Class<T> type, Place root) {
        Codec<T> codec = codecs.of(type);
        JsonNode tree;
        try {
            tree = mapper.readTree(json);
        } catch (JsonProcessingException e) {
            throw new UnreadableJsonException("cannot be read: " + e.getOriginalMessage(), e);
        }
        return codec.read(tree, root);
    }

    @SuppressWarnings("unchecked") // the codec is that of the class of the value
    private static <T> JsonNode written(Codec<T> codec, Object value) {
        return codec.write((T) value);
    }
}
