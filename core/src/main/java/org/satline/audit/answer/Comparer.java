package org.satline.audit.answer;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.satline.audit.answer.AuditOutcome.NotComparable;
import org.satline.audit.answer.AuditOutcome.Reason;
import org.satline.equation.MissingEquationException;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.UnknownRefrigerantException;

/** Reads single rows and answers their questions; keeps the refrigerants it has prepared. Thread-safe. */
public final class Comparer {
    private static final Pattern DECIMAL = Pattern.compile("[+-]?(\\d++(?:\\.\\d*+)?|\\.\\d++)([eE][+-]?\\d{1,3})?");
    private static final int LONGEST_NUMBER = 60;
    private static final int MOST_SPELLINGS = 1000;

    private final Catalogue catalogue = Catalogue.standard();
    private final ReferenceState reference;
    private final Map<String, Fluid> fluids = new ConcurrentHashMap<>();
    /** By the names and units that rows spell, so many of them as a file can reasonably hold. */
    private final Map<String, Fluid> named = new ConcurrentHashMap<>();

    private final Map<Spelling, AnswerUnit> units = new ConcurrentHashMap<>();

    /** A unit as rows spell it. */
    private record Spelling(Dimension dimension, String unit, Optional<Length> altitude) {}

    /**
     * Makes one.
     *
     * @param reference where enthalpy and entropy count from; a refrigerant for which it does not exist keeps its default one
     */
    public Comparer(ReferenceState reference) {
        Parts.required("reference", reference);
        this.reference = reference;
    }

    /**
     * Compares a row.
     *
     * @param row the row
     * @return what became of it
     */
    public Heard compare(AuditRow row) {
        Parts.required("row", row);
        try {
            return Heard.of(understood(row));
        } catch (Obstacle e) {
            return Heard.refused(new NotComparable(row, e.reason, String.valueOf(e.getMessage())));
        }
    }

    private AuditCase understood(AuditRow row) {
        Fluid fluid = kept(named, row.refrigerant(), this::fluid);
        AuditedQuantity quantity = tried(
                Reason.QUANTITY_UNKNOWN,
                () -> AuditedQuantity.ofLabel(row.quantity().strip()));
        BigDecimal printed = printed(row.answer().strip());
        Atmosphere atmosphere = tried(
                Reason.CONDITION_UNUSABLE,
                () -> row.altitude().map(Atmosphere::atAltitude).orElseGet(Atmosphere::standard));
        row.tolerance().ifPresent(Comparer::requireUsable);
        AnswerUnit unit = tried(
                Reason.UNIT_UNKNOWN,
                () -> kept(
                        units,
                        new Spelling(quantity.dimension(), row.unit(), row.altitude()),
                        key -> AnswerUnit.of(quantity.dimension(), row.unit().strip(), atmosphere)));
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

    private static <K, V> V kept(Map<K, V> map, K key, Function<K, V> make) {
        V there = map.get(key);
        if (there != null) {
            return there;
        }
        V made = make.apply(key);
        if (map.size() < MOST_SPELLINGS) {
            map.put(key, made);
        }
        return made;
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
