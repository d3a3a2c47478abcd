package org.satline.quantity;

import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;

/** What all values of one kind of quantity share: units, lower bound, how they are read and printed. Immutable. */
final class QuantityKind {
    private static final int LONGEST_TEXT = 400;
    private static final int MOST_DECIMALS = 15;
    /** Below the largest double by more than any two units differ: in no unit does a value turn infinite. */
    private static final double LARGEST_SI = 1e300;

    private final String name;
    private final List<Unit> units;
    private final UnitSpellings spellings;
    private final boolean inHundredths;
    private final Floor floor;

    /** Lower bound in SI, whether it may be reached, and what to do about a value under it. */
    private record Floor(double si, boolean included, String advice) {
        boolean admits(double value) {
            return included ? value >= si : value > si;
        }
    }

    private QuantityKind(String name, List<Unit> units, UnitSpellings spellings, boolean inHundredths, Floor floor) {
        this.name = name;
        this.units = List.copyOf(units);
        this.spellings = spellings;
        this.inHundredths = inHundredths;
        this.floor = floor;
    }

    static QuantityKind of(String name, Unit... units) {
        return of(name, List.of(units));
    }

    static QuantityKind of(String name, List<Unit> units) {
        Floor none = new Floor(Double.NEGATIVE_INFINITY, true, "");
        return new QuantityKind(name, units, UnitSpellings.of(units), false, none);
    }

    QuantityKind from(double lowestSi, String advice) {
        return new QuantityKind(name, units, spellings, inHundredths, new Floor(lowestSi, true, advice));
    }

    QuantityKind above(double lowestSi, String advice) {
        return new QuantityKind(name, units, spellings, inHundredths, new Floor(lowestSi, false, advice));
    }

    QuantityKind inHundredths() {
        return new QuantityKind(name, units, spellings, true, floor);
    }

    QuantityKind refusing(String advice, String... ambiguous) {
        return new QuantityKind(name, units, spellings.refusing(advice, List.of(ambiguous)), inHundredths, floor);
    }

    List<Unit> units() {
        return units;
    }

    /** The coherent unit of this kind: its numbers are the SI values. */
    Unit siUnit() {
        return units.stream()
                .filter(Unit::isSi)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(name + " has no SI unit"));
    }

    /** SI value of a number in a unit: finite, and not under the floor of this kind. */
    double toSi(double value, Unit unit) {
        double si = unit.toSi(value) + 0.0;
        if (!(Math.abs(si) <= LARGEST_SI)) {
            throw new IllegalArgumentException(
                    written(value, unit) + " is not a finite number, or too large; check the reading");
        }
        if (!floor.admits(si)) {
            String bound = unit.fromSi(floor.si()) + " " + unit.symbol();
            String relation = floor.included() ? " is below " : " is not above ";
            throw new IllegalArgumentException(written(value, unit) + relation + bound + "; " + floor.advice());
        }
        return si;
    }

    private String written(double value, Unit unit) {
        return name + " " + value + " " + unit.symbol();
    }

    String print(double si, Unit unit) {
        double value = unit.fromSi(si);
        return (inHundredths ? Decimals.hundredths(value) : Decimals.significant(value)) + " " + unit.symbol();
    }

    String print(double si, Unit unit, int decimals) {
        if (!(decimals >= 0 && decimals <= MOST_DECIMALS)) {
            throw new IllegalArgumentException(
                    "number of decimals " + decimals + " is outside [0, " + MOST_DECIMALS + "]");
        }
        return Decimals.fixed(unit.fromSi(si), decimals) + " " + unit.symbol();
    }

    /** The unit of a spelling. */
    Unit unit(String spelling) {
        Objects.requireNonNull(spelling, "unit");
        return unit(spelling, spelling);
    }

    /** SI value of a text {@code number unit}. */
    double parse(String text) {
        Written reading = read(text);
        return toSi(reading.value(), reading.unit());
    }

    /** Splits a text {@code number unit}. */
    Written read(String text) {
        Objects.requireNonNull(text, "text");
        if (text.length() > LONGEST_TEXT) {
            throw error(text, "is longer than " + LONGEST_TEXT + " characters", "write a number and a unit");
        }
        String spaced =
                ReadingPatterns.SPACES.matcher(text).replaceAll(" ").strip().replace('\u2212', '-');
        if (spaced.isEmpty()) {
            throw error(text, "is empty", "write a number and a unit");
        }
        if (ReadingPatterns.NUMBER_WITH_COMMA.matcher(spaced).matches()) {
            throw error(text, "has a comma in its number", "use a point as decimal mark and no thousands separator");
        }
        Matcher parts = ReadingPatterns.NUMBER_THEN_UNIT.matcher(spaced);
        if (!parts.matches()) {
            throw error(text, "does not start with a decimal number", "write a number and a unit");
        }
        String unit = parts.group(2);
        if (unit.isEmpty()) {
            throw error(text, "has no unit", "write one after the number");
        }
        return new Written(Double.parseDouble(parts.group(1)), unit(unit, text));
    }

    private Unit unit(String spelling, String text) {
        return spellings.unit(spelling).orElseThrow(() -> unusable(spelling, text));
    }

    private QuantityFormatException unusable(String spelling, String text) {
        String quoted = PlainText.quoted(spelling);
        return spellings
                .adviceAgainst(spelling)
                .map(advice -> error(text, "has the unit " + quoted + ", which does not serve here", advice))
                .orElseGet(() -> error(text, "has the unknown unit " + quoted, "use one of the accepted units"));
    }

    private QuantityFormatException error(String text, String problem, String advice) {
        List<String> symbols = units.stream().map(Unit::symbol).toList();
        return new QuantityFormatException(name, text, problem, advice, symbols);
    }
}
