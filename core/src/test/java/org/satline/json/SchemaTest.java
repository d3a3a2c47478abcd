package org.satline.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The published schema is that of the present types. After a type has changed,
 * {@code mvn -q -pl core test -Dtest=SchemaTest -Dsatline.schema.write} writes it anew.
 */
class SchemaTest {
    private static final Path FILE = Path.of("src/main/resources/org/satline/json/satline.schema.json");

    private static final String CURRENT = written();

    /** The schema of the forms as they are. */
    static String current() {
        return CURRENT;
    }

    private static String written() {
        try {
            String text = new ObjectMapper()
                    .writerWithDefaultPrettyPrinter()
                    .writeValueAsString(new SchemaWriter().schema(ResultTypes.all()));
            return text.replace(System.lineSeparator(), "\n") + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void thePublishedSchemaIsCurrent() throws IOException {
        if (System.getProperty("satline.schema.write") != null) {
            Files.createDirectories(FILE.getParent());
            Files.writeString(FILE, current());
        }
        assertThat(Files.readString(FILE))
                .as("write it anew: mvn -q -pl core test -Dtest=SchemaTest -Dsatline.schema.write")
                .isEqualTo(current());
    }

    @Test
    void everyFieldSaysWhatItIs() throws IOException {
        for (JsonNode properties : new ObjectMapper().readTree(current()).findValues("properties")) {
            assertThat(properties)
                    .allSatisfy(field ->
                            assertThat(field.path("description").asText()).isNotBlank());
        }
    }

    /** JSON Schema, draft 2020-12, has a schema of its own. */
    @Test
    void itIsASchema() throws IOException {
        assertThat(JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                        .getSchema(SchemaLocation.of(SchemaId.V202012))
                        .validate(new ObjectMapper().readTree(current())))
                .isEmpty();
    }
}
