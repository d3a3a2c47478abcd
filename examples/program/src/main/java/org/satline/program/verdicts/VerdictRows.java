package org.satline.program.verdicts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.charge.ChargeJudge;
import org.satline.program.file.CsvAnswer;
import org.satline.program.file.CsvRow;
import org.satline.program.file.Shown;
import org.satline.program.page.Printed;
import org.satline.program.verdicts.VerdictQuery.Cell;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Answers rows of {@code verdicts}. A row that cannot be used gets the level {@code refused} and the reason. Thread-safe. */
public final class VerdictRows {
    /** Columns that the input has to have. */
    public static final List<String> INPUT = List.of(
            "id",
            "refrigerant",
            "metering",
            "suction_pressure_Pa",
            "suction_line_K",
            "liquid_pressure_Pa",
            "liquid_line_K",
            "return_wet_bulb_K",
            "condenser_air_K",
            "target_superheat_K",
            "target_subcooling_K",
            "pressure_standard_uncertainty_Pa",
            "temperature_standard_uncertainty_K");

    /** Columns that it may have. */
    public static final List<String> OPTIONAL =
            List.of("tolerance_K", "return_dry_bulb_K", "supply_dry_bulb_K", "discharge_line_K", "outdoor_minimum_met");

    /** Columns of the output. */
    public static final List<String> OUTPUT = List.of(
            "id",
            "superheat_K",
            "subcooling_K",
            "judged_by",
            "target_K",
            "deviation_K",
            "standard_uncertainty_K",
            "probability_low",
            "probability_on_target",
            "probability_high",
            "level",
            "note");

    private final Catalogue catalogue = Catalogue.standard();
    private final Map<String, SaturationCurve> curves = new ConcurrentHashMap<>();
    private final BulkVerdicts verdicts = new BulkVerdicts(this::curve, ChargeJudge.usual());

    /** Makes an answerer with the usual risks and expectations. */
    public VerdictRows() {}

    /**
     * Answers one row.
     *
     * @param row a row with the columns of {@link #INPUT} and any of {@link #OPTIONAL}
     * @return cells for the columns of {@link #OUTPUT}
     */
    public CsvAnswer answer(CsvRow row) {
        try {
            row.fault().ifPresent(fault -> {
                throw new IllegalArgumentException(fault + "; give each cell, empty where it has no value");
            });
            return cells(row, verdicts.answer(query(row)));
        } catch (RuntimeException e) {
            // Whatever stopped this row must not stop the others; the note carries it.
            return refused(row, e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage());
        }
    }

    private static VerdictQuery query(CsvRow row) {
        VerdictQuery.Builder query =
                VerdictQuery.of(row.raw("id"), row.required("refrigerant"), row.required("metering"));
        for (Cell cell : Cell.values()) {
            row.number(cell.column()).ifPresent(figure -> query.with(cell, figure));
        }
        flag(row, "outdoor_minimum_met").ifPresent(query::outdoorMinimumMet);
        return query.build();
    }

    private static Optional<Boolean> flag(CsvRow row, String column) {
        return row.text(column).map(cell -> switch (cell.toLowerCase(Locale.ROOT)) {
            case "true" -> true;
            case "false" -> false;
            default ->
                throw new IllegalArgumentException(
                        column + " " + Shown.quoted(cell) + " is not known; allowed: true, false");
        });
    }

    private static CsvAnswer cells(CsvRow row, VerdictAnswer answer) {
        if (answer.level().equals(VerdictAnswer.REFUSED)) {
            return refused(row, answer.note());
        }
        return new CsvAnswer(
                List.of(
                        row.raw("id"),
                        figure(answer.superheatK()),
                        figure(answer.subcoolingK()),
                        answer.judgedBy(),
                        figure(answer.targetK()),
                        figure(answer.deviationK()),
                        figure(answer.standardUncertaintyK()),
                        figure(answer.probabilityLow()),
                        figure(answer.probabilityOnTarget()),
                        figure(answer.probabilityHigh()),
                        answer.level(),
                        Shown.line(answer.note())),
                true);
    }

    private static CsvAnswer refused(CsvRow row, String reason) {
        List<String> cells = new ArrayList<>(List.of(row.raw("id")));
        while (cells.size() < OUTPUT.size() - 2) {
            cells.add("");
        }
        cells.addAll(List.of(VerdictAnswer.REFUSED, Shown.line(reason)));
        return new CsvAnswer(cells, false);
    }

    private static String figure(OptionalDouble value) {
        return value.isPresent() ? Printed.exact(value.getAsDouble()) : "";
    }

    private SaturationCurve curve(String designation) {
        Refrigerant refrigerant = catalogue.find(designation);
        return curves.computeIfAbsent(refrigerant.designation(), name -> SaturationCurves.of(refrigerant));
    }
}
