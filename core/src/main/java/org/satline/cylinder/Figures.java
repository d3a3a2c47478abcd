package org.satline.cylinder;

import java.util.Locale;

/** How the numbers of the derivations are written: SI first, the trade's unit after it. */
final class Figures {
    private static final double POUND_KG = 0.45359237;
    private static final double PSI_PA = 6894.757293168361;

    private Figures() {}

    static String mass(double kilograms) {
        return String.format(Locale.ROOT, "%.3f kg (%.2f lb)", kilograms, kilograms / POUND_KG);
    }

    static String density(double kilogramsPerCubicMetre) {
        return String.format(Locale.ROOT, "%.2f kg/m3", kilogramsPerCubicMetre);
    }

    static String volume(double cubicMetres) {
        return String.format(Locale.ROOT, "%.3f L", cubicMetres * 1000);
    }

    static String temperature(double kelvins) {
        double celsius = kelvins - 273.15;
        return String.format(Locale.ROOT, "%.2f degC (%.1f degF)", celsius, celsius * 1.8 + 32);
    }

    static String pressure(double pascals) {
        return String.format(Locale.ROOT, "%.1f kPa (%.1f psi)", pascals / 1000, pascals / PSI_PA);
    }

    static String gauge(double pascals) {
        return String.format(Locale.ROOT, "%.1f kPa (%.1f psig)", pascals / 1000, pascals / PSI_PA);
    }

    static String plain(double value) {
        return String.format(Locale.ROOT, "%.4g", value);
    }
}
