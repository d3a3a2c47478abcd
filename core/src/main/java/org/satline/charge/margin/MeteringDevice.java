package org.satline.charge.margin;

import java.util.Locale;
import java.util.Objects;
import org.satline.explanation.Coded;
import org.satline.quantity.PlainText;

/** What meters the refrigerant into the evaporator; it decides which quantity shows the charge. */
public enum MeteringDevice implements Coded {
    /** Thermostatic or electronic expansion valve: holds the superheat, so the charge shows in the subcooling. */
    EXPANSION_VALVE(Criterion.SUBCOOLING),
    /** Fixed orifice, piston or capillary tube: the charge shows in the superheat. */
    FIXED_ORIFICE(Criterion.SUPERHEAT);

    private final Criterion judgedBy;

    MeteringDevice(Criterion judgedBy) {
        this.judgedBy = judgedBy;
    }

    /**
     * Name in files.
     *
     * @return {@code expansion-valve} or {@code fixed-orifice}
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The quantity that shows the charge.
     *
     * @return subcooling with an expansion valve, superheat with a fixed orifice
     */
    public Criterion judgedBy() {
        return judgedBy;
    }

    /**
     * Finds the device by its name in files.
     *
     * @param label {@code expansion-valve} or {@code fixed-orifice}
     * @return the device
     * @throws IllegalArgumentException if it is neither
     */
    public static MeteringDevice ofLabel(String label) {
        Objects.requireNonNull(label, "label");
        for (MeteringDevice device : values()) {
            if (device.label().equals(label)) {
                return device;
            }
        }
        throw new IllegalArgumentException(
                "metering device " + PlainText.quoted(label) + " is not known; use expansion-valve or fixed-orifice");
    }
}
