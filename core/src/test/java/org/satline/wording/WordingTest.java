package org.satline.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.UnitSystem;
import org.satline.safety.Caution;

/** Texts by key, with what happens where one is missing. */
class WordingTest {
    /** Codes that no file of the library knows, and one text of their own in the folder {@code zz} of the tests. */
    private enum OwnCode implements FindingCode {
        TIDE_TOO_HIGH,
        MOORING_LOOSE
    }

    private static final Wording ENGLISH = Wording.of(Language.ENGLISH, UnitSystem.US);
    private static final Wording OTHER = Wording.of(new Language("zz"), UnitSystem.SI);
    private static final Subject CYLINDER = Subject.cylinder("recovery 1");

    private static Finding finding(FindingCode code, Figure... figures) {
        return Finding.of(Severity.FORBIDS, code, CYLINDER, figures);
    }

    @Test
    void fillsFiguresInByName() {
        Finding finding = finding(
                OwnCode.TIDE_TOO_HIGH,
                Figure.of("limit", Mass.ofPounds(14.299)),
                Figure.of("doubt", MassDifference.ofPounds(0.2)),
                Figure.of("chance", 0.93, "1"),
                Figure.of("wait", 900, "s"),
                Figure.of("phase", "liquid"));
        assertThat(OTHER.lacking(finding)).isEmpty();
        assertThat(OTHER.of(finding))
                .isEqualTo(
                        "recovery 1: <= 6.48 kg (14.29 lb); >= 6.49 kg (14.30 lb); 6.49 +/- 0.10 kg (14.30 +/- 0.20 lb);"
                                + " 93 %; 15 min; 6.49 kg (14 lb 4.8 oz); LIQ");
    }

    @Test
    void aSeverityMayHaveATextOfItsOwn() {
        Finding finding = finding(OwnCode.TIDE_TOO_HIGH);
        assertThat(OTHER.of(finding.as(Severity.DANGER_NOW))).isEqualTo("leave recovery 1 at once");
    }

    @Test
    void aFigureThatIsMissingCostsItsNumberNotTheLine() {
        Finding finding = finding(OwnCode.TIDE_TOO_HIGH, Figure.of("limit", Mass.ofPounds(14.299)));
        assertThat(OTHER.lacking(finding)).containsExactly("chance", "doubt", "phase", "wait");
        assertThat(OTHER.of(finding)).contains("6.48 kg", "; 6.49 kg (14.30 lb); (not stated); (not stated);");
    }

    @Test
    void aKeyWithoutTextBecomesItsWords() {
        assertThat(ENGLISH.of(finding(OwnCode.MOORING_LOOSE, Figure.of("pullLeft", 3, "1"))))
                .isEqualTo("mooring loose: recovery 1, pull left 3");
        assertThat(ENGLISH.name(OwnCode.MOORING_LOOSE)).isEqualTo("mooring loose");
        assertThat(ENGLISH.message("harbour.low-water")).isEqualTo("low water");
        assertThat(ENGLISH.caution("keep clear; see 3.2")).isEqualTo("keep clear; see 3.2");
        assertThat(ENGLISH.message("")).isNotBlank();
    }

    @Test
    void whatALanguageLacksIsSaidInEnglish() {
        assertThat(OTHER.name(Severity.FORBIDS)).isEqualTo("VERBOTEN");
        assertThat(OTHER.name(Severity.CAUTION)).isEqualTo(ENGLISH.name(Severity.CAUTION));
        assertThat(OTHER.caution("goggles"))
                .isEqualTo(ENGLISH.caution("goggles"))
                .contains("gloves");
        assertThat(OTHER.missingKeys()).contains("caution.goggles").doesNotContain("explanation.severity.forbids");
        assertThat(ENGLISH.missingKeys()).isEmpty();
        assertThat(Wording.of(new Language("xx"), UnitSystem.US).caution("goggles"))
                .isEqualTo(ENGLISH.caution("goggles"));
    }

    @Test
    void aMissingFactIsNamedByItsField() {
        Finding known = Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading("tide.height"));
        Finding unknown = Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading("tide.ebb"));
        assertThat(OTHER.of(known)).startsWith("height of the tide is not given");
        assertThat(OTHER.of(unknown)).startsWith("tide.ebb is not given");
    }

    @Test
    void cautionsComeAsFindingsToo() {
        Caution caution = new Caution("goggles", "x");
        assertThat(ENGLISH.of(caution.finding(CYLINDER)))
                .isEqualTo(ENGLISH.of(caution))
                .isEqualTo("wear goggles and gloves: escaping liquid freezes eyes and skin");
    }

    @Test
    void aStepIsNameFormulaNumbersResultAndSource() {
        Step step = new Step(
                "netMass",
                "m = gross - tare",
                List.of(Figure.of("gross", Mass.ofPounds(41.35)), Figure.of("tare", Mass.ofPounds(27.05))),
                Figure.of("net", Mass.ofPounds(14.3)),
                "definition");
        StepText text = ENGLISH.of(step);
        assertThat(text.given()).containsExactly("gross = 41.350 lb (18.756 kg)", "tare = 27.050 lb (12.270 kg)");
        assertThat(text.lines())
                .containsExactly(
                        "net mass: 14.300 lb (6.486 kg)",
                        "m = gross - tare",
                        "gross = 41.350 lb (18.756 kg), tare = 27.050 lb (12.270 kg)",
                        "definition");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a {", "a }", "{}", "{1a}", "{a:sideways}", "{a:within}", "{a:down:b}", "{a b}", "{{a}}"})
    void anUnknownPlaceholderIsRefused(String pattern) {
        assertThatThrownBy(() -> TextPattern.parse(pattern)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "e", "EN", "e1", "../en", "english"})
    void aLanguageIsATagOfLetters(String tag) {
        assertThatThrownBy(() -> new Language(tag)).isInstanceOf(IllegalArgumentException.class);
    }
}
