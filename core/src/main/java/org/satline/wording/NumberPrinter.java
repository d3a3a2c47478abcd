package org.satline.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.satline.measurement.ReportedValue;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;

/**
 * Writes numbers for people: in two units side by side, the same in every locale, with a point as decimal mark. Halves are rounded away
 * from zero, limits to their safe side. Immutable, thread-safe.
 */
public final class NumberPrinter {
    private static final String POUND = "lb";
    private static final int OUNCES_IN_POUND = 16;
    private static final int PLAIN_DIGITS = 4;
    private static final int UNCERTAINTY_DIGITS = 2;
    /**
     * Noise that conversions and a product or two leave in a double, relative: a limit of 24 lb may be 23.999999999999996 lb. Some fifty
     * roundings.
     */
    private static final double NOISE = 1e-14;
    /** Numbers on a scale with a shifted zero carry the noise of the absolute temperature, in degF or degC at most this. */
    private static final double SHIFTED_ZERO = 1000;

    private final UnitSystem first;
    private final int moreDecimals;

    private NumberPrinter(UnitSystem first, int moreDecimals) {
        this.first = first;
        this.moreDecimals = moreDecimals;
    }

    /**
     * Makes a printer.
     *
     * @param first which unit is printed first; the other one follows in brackets
     * @return the printer
     */
    public static NumberPrinter of(UnitSystem first) {
        Parts.required("first", first);
        return new NumberPrinter(first, 0);
    }

    /**
     * The same printer with one more digit, for derivations that somebody may want to follow with a calculator.
     *
     * @return the finer printer
     */
    public NumberPrinter finer() {
        return new NumberPrinter(first, moreDecimals + 1);
    }

    /**
     * Prints a quantity.
     *
     * @param quantity any quantity
     * @return such as {@code 14.30 lb (6.49 kg)}
     */
    public String print(Quantity<?> quantity) {
        return print(quantity, RoundingMode.HALF_UP);
    }

    /**
     * Prints an upper limit, in both units rounded to the smaller side.
     *
     * @param quantity any quantity
     * @return a figure that is not above the quantity
     */
    public String down(Quantity<?> quantity) {
        return print(quantity, RoundingMode.FLOOR);
    }

    /**
     * Prints a lower limit, in both units rounded to the larger side.
     *
     * @param quantity any quantity
     * @return a figure that is not below the quantity
     */
    public String up(Quantity<?> quantity) {
        return print(quantity, RoundingMode.CEILING);
    }

    String print(Quantity<?> quantity, RoundingMode rounding) {
        Parts.required("quantity", quantity);
        DualForm forms = DualForm.of(quantity);
        Form lead = forms.in(first);
        Form other = forms.in(first == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI);
        return number(quantity, lead, rounding) + " " + lead.unit() + " (" + number(quantity, other, rounding) + " "
                + other.bracketed() + ")";
    }

    private String number(Quantity<?> quantity, Form form, RoundingMode rounding) {
        double value = form.of(quantity);
        double scale = quantity instanceof Temperature ? Math.abs(value) + SHIFTED_ZERO : Math.abs(value);
        RoundingMode way = rounding;
        if (form.falling() && rounding == RoundingMode.FLOOR) {
            way = RoundingMode.CEILING;
        } else if (form.falling() && rounding == RoundingMode.CEILING) {
            way = RoundingMode.FLOOR;
        }
        return rounded(value, form.decimals() + moreDecimals, way, scale * NOISE);
    }

    private static String rounded(double value, int decimals, RoundingMode rounding, double noise) {
        BigDecimal exact = BigDecimal.valueOf(value);
        // 9.525 mm may be 9.524999999999999 mm; the last digit itself is no noise
        double nudge = Math.min(noise, BigDecimal.valueOf(1, decimals).doubleValue() / 4);
        BigDecimal nearest =
                BigDecimal.valueOf(value + Math.copySign(nudge, value)).setScale(decimals, RoundingMode.HALF_UP);
        if (rounding == RoundingMode.HALF_UP) {
            return nearest.toPlainString();
        }
        boolean withinNoise = nearest.subtract(exact).abs().doubleValue() <= nudge;
        return (withinNoise ? nearest : exact.setScale(decimals, rounding)).toPlainString();
    }

    /**
     * Prints a quantity with its expanded uncertainty, rounded as JCGM 100:2008 clause 7.2.6 asks: the uncertainty to two significant
     * digits, upward, the value to the same place, though to no finer one than its kind is printed to.
     *
     * @param quantity the value
     * @param expanded the expanded uncertainty, a difference of the same kind, not negative
     * @return such as {@code 16.1 +/- 1.3 degF (8.9 +/- 0.8 K)}
     * @throws org.satline.quantity.QuantityFormatException if the uncertainty is no difference of that kind
     */
    public String within(Quantity<?> quantity, Quantity<?> expanded) {
        Parts.required("quantity expanded", quantity, expanded);
        DualForm forms = DualForm.ofUncertain(quantity);
        Form lead = forms.in(first);
        Form other = forms.in(first == UnitSystem.SI ? UnitSystem.US : UnitSystem.SI);
        return within(quantity, doubt(quantity, expanded, lead, forms), lead) + " " + lead.unit() + " ("
                + within(quantity, doubt(quantity, expanded, other, forms), other) + " " + other.bracketed() + ")";
    }

    /** The uncertainty in the unit of the value. Microns are no unit of a difference here, and proportional to pascals. */
    private static double doubt(Quantity<?> quantity, Quantity<?> expanded, Form form, DualForm forms) {
        double doubt = form.difference().isEmpty()
                ? expanded.valueIn(forms.si().difference())
                        * form.of(quantity)
                        / forms.si().of(quantity)
                : expanded.valueIn(form.difference());
        return Math.abs(doubt);
    }

    private String within(Quantity<?> quantity, double doubt, Form form) {
        int finest = form.decimals() + moreDecimals;
        String upward = upward(doubt, finest);
        int decimals = Math.min(finest, UNCERTAINTY_DIGITS - wholeDigits(new BigDecimal(upward)));
        return BigDecimal.valueOf(form.of(quantity))
                        .setScale(doubt == 0 ? finest : decimals, RoundingMode.HALF_UP)
                        .toPlainString()
                + " +/- " + upward;
    }

    private static String upward(double doubt, int finest) {
        BigDecimal exact = BigDecimal.valueOf(doubt);
        int decimals = exact.signum() == 0 ? finest : Math.min(finest, UNCERTAINTY_DIGITS - wholeDigits(exact));
        BigDecimal once = new BigDecimal(rounded(doubt, decimals, RoundingMode.CEILING, doubt * NOISE));
        // 0.0996 became 0.100: three digits, one too many
        int fewer = once.signum() == 0 ? finest : Math.min(decimals, UNCERTAINTY_DIGITS - wholeDigits(once));
        return once.setScale(fewer, RoundingMode.CEILING).toPlainString();
    }

    /** Digits before the point; negative where zeros follow it. */
    private static int wholeDigits(BigDecimal number) {
        BigDecimal stripped = number.abs().stripTrailingZeros();
        return stripped.precision() - stripped.scale();
    }

    /**
     * Prints a value that was rounded with its uncertainty.
     *
     * @param value the value
     * @return such as {@code 5.8 +/- 1.3 K}
     */
    public String print(ReportedValue value) {
        return value.value().toPlainString() + " +/- " + value.expanded().toPlainString() + " " + value.unit();
    }

    /**
     * Prints a mass in whole pounds and ounces, as charging scales do, and in kilograms.
     *
     * @param mass the mass
     * @return such as {@code 5 lb 3.2 oz (2.36 kg)}
     */
    public String poundsAndOunces(Mass mass) {
        BigDecimal ounces = BigDecimal.valueOf(mass.ounces()).setScale(1, RoundingMode.HALF_UP);
        BigDecimal[] parts = ounces.divideAndRemainder(BigDecimal.valueOf(OUNCES_IN_POUND));
        String trade = parts[0].setScale(0, RoundingMode.UNNECESSARY).toPlainString() + " " + POUND + " "
                + parts[1].setScale(1, RoundingMode.UNNECESSARY).toPlainString() + " oz";
        String si = number(mass, DualForm.of(mass).si(), RoundingMode.HALF_UP) + " "
                + DualForm.of(mass).si().unit();
        return first == UnitSystem.SI ? si + " (" + trade + ")" : trade + " (" + si + ")";
    }

    /**
     * Prints a number without a type of quantity: four significant digits, all digits of a whole number.
     *
     * @param value finite
     * @param unit the unit; {@code 1} for a ratio or a count, which is not printed
     * @return number, space, unit
     * @throws IllegalArgumentException if the value is not finite
     */
    public String print(double value, String unit) {
        return print(value, unit, RoundingMode.HALF_UP);
    }

    String print(double value, String unit, RoundingMode rounding) {
        BigDecimal exact = BigDecimal.valueOf(finite(value, unit));
        // of the size alone: the Java of browsers counts the digits of a negative number otherwise
        int whole = exact.abs().precision() - exact.scale();
        int decimals = Math.max(0, PLAIN_DIGITS + moreDecimals - whole);
        String digits = trimmed(rounded(value, decimals, rounding, Math.abs(value) * NOISE));
        return unit.equals("1") ? digits : digits + " " + unit;
    }

    /** Drops zeros behind the point. */
    private static String trimmed(String digits) {
        int end = digits.length();
        if (digits.indexOf('.') >= 0) {
            while (digits.charAt(end - 1) == '0') {
                end--;
            }
            end -= digits.charAt(end - 1) == '.' ? 1 : 0;
        }
        String kept = digits.substring(0, end);
        return kept.equals("-0") ? "0" : kept;
    }

    /**
     * Prints a fraction in per cent. What is neither none nor all is never printed as such.
     *
     * @param fraction such as a probability; finite
     * @return such as {@code 93 %}, {@code 99.7 %} or {@code > 99.9 %}
     * @throws IllegalArgumentException if the fraction is not finite
     */
    public String percent(double fraction) {
        BigDecimal percent = BigDecimal.valueOf(finite(fraction, "1")).movePointRight(2);
        double size = percent.doubleValue();
        boolean nearNone = size > 0 && size < 1;
        boolean nearAll = size > 99 && size < 100;
        String digits = percent.setScale(nearNone || nearAll ? 1 : 0, RoundingMode.HALF_UP)
                .toPlainString();
        if (nearNone && size < 0.1) {
            return "< 0.1 %";
        }
        return nearAll && size > 99.9 ? "> 99.9 %" : digits + " %";
    }

    /**
     * Prints a time to wait or to run: seconds below two minutes, minutes below two hours, then hours and minutes. Upward, since less is
     * not enough.
     *
     * @param seconds 0 or more, s; finite
     * @return such as {@code 90 s}, {@code 15 min} or {@code 2 h 5 min}
     * @throws IllegalArgumentException if the time is negative or not finite
     */
    public String duration(double seconds) {
        if (!(seconds >= 0 && seconds <= Long.MAX_VALUE)) {
            throw new IllegalArgumentException("time " + seconds + " s is not finite and 0 s or more");
        }
        long whole = Long.parseLong(rounded(seconds, 0, RoundingMode.CEILING, seconds * NOISE));
        if (whole < 120) {
            return whole + " s";
        }
        long minutes = whole / 60 + (whole % 60 == 0 ? 0 : 1);
        if (minutes < 120) {
            return minutes + " min";
        }
        return minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
    }

    private static double finite(double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("number " + value + " " + unit + " is not finite; give a number");
        }
        return value;
    }
}
