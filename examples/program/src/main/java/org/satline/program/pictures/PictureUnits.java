package org.satline.program.pictures;

import org.satline.equilibrium.ReferenceState;
import org.satline.program.drawing.Axis;
import org.satline.program.page.Printed;
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

/** Units of a picture. */
public enum PictureUnits {
    /** Degrees Celsius, kPa, kJ/kg. */
    SI("\u00b0C", "kPa", "kJ/kg"),
    /** Degrees Fahrenheit, psia, Btu/lb. */
    US("\u00b0F", "psia", "Btu/lb");

    private final String temperature;
    private final String pressure;
    private final String enthalpy;

    PictureUnits(String temperature, String pressure, String enthalpy) {
        this.temperature = temperature;
        this.pressure = pressure;
        this.enthalpy = enthalpy;
    }

    /** What the library found, in words, with the units of the picture first. */
    Wording words() {
        return Wording.of(Language.ENGLISH, this == SI ? UnitSystem.SI : UnitSystem.US);
    }

    String temperatureUnit() {
        return temperature;
    }

    String differenceUnit() {
        return this == SI ? "K" : temperature;
    }

    String pressureUnit() {
        return pressure;
    }

    String enthalpyUnit() {
        return enthalpy;
    }

    /** Between two temperatures, K. */
    Axis temperatureAxis(double lowK, double highK) {
        return new Axis("temperature, " + temperature, temperature(lowK), temperature(highK), Axis.Scale.EVEN);
    }

    /** Between two pressures, Pa, by decades. */
    Axis pressureAxis(double lowPa, double highPa) {
        return new Axis(pressureTitle(), pressure(lowPa), pressure(highPa), Axis.Scale.LOGARITHMIC);
    }

    String pressureTitle() {
        return this == SI ? "absolute pressure, kPa" : "absolute pressure, psia";
    }

    double temperature(double kelvins) {
        return this == SI
                ? Temperature.ofKelvins(kelvins).celsius()
                : Temperature.ofKelvins(kelvins).fahrenheit();
    }

    double kelvins(double temperature) {
        return (this == SI ? Temperature.ofCelsius(temperature) : Temperature.ofFahrenheit(temperature)).kelvins();
    }

    double difference(double kelvins) {
        return this == SI ? kelvins : TemperatureDifference.ofKelvins(kelvins).fahrenheitDegrees();
    }

    double pressure(double pascals) {
        Pressure p = Pressure.ofPascals(pascals);
        return this == SI ? p.kilopascals() : p.psia();
    }

    double pascals(double pressure) {
        return (this == SI ? Pressure.ofKilopascals(pressure) : Pressure.ofPsia(pressure)).pascals();
    }

    /** The same pressures as a gauge shows them where the air has this pressure. */
    Axis gaugeAxis(double lowPa, double highPa, Atmosphere air) {
        return pressureAxis(lowPa, highPa)
                .shown(
                        this == SI ? "gauge pressure, kPa" : "gauge pressure, psig",
                        pressure(air.pressure().pascals()));
    }

    double enthalpy(double joulesPerKilogram) {
        SpecificEnthalpy h = SpecificEnthalpy.ofJoulesPerKilogram(joulesPerKilogram);
        return this == SI ? h.kilojoulesPerKilogram() : h.btuPerPound();
    }

    /** Zero of enthalpy and entropy that tables in these units usually have. */
    ReferenceState usualZero() {
        return this == SI ? ReferenceState.IIR : ReferenceState.MINUS_40_CELSIUS;
    }

    String entropyUnit() {
        return this == SI ? "kJ/(kg K)" : "Btu/(lb \u00b0F)";
    }

    String densityUnit() {
        return this == SI ? "kg/m\u00b3" : "lb/ft\u00b3";
    }

    double entropy(double joulesPerKilogramKelvin) {
        SpecificEntropy s = SpecificEntropy.ofJoulesPerKilogramKelvin(joulesPerKilogramKelvin);
        return this == SI ? s.kilojoulesPerKilogramKelvin() : s.btuPerPoundFahrenheitDegree();
    }

    double joulesPerKilogramKelvin(double entropy) {
        return (this == SI
                        ? SpecificEntropy.ofKilojoulesPerKilogramKelvin(entropy)
                        : SpecificEntropy.ofBtuPerPoundFahrenheitDegree(entropy))
                .joulesPerKilogramKelvin();
    }

    double density(double kilogramsPerCubicMetre) {
        Density density = Density.ofKilogramsPerCubicMetre(kilogramsPerCubicMetre);
        return this == SI ? density.kilogramsPerCubicMetre() : density.poundsPerCubicFoot();
    }

    double kilogramsPerCubicMetre(double density) {
        return (this == SI ? Density.ofKilogramsPerCubicMetre(density) : Density.ofPoundsPerCubicFoot(density))
                .kilogramsPerCubicMetre();
    }

    /** A pressure as people write it, to about four figures. */
    String pressureText(double pascals) {
        double value = pressure(pascals);
        int decimals = value >= 1000 ? 0 : value >= 100 ? 1 : value >= 10 ? 2 : 3;
        return Printed.figure("%." + decimals + "f %s", value, pressure);
    }
}
