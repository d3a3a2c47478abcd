package org.satline.audit.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.audit.answer.AuditOutcome.Compared;
import org.satline.audit.answer.AuditOutcome.NotComparable;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/** A row that was answered, or the reason why not; its steps are made when they are asked for. Immutable, thread-safe. */
public final class Heard {
    private final Optional<AuditCase> made;
    private final Optional<AuditOutcome> told;

    private Heard(Optional<AuditCase> made, Optional<AuditOutcome> told) {
        this.made = made;
        this.told = told;
    }

    static Heard of(AuditCase made) {
        return new Heard(Optional.of(made), Optional.empty());
    }

    /** {@return the same with its outcome made} */
    public Heard told() {
        return new Heard(made, Optional.of(outcome()));
    }

    /**
     * Returns what became of a row that cannot be compared.
     *
     * @param reason why not
     * @return a row without an answer
     */
    public static Heard refused(NotComparable reason) {
        Parts.required("reason", reason);
        return new Heard(Optional.empty(), Optional.of(reason));
    }

    /** {@return the row where it can be compared} */
    public Optional<AuditCase> made() {
        return made;
    }

    /** {@return what became of the row, with its steps} */
    public AuditOutcome outcome() {
        return told.orElseGet(() -> compared(made.orElseThrow()));
    }

    /**
     * Returns the outcome of a row that can be compared.
     *
     * @param made the row
     * @return both answers and how ours was found
     */
    public static Compared compared(AuditCase made) {
        return new Compared(made.row(), made.designation(), made.comparison(), steps(made));
    }

    private static List<Step> steps(AuditCase made) {
        Comparison c = made.comparison();
        AuditedQuantity quantity = made.question().quantity();
        List<Step> steps = new ArrayList<>();
        boolean line = quantity.given() != AuditedQuantity.Given.TEMPERATURE_AND_PRESSURE;
        steps.add(new Step(
                "auditAnswer",
                line ? "f_i(liquid) = f_i(vapour)" : "p(T, rho) = p",
                given(made),
                Figure.of("ours", made.ours(), quantity.siUnit()),
                made.fluid().source()));
        if (made.unit().isGauge()) {
            steps.add(new Step(
                    "gaugeReading",
                    "p_gauge = p - p_atmosphere",
                    List.of(
                            Figure.of("p", made.ours(), "Pa"),
                            Figure.of("p_atmosphere", made.atmosphere().pressure())),
                    Figure.of("p_gauge", c.ours(), c.unit()),
                    made.atmosphere().description()));
        }
        if (quantity.dimension().countsFromReference()) {
            steps.add(new Step(
                    "referenceState",
                    "",
                    List.of(),
                    Figure.of("state", made.fluid().model().referenceState().description()),
                    "convention"));
        }
        for (AuditTolerance.Share share : c.tolerance().shares()) {
            steps.add(new Step(
                    "toleranceShare",
                    "",
                    List.of(Figure.of("origin", share.origin().word())),
                    Figure.of("width", share.width(), c.unit()),
                    share.basis()));
        }
        steps.add(new Step(
                "auditDifference",
                "difference = answer - ours <= tolerance",
                List.of(
                        Figure.of("answer", c.answer(), c.unit()),
                        Figure.of("ours", c.ours(), c.unit()),
                        Figure.of("tolerance", c.tolerance().width(), c.unit())),
                Figure.of("difference", c.difference(), c.unit()),
                "arithmetic"));
        return steps;
    }

    private static List<Figure> given(AuditCase made) {
        Question question = made.question();
        List<Figure> given = new ArrayList<>();
        given.add(Figure.of("quantity", question.quantity().label()));
        given.add(Figure.of("refrigerant", made.fluid().model().refrigerant().designation()));
        question.temperatureK().ifPresent(kelvins -> given.add(Figure.of("T", Temperature.ofKelvins(kelvins))));
        question.pressurePa().ifPresent(pascals -> given.add(Figure.of("p", Pressure.ofPascals(pascals))));
        return given;
    }
}
