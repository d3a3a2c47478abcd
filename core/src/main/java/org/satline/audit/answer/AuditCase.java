package org.satline.audit.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Parts;

/**
 * A row that can be compared, understood and answered. Two are equal if they are the same row. Immutable, thread-safe.
 */
public final class AuditCase {
    /** Rounding of a unit conversion, relative. */
    private static final double CONVERSION = 1e-12;

    private static final String ROW_BASIS = "tolerance of the row";
    private static final String DIGITS_BASIS = "half of the last printed digit";

    private final AuditRow row;
    private final Fluid fluid;
    private final Question question;
    private final AnswerUnit unit;
    private final Atmosphere atmosphere;
    private final double rounding;
    private final double ours;
    private final Comparison comparison;
    private final Neighbours neighbours;
    private final String column;

    /**
     * Puts a row together.
     *
     * @param fluid its refrigerant
     * @param rounding half of the last printed digit of the answer, in its unit
     * @param ours our answer, SI
     * @param neighbours what stands in the rows beside it
     */
    AuditCase(
            AuditRow row,
            Fluid fluid,
            Question question,
            AnswerUnit unit,
            Atmosphere atmosphere,
            double rounding,
            double ours,
            Comparison comparison,
            Neighbours neighbours) {
        this.row = row;
        this.fluid = fluid;
        this.question = question;
        this.unit = unit;
        this.atmosphere = atmosphere;
        this.rounding = rounding;
        this.ours = ours;
        this.comparison = comparison;
        this.neighbours = neighbours;
        this.column = designation() + " " + question.quantity().label() + " " + comparison.unit();
    }

    /**
     * What a calculator would have printed that made a certain mistake.
     *
     * @param value the number, in the unit of the answer
     * @param width what it may differ from that, at least 0
     */
    public record Expected(double value, double width) {
        /** {@inheritDoc} */
        public Expected {
            Parts.numbers("value width", value, width);
        }

        /**
         * Tells whether what stands in a row is this.
         *
         * @param row the row
         * @return whether the answer lies within the width
         */
        public boolean holds(AuditCase row) {
            return Math.abs(row.comparison().answer() - value) <= width + CONVERSION * Math.abs(value);
        }
    }

    /**
     * Our answers beside a row.
     *
     * @param before to the row before of the same column
     * @param after to the row after
     */
    public record Neighbours(Optional<Expected> before, Optional<Expected> after) {
        static final Neighbours NONE = new Neighbours(Optional.empty(), Optional.empty());

        /** {@inheritDoc} */
        public Neighbours {
            Parts.required("before after", before, after);
        }
    }

    /** {@return the row as it came in} */
    public AuditRow row() {
        return row;
    }

    Fluid fluid() {
        return fluid;
    }

    /** {@return what was asked} */
    public Question question() {
        return question;
    }

    /** {@return the unit of the answer} */
    public AnswerUnit unit() {
        return unit;
    }

    /** {@return the atmosphere of the place} */
    public Atmosphere atmosphere() {
        return atmosphere;
    }

    /** {@return half of the last printed digit of the answer, in its unit} */
    public double rounding() {
        return rounding;
    }

    /** {@return our answer, SI} */
    public double ours() {
        return ours;
    }

    /** {@return both answers} */
    public Comparison comparison() {
        return comparison;
    }

    /** {@return what stands in the rows beside it} */
    public Neighbours neighbours() {
        return neighbours;
    }

    /** {@return the designation of the refrigerant} */
    public String designation() {
        return fluid.model().refrigerant().designation();
    }

    /** {@return what rows have in common that may be held against one another: refrigerant, quantity and unit} */
    public String column() {
        return column;
    }

    /** {@return whether the answer differs from ours by more than its digits} */
    public boolean isOdd() {
        return Math.abs(comparison.difference()) > rounding;
    }

    /**
     * Returns the same row in its place.
     *
     * @param others what stands beside it
     * @return the row
     */
    public AuditCase beside(Neighbours others) {
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

    /**
     * Answers another question about the same fluid.
     *
     * @param other the question
     * @return our answer, SI
     */
    public double answer(Question other) {
        return other.answer(fluid.points());
    }

    /**
     * Returns the answer of another model to the same question.
     *
     * @param other the model
     * @return the number, in the unit of the answer
     */
    public Expected expected(FluidModel other) {
        return new Expected(
                unit.fromSi(question.answer(other)), comparison.tolerance().width());
    }

    /**
     * Returns the same row had it asked something else.
     *
     * @param other the question
     * @return the row
     */
    public AuditCase asked(Question other) {
        double si = other.answer(fluid.points());
        return answered(other, si, tolerance(row.tolerance(), fluid, other, unit, si, rounding));
    }

    /**
     * Returns the same row had enthalpy and entropy counted from another state.
     *
     * @param reference the state
     * @return the row; empty where it does not exist for the refrigerant, and where it is the one that is in use
     */
    public Optional<AuditCase> from(ReferenceState reference) {
        return fluid.from(reference).map(model -> answered(question.answer(model)));
    }

    /**
     * Returns the same row had our answer been another one.
     *
     * @param si the answer, SI
     * @return the row
     */
    public AuditCase answered(double si) {
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

    /** {@return what stands in the row, had nothing else gone wrong} */
    public Expected plain() {
        return new Expected(comparison.ours(), comparison.tolerance().width());
    }

    /**
     * Returns our answer in another unit.
     *
     * @param other the unit
     * @return the number in that unit
     */
    public Expected in(AnswerUnit other) {
        return new Expected(
                other.fromSi(ours),
                tolerance(row.tolerance(), fluid, question, other, ours, rounding)
                        .width());
    }

    /**
     * Returns our answer moved.
     *
     * @param si by how much, SI
     * @return the number, in the unit of the answer
     */
    public Expected moved(double si) {
        return new Expected(unit.fromSi(ours + si), comparison.tolerance().width());
    }
}
