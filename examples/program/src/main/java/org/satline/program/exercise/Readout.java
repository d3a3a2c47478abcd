package org.satline.program.exercise;

import org.satline.explanation.Figure;
import org.satline.program.page.Printed;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Wording;

/** What instruments of one family of units show, and the units that answers are asked in. Immutable, thread-safe. */
record Readout(UnitSystem system, Wording words) {
    /** Of a chart printed six centimetres high, a millimetre either way, as a share of the pressure that is read. */
    private static final double MILLIMETRE = 0.03;

    /** A text of the exercises; what stands in it in the order of the English one, as {@code {a}}, {@code {b}} and so on. */
    String say(String key, Object... values) {
        return said(words, key, values);
    }

    static String said(Wording words, String key, Object... values) {
        Figure[] figures = new Figure[values.length];
        for (int i = 0; i < values.length; i++) {
            figures[i] = Figure.of(String.valueOf((char) ('a' + i)), String.valueOf(values[i]));
        }
        return words.message(key, figures);
    }

    boolean us() {
        return system == UnitSystem.US;
    }

    Readout other() {
        return new Readout(us() ? UnitSystem.SI : UnitSystem.US, words);
    }

    String temperatureUnit() {
        return us() ? "degF" : "degC";
    }

    String differenceUnit() {
        return us() ? "degF" : "K";
    }

    String absoluteUnit() {
        return us() ? "psia" : "kPa";
    }

    String pressureDifferenceUnit() {
        return us() ? "psi" : "kPa";
    }

    String massUnit() {
        return us() ? "lb" : "kg";
    }

    /** Digits that a pressure of the table and of an answer has: 0.1 psi or 1 kPa. */
    int pressureDecimals() {
        return us() ? 1 : 0;
    }

    Given<Temperature> temperature(String name, Temperature value) {
        String text = value.in(temperatureUnit(), 1);
        return new Given<>(name, text, Temperature.parse(text));
    }

    Given<TemperatureDifference> difference(String name, TemperatureDifference value) {
        String text = value.in(differenceUnit(), 1);
        return new Given<>(name, text, TemperatureDifference.parse(text));
    }

    /** A maker's figure: whole degrees Fahrenheit or halves of a kelvin. */
    Given<TemperatureDifference> target(String name, TemperatureDifference value) {
        String text = us()
                ? TemperatureDifference.ofFahrenheitDegrees(Math.rint(value.fahrenheitDegrees()))
                        .in(differenceUnit(), 0)
                : TemperatureDifference.ofKelvins(Math.rint(value.kelvins() * 2) / 2)
                        .in(differenceUnit(), 1);
        return new Given<>(name, text, TemperatureDifference.parse(text));
    }

    /** A gauge reading of what is exactly this pressure: 0.1 psi or 1 kPa; 0.1 inHg or 0.1 kPa below the atmosphere. */
    Given<GaugePressure> gauge(String name, Pressure value, Atmosphere atmosphere) {
        GaugePressure exact = value.gauge(atmosphere);
        String text;
        if (exact.pascals() >= 0) {
            text = exact.in(us() ? "psig" : "kPa gauge", pressureDecimals());
        } else {
            text = us() ? exact.in("inHg vacuum", 1) : exact.in("kPa gauge", 1);
        }
        return new Given<>(name, text, GaugePressure.parse(text));
    }

    Given<Pressure> absolute(String name, Pressure value) {
        String text = value.in(absoluteUnit(), pressureDecimals());
        return new Given<>(name, text, Pressure.parse(text));
    }

    Given<PressureDifference> pressureDifference(String name, PressureDifference value) {
        String text = value.in(pressureDifferenceUnit(), pressureDecimals());
        return new Given<>(name, text, PressureDifference.parse(text));
    }

    Given<Mass> mass(String name, Mass value) {
        String text = value.in(massUnit(), 2);
        return new Given<>(name, text, Mass.parse(text));
    }

    /** A mass that a small scale shows: 0.01 lb or 5 g. */
    Given<Mass> smallMass(String name, Mass value) {
        String text = us()
                ? value.in("lb", 2)
                : Mass.ofKilograms(Math.rint(value.kilograms() * 200) / 200).in("kg", 3);
        return new Given<>(name, text, Mass.parse(text));
    }

    int smallMassDecimals() {
        return us() ? 2 : 3;
    }

    Given<Length> altitude(Length value) {
        String text = us() ? hundreds(value.feet()) + " ft" : hundreds(value.metres()) + " m";
        return new Given<>(say("exercise.altitude-of-the-site"), text, Length.parse(text));
    }

    private static String hundreds(double value) {
        return Printed.figure("%d", Math.round(value / 50) * 50);
    }

    /** The atmosphere at sea level, as a given with as many digits as matter. */
    Given<Atmosphere> seaLevel() {
        String text = us() ? "14.696 psia" : "101.325 kPa";
        return new Given<>(say("exercise.local-atmosphere"), text, Atmosphere.measured(Pressure.parse(text)));
    }

    /** A barometer on site. */
    Given<Atmosphere> barometer(Pressure value) {
        String text = us() ? value.in("psia", 2) : value.in("kPa", 1);
        return new Given<>(
                say("exercise.barometer-on-site-not-reduced"), text, Atmosphere.measured(Pressure.parse(text)));
    }

    double number(Temperature value) {
        return us() ? value.fahrenheit() : value.celsius();
    }

    double number(TemperatureDifference value) {
        return us() ? value.fahrenheitDegrees() : value.kelvins();
    }

    double number(Pressure value) {
        return us() ? value.psia() : value.kilopascals();
    }

    double number(PressureDifference value) {
        return us() ? value.psi() : value.kilopascals();
    }

    double number(Mass value) {
        return us() ? value.pounds() : value.kilograms();
    }

    String text(Temperature value) {
        return value.in(temperatureUnit(), 2);
    }

    String text(TemperatureDifference value) {
        return value.in(differenceUnit(), 2);
    }

    String text(Pressure value) {
        return value.in(absoluteUnit(), us() ? 2 : 1);
    }

    String text(PressureDifference value) {
        return value.in(pressureDifferenceUnit(), us() ? 2 : 1);
    }

    String text(Mass value) {
        return value.in(massUnit(), 3);
    }

    /** An answer that is read from a table: a student may interpolate and round a little differently. */
    Answer.Figure answer(Temperature value) {
        return Answer.Figure.of(number(value), 1, temperatureUnit(), us() ? 0.3 : 0.2);
    }

    Answer.Figure answer(TemperatureDifference value) {
        return Answer.Figure.of(number(value), 1, differenceUnit(), us() ? 0.3 : 0.2);
    }

    /** An answer from a chart, in whole units. */
    Answer.Figure charted(Pressure value) {
        return Answer.Figure.of(number(value), 0, absoluteUnit(), Math.ceil(number(value) * MILLIMETRE));
    }

    /** An answer from the table, to the digits of the table. */
    Answer.Figure answer(Pressure value) {
        return Answer.Figure.of(number(value), pressureDecimals(), absoluteUnit(), us() ? 0.3 : 2);
    }
}
