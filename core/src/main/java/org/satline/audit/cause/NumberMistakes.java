package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.satline.audit.answer.AnswerUnit;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditCase.Expected;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.answer.Dimension;
import org.satline.audit.answer.Question;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.audit.cause.Mistake.Code;
import org.satline.explanation.Figure;

/** The mistakes with the number that is printed: its unit, its form, its column. */
final class NumberMistakes {
    private static final List<String> GAUGE_UNITS =
            List.of("Pa gauge", "kPa gauge", "bar gauge", "MPa gauge", "psig", "inHg vacuum");
    /** Technical atmosphere, Pa: by definition the weight of a kilogram on a square centimetre (BIPM, SI Brochure, 8th ed., table 8). */
    private static final double KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE_PA = 98_066.5;
    /** Calorie of the International Table, times thousand, J (ISO 31-4:1992, annex B). */
    private static final double KILOCALORIE_J = 4186.8;

    private static final double[] FACTORS = {1000, 100, 10, 0.1, 0.01, 0.001};

    private final List<Slip.OfNumber> all = new ArrayList<>();

    private NumberMistakes() {
        units();
        forms();
        columns();
    }

    static List<Slip.OfNumber> all() {
        return List.copyOf(new NumberMistakes().all);
    }

    private void add(Kind kind, Code code, List<Figure> figures, Function<AuditCase, Optional<Expected>> effect) {
        all.add(new Slip.OfNumber(new Mistake(kind, code, figures), effect));
    }

    private static boolean is(AuditCase c, Dimension dimension) {
        return c.question().quantity().dimension() == dimension && !c.unit().isGauge();
    }

    private void units() {
        for (Dimension dimension : Dimension.values()) {
            boolean scale = dimension == Dimension.TEMPERATURE || dimension == Dimension.TEMPERATURE_DIFFERENCE;
            for (String unit : dimension.usual()) {
                unit(
                        scale ? Kind.CELSIUS_OR_FAHRENHEIT : Kind.UNIT,
                        unit,
                        c -> is(c, dimension),
                        c -> AnswerUnit.of(dimension, unit, c.atmosphere()));
            }
        }
        for (String unit : GAUGE_UNITS) {
            unit(
                    Kind.UNIT,
                    unit,
                    c -> Mistakes.pressure(c) && c.unit().isGauge(),
                    c -> AnswerUnit.of(Dimension.PRESSURE, unit, c.atmosphere()));
        }
        size(Dimension.PRESSURE, KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE_PA, "kgf/cm2");
        size(Dimension.ENTHALPY, KILOCALORIE_J, "kcal/kg");
        size(Dimension.ENTROPY, KILOCALORIE_J, "kcal/(kg K)");
        size(Dimension.HEAT_CAPACITY, KILOCALORIE_J, "kcal/(kg K)");
        add(
                Kind.CELSIUS_OR_FAHRENHEIT,
                Code.DIFFERENCE_AS_TEMPERATURE,
                List.of(),
                c -> c.question().quantity().dimension() == Dimension.TEMPERATURE_DIFFERENCE
                        ? Optional.of(c.in(AnswerUnit.ofDifferenceTakenForTemperature(
                                c.unit().spelling())))
                        : Optional.empty());
    }

    private void size(Dimension dimension, double si, String spelling) {
        AnswerUnit unit = AnswerUnit.ofSize(si, spelling);
        unit(Kind.UNIT, spelling, c -> is(c, dimension), c -> unit);
    }

    private void unit(Kind kind, String spelling, Predicate<AuditCase> applies, Function<AuditCase, AnswerUnit> unit) {
        add(
                kind,
                Code.OTHER_UNIT,
                List.of(Figure.of("unit", spelling)),
                c -> applies.test(c) ? Optional.of(c.in(unit.apply(c))) : Optional.empty());
    }

    private void forms() {
        for (double factor : FACTORS) {
            add(
                    Kind.NUMBER_FORM,
                    Code.DECIMAL_PLACE,
                    List.of(Figure.of("factor", Numbers.plain(factor))),
                    c -> Optional.of(c.in(c.unit().times(factor))));
        }
        for (String unit : Dimension.DENSITY.usual()) {
            add(
                    Kind.NUMBER_FORM,
                    Code.RECIPROCAL,
                    List.of(Figure.of("unit", "1/(" + unit + ")")),
                    c -> is(c, Dimension.DENSITY)
                            ? reciprocal(c, AnswerUnit.of(Dimension.DENSITY, unit, c.atmosphere()))
                            : Optional.empty());
        }
    }

    /** One over the number; its width is that of the number itself, carried over, and the rounding of what is printed. */
    private static Optional<Expected> reciprocal(AuditCase c, AnswerUnit unit) {
        Expected number = c.in(unit);
        double one = 1 / number.value();
        double stated = Math.max(0, number.width() - c.rounding());
        return Optional.of(new Expected(one, stated * one * one + c.rounding()));
    }

    private void columns() {
        for (AuditedQuantity other : AuditedQuantity.values()) {
            for (String unit : other.dimension().usual()) {
                add(
                        Kind.PLACE_IN_TABLE,
                        Code.OTHER_COLUMN,
                        List.of(Figure.of("quantity", other.label()), Figure.of("unit", unit)),
                        c -> column(c, other, unit));
            }
        }
    }

    private static Optional<Expected> column(AuditCase c, AuditedQuantity other, String unit) {
        AuditedQuantity own = c.question().quantity();
        if (other.dimension() == own.dimension()) {
            return Optional.empty();
        }
        Question asked = c.question().of(other);
        asked.check();
        return Optional.of(c.asked(asked).in(AnswerUnit.of(other.dimension(), unit, c.atmosphere())));
    }
}
