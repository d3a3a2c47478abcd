package org.satline.visit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.satline.visit.file.VisitFileTest.refused;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.visit.FieldException;

/** Ways to write a visit file wrongly, and what is told of one that cannot be read. */
class VisitFileRefusalTest {
    private static final AVisit VISIT = AVisit.overcharged();

    @ParameterizedTest
    @CsvSource({
        "colour, colour",
        "site.colour, site.colour",
        "system.colour, system.colour",
        "instruments.scale.colour, instruments.scale.colour",
        "readings.colour, readings.colour",
        "conditions.colour, conditions.colour",
        "cylinder.colour, cylinder.colour",
        "cylinder.hoses[0].colour, cylinder.hoses[0].colour",
        "manifold.colour, manifold.colour"
    })
    void anUnknownFieldIsRefusedByItsPath(String field, String path) {
        refused(VISIT.with(field, "red"), path);
    }

    @Test
    void aValueOfAnotherTypeIsRefusedByItsPath() {
        refused(VISIT.with("readings.suctionPressure", 118), "readings.suctionPressure");
        refused(VISIT.with("title", true), "title");
        refused(VISIT.with("site", "boathouse"), "site");
        refused(VISIT.with("cylinder", List.of()), "cylinder");
        refused(VISIT.with("cylinders", "two").withoutCylinder(), "cylinders");
        refused(VISIT.with("conditions.settled", "yes"), "conditions.settled");
        refused(VISIT.with("manifold.valves", "4"), "manifold.valves");
        refused(VISIT.with("system.owner", new FieldValue.Nothing()), "system.owner");
        refused(VISIT.with("cylinder.hoses", "one"), "cylinder.hoses");
    }

    @ParameterizedTest
    @CsvSource({
        "site",
        "system",
        "instruments",
        "readings",
        "system.refrigerant",
        "system.metering",
        "site.altitude",
        "cylinder.tare",
        "cylinder.waterCapacity",
        "cylinder.temperature",
        "cylinder.valve"
    })
    void whatMustBeThereIsAskedForByItsPath(String field) {
        refused(VISIT.without(field), field.equals("site.altitude") ? "site" : field);
    }

    @Test
    void aRefrigerantWithoutAnEquationIsRefusedByItsField() {
        refused(VISIT.with("system.refrigerant", "R-999"), "system.refrigerant");
        refused(VISIT.holding("R-999"), "cylinder.holding");
    }

    /** A file that cannot be read as a whole hides no danger in the part that can. */
    @Test
    void dangersAreToldFromTheReadablePart() {
        AVisit overfull = VISIT.weighing("75 lb");
        assertThat(codes(overfull)).containsExactly("overfilled");
        assertThat(codes(overfull.with("readings.liquidLine", "many"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("readings").without("conditions"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("site").with("colour", "red"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("instruments"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("system"))).containsExactly("overfilled");
        assertThat(codes(VISIT.withBeside(Map.of()).with("cylinders[0].scaleReading", "75 lb")))
                .containsExactly("overfilled");
        assertThat(codes(VISIT.with("readings.liquidLine", "many"))).isEmpty();
        assertThat(codes(overfull.with("cylinder.tare", "light"))).isEmpty();
        assertThat(codes(overfull.with("cylinder", "a drum"))).isEmpty();
    }

    private static List<String> codes(AVisit visit) {
        List<Finding> dangers = VisitFile.dangersInReadablePart(visit.fields());
        assertThat(dangers).allSatisfy(each -> assertThat(each.severity()).isEqualTo(Severity.DANGER_NOW));
        return dangers.stream().map(each -> each.code().word()).toList();
    }

    @Test
    void whatTheSentenceSaysIsOnOneLineWithoutControls() {
        assertThatThrownBy(() ->
                        VISIT.with("readings.liquidLine", "9\u001b[31m8\n degF").read())
                .isInstanceOf(FieldException.class)
                .satisfies(
                        e -> assertThat(String.valueOf(e.getMessage()).chars().filter(Character::isISOControl))
                                .isEmpty());
    }
}
