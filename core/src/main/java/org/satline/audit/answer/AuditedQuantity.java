package org.satline.audit.answer;

import java.util.Arrays;
import java.util.Collections;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.satline.quantity.PlainText;

/** What an answer can be about. The names in files are these in lower case. */
public enum AuditedQuantity {
    /** Bubble-point pressure at a temperature. */
    BUBBLE_PRESSURE(Given.TEMPERATURE, Dimension.PRESSURE),
    /** Dew-point pressure at a temperature. */
    DEW_PRESSURE(Given.TEMPERATURE, Dimension.PRESSURE),
    /** Bubble-point temperature at a pressure. */
    BUBBLE_TEMPERATURE(Given.PRESSURE, Dimension.TEMPERATURE),
    /** Dew-point temperature at a pressure. */
    DEW_TEMPERATURE(Given.PRESSURE, Dimension.TEMPERATURE),
    /** Dew-point less bubble-point temperature at a pressure. */
    GLIDE(Given.PRESSURE, Dimension.TEMPERATURE_DIFFERENCE),
    /** Density of the liquid at its bubble point. */
    BUBBLE_LIQUID_DENSITY(Given.TEMPERATURE_OR_PRESSURE, Dimension.DENSITY),
    /** Specific enthalpy of the liquid at its bubble point. */
    BUBBLE_LIQUID_ENTHALPY(Given.TEMPERATURE_OR_PRESSURE, Dimension.ENTHALPY),
    /** Specific entropy of the liquid at its bubble point. */
    BUBBLE_LIQUID_ENTROPY(Given.TEMPERATURE_OR_PRESSURE, Dimension.ENTROPY),
    /** Specific isobaric heat capacity of the liquid at its bubble point. */
    BUBBLE_LIQUID_ISOBARIC_HEAT_CAPACITY(Given.TEMPERATURE_OR_PRESSURE, Dimension.HEAT_CAPACITY),
    /** Speed of sound in the liquid at its bubble point. */
    BUBBLE_LIQUID_SPEED_OF_SOUND(Given.TEMPERATURE_OR_PRESSURE, Dimension.SPEED),
    /** Density of the vapour at its dew point. */
    DEW_VAPOUR_DENSITY(Given.TEMPERATURE_OR_PRESSURE, Dimension.DENSITY),
    /** Specific enthalpy of the vapour at its dew point. */
    DEW_VAPOUR_ENTHALPY(Given.TEMPERATURE_OR_PRESSURE, Dimension.ENTHALPY),
    /** Specific entropy of the vapour at its dew point. */
    DEW_VAPOUR_ENTROPY(Given.TEMPERATURE_OR_PRESSURE, Dimension.ENTROPY),
    /** Specific isobaric heat capacity of the vapour at its dew point. */
    DEW_VAPOUR_ISOBARIC_HEAT_CAPACITY(Given.TEMPERATURE_OR_PRESSURE, Dimension.HEAT_CAPACITY),
    /** Speed of sound in the vapour at its dew point. */
    DEW_VAPOUR_SPEED_OF_SOUND(Given.TEMPERATURE_OR_PRESSURE, Dimension.SPEED),
    /** Density of one phase. */
    DENSITY(Given.TEMPERATURE_AND_PRESSURE, Dimension.DENSITY),
    /** Specific enthalpy of one phase. */
    ENTHALPY(Given.TEMPERATURE_AND_PRESSURE, Dimension.ENTHALPY),
    /** Specific entropy of one phase. */
    ENTROPY(Given.TEMPERATURE_AND_PRESSURE, Dimension.ENTROPY),
    /** Specific isobaric heat capacity of one phase. */
    ISOBARIC_HEAT_CAPACITY(Given.TEMPERATURE_AND_PRESSURE, Dimension.HEAT_CAPACITY),
    /** Speed of sound in one phase. */
    SPEED_OF_SOUND(Given.TEMPERATURE_AND_PRESSURE, Dimension.SPEED);

    /** What the quantity is found from. */
    public enum Given {
        /** A temperature alone. */
        TEMPERATURE,
        /** A pressure alone. */
        PRESSURE,
        /** One of the two, not both: on a saturation line they fix each other. */
        TEMPERATURE_OR_PRESSURE,
        /** Both. */
        TEMPERATURE_AND_PRESSURE
    }

    private static final Map<String, AuditedQuantity> BY_LABEL = Collections.unmodifiableMap(
            Arrays.stream(values()).collect(Collectors.toMap(AuditedQuantity::label, each -> each)));

    private static final String BUBBLE = "BUBBLE_";
    private static final String DEW = "DEW_";

    private final Given given;
    private final Dimension dimension;
    private final String label = name().toLowerCase(Locale.ROOT);

    AuditedQuantity(Given given, Dimension dimension) {
        this.given = given;
        this.dimension = dimension;
    }

    /**
     * Returns what it is found from.
     *
     * @return which of temperature and pressure
     */
    public Given given() {
        return given;
    }

    /**
     * Returns the unit in which the library computes it.
     *
     * @return an SI unit
     */
    public String siUnit() {
        return dimension.siUnit();
    }

    /**
     * Returns the name in files.
     *
     * @return such as {@code bubble_pressure}
     */
    public String label() {
        return label;
    }

    /** {@return what kind of unit it has} */
    public Dimension dimension() {
        return dimension;
    }

    boolean onBubbleLine() {
        return name().startsWith(BUBBLE);
    }

    /** {@return whether it lies on a line at all and belongs to one of them} */
    public boolean onOneLine() {
        return onBubbleLine() || name().startsWith(DEW);
    }

    /** {@return the same quantity of the other line: what comes out when bubble and dew, or liquid and vapour, are mixed up} */
    public Optional<AuditedQuantity> twin() {
        if (!onOneLine()) {
            return Optional.empty();
        }
        String twin = onBubbleLine()
                ? name().replace("BUBBLE_LIQUID_", "DEW_VAPOUR_").replace(BUBBLE, DEW)
                : name().replace("DEW_VAPOUR_", "BUBBLE_LIQUID_").replace(DEW, BUBBLE);
        return Optional.of(valueOf(twin));
    }

    /**
     * Finds a quantity by its name in files.
     *
     * @param label such as {@code bubble_pressure}
     * @return the quantity
     * @throws IllegalArgumentException if there is none of that name; the message lists them
     */
    public static AuditedQuantity ofLabel(String label) {
        Objects.requireNonNull(label, "label");
        AuditedQuantity found = BY_LABEL.get(label);
        if (found != null) {
            return found;
        }
        throw new IllegalArgumentException("quantity " + PlainText.quoted(label) + " is not known; allowed: "
                + Arrays.stream(values()).map(AuditedQuantity::label).collect(Collectors.joining(", ")));
    }
}
