package org.satline.program.pictures;

import java.util.Locale;
import org.satline.equilibrium.ReferenceState;
import org.satline.explanation.Figure;
import org.satline.program.drawing.Axis;
import org.satline.program.page.Printed;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Units and words of a picture. Immutable, thread-safe. */
public final class PictureUnits {
    /** Degrees Celsius, kPa, kJ/kg; in English. */
    public static final PictureUnits SI = of(UnitSystem.SI, Language.ENGLISH);
    /** Degrees Fahrenheit, psia, Btu/lb; in English. */
    public static final PictureUnits US = of(UnitSystem.US, Language.ENGLISH);

    private final boolean si;
    private final Wording words;
    private final String temperature;
    private final String pressure;
    private final String enthalpy;

    private PictureUnits(boolean si, Wording words) {
        this.si = si;
        this.words = words;
        this.temperature = si ? "\u00b0C" : "\u00b0F";
        this.pressure = si ? "kPa" : "psia";
        this.enthalpy = si ? "kJ/kg" : "Btu/lb";
    }

    /**
     * Units of a system in a language.
     *
     * @param system SI: degrees Celsius, kPa, kJ/kg; US: degrees Fahrenheit, psia, Btu/lb
     * @param language the language of the words
     * @return both
     */
    public static PictureUnits of(UnitSystem system, Language language) {
        return of(system, ProgramWording.of(language, system));
    }

    /**
     * Units of a system with words that are at hand.
     *
     * @param system as above
     * @param words words of the program
     * @return both
     */
    public static PictureUnits of(UnitSystem system, Wording words) {
        return new PictureUnits(system == UnitSystem.SI, words);
    }

    /** What the library found, in words, with the units of the picture first. */
    Wording words() {
        return words;
    }

    /** A text of the pictures. */
    String text(String key, Figure... figures) {
        return words.message("picture." + key, figures);
    }

    /**
     * Tells that a picture was written.
     *
     * @param title its title
     * @param file where it is
     * @return one line
     */
    public String written(String title, String file) {
        return text("written", Figure.of("title", title), Figure.of("file", file));
    }

    boolean isSi() {
        return si;
    }

    /** A temperature to a tenth of a degree. */
    String temperatureText(double kelvins) {
        return Printed.figure("%.1f %s", temperature(kelvins), temperature);
    }

    /** A definition of the zero of enthalpy and entropy. */
    String zeroText(ReferenceState state) {
        return state == ReferenceState.IIR
                ? text("zero.iir")
                : state == ReferenceState.MINUS_40_CELSIUS ? text("zero.minus-40") : text("zero.boiling");
    }

    String temperatureUnit() {
        return temperature;
    }

    String differenceUnit() {
        return si ? "K" : temperature;
    }

    String pressureUnit() {
        return pressure;
    }

    String enthalpyUnit() {
        return enthalpy;
    }

    /** Between two temperatures, K. */
    Axis temperatureAxis(double lowK, double highK) {
        return new Axis(
                text("axis.temperature", unit(temperature)), temperature(lowK), temperature(highK), Axis.Scale.EVEN);
    }

    /** Between two pressures, Pa, by decades. */
    Axis pressureAxis(double lowPa, double highPa) {
        return new Axis(pressureTitle(), pressure(lowPa), pressure(highPa), Axis.Scale.LOGARITHMIC);
    }

    String pressureTitle() {
        return text("axis.pressure", unit(pressure));
    }

    /** The last part of the key of a constant. */
    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Figure unit(String unit) {
        return Figure.of("unit", unit);
    }

    double temperature(double kelvins) {
        return si
                ? Temperature.ofKelvins(kelvins).celsius()
                : Temperature.ofKelvins(kelvins).fahrenheit();
    }

    double kelvins(double temperature) {
        return (si ? Temperature.ofCelsius(temperature) : Temperature.ofFahrenheit(temperature)).kelvins();
    }

    double difference(double kelvins) {
        return si ? kelvins : TemperatureDifference.ofKelvins(kelvins).fahrenheitDegrees();
    }

    double pressure(double pascals) {
        Pressure p = Pressure.ofPascals(pascals);
        return si ? p.kilopascals() : p.psia();
    }

    double pascals(double pressure) {
        return (si ? Pressure.ofKilopascals(pressure) : Pressure.ofPsia(pressure)).pascals();
    }

    /** The same pressures as a gauge shows them where the air has this pressure. */
    Axis gaugeAxis(double lowPa, double highPa, Atmosphere air) {
        return pressureAxis(lowPa, highPa)
                .shown(
                        text("axis.gauge", unit(si ? "kPa" : "psig")),
                        pressure(air.pressure().pascals()));
    }

    double enthalpy(double joulesPerKilogram) {
        SpecificEnthalpy h = SpecificEnthalpy.ofJoulesPerKilogram(joulesPerKilogram);
        return si ? h.kilojoulesPerKilogram() : h.btuPerPound();
    }

    /** Zero of enthalpy and entropy that tables in these units usually have. */
    ReferenceState usualZero() {
        return si ? ReferenceState.IIR : ReferenceState.MINUS_40_CELSIUS;
    }

    String entropyUnit() {
        return si ? "kJ/(kg K)" : "Btu/(lb \u00b0F)";
    }

    String densityUnit() {
        return si ? "kg/m\u00b3" : "lb/ft\u00b3";
    }

    double entropy(double joulesPerKilogramKelvin) {
        SpecificEntropy s = SpecificEntropy.ofJoulesPerKilogramKelvin(joulesPerKilogramKelvin);
        return si ? s.kilojoulesPerKilogramKelvin() : s.btuPerPoundFahrenheitDegree();
    }

    double joulesPerKilogramKelvin(double entropy) {
        return (si
                        ? SpecificEntropy.ofKilojoulesPerKilogramKelvin(entropy)
                        : SpecificEntropy.ofBtuPerPoundFahrenheitDegree(entropy))
                .joulesPerKilogramKelvin();
    }

    double density(double kilogramsPerCubicMetre) {
        Density density = Density.ofKilogramsPerCubicMetre(kilogramsPerCubicMetre);
        return si ? density.kilogramsPerCubicMetre() : density.poundsPerCubicFoot();
    }

    double kilogramsPerCubicMetre(double density) {
        return (si ? Density.ofKilogramsPerCubicMetre(density) : Density.ofPoundsPerCubicFoot(density))
                .kilogramsPerCubicMetre();
    }

    /** A pressure as people write it, to about four figures. */
    String pressureText(double pascals) {
        double value = pressure(pascals);
        int decimals = value >= 1000 ? 0 : value >= 100 ? 1 : value >= 10 ? 2 : 3;
        return Printed.figure("%." + decimals + "f %s", value, pressure);
    }
}
