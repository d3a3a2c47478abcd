package org.satline.saturation;

import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.SpecificHeatCapacity;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** The same lines in quantities that know their units, with superheat, subcooling and glide. See {@link SaturationCurve}. */
public interface SaturationQuantities extends SaturationNumbers {
    /**
     * Returns the bubble-point pressure.
     *
     * @param temperature temperature
     * @return absolute pressure
     */
    default Pressure bubblePressure(Temperature temperature) {
        return Pressure.ofPascals(bubblePressurePa(temperature.kelvins()));
    }

    /**
     * Returns the dew-point pressure.
     *
     * @param temperature temperature
     * @return absolute pressure
     */
    default Pressure dewPressure(Temperature temperature) {
        return Pressure.ofPascals(dewPressurePa(temperature.kelvins()));
    }

    /**
     * Returns the bubble-point temperature.
     *
     * @param pressure absolute pressure
     * @return temperature
     */
    default Temperature bubbleTemperature(Pressure pressure) {
        return Temperature.ofKelvins(bubbleTemperatureK(pressure.pascals()));
    }

    /**
     * Returns the dew-point temperature.
     *
     * @param pressure absolute pressure
     * @return temperature
     */
    default Temperature dewTemperature(Pressure pressure) {
        return Temperature.ofKelvins(dewTemperatureK(pressure.pascals()));
    }

    /**
     * Returns the density of the bubble-point liquid.
     *
     * @param temperature temperature
     * @return density
     */
    default Density bubbleLiquidDensity(Temperature temperature) {
        return Density.ofKilogramsPerCubicMetre(bubbleLiquidDensity(temperature.kelvins()));
    }

    /**
     * Returns the density of the dew-point vapour.
     *
     * @param temperature temperature
     * @return density
     */
    default Density dewVapourDensity(Temperature temperature) {
        return Density.ofKilogramsPerCubicMetre(dewVapourDensity(temperature.kelvins()));
    }

    /**
     * Returns the specific enthalpy of the bubble-point liquid.
     *
     * @param temperature temperature
     * @return specific enthalpy from the reference state
     */
    default SpecificEnthalpy bubbleLiquidEnthalpy(Temperature temperature) {
        return SpecificEnthalpy.ofJoulesPerKilogram(bubbleLiquidEnthalpy(temperature.kelvins()));
    }

    /**
     * Returns the specific enthalpy of the dew-point vapour.
     *
     * @param temperature temperature
     * @return specific enthalpy from the reference state
     */
    default SpecificEnthalpy dewVapourEnthalpy(Temperature temperature) {
        return SpecificEnthalpy.ofJoulesPerKilogram(dewVapourEnthalpy(temperature.kelvins()));
    }

    /**
     * Returns the specific entropy of the bubble-point liquid.
     *
     * @param temperature temperature
     * @return specific entropy from the reference state
     */
    default SpecificEntropy bubbleLiquidEntropy(Temperature temperature) {
        return SpecificEntropy.ofJoulesPerKilogramKelvin(bubbleLiquidEntropy(temperature.kelvins()));
    }

    /**
     * Returns the specific entropy of the dew-point vapour.
     *
     * @param temperature temperature
     * @return specific entropy from the reference state
     */
    default SpecificEntropy dewVapourEntropy(Temperature temperature) {
        return SpecificEntropy.ofJoulesPerKilogramKelvin(dewVapourEntropy(temperature.kelvins()));
    }

    /**
     * Returns the isobaric heat capacity of the bubble-point liquid.
     *
     * @param temperature temperature
     * @return specific heat capacity
     */
    default SpecificHeatCapacity bubbleLiquidIsobaricHeatCapacity(Temperature temperature) {
        return SpecificHeatCapacity.ofJoulesPerKilogramKelvin(bubbleLiquidIsobaricHeatCapacity(temperature.kelvins()));
    }

    /**
     * Returns the isobaric heat capacity of the dew-point vapour.
     *
     * @param temperature temperature
     * @return specific heat capacity
     */
    default SpecificHeatCapacity dewVapourIsobaricHeatCapacity(Temperature temperature) {
        return SpecificHeatCapacity.ofJoulesPerKilogramKelvin(dewVapourIsobaricHeatCapacity(temperature.kelvins()));
    }

    /**
     * Returns the superheat of a vapour: its temperature above the dew point at its pressure. Negative where it is colder than that.
     *
     * @param pressure absolute pressure of the vapour
     * @param temperature its temperature
     * @return superheat
     */
    default TemperatureDifference superheat(Pressure pressure, Temperature temperature) {
        return temperature.minus(dewTemperature(pressure));
    }

    /**
     * Returns the subcooling of a liquid: the bubble point at its pressure above its temperature. Negative where it is warmer than that.
     *
     * @param pressure absolute pressure of the liquid
     * @param temperature its temperature
     * @return subcooling
     */
    default TemperatureDifference subcooling(Pressure pressure, Temperature temperature) {
        return bubbleTemperature(pressure).minus(temperature);
    }

    /**
     * Returns the temperature glide: dew point less bubble point at one pressure. 0 for a pure substance.
     *
     * @param pressure absolute pressure
     * @return glide
     */
    default TemperatureDifference glide(Pressure pressure) {
        return dewTemperature(pressure).minus(bubbleTemperature(pressure));
    }
}
