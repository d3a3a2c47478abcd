package org.satline.quantity;

import java.util.List;
import java.util.Objects;
import org.satline.SatlineException;

/** A text that is not a quantity of the kind asked for; says what is wrong with it and which units are accepted. */
public final class QuantityFormatException extends IllegalArgumentException implements SatlineException {
    private static final long serialVersionUID = 1L;

    /** Kind of quantity that was expected. */
    private final String quantity;
    /** Text as given. */
    private final String text;
    /** Symbols of the accepted units; an array, since not every list is serializable. */
    private final String[] acceptedUnits;

    QuantityFormatException(String quantity, String text, String problem, String advice, List<String> acceptedUnits) {
        super(quantity + " " + PlainText.quoted(text) + " " + problem + "; " + advice + "; accepted units: "
                + String.join(", ", acceptedUnits));
        this.quantity = Objects.requireNonNull(quantity, "quantity");
        this.text = text;
        this.acceptedUnits = acceptedUnits.toArray(new String[0]);
    }

    /**
     * The kind of quantity that was expected.
     *
     * @return its name, such as {@code pressure}
     */
    public String quantity() {
        return quantity;
    }

    /**
     * The text that could not be read.
     *
     * @return the text as it was given, whole
     */
    public String text() {
        return text;
    }

    /**
     * The units that would have been accepted.
     *
     * @return their symbols, in the order in which the message lists them
     */
    public List<String> acceptedUnits() {
        return List.of(acceptedUnits);
    }

    @Override
    public Origin origin() {
        return Origin.QUESTION;
    }
}
