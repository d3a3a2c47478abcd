package org.satline.saturation;

import org.satline.quantity.Density;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.SpecificHeatCapacity;
import org.satline.quantity.Temperature;

/** The saturated phases in quantities that know their units. See {@link SaturationCurve}. */
public interface SaturationQuantities extends SaturationNumbers {
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
}
