package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.satline.visit.VisitSafetyTest.movesNothing;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.visit.file.AVisit;

/** Readings by which no refrigerant may move. Heat flows from warm to cold (physics); the rest common practice, no source. */
class VisitReadingSafetyTest {
    static Stream<Arguments> readings() {
        AVisit out = AVisit.overcharged();
        return Stream.of(
                Arguments.of(
                        "a poor gauge",
                        out.with("instruments.liquidGauge.limitOfError", "60 psi"),
                        ActionKind.READ_AGAIN,
                        "notDecided"),
                Arguments.of(
                        "a supply air warmer than the return",
                        out.with("readings.supplyDryBulb", "85 degF"),
                        ActionKind.READ_AGAIN,
                        "unexplained"),
                // California Energy Code RA3.2 (2008): at least 55 degF outdoors
                Arguments.of(
                        "a cold day", out.with("readings.outdoorAir", "20 degF"), ActionKind.READ_AGAIN, "gateNotMet"),
                Arguments.of(
                        "just started", out.with("conditions.running", "5 min"), ActionKind.READ_AGAIN, "gateNotMet"),
                Arguments.of(
                        "a series that ends elsewhere than the readings",
                        out.settlingAt("16.1 degF").with("readings.liquidLine", "110 degF"),
                        ActionKind.READ_AGAIN,
                        "gateNotMet"),
                Arguments.of("a series of another time", out.settlingAt("3 degF"), ActionKind.READ_AGAIN, "gateNotMet"),
                Arguments.of("no liquid line", out.without("readings.liquidLine"), ActionKind.READ_AGAIN, "notGiven"),
                Arguments.of("heating", out.with("system.mode", "heating"), ActionKind.READ_AGAIN, "heatingMode"),
                Arguments.of(
                        "condensing far hotter than its air explains",
                        out.with("readings.outdoorAir", "60 degF"),
                        ActionKind.MEND_FIRST,
                        "faultLikelier"),
                Arguments.of(
                        "a suction line warmer than the return air",
                        out.with("readings.suctionLine", "90 degF"),
                        ActionKind.MEND_FIRST,
                        "evaporatorStarves faultLikelier"));
    }

    @ParameterizedTest(name = "{0}: {3}")
    @MethodSource("readings")
    void suchReadingsMoveNothing(String name, AVisit visit, ActionKind kind, String codes) {
        movesNothing(visit, kind, codes);
        assertThat(visit.report().level()).isEmpty();
    }

    @Test
    void aSeriesThatEndsWhereTheReadingsAreIsSettled() {
        assertThat(AVisit.overcharged()
                        .settlingAt("16.1 degF")
                        .report()
                        .action()
                        .movesNow())
                .isTrue();
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({"readings.liquidLine, 60 degF", "readings.dischargeLine, 80 degF"})
    void aLineColderThanPhysicsAllowsIsRefused(String field, String value) {
        AVisit visit = AVisit.overcharged().with(field, value);
        assertThatThrownBy(visit::report)
                .isInstanceOfSatisfying(
                        ImplausibleReadingException.class,
                        e -> assertThat(e.fields()).contains(field));
    }
}
