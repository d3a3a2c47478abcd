package org.satline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.equilibrium.FluidModel;
import org.satline.quantity.Atmosphere;

/**
 * A row that can be compared, understood and answered. Immutable.
 *
 * @param row the row
 * @param fluid its refrigerant
 * @param question what was asked
 * @param unit the unit of the answer
 * @param atmosphere the atmosphere of the place
 * @param rounding half of the last printed digit of the answer, in its unit
 * @param ours our answer, SI
 * @param comparison both answers
 * @param neighbours what stands in the rows beside it
 */
record AuditCase(
        AuditRow row,
        Fluid fluid,
        Question question,
        AnswerUnit unit,
        Atmosphere atmosphere,
        double rounding,
        double ours,
        Comparison comparison,
        Neighbours neighbours) {
    /** Rounding of a unit conversion, relative. */
    private static final double CONVERSION = 1e-12;

    private static final String ROW_BASIS = "tolerance of the row";
    private static final String DIGITS_BASIS = "half of the last printed digit";

    /** What a calculator would have printed that made a certain mistake, and what it may differ from that. */
    record Expected(double value, double width) {
        /** Whether what stands in a row is this. */
        boolean holds(AuditCase row) {
            return Math.abs(row.comparison().answer() - value) <= width + CONVERSION * Math.abs(value);
        }
    }

    /** What our answers are to the row before and the row after of the same column. */
    record Neighbours(Optional<Expected> before, Optional<Expected> after) {
        static final Neighbours NONE = new Neighbours(Optional.empty(), Optional.empty());
    }

    String designation() {
        return fluid.model().refrigerant().designation();
    }

    /** Rows that may be held against one another: of the same quantity in the same unit. */
    String column() {
        return question.quantity().label() + " " + comparison.unit();
    }

    /** Whether the answer differs from ours by more than its digits. */
    boolean isOdd() {
        return Math.abs(comparison.difference()) > rounding;
    }

    /** The same row in its place. */
    AuditCase beside(Neighbours others) {
        return new AuditCase(row, fluid, question, unit, atmosphere, rounding, ours, comparison, others);
    }

    /** The tolerance of an answer to a question, in a unit. */
    static AuditTolerance tolerance(
            OptionalDouble users, Fluid fluid, Question question, AnswerUnit unit, double si, double rounding) {
        if (users.isPresent()) {
            return AuditTolerance.of(
                    List.of(new AuditTolerance.Share(AuditTolerance.Origin.USER, users.getAsDouble(), ROW_BASIS)));
        }
        StatedUncertainty.Figure stated = fluid.uncertainty().of(question, si);
        List<AuditTolerance.Share> shares = new ArrayList<>();
        shares.add(new AuditTolerance.Share(stated.origin(), unit.width(stated.width()), stated.basis()));
        shares.add(new AuditTolerance.Share(AuditTolerance.Origin.PRINTED_DIGITS, rounding, DIGITS_BASIS));
        return AuditTolerance.of(shares);
    }

    /** Answer to another question, in another unit, of the same fluid. */
    Expected expected(Question other, AnswerUnit otherUnit) {
        double si = other.answer(fluid.points());
        return new Expected(
                otherUnit.fromSi(si),
                tolerance(row.tolerance(), fluid, other, otherUnit, si, rounding)
                        .width());
    }

    /** Answer to the same question in the same unit, from another model. */
    Expected expected(FluidModel other) {
        return new Expected(
                unit.fromSi(question.answer(other)), comparison.tolerance().width());
    }

    /** The same row had it asked something else. */
    AuditCase asked(Question other) {
        double si = other.answer(fluid.points());
        return answered(other, si, tolerance(row.tolerance(), fluid, other, unit, si, rounding));
    }

    /** The same row had our answer been another one, SI. */
    AuditCase answered(double si) {
        return answered(question, si, comparison.tolerance());
    }

    private AuditCase answered(Question other, double si, AuditTolerance width) {
        double value = unit.fromSi(si);
        return new AuditCase(
                row,
                fluid,
                other,
                unit,
                atmosphere,
                rounding,
                si,
                new Comparison(comparison.answer(), value, comparison.answer() - value, width, comparison.unit()),
                neighbours);
    }

    /** What stands in the row, had nothing else gone wrong. */
    Expected plain() {
        return new Expected(comparison.ours(), comparison.tolerance().width());
    }

    /** Our answer in another unit. */
    Expected in(AnswerUnit other) {
        return new Expected(
                other.fromSi(ours),
                tolerance(row.tolerance(), fluid, question, other, ours, rounding)
                        .width());
    }

    /** Our answer moved by an amount in SI. */
    Expected moved(double si) {
        return new Expected(unit.fromSi(ours + si), comparison.tolerance().width());
    }
}
