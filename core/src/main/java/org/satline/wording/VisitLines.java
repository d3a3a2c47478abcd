package org.satline.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.satline.explanation.Coded;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.quantity.Parts;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.visit.VisitReport;

/**
 * What a person beside the running unit reads first: the lines that matter, each a field of the report, then the plan step by step, what is
 * to be supplied, and why. Limits are rounded so that never more is moved than was worked out. Immutable, thread-safe.
 *
 * @param top the lines that matter, the heaviest first; at most {@link #MOST_ROWS} rows of {@link #COLUMNS} columns together
 * @param plan what is done, phase by phase; empty where no hand is to be moved
 * @param supply what is to be supplied, by the names of the fields
 * @param because what decided the action, in full, the heaviest first
 */
public record VisitLines(List<Line> top, List<Phase> plan, List<String> supply, List<String> because) {
    /** The most columns of a row. */
    public static final int COLUMNS = 80;
    /** The most rows of the lines that matter. */
    public static final int MOST_ROWS = 12;
    /** Columns of the name of a line, with the blanks behind it. */
    public static final int NAME_COLUMNS = 10;

    static final int TEXT_COLUMNS = COLUMNS - NAME_COLUMNS;

    /** What a line tells; the order is that of the lines. */
    public enum Topic implements Coded {
        /** Something dangerous and what to do about it. */
        DANGER,
        /** What is done next. */
        ACTION,
        /** Why nothing moves. */
        REASON,
        /** Level of the charge with its chance. */
        LEVEL,
        /** How much is moved. */
        AMOUNT,
        /** Through which port and valve, in which phase. */
        PATH,
        /** Reading of the scale at which this step ends. */
        STOP_READING,
        /** Reading at which to stop whatever happens. */
        NEVER_PASS,
        /** Whether the hose is ready. */
        HOSE,
        /** How long to wait. */
        WAIT,
        /** What to read then. */
        READ_THEN,
        /** What is to be supplied first. */
        SUPPLY,
        /** One of the two cautions that matter most. */
        CAUTION
    }

    /**
     * One of the lines that matter.
     *
     * @param topic what it tells
     * @param name its name, as it is printed before the text
     * @param rows the text, in rows that fit beside the name
     */
    public record Line(Topic topic, String name, List<String> rows) {
        /** {@inheritDoc} */
        public Line {
            Parts.required("topic name", topic, name);
            rows = Parts.list("rows", rows);
        }

        /**
         * The text in one piece.
         *
         * @return its rows, with blanks between
         */
        public String text() {
            return String.join(" ", rows);
        }
    }

    /**
     * A phase of the plan.
     *
     * @param name what it is for
     * @param acts what is done, in order
     * @param notes what to heed meanwhile
     */
    public record Phase(String name, List<String> acts, List<String> notes) {
        /** {@inheritDoc} */
        public Phase {
            Parts.required("name", name);
            acts = Parts.list("acts", acts);
            notes = Parts.list("notes", notes);
        }
    }

    /** {@inheritDoc} */
    public VisitLines {
        top = Parts.list("top", top);
        plan = Parts.list("plan", plan);
        supply = Parts.list("supply", supply);
        because = Parts.list("because", because);
    }

    /**
     * Puts a report into lines.
     *
     * @param report the report
     * @param wording the reader's language and units
     * @return the lines
     */
    public static VisitLines of(VisitReport report, Wording wording) {
        Parts.required("report wording", report, wording);
        return new VisitLineWriter(report, wording).written();
    }

    /**
     * The lines that matter alone.
     *
     * @param report the report
     * @param wording language and units
     * @return the same lines as those of {@link #of}, in the same order
     */
    public static List<Line> top(VisitReport report, Wording wording) {
        Parts.required("report wording", report, wording);
        return new VisitLineWriter(report, wording).top();
    }

    /**
     * Dangers of a visit that cannot be read as a whole.
     *
     * @param dangers what the readable part shows
     * @param wording the reader's language and units
     * @return a line for each
     */
    public static List<Line> dangers(List<Finding> dangers, Wording wording) {
        Parts.required("dangers wording", dangers, wording);
        List<Line> lines = new ArrayList<>();
        for (Finding each : dangers) {
            lines.add(new Line(
                    Topic.DANGER,
                    wording.name(Topic.DANGER),
                    RowBreaker.rows(brief(each, wording), TEXT_COLUMNS, Integer.MAX_VALUE)));
        }
        return lines;
    }

    /**
     * The parts that make a plan possible, in words.
     *
     * @param none why there is no plan
     * @param wording the reader's language and units
     * @return their names, joined; the word that none was found where there is none
     */
    public static String parts(HookUpPlan.NoPlan none, Wording wording) {
        Parts.required("none wording", none, wording);
        return none.parts().isEmpty()
                ? wording.message("plan.noPart")
                : none.parts().stream().map(wording::name).collect(Collectors.joining("; "));
    }

    /** The short text of a finding: what is wrong and what to do; the full one where none is written. */
    static String brief(Finding finding, Wording wording) {
        if (finding.code() == CommonCode.NOT_GIVEN) {
            return wording.message(
                    "brief.notGiven",
                    Figure.of("field", wording.field(finding.subject().name())));
        }
        String key = "brief." + finding.code().word();
        return wording.has(key) ? wording.message(key, finding.figures().toArray(new Figure[0])) : wording.of(finding);
    }
}
