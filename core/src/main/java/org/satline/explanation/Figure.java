package org.satline.explanation;

import org.satline.quantity.Parts;
import org.satline.quantity.Quantity;

/**
 * A named number or word within a derivation or a finding, so that whoever prints it chooses unit, digits and language. Immutable,
 * thread-safe.
 */
public sealed interface Figure {
    /**
     * What it is, as a word of the data, such as {@code limit}.
     *
     * @return camel case, the key under which texts find it
     */
    String name();

    /**
     * A number with a dimension.
     *
     * @param name what it is
     * @param value the quantity
     */
    record Amount(String name, Quantity<?> value) implements Figure {
        /** {@inheritDoc} */
        public Amount {
            Parts.required("name value", name, value);
        }
    }

    /**
     * A number without a type of quantity of its own.
     *
     * @param name what it is
     * @param value finite
     * @param unit such as {@code min}; {@code 1} for a ratio or a count
     */
    record Plain(String name, double value, String unit) implements Figure {
        /** {@inheritDoc} */
        public Plain {
            Parts.required("name unit", name, unit);
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException(name + " " + value + " " + unit + " is not finite; give a number");
            }
        }
    }

    /**
     * A word: a designation, a mark, a date, a name.
     *
     * @param name what it is
     * @param value as it is printed
     */
    record Word(String name, String value) implements Figure {
        /** {@inheritDoc} */
        public Word {
            Parts.required("name value", name, value);
        }
    }

    /**
     * Makes a figure of a quantity.
     *
     * @param name what it is
     * @param value the quantity
     * @return the figure
     */
    static Figure of(String name, Quantity<?> value) {
        return new Amount(name, value);
    }

    /**
     * Makes a figure of a number in a unit.
     *
     * @param name what it is
     * @param value finite
     * @param unit the unit; {@code 1} for a ratio or a count
     * @return the figure
     */
    static Figure of(String name, double value, String unit) {
        return new Plain(name, value, unit);
    }

    /**
     * Makes a figure of a word.
     *
     * @param name what it is
     * @param value as it is printed
     * @return the figure
     */
    static Figure of(String name, String value) {
        return new Word(name, value);
    }
}
