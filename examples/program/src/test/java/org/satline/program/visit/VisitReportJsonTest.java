package org.satline.program.visit;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.satline.json.SatlineJson;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;

/** The whole report of the sample visit goes through JSON, keeps to the schema and comes back equal. */
class VisitReportJsonTest {
    @Test
    void theReportOfTheSampleComesBackEqual() throws Exception {
        VisitReport report = VisitReporter.report(VisitReader.read(Path.of("samples/boathouse.json")));
        SatlineJson json = new SatlineJson();
        String text = json.write(report);
        assertThat(json.read(text, VisitReport.class)).isEqualTo(report);
        assertThat(JsonSchemaFactory.getInstance(
                                SpecVersion.VersionFlag.V202012,
                                builder -> builder.schemaLoaders(loaders ->
                                        loaders.schemas(Map.of("urn:satline:results", SatlineJson.schema()))))
                        .getSchema(SchemaLocation.of("urn:satline:results#/$defs/visit.VisitReport"))
                        .validate(new ObjectMapper().readTree(text)))
                .isEmpty();
    }
}
