package org.satline.program.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.satline.audit.AuditedRow;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditOutcome.Compared;
import org.satline.audit.answer.AuditOutcome.NotComparable;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.AuditTolerance.Share;
import org.satline.audit.answer.Comparison;
import org.satline.program.file.CsvAnswer;
import org.satline.program.file.Shown;
import org.satline.program.page.Printed;

/** An audit as rows of a CSV file: each row as it came in, what became of it, and why. */
public final class AuditCells {
    /** Columns of the output. */
    public static final List<String> OUTPUT = List.of(
            "id",
            "refrigerant",
            "quantity",
            "temperature_K",
            "pressure_Pa",
            "answer",
            "unit",
            "outcome",
            "ours",
            "difference",
            "tolerance",
            "tolerance_from",
            "likely_cause",
            "note");

    private AuditCells() {}

    /**
     * Returns a row of the output.
     *
     * @param audited the row
     * @return cells for the columns of {@link #OUTPUT}
     */
    public static CsvAnswer of(AuditedRow audited) {
        AuditOutcome outcome = audited.outcome();
        AuditRow row = outcome.row();
        List<String> cells = new ArrayList<>(List.of(
                row.id(),
                row.refrigerant(),
                row.quantity(),
                given(row.temperatureK()),
                given(row.pressurePa()),
                row.answer(),
                row.unit()));
        if (outcome instanceof Compared compared) {
            Comparison c = compared.comparison();
            cells.addAll(List.of(
                    compared.within() ? "within" : "outside",
                    figure(c.ours()),
                    figure(c.difference()),
                    figure(c.tolerance().width()),
                    c.tolerance().shares().stream().map(AuditCells::share).collect(Collectors.joining("; ")),
                    AuditWords.of(audited.mistakes()),
                    ""));
            return new CsvAnswer(cells, true);
        }
        NotComparable refused = (NotComparable) outcome;
        cells.addAll(List.of("not-comparable", "", "", "", "", "", Shown.line(refused.explanation())));
        return new CsvAnswer(cells, false);
    }

    private static String share(Share share) {
        return figure(share.width()) + " " + AuditWords.of(share.origin()) + " (" + share.basis() + ")";
    }

    private static String given(OptionalDouble value) {
        return value.isPresent() ? Double.toString(value.getAsDouble()) : "";
    }

    private static String figure(double value) {
        return Printed.figure("%.10g", value);
    }
}
