package org.satline.program.exercise;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Evaluates the printed numbers of a step. A printed number stands for all that round to it, so that a sum of them is an interval.
 * Units are taken to SI; a temperature keeps its scale.
 */
final class PrintedSum {
    /** Factors to SI: NIST SP 811 (2008), appendix B.8. */
    private static final Map<String, Double> UNITS = Map.ofEntries(
            Map.entry("kPa gauge", 1e3),
            Map.entry("kPa", 1e3),
            Map.entry("psia", 6894.757293168),
            Map.entry("psig", 6894.757293168),
            Map.entry("psi", 6894.757293168),
            Map.entry("in3", 0.0254 * 0.0254 * 0.0254),
            Map.entry("in", 0.0254),
            Map.entry("ft3", 0.028316846592),
            Map.entry("ft", 0.3048),
            Map.entry("m3", 1.0),
            Map.entry("mm", 1e-3),
            Map.entry("m", 1.0),
            Map.entry("L", 1e-3),
            Map.entry("lb/ft3", 16.01846337396),
            Map.entry("kg/m3", 1.0),
            Map.entry("lb", 0.45359237),
            Map.entry("oz", 0.028349523125),
            Map.entry("kg", 1.0),
            Map.entry("g", 1e-3),
            Map.entry("degF/lb", 1 / 0.45359237),
            Map.entry("K/lb", 1 / 0.45359237),
            Map.entry("K/kg", 1.0),
            Map.entry("degF/kg", 1.0),
            Map.entry("degF", 1.0),
            Map.entry("degC", 1.0),
            Map.entry("K", 1.0));

    private static final Pattern NUMBER =
            Pattern.compile("(\\d+(?:\\.\\d+)?)(?: ((?:kPa gauge|[A-Za-z]+[0-9]?(?:/[A-Za-z]+[0-9]?)?)))?");

    /** All that a sum may come to. */
    record Interval(double low, double high) {
        boolean meets(Interval other) {
            double dust = 1e-9 * Math.max(Math.abs(high), Math.abs(other.high));
            return low <= other.high + dust && other.low <= high + dust;
        }

        private Interval with(Interval other, DoubleBinaryOperator sum) {
            double a = sum.applyAsDouble(low, other.low);
            double b = sum.applyAsDouble(low, other.high);
            double c = sum.applyAsDouble(high, other.low);
            double d = sum.applyAsDouble(high, other.high);
            return new Interval(Math.min(Math.min(a, b), Math.min(c, d)), Math.max(Math.max(a, b), Math.max(c, d)));
        }
    }

    private final String text;
    private int at;

    private PrintedSum(String text) {
        this.text = text;
    }

    /** What a text comes to; nothing where it is no sum of numbers. */
    static Optional<Interval> of(String text) {
        PrintedSum sum = new PrintedSum(text.strip());
        try {
            Interval found = sum.sum();
            return sum.at == sum.text.length() ? Optional.of(found) : Optional.empty();
        } catch (IllegalArgumentException noSum) {
            return Optional.empty();
        }
    }

    private boolean take(String token) {
        if (text.startsWith(token, at)) {
            at += token.length();
            return true;
        }
        return false;
    }

    private Interval sum() {
        Interval left = product();
        while (true) {
            if (take(" + ")) {
                left = left.with(product(), Double::sum);
            } else if (take(" - ")) {
                left = left.with(product(), (a, b) -> a - b);
            } else {
                return left;
            }
        }
    }

    private Interval product() {
        Interval left = power();
        while (true) {
            if (take(" x ")) {
                left = left.with(power(), (a, b) -> a * b);
            } else if (take(" / ") || take("/")) {
                left = left.with(power(), (a, b) -> a / b);
            } else {
                return left;
            }
        }
    }

    private Interval power() {
        Interval base = atom();
        return take("^") ? base.with(atom(), Math::pow) : base;
    }

    private Interval atom() {
        if (take("-")) {
            return new Interval(0, 0).with(atom(), (a, b) -> a - b);
        }
        if (take("pi")) {
            return new Interval(Math.PI, Math.PI);
        }
        boolean root = take("sqrt");
        if (take("(")) {
            Interval inside = sum();
            if (!take(")")) {
                throw new IllegalArgumentException(text);
            }
            return root ? inside.with(inside, (a, b) -> Math.sqrt(Math.max(0, a))) : inside;
        }
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (!number.lookingAt()) {
            throw new IllegalArgumentException(text);
        }
        BigDecimal printed = new BigDecimal(number.group(1));
        String unit = number.group(2);
        Double factor = unit == null || unit.equals("x") ? Double.valueOf(1) : UNITS.get(unit);
        if (factor == null) {
            throw new IllegalArgumentException(unit);
        }
        at = unit == null || unit.equals("x") ? number.end(1) : number.end();
        // a whole number may be exact, such as a power or a count
        double half = printed.scale() > 0 ? printed.ulp().doubleValue() / 2 : 0;
        double value = printed.doubleValue();
        return new Interval((value - half) * factor, (value + half) * factor);
    }
}
