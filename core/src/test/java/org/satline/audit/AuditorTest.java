package org.satline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.explanation.Figure;
import org.satline.quantity.Length;

/** Planted mistakes, made from our own values, and two printed figures. */
class AuditorTest {
    private final Auditor auditor = Auditor.standard();

    private double ours(String refrigerant, AuditedQuantity quantity, double kelvins, String unit, double metres) {
        AuditRow row = AuditRow.atTemperature("", refrigerant, quantity, kelvins, "0", unit)
                .at(Length.ofMetres(metres));
        return ((AuditOutcome.Compared) auditor.compare(row)).comparison().ours();
    }

    private static String printed(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    /** R-134a pressures in kPa and enthalpies in kJ/kg at five temperatures. */
    private List<AuditRow> rows(String made, AuditedQuantity quantity, String unit, double factor, double shift) {
        List<AuditRow> rows = new ArrayList<>();
        for (int t = 250; t <= 330; t += 20) {
            double value = ours(made, quantity, t, unit, 0) * factor + shift;
            rows.add(AuditRow.atTemperature("t" + t, "R-134a", quantity, t, printed(value), unit));
        }
        return rows;
    }

    private LikelyCause only(List<AuditRow> rows) {
        AuditSummary summary = auditor.audit(rows).summary();
        assertThat(summary.outside()).isEqualTo(rows.size());
        assertThat(summary.unexplained()).isZero();
        assertThat(summary.causes()).hasSize(1);
        LikelyCause cause = summary.causes().get(0);
        assertThat(cause.explained()).isEqualTo(rows.size());
        List<AuditRow> turned = new ArrayList<>(rows);
        Collections.reverse(turned);
        assertThat(auditor.audit(turned).summary()).isEqualTo(summary);
        return cause;
    }

    @Test
    void printedFiguresOfTheHandbookAgree() {
        // ASHRAE Handbook Fundamentals 2021 (SI), ch. 2, Example 2: R-134a at -20 and 30 degC, kPa
        AuditReport report = auditor.audit(List.of(
                AuditRow.atTemperature("a", "R-134a", AuditedQuantity.DEW_PRESSURE, 253.15, "132.73", "kPa"),
                AuditRow.atTemperature("b", "R-134a", AuditedQuantity.DEW_PRESSURE, 303.15, "770.2", "kPa")));
        assertThat(report.summary().within()).isEqualTo(2);
    }

    @Test
    void aGaugePressureLabelledAbsoluteIsNamed() {
        assertThat(only(rows("R-134a", AuditedQuantity.DEW_PRESSURE, "kPa", 1, -101.325))
                        .kind())
                .isEqualTo(Kind.GAUGE_OR_ABSOLUTE);
    }

    @Test
    void aShiftedZeroIsNamed() {
        assertThat(only(rows("R-134a", AuditedQuantity.DEW_VAPOUR_ENTHALPY, "kJ/kg", 1, -37.5))
                        .kind())
                .isEqualTo(Kind.REFERENCE_STATE);
    }

    @Test
    void aPressureInAnotherUnitIsNamed() {
        // 1 psi = 6.894757293 kPa
        assertThat(only(rows("R-134a", AuditedQuantity.DEW_PRESSURE, "kPa", 1 / 6.894757293168, 0))
                        .kind())
                .isEqualTo(Kind.UNIT);
    }

    @Test
    void anotherRefrigerantIsNamed() {
        LikelyCause cause = only(rows("R-152a", AuditedQuantity.DEW_PRESSURE, "kPa", 1, 0));
        assertThat(cause.kind()).isEqualTo(Kind.OTHER_REFRIGERANT);
        assertThat(cause.mistake().figures()).containsExactly(Figure.of("designation", "R-152a"));
    }

    @Test
    void altitudeThatWasIgnoredIsNamed() {
        List<AuditRow> rows = new ArrayList<>();
        for (int t = 250; t <= 330; t += 20) {
            double seaLevel = ours("R-134a", AuditedQuantity.DEW_PRESSURE, t, "psig", 0);
            rows.add(AuditRow.atTemperature(
                            "t" + t, "R-134a", AuditedQuantity.DEW_PRESSURE, t, printed(seaLevel), "psig")
                    .at(Length.ofMetres(1600)));
        }
        assertThat(only(rows).kind()).isEqualTo(Kind.ALTITUDE_IGNORED);
    }

    @Test
    void bubbleForDewIsNamed() {
        List<AuditRow> rows = new ArrayList<>();
        for (int t = 250; t <= 330; t += 20) {
            double bubble = ours("R-407C", AuditedQuantity.BUBBLE_PRESSURE, t, "kPa", 0);
            rows.add(
                    AuditRow.atTemperature("t" + t, "R-407C", AuditedQuantity.DEW_PRESSURE, t, printed(bubble), "kPa"));
        }
        assertThat(only(rows).kind()).isEqualTo(Kind.BUBBLE_AND_DEW);
    }

    @Test
    void aCelsiusNumberUsedAsFahrenheitIsNamed() {
        List<AuditRow> rows = new ArrayList<>();
        for (int celsius = -10; celsius <= 40; celsius += 10) {
            double slipped = ours("R-134a", AuditedQuantity.DEW_PRESSURE, (celsius + 459.67) / 1.8, "kPa", 0);
            rows.add(AuditRow.atTemperature(
                    "t" + celsius, "R-134a", AuditedQuantity.DEW_PRESSURE, celsius + 273.15, printed(slipped), "kPa"));
        }
        assertThat(only(rows).kind()).isEqualTo(Kind.CELSIUS_OR_FAHRENHEIT);
    }

    @Test
    void aRowThatCannotBeComparedSaysWhy() {
        AuditRow good = AuditRow.atTemperature("", "R-134a", AuditedQuantity.DEW_PRESSURE, 280, "377", "kPa");
        assertThat(reason(AuditRow.atTemperature("", "R-9999", AuditedQuantity.DEW_PRESSURE, 280, "1", "kPa")))
                .isEqualTo(AuditOutcome.Reason.REFRIGERANT_UNKNOWN);
        assertThat(reason(AuditRow.atTemperature("", "R-134a", AuditedQuantity.DEW_PRESSURE, 280, "1,5", "kPa")))
                .isEqualTo(AuditOutcome.Reason.ANSWER_UNREADABLE);
        assertThat(reason(AuditRow.atTemperature("", "R-134a", AuditedQuantity.DEW_PRESSURE, 280, "1", "psi")))
                .isEqualTo(AuditOutcome.Reason.UNIT_UNKNOWN);
        assertThat(reason(AuditRow.atTemperature("", "R-134a", AuditedQuantity.DEW_PRESSURE, 900, "1", "kPa")))
                .isEqualTo(AuditOutcome.Reason.OUTSIDE_RANGE);
        assertThat(reason(AuditRow.atPressure("", "R-134a", AuditedQuantity.DEW_PRESSURE, 1e5, "1", "kPa")))
                .isEqualTo(AuditOutcome.Reason.QUESTION_UNCLEAR);
        assertThat(reason(good.within(-1))).isEqualTo(AuditOutcome.Reason.CONDITION_UNUSABLE);
    }

    private AuditOutcome.Reason reason(AuditRow row) {
        return ((AuditOutcome.NotComparable) auditor.compare(row)).reason();
    }

    @Test
    void theToleranceOfTheRowStandsAlone() {
        double ours = ours("R-134a", AuditedQuantity.DEW_PRESSURE, 280, "kPa", 0);
        AuditRow row =
                AuditRow.atTemperature("", "R-134a", AuditedQuantity.DEW_PRESSURE, 280, printed(ours + 3), "kPa");
        assertThat(within(row.within(3.01))).isTrue();
        assertThat(within(row.within(2.99))).isFalse();
    }

    private boolean within(AuditRow row) {
        return ((AuditOutcome.Compared) auditor.compare(row)).within();
    }
}
