package org.satline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equilibrium.BoundaryEnd;
import org.satline.equilibrium.Range;
import org.satline.explanation.Step;
import org.satline.filling.VesselPoint;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.step.StepAdvice;

/** What is no result is refused, with its place and what was expected there. */
class UnreadableJsonTest {
    private final SatlineJson json = new SatlineJson().strict();

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"value": 20, "unit": "degC"}            | /unit | expected the unit "K", found "degC"
            {"value": 20}                            | /     | expected a quantity such as {"value": 1.0, "unit": "K"}
            {"value": "20", "unit": "K"}             | /     | expected a quantity
            {"value": 0, "unit": "K"}                | /     | temperature 0.0 K is not above 0.0 K
            {"value": 1e999, "unit": "K"}            | /     | is not finite
            20                                       | /     | expected a quantity
            """)
    void wrongTemperatures(String text, String place, String problem) {
        assertThatThrownBy(() -> json.read(text, Temperature.class))
                .isInstanceOfSatisfying(
                        UnreadableJsonException.class,
                        e -> assertThat(e.place()).isEqualTo(place))
                .hasMessageContaining(problem);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"id": "goggles"}                                  | /basis  | is missing
            {"id": "goggles", "basis": null}                   | /basis  | expected a text: text, found null
            {"id": "goggles", "basis": "x", "colour": "red"}   | /colour | is unknown; Caution has [id, basis]
            []                                                 | /       | expected an object: Caution
            """)
    void wrongRecords(String text, String place, String problem) {
        assertThatThrownBy(() -> json.read(text, Caution.class))
                .isInstanceOfSatisfying(
                        UnreadableJsonException.class,
                        e -> assertThat(e.place()).isEqualTo(place))
                .hasMessageContaining(problem);
    }

    /** What a later release adds is passed over; what is missing or wrong is refused all the same. */
    @Test
    void unknownFieldsArePassedOverUnlessStrict() {
        String later = "{\"id\": \"goggles\", \"basis\": \"x\", \"colour\": {\"deep\": [1]}}";
        SatlineJson lenient = new SatlineJson();
        assertThat(lenient.read(later, Caution.class).basis()).isEqualTo("x");
        assertThatThrownBy(() -> json.read(later, Caution.class)).isInstanceOf(UnreadableJsonException.class);
        assertThatThrownBy(() -> lenient.read("{\"id\": \"goggles\", \"colour\": 1}", Caution.class))
                .isInstanceOf(UnreadableJsonException.class);
    }

    @Test
    void wrongCases() {
        assertThatThrownBy(() -> json.read("{\"reason\": \"x\"}", VesselPoint.class))
                .hasMessageContaining("JSON at /type: expected one of [Always, At, Never], found nothing");
        assertThatThrownBy(() -> json.read("{\"type\": \"At\", \"bound\": \"x\"}", VesselPoint.Never.class))
                .hasMessageContaining("expected \"Never\", found \"At\"");
        assertThatThrownBy(() -> json.read(
                        "{\"type\": \"Done\", \"probabilityOnTarget\": 1, \"reasons\": [1]}", StepAdvice.class))
                .hasMessageContaining("JSON at /reasons/0: expected an object: Finding");
        assertThatThrownBy(() ->
                        json.read("{\"kind\": \"MIDDLE\", \"temperatureK\": 1, \"pressurePa\": 1}", BoundaryEnd.class))
                .hasMessageContaining("JSON at /kind: Kind \"MIDDLE\" is unknown; known are [CRITICAL_POINT");
    }

    @Test
    void wrongRefrigerants() {
        assertThatThrownBy(() -> json.read("\"R-13\"", Temperature.class)).isInstanceOf(UnreadableJsonException.class);
        assertThatThrownBy(() -> json.read("\"R-999\"", Refrigerant.class)).hasMessageContaining("R-999");
        assertThatThrownBy(() -> json.read(
                        "{\"name\": \"mine\", \"components\": [{\"substance\": \"R-32\", \"massFraction\": 0.5, \"moleFraction\": 1}]}",
                        Refrigerant.class))
                .hasMessageContaining("mass fractions sum to 0.5");
        assertThatThrownBy(() -> json.read(
                        "{\"name\": \"mine\", \"components\": [{\"substance\": \"R-32\", \"massFraction\": 1, \"moleFraction\": 0.5}]}",
                        Refrigerant.class))
                .hasMessageContaining("does not belong to its mass fraction");
    }

    @Test
    void noJson() {
        for (String text : new String[] {"", "{", "{\"text\": 1} 2", "{\"low\": 1, \"low\": 2, \"high\": 3}", "NaN"}) {
            assertThatThrownBy(() -> json.read(text, Range.class))
                    .as(text)
                    .isInstanceOf(UnreadableJsonException.class)
                    .hasMessageStartingWith("JSON ");
        }
    }

    @Test
    void numbersWithoutValueAreNotWritten() {
        assertThatThrownBy(() -> json.write(new Range(0, Double.POSITIVE_INFINITY)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("number Infinity is not finite");
    }

    @Test
    void amongOtherTypesThePlaceIsKnownToo() {
        ObjectMapper mapper = new ObjectMapper().registerModule(new SatlineModule());
        assertThatThrownBy(() -> mapper.readValue("[{\"key\": \"x\"}]", Step[].class))
                .isInstanceOf(JsonMappingException.class)
                .hasRootCauseInstanceOf(UnreadableJsonException.class)
                .hasMessageContaining("JSON at /formula: is missing");
    }

    /** Deep, long and endless: refused as no JSON of ours, not by a full stack or after minutes. */
    @Test
    void workIsBounded() {
        for (String text : List.of(
                "[".repeat(1_000_000), "{\"a\":".repeat(101), "1".repeat(101), "\"" + "a".repeat(100_001) + "\"")) {
            assertThatThrownBy(() -> json.read(text, Temperature.class)).isInstanceOf(UnreadableJsonException.class);
        }
    }
}
