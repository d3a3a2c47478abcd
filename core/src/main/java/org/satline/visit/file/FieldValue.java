package org.satline.visit.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.quantity.Parts;

/**
 * A visit file or report as plain data, whatever it is stored in: texts, numbers, flags, lists, and fields by name. It knows no file format
 * and no library; a thin adapter for each turns one into the other. Immutable, thread-safe.
 */
public sealed interface FieldValue {
    /**
     * A text.
     *
     * @param value the text
     */
    record Text(String value) implements FieldValue {
        /** {@inheritDoc} */
        public Text {
            Parts.required("value", value);
        }
    }

    /**
     * A bare number.
     *
     * @param value finite
     */
    record Plain(double value) implements FieldValue {
        /** {@inheritDoc} */
        public Plain {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("number " + value + " is not finite; leave the field out instead");
            }
        }
    }

    /**
     * True or false.
     *
     * @param value the flag
     */
    record Flag(boolean value) implements FieldValue {}

    /** Nothing, where a file says so outright. */
    record Nothing() implements FieldValue {}

    /**
     * A list.
     *
     * @param values in order
     */
    record Items(List<FieldValue> values) implements FieldValue {
        /** {@inheritDoc} */
        public Items {
            values = Parts.list("values", values);
        }
    }

    /**
     * Fields by name.
     *
     * @param values in the order in which they are written, unmodifiable
     */
    record Fields(Map<String, FieldValue> values) implements FieldValue {
        /** {@inheritDoc} */
        public Fields {
            Parts.required("values", values);
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
            values.forEach((name, value) -> Parts.required("name value", name, value));
        }
    }
}
