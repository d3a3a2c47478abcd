package org.satline.program.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.satline.measurement.ReportedValue;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;

/** Prints figures: the only place of the program that turns numbers into text, with a decimal point in every country. */
public final class Printed {
    private static final MathContext GIVEN_DIGITS = new MathContext(12);

    private Printed() {}

    /**
     * Prints figures into a sentence.
     *
     * @param format as of {@link String#format(String, Object...)}
     * @param values what goes in
     * @return the text
     */
    public static String figure(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }

    /**
     * Prints a figure for other programs.
     *
     * @param value any finite number
     * @return 15 significant digits
     */
    public static String exact(double value) {
        return figure("%.15g", value);
    }

    /**
     * Prints a figure as it was given, without the digits that a sum in binary adds.
     *
     * @param value any finite number
     * @return at most 12 significant digits, no trailing zeros, no exponent
     */
    public static String given(double value) {
        return new BigDecimal(value).round(GIVEN_DIGITS).stripTrailingZeros().toPlainString();
    }

    /**
     * Prints a value with its uncertainty.
     *
     * @param value rounded already
     * @return such as 8.9 +/- 1.9 K
     */
    public static String figure(ReportedValue value) {
        return value.value().toPlainString() + " +/- " + value.expanded().toPlainString() + " " + value.unit();
    }

    /**
     * Prints a limit rounded down, so that the printed figure is never above the one computed.
     *
     * @param value any finite number
     * @param decimals digits behind the point
     * @return the figure
     */
    public static String down(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.FLOOR).toPlainString();
    }

    /**
     * Prints a temperature in the unit of the trade and in SI.
     *
     * @param t the temperature
     * @return such as 39.4 degF (4.1 degC)
     */
    public static String both(Temperature t) {
        return figure("%.1f degF (%.1f degC)", t.fahrenheit(), t.celsius());
    }

    /**
     * Prints an absolute pressure in the unit of the trade and in SI.
     *
     * @param p the pressure
     * @return such as 132.2 psia (911.2 kPa)
     */
    public static String both(Pressure p) {
        return figure("%.1f psia (%.1f kPa)", p.psia(), p.kilopascals());
    }

    /**
     * Prints a difference of pressures in the unit of the trade and in SI.
     *
     * @param p the difference
     * @return such as 12.0 psi (82.7 kPa)
     */
    public static String both(PressureDifference p) {
        return figure("%.1f psi (%.1f kPa)", p.psi(), p.kilopascals());
    }

    /**
     * Prints a mass in the unit of the trade and in SI.
     *
     * @param m the mass
     * @return such as 7.05 lb (3.20 kg)
     */
    public static String both(Mass m) {
        return figure("%.2f lb (%.2f kg)", m.pounds(), m.kilograms());
    }

    /**
     * Prints a limit in the unit of the trade and in SI, rounded down, so that the printed figure is never above the one computed.
     *
     * @param m the limit
     * @return such as 7.05 lb (3.19 kg)
     */
    public static String bothDown(Mass m) {
        return figure("%.2f lb (%.2f kg)", Math.floor(m.pounds() * 100) / 100, Math.floor(m.kilograms() * 100) / 100);
    }
}
