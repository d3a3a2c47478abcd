package org.satline.saturation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.satline.equation.PairInteraction;
import org.satline.equation.PureEquation;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.ResourceFormatException;

/** Uncertainties of equations and pairs, read from their resources. Immutable. */
final class UncertaintyFigures {
    static final UncertaintyFigures STANDARD = new UncertaintyFigures();

    private static final String EQUATIONS = "vapour-pressure-uncertainty.csv";
    private static final String PAIRS = "pair-uncertainty.csv";

    /** Where nothing is stated; no source. */
    private static final double ASSUMED_STANDARD = 0.01 / SaturationBudget.COVERAGE_FACTOR;

    private final Map<String, Row> equations = new HashMap<>();
    private final List<Row> pairs;

    /**
     * A relative standard uncertainty and what it rests on.
     *
     * @param relative fraction of the pressure
     * @param basis statement or evidence
     */
    record Figure(double relative, String basis) {}

    private UncertaintyFigures() {
        for (Row row : CsvResource.read(
                        UncertaintyFigures.class, EQUATIONS, "designation", "percent", "above_K", "basis")
                .rows()) {
            if (equations.put(row.text("designation"), row) != null) {
                throw row.fault(row.text("designation") + " stands twice; leave one out");
            }
        }
        pairs = CsvResource.read(
                        UncertaintyFigures.class,
                        PAIRS,
                        "first",
                        "second",
                        "status",
                        "source",
                        "percent",
                        "gas_percent",
                        "basis")
                .rows();
    }

    /** Standard uncertainty of the vapour pressure of a substance, relative. */
    Figure equation(PureEquation equation, double temperature) {
        String designation = equation.constants().designation();
        Row row = equations.get(designation);
        if (row == null) {
            throw new ResourceFormatException(EQUATIONS, 0, designation + " has no row; add it there");
        }
        if (row.text("basis").equals("stated") && (row.isEmpty("above_K") || temperature >= row.number("above_K"))) {
            return new Figure(
                    row.percent("percent") / SaturationBudget.COVERAGE_FACTOR,
                    equation.source().citation() + ": " + equation.source().uncertainty());
        }
        return new Figure(
                ASSUMED_STANDARD,
                equation.source().citation() + ": nothing on record here for this state, 1 % assumed (no source)");
    }

    /**
     * Standard uncertainty of the bubble pressure of the equimolar mixture of a pair, relative.
     *
     * @param pair the interaction
     * @param gasDissolved whether the temperature lies above the critical temperature of one of the two
     */
    Figure pair(PairInteraction pair, boolean gasDissolved) {
        Row best = null;
        int detail = -1;
        for (Row row : pairs) {
            int d = detail(row, pair);
            if (d > detail) {
                best = row;
                detail = d;
            }
        }
        if (best == null) {
            throw new ResourceFormatException(
                    PAIRS, 0, "no row for status " + pair.status().word() + "; add it there");
        }
        String basis = best.text("basis") + (gasDissolved ? "; one of the two is a dissolved gas there" : "");
        return new Figure(best.percent(gasDissolved ? "gas_percent" : "percent"), basis);
    }

    private static int detail(Row row, PairInteraction pair) {
        if (!row.text("status").equals(pair.status().word())) {
            return -1;
        }
        if (!row.isEmpty("first")) {
            String a = row.text("first");
            String b = row.text("second");
            boolean same = a.equals(pair.first()) && b.equals(pair.second());
            boolean swapped = a.equals(pair.second()) && b.equals(pair.first());
            return same || swapped ? 2 : -1;
        }
        if (!row.isEmpty("source")) {
            return pair.source().contains(row.text("source")) ? 1 : -1;
        }
        return 0;
    }
}
