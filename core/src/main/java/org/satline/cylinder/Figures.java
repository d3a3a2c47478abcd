package org.satline.cylinder;

import java.util.Locale;
import org.satline.quantity.MassDifference;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/** How the numbers of the derivations are written: SI first, the trade's unit after it. */
final class Figures {
    private Figures() {}

    static String mass(double kilograms) {
        return String.format(
                Locale.ROOT,
                "%.3f kg (%.2f lb)",
                kilograms,
                MassDifference.ofKilograms(kilograms).pounds());
    }

    static String density(double kilogramsPerCubicMetre) {
        return String.format(Locale.ROOT, "%.2f kg/m3", kilogramsPerCubicMetre);
    }

    static String volume(double cubicMetres) {
        return String.format(Locale.ROOT, "%.3f L", cubicMetres * 1000);
    }

    static String temperature(double kelvins) {
        Temperature temperature = Temperature.ofKelvins(kelvins);
        return String.format(Locale.ROOT, "%.2f degC (%.1f degF)", temperature.celsius(), temperature.fahrenheit());
    }

    static String pressure(double pascals) {
        return String.format(
                Locale.ROOT,
                "%.1f kPa (%.1f psi)",
                pascals / 1000,
                PressureDifference.ofPascals(pascals).psi());
    }

    static String gauge(double pascals) {
        return String.format(
                Locale.ROOT,
                "%.1f kPa (%.1f psig)",
                pascals / 1000,
                PressureDifference.ofPascals(pascals).psi());
    }

    static String plain(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }
}
