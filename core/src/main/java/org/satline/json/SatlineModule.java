package org.satline.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.BeanDescription;
import com.fasterxml.jackson.databind.DeserializationConfig;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JavaType;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializationConfig;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.deser.Deserializers;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.Serializers;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * Teaches an {@code ObjectMapper} of Jackson the types of this library; types of the caller's own may hold them. Thread-safe once
 * registered.
 *
 * <p>Fields that this version does not know are refused or passed over as the mapper says ({@code FAIL_ON_UNKNOWN_PROPERTIES}).
 *
 * <p>What cannot be read is a {@link JsonMappingException} whose cause is the {@link UnreadableJsonException} with its place.
 */
public final class SatlineModule extends SimpleModule {
    private static final long serialVersionUID = 1L;

    private final transient Codecs codecs;

    /** Makes the module. */
    public SatlineModule() {
        this(Codecs.standard());
    }

    SatlineModule(Codecs codecs) {
        super("satline");
        this.codecs = codecs;
    }

    /**
     * Adds the forms to a mapper; Jackson calls it.
     *
     * @param context of the mapper
     */
    @Override
    public void setupModule(SetupContext context) {
        super.setupModule(context);
        context.addSerializers(new Serializers.Base() {
            @Override
            public @Nullable JsonSerializer<?> findSerializer(
                    SerializationConfig config, JavaType type, BeanDescription description) {
                return codecs.covers(type.getRawClass()) ? new Writer(codecs) : null;
            }
        });
        context.addDeserializers(new Deserializers.Base() {
            @Override
            public @Nullable JsonDeserializer<?> findBeanDeserializer(
                    JavaType type, DeserializationConfig config, BeanDescription description) {
                return reader(type.getRawClass());
            }

            @Override
            public @Nullable JsonDeserializer<?> findEnumDeserializer(
                    Class<?> type, DeserializationConfig config, BeanDescription description) {
                return reader(type);
            }

            private @Nullable JsonDeserializer<?> reader(Class<?> type) {
                return codecs.covers(type) ? new Reader<>(codecs.of(type)) : null;
            }
        });
    }

    /** Writes what its codec makes. */
    private static final class Writer extends JsonSerializer<Object> {
        private final Codecs codecs;

        Writer(Codecs codecs) {
            this.codecs = codecs;
        }

        @Override
        public void serialize(Object value, JsonGenerator generator, SerializerProvider provider) throws IOException {
            generator.writeTree(written(codecs.of(value.getClass()), value));
        }

        @SuppressWarnings("unchecked") // the codec is that of the class of the value
        private static <T> JsonNode written(Codec<T> codec, Object value) {
            return codec.write((T) value);
        }
    }

    /** Reads a tree and hands it to its codec. */
    private static final class Reader<T> extends JsonDeserializer<T> {
        private final Codec<T> codec;

        Reader(Codec<T> codec) {
            this.codec = codec;
        }

        @Override
        public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
            JsonNode tree = context.readTree(parser);
            try {
                boolean strict = context.isEnabled(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES);
                return codec.read(tree, strict ? Place.STRICT_ROOT : Place.ROOT);
            } catch (UnreadableJsonException e) {
                throw new JsonMappingException(parser, e.getMessage(), e);
            }
        }
    }
}
