package org.satline.program.pictures;

import org.satline.program.page.Printed;
import org.satline.quantity.Pressure;
import org.satline.quantity.SpecificEnthalpy;
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

    String temperatureAxis() {
        return "temperature, " + temperature;
    }

    String pressureAxis() {
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

    double enthalpy(double joulesPerKilogram) {
        SpecificEnthalpy h = SpecificEnthalpy.ofJoulesPerKilogram(joulesPerKilogram);
        return this == SI ? h.kilojoulesPerKilogram() : h.btuPerPound();
    }

    /** A pressure as people write it, to about four figures. */
    String pressureText(double pascals) {
        double value = pressure(pascals);
        int decimals = value >= 1000 ? 0 : value >= 100 ? 1 : value >= 10 ? 2 : 3;
        return Printed.figure("%." + decimals + "f %s", value, pressure);
    }
}
