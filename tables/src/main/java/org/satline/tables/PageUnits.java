package org.satline.tables;

import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;

/** Units of a printed table. */
public enum PageUnits {
    /** degC, kPa, kg/m3, kJ/kg, kJ/(kg K). */
    SI("degC", "kPa", "kg/m3", "kJ/kg", "kJ/(kg K)"),
    /** degF, psia, lb/ft3, Btu/lb, Btu/(lb degF). */
    US("degF", "psia", "lb/ft3", "Btu/lb", "Btu/(lb degF)");

    private final String temperature;
    private final String pressure;
    private final String density;
    private final String enthalpy;
    private final String entropy;

    PageUnits(String temperature, String pressure, String density, String enthalpy, String entropy) {
        this.temperature = temperature;
        this.pressure = pressure;
        this.density = density;
        this.enthalpy = enthalpy;
        this.entropy = entropy;
    }

    String temperatureUnit() {
        return temperature;
    }

    String pressureUnit() {
        return pressure;
    }

    String densityUnit() {
        return density;
    }

    String enthalpyUnit() {
        return enthalpy;
    }

    String entropyUnit() {
        return entropy;
    }

    /**
     * Reads a temperature in this unit.
     *
     * @param value in degC or degF
     * @return the temperature
     */
    public Temperature temperature(double value) {
        return this == SI ? Temperature.ofCelsius(value) : Temperature.ofFahrenheit(value);
    }

    double of(Temperature t) {
        return this == SI ? t.celsius() : t.fahrenheit();
    }

    double of(Pressure p) {
        return this == SI ? p.kilopascals() : p.psia();
    }

    double of(Density d) {
        return this == SI ? d.kilogramsPerCubicMetre() : d.poundsPerCubicFoot();
    }

    double of(SpecificEnthalpy h) {
        return this == SI ? h.kilojoulesPerKilogram() : h.btuPerPound();
    }

    double of(SpecificEntropy s) {
        return this == SI ? s.kilojoulesPerKilogramKelvin() : s.btuPerPoundFahrenheitDegree();
    }
}
