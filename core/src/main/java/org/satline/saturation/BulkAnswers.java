package org.satline.saturation;

import java.util.Arrays;
import java.util.NoSuchElementException;
import java.util.Objects;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.Range;
import org.satline.quantity.OutOfValidityException;

/**
 * Answers to many questions of one curve: a value or a reason for each element, so that a bad one does not stop the others. Immutable,
 * thread-safe.
 *
 * <pre>{@code
 * BulkAnswers superheats = curve.superheats(pressuresPa, temperaturesK);
 * for (int i = 0; i < superheats.size(); i++) {
 *     if (superheats.status(i) == ElementStatus.ANSWERED) {
 *         sum += superheats.value(i); // K
 *     }
 * }
 * }</pre>
 */
public final class BulkAnswers {
    private final double[] values;
    private final ElementStatus[] statuses;
    private final String unit;

    private BulkAnswers(double[] values, ElementStatus[] statuses, String unit) {
        this.values = values;
        this.statuses = statuses;
        this.unit = unit;
    }

    /** The value of one element, asked for within the line only. */
    @FunctionalInterface
    interface Asked {
        double at(int element);
    }

    /** Answers each element whose input is a number within the line. */
    static BulkAnswers of(double[] inputs, Range line, String unit, Asked asked) {
        double[] values = new double[inputs.length];
        ElementStatus[] statuses = new ElementStatus[inputs.length];
        for (int i = 0; i < inputs.length; i++) {
            double at = inputs[i];
            statuses[i] = at >= line.low() && at <= line.high()
                    ? answered(values, i, asked)
                    : Double.isNaN(at) ? ElementStatus.NOT_GIVEN : ElementStatus.OUTSIDE;
        }
        return new BulkAnswers(values, statuses, unit);
    }

    private static ElementStatus answered(double[] values, int i, Asked asked) {
        try {
            double value = asked.at(i);
            if (Double.isNaN(value)) {
                return ElementStatus.NOT_GIVEN;
            }
            values[i] = value;
            return Double.isInfinite(value) ? ElementStatus.OUTSIDE : ElementStatus.ANSWERED;
        } catch (OutOfValidityException outside) {
            return ElementStatus.OUTSIDE;
        } catch (ConvergenceException notSolved) {
            return ElementStatus.NOT_CONVERGED;
        }
    }

    /**
     * Returns how many elements there are.
     *
     * @return as many as there were inputs
     */
    public int size() {
        return values.length;
    }

    /**
     * Tells how an element came out.
     *
     * @param element its index
     * @return its status
     * @throws IndexOutOfBoundsException if there is no such element
     */
    public ElementStatus status(int element) {
        return statuses[Objects.checkIndex(element, statuses.length)];
    }

    /**
     * Returns the value of an element.
     *
     * @param element its index
     * @return its value, in {@link #unit()}
     * @throws IndexOutOfBoundsException if there is no such element
     * @throws NoSuchElementException if it has no value; {@link #status} tells why
     */
    public double value(int element) {
        if (status(element) != ElementStatus.ANSWERED) {
            throw new NoSuchElementException("element " + element + " of " + size() + " has no value, it is "
                    + statuses[element] + "; ask status(" + element + ") first");
        }
        return values[element];
    }

    /**
     * Returns all values, with a figure of the caller's choice for elements that have none.
     *
     * @param instead stands for every element without a value; never a figure that could be taken for one
     * @return a new array
     */
    public double[] values(double instead) {
        double[] copy = values.clone();
        for (int i = 0; i < copy.length; i++) {
            if (statuses[i] != ElementStatus.ANSWERED) {
                copy[i] = instead;
            }
        }
        return copy;
    }

    /**
     * Counts the elements that came out so.
     *
     * @param status which outcome
     * @return how many
     */
    public int count(ElementStatus status) {
        Objects.requireNonNull(status, "status");
        return (int) Arrays.stream(statuses).filter(each -> each == status).count();
    }

    /**
     * Returns the unit of the values.
     *
     * @return its symbol, SI
     */
    public String unit() {
        return unit;
    }

    @Override
    public String toString() {
        return count(ElementStatus.ANSWERED) + " of " + size() + " elements answered, " + unit;
    }
}
