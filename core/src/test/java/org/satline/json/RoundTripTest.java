package org.satline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.satline.explanation.FindingCode;
import org.satline.filling.FillRules;
import org.satline.saturation.SaturationCurve;

/**
 * Every public type of core goes through JSON and comes back equal, and its JSON keeps to the schema, which {@link SchemaTest} holds
 * against the published one.
 */
class RoundTripTest {
    private static final int INSTANCES = 6;

    private final SatlineJson json = new SatlineJson().strict();
    private final ObjectMapper mapper = new ObjectMapper().registerModule(new SatlineModule());
    private final JsonSchemaFactory schemas = JsonSchemaFactory.getInstance(
            SpecVersion.VersionFlag.V202012,
            builder -> builder.schemaLoaders(
                    loaders -> loaders.schemas(Map.of("urn:satline:results", SchemaTest.current()))));

    @Test
    void everyPublicTypeHasAFormOrAReasonNotTo() {
        Codecs codecs = Codecs.standard();
        List<String> names =
                ResultTypes.publicTypes().stream().map(SchemaWriter::name).toList();
        assertThat(names).containsAll(ResultTypes.WITHOUT_FORM);
        List<String> without = ResultTypes.all().stream()
                .filter(type -> !hasForm(codecs, type))
                .map(SchemaWriter::name)
                .toList();
        assertThat(without)
                .as("a result needs a form; name what computes in ResultTypes.WITHOUT_FORM")
                .isEmpty();
        assertThat(ResultTypes.all()).hasSizeGreaterThan(150);
    }

    private static boolean hasForm(Codecs codecs, Class<?> type) {
        try {
            return codecs.of(type) != null;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    /** A code that is written is read back, so every code of every room is known to the forms. */
    @Test
    void everyCodeOfAFindingIsKnown() {
        List<Object> codes = ResultTypes.publicTypes().stream()
                .filter(type -> type.isEnum() && FindingCode.class.isAssignableFrom(type))
                .flatMap(type -> Stream.<Object>of(type.getEnumConstants()))
                .toList();
        assertThat(codes).hasSizeGreaterThan(100);
        assertThat(FindingCodes.all())
                .containsExactlyInAnyOrderElementsOf(
                        codes.stream().map(FindingCode.class::cast).toList());
    }

    @TestFactory
    Stream<DynamicTest> eachTypeComesBackEqual() {
        AnyInstance any = new AnyInstance(20_260_101);
        return ResultTypes.all().stream()
                .<DynamicTest>map(type -> DynamicTest.dynamicTest(SchemaWriter.name(type), () -> {
                    JsonSchema schema = schemas.getSchema(
                            SchemaLocation.of("urn:satline:results#/$defs/" + SchemaWriter.name(type)));
                    for (int i = 0; i < INSTANCES; i++) {
                        comesBackEqual(any, type, schema);
                    }
                }));
    }

    private <T> void comesBackEqual(AnyInstance any, Class<T> type, JsonSchema schema) throws Exception {
        int curves = any.curves();
        T before = any.of(type);
        String text = json.write(before);
        T after = json.read(text, type);
        if (any.curves() == curves && !SaturationCurve.class.isAssignableFrom(type)) {
            assertThat(after).isEqualTo(before).hasSameHashCodeAs(before);
        }
        assertThat(json.write(after)).isEqualTo(text);
        assertThat(schema.validate(mapper.readTree(text))).as(text).isEmpty();
        assertThat(mapper.writeValueAsString(before)).isEqualTo(text);
        assertThat(json.write(mapper.readValue(text, type))).isEqualTo(text);
    }

    /** The forms know it by name, so that they do not need the annotation at run time. */
    @Test
    void whatMayBeNullIsKnown() {
        for (Class<?> type : ResultTypes.publicTypes()) {
            if (type.isRecord()) {
                for (RecordComponent component : type.getRecordComponents()) {
                    assertThat(BoundCodecs.mayBeNull(type, component.getName()))
                            .as(type + " " + component)
                            .isEqualTo(component.getAnnotatedType().isAnnotationPresent(Nullable.class));
                }
            }
        }
    }

    @Test
    void typesThatComputeAreRefused() {
        assertThatThrownBy(() -> json.write(FillRules.standard()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("FillRules has no form in JSON");
    }
}
