package org.satline.audit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.satline.audit.AuditOutcome.NotComparable;
import org.satline.audit.AuditOutcome.Reason;
import org.satline.equation.MissingEquationException;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Atmosphere;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.UnknownRefrigerantException;

/**
 * Compares answers of another calculator with the equations of the library. Thread-safe; keeps the refrigerants it has prepared, so use one
 * for many rows.
 *
 * <p>An answer is within tolerance if it differs by no more than the tolerance of its row; where the row gives none, by no more than the
 * expanded uncertainty (coverage factor 2) of our value plus half of the last printed digit. Composition tolerances of blends do not count:
 * both calculators mean the nominal blend. Gauge answers count from the atmosphere of ISO 2533 at the altitude of the row, sea level where
 * it gives none.
 *
 * <p>Causes are searched on at most 120 of the rows outside of each refrigerant and 120 of those within, evenly spaced in quantity and
 * temperature or pressure; what is found there is counted on all of them. A mistake is named if it explains at least three rows and a third
 * of those left to which it could apply, with a chance of coincidence of at most 3 % (1 % where two are made at once, or for another
 * refrigerant), or fewer rows with one of at most 1 in 10000; see {@link LikelyCause#coincidence()}. Where no row is outside, yet all
 * differ
 * in the way of a mistake by more than their digits, it is named with a chance of at most 1 in 1000.
 */
public final class Auditor {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d++(?:\\.\\d*+)?|\\.\\d++)([eE][+-]?\\d{1,3})?");
    private static final int LONGEST_NUMBER = 60;

    private final ReferenceState reference;
    private final Catalogue catalogue = Catalogue.standard();
    private final Map<String, Fluid> fluids = new ConcurrentHashMap<>();
    private final CauseFinder causes;

    private Auditor(ReferenceState reference) {
        this.reference = reference;
        this.causes = new CauseFinder(catalogue, reference);
    }

    /**
     * Returns an auditor that expects enthalpy and entropy from the IIR reference state.
     *
     * @return an auditor
     */
    public static Auditor standard() {
        return of(ReferenceState.IIR);
    }

    /**
     * Returns an auditor that expects another reference state of enthalpy and entropy. A refrigerant for which it does not exist keeps its
     * default one.
     *
     * @param reference the reference state
     * @return an auditor
     */
    public static Auditor of(ReferenceState reference) {
        return new Auditor(Objects.requireNonNull(reference, "reference"));
    }

    /**
     * Compares rows and looks for the causes of differences.
     *
     * @param rows the rows
     * @return one outcome for each row, in the same order, and a summary that does not depend on the order
     */
    public AuditReport audit(List<AuditRow> rows) {
        List<AuditOutcome> outcomes = new ArrayList<>();
        AuditSummary summary = audit(
                taker -> rows.forEach(row -> taker.accept(new AuditSource.Entry(row, Optional.empty()))),
                audited -> outcomes.add(audited.outcome()));
        return new AuditReport(outcomes, summary);
    }

    /**
     * Compares rows that need not fit into memory and looks for the causes of differences. Of each row a few sums are kept and of each
     * refrigerant some hundred rows. The rows are read twice, on all processors.
     *
     * @param source the rows
     * @param taker takes each row with what became of it, in order, once all have been read
     * @return a summary that does not depend on the order
     */
    public AuditSummary audit(AuditSource source, Consumer<AuditedRow> taker) {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(taker, "taker");
        Gathering gathering = new Gathering();
        Pass.over(source, this::heard, gathering::add);
        Tally tally = gathering.searched(causes);
        Pass.Counting counting = new Pass.Counting(tally, taker);
        Pass.over(source, this::heard, counting::add);
        counting.finish();
        return gathering.summary(tally);
    }

    /**
     * Compares one row.
     *
     * @param row the row
     * @return what became of it
     */
    public AuditOutcome compare(AuditRow row) {
        return heard(new AuditSource.Entry(row, Optional.empty())).outcome();
    }

    private Heard heard(AuditSource.Entry entry) {
        AuditRow row = entry.row();
        if (entry.fault().isPresent()) {
            return Heard.refused(
                    new NotComparable(row, Reason.ROW_UNREADABLE, entry.fault().get()));
        }
        try {
            return Heard.of(understood(row));
        } catch (Obstacle e) {
            return Heard.refused(new NotComparable(row, e.reason, String.valueOf(e.getMessage())));
        }
    }

    private AuditCase understood(AuditRow row) {
        Fluid fluid = fluid(row.refrigerant());
        AuditedQuantity quantity = tried(
                Reason.QUANTITY_UNKNOWN,
                () -> AuditedQuantity.ofLabel(row.quantity().strip()));
        BigDecimal printed = printed(row.answer().strip());
        Atmosphere atmosphere = tried(
                Reason.CONDITION_UNUSABLE,
                () -> row.altitude().map(Atmosphere::atAltitude).orElseGet(Atmosphere::standard));
        row.tolerance().ifPresent(Auditor::requireUsable);
        AnswerUnit unit = tried(
                Reason.UNIT_UNKNOWN,
                () -> AnswerUnit.of(quantity.dimension(), row.unit().strip(), atmosphere));
        Question question = new Question(quantity, row.temperatureK(), row.pressurePa());
        tried(Reason.QUESTION_UNCLEAR, () -> {
            question.check();
            return question;
        });
        double ours = tried(Reason.OUTSIDE_RANGE, () -> finite(question, question.answer(fluid.points())));
        double rounding = printed.ulp().doubleValue() / 2;
        AuditTolerance tolerance = tried(
                Reason.OUTSIDE_RANGE,
                () -> AuditCase.tolerance(row.tolerance(), fluid, question, unit, ours, rounding));
        double inUnit = unit.fromSi(ours);
        double answer = printed.doubleValue();
        Comparison comparison = new Comparison(answer, inUnit, answer - inUnit, tolerance, unit.spelling());
        return new AuditCase(
                row, fluid, question, unit, atmosphere, rounding, ours, comparison, AuditCase.Neighbours.NONE);
    }

    private Fluid fluid(String name) {
        try {
            Refrigerant refrigerant = catalogue.find(name);
            if (!refrigerant.hasComposition()) {
                throw new Obstacle(
                        Reason.NO_EQUATION,
                        refrigerant.designation() + " has no fixed composition; nothing to compute");
            }
            return fluids.computeIfAbsent(refrigerant.designation(), key -> Fluid.of(refrigerant, reference));
        } catch (UnknownRefrigerantException e) {
            throw new Obstacle(Reason.REFRIGERANT_UNKNOWN, String.valueOf(e.getMessage()));
        } catch (MissingEquationException e) {
            throw new Obstacle(Reason.NO_EQUATION, String.valueOf(e.getMessage()));
        } catch (IllegalArgumentException | ConvergenceException e) {
            throw new Obstacle(Reason.OUTSIDE_RANGE, String.valueOf(e.getMessage()));
        }
    }

    private static BigDecimal printed(String text) {
        if (text.length() > LONGEST_NUMBER || !DECIMAL.matcher(text).matches()) {
            String shown = text.length() > LONGEST_NUMBER ? text.substring(0, LONGEST_NUMBER) + "..." : text;
            throw new Obstacle(
                    Reason.ANSWER_UNREADABLE,
                    "answer \"" + shown
                            + "\" is not a decimal number; write it like 101.3 or 1.2e5, with its unit apart");
        }
        BigDecimal printed = new BigDecimal(text);
        if (!(Math.abs(printed.doubleValue()) < Double.POSITIVE_INFINITY)) {
            throw new Obstacle(Reason.ANSWER_UNREADABLE, "answer " + text + " is too large for a double");
        }
        return printed;
    }

    private static void requireUsable(double tolerance) {
        if (!(tolerance >= 0 && tolerance < Double.POSITIVE_INFINITY)) {
            throw new Obstacle(
                    Reason.CONDITION_UNUSABLE,
                    "tolerance " + tolerance + " is not finite and at least 0; give it in the unit of the answer");
        }
    }

    private static double finite(Question question, double value) {
        if (!(Math.abs(value) < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(question.quantity().label() + " has no finite value at "
                    + question.words() + "; ask for another state");
        }
        return value;
    }

    private interface Attempt<T> {
        T get();
    }

    private static <T> T tried(Reason reason, Attempt<T> attempt) {
        try {
            return attempt.get();
        } catch (IllegalArgumentException | ConvergenceException e) {
            throw new Obstacle(reason, String.valueOf(e.getMessage()));
        }
    }

    /** Ends the reading of a row; never leaves this class. */
    private static final class Obstacle extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final Reason reason;

        Obstacle(Reason reason, String message) {
            super(message, null, false, false);
            this.reason = reason;
        }
    }
}
