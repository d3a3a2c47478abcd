package org.satline.saturation;

import org.satline.equilibrium.Range;

/**
 * The lines with the properties of the saturated phases, in SI doubles (K, Pa, kg/m3, J/kg, J/(kg K)). Every method throws
 * {@link org.satline.quantity.OutOfValidityException} outside its range, for NaN too. See {@link SaturationCurve}.
 */
public interface SaturationNumbers extends SaturationLines {
    /**
     * Returns the density of the bubble-point liquid.
     *
     * @param temperatureK T, K
     * @return rho, kg/m3
     */
    double bubbleLiquidDensity(double temperatureK);

    /**
     * Returns the density of the dew-point vapour.
     *
     * @param temperatureK T, K
     * @return rho, kg/m3
     */
    double dewVapourDensity(double temperatureK);

    /**
     * Returns the specific enthalpy of the bubble-point liquid.
     *
     * @param temperatureK T, K
     * @return h, J/kg
     */
    double bubbleLiquidEnthalpy(double temperatureK);

    /**
     * Returns the specific enthalpy of the dew-point vapour.
     *
     * @param temperatureK T, K
     * @return h, J/kg
     */
    double dewVapourEnthalpy(double temperatureK);

    /**
     * Returns the specific entropy of the bubble-point liquid.
     *
     * @param temperatureK T, K
     * @return s, J/(kg K)
     */
    double bubbleLiquidEntropy(double temperatureK);

    /**
     * Returns the specific entropy of the dew-point vapour.
     *
     * @param temperatureK T, K
     * @return s, J/(kg K)
     */
    double dewVapourEntropy(double temperatureK);

    /**
     * Returns the isobaric heat capacity of the bubble-point liquid.
     *
     * @param temperatureK T, K
     * @return c_p, J/(kg K)
     */
    double bubbleLiquidIsobaricHeatCapacity(double temperatureK);

    /**
     * Returns the isobaric heat capacity of the dew-point vapour.
     *
     * @param temperatureK T, K
     * @return c_p, J/(kg K)
     */
    double dewVapourIsobaricHeatCapacity(double temperatureK);

    /**
     * Returns any of the properties above.
     *
     * @param property which one
     * @param at T, K, or p, Pa, as {@link SaturationProperty#askedByPressure()} says
     * @return its value in {@link SaturationProperty#unit()}
     */
    default double value(SaturationProperty property, double at) {
        return switch (property) {
            case BUBBLE_PRESSURE -> bubblePressurePa(at);
            case DEW_PRESSURE -> dewPressurePa(at);
            case BUBBLE_TEMPERATURE -> bubbleTemperatureK(at);
            case DEW_TEMPERATURE -> dewTemperatureK(at);
            case BUBBLE_LIQUID_DENSITY -> bubbleLiquidDensity(at);
            case DEW_VAPOUR_DENSITY -> dewVapourDensity(at);
            case BUBBLE_LIQUID_ENTHALPY -> bubbleLiquidEnthalpy(at);
            case DEW_VAPOUR_ENTHALPY -> dewVapourEnthalpy(at);
            case BUBBLE_LIQUID_ENTROPY -> bubbleLiquidEntropy(at);
            case DEW_VAPOUR_ENTROPY -> dewVapourEntropy(at);
            case BUBBLE_LIQUID_HEAT_CAPACITY -> bubbleLiquidIsobaricHeatCapacity(at);
            case DEW_VAPOUR_HEAT_CAPACITY -> dewVapourIsobaricHeatCapacity(at);
        };
    }

    /**
     * Computes a property at many temperatures or pressures: {@code out[i] = value(property, at[i])}, to the last bit.
     *
     * @param property which one
     * @param at temperatures, K, or pressures, Pa
     * @param out receives the values; as long as {@code at} or longer, entries beyond are left alone; may be the same array
     * @throws IllegalArgumentException if {@code out} is shorter than {@code at}; nothing is written then
     * @throws org.satline.quantity.OutOfValidityException at the first entry out of range; those before it are written
     */
    default void values(SaturationProperty property, double[] at, double[] out) {
        if (out.length < at.length) {
            throw new IllegalArgumentException(
                    "output holds " + out.length + " values, input " + at.length + "; give a longer output array");
        }
        for (int i = 0; i < at.length; i++) {
            out[i] = value(property, at[i]);
        }
    }

    /**
     * Computes a property at many temperatures or pressures, each on its own: one out of range does not stop the others.
     *
     * @param property which property
     * @param at temperatures, K, or pressures, Pa; NaN for one that was not read
     * @return a value or a status for each
     */
    default BulkAnswers each(SaturationProperty property, double[] at) {
        return BulkAnswers.of(at, range(property), property.unit(), i -> value(property, at[i]));
    }

    private Range range(SaturationProperty property) {
        if (property.askedByPressure()) {
            return property.onBubbleLine() ? bubblePressureRange() : dewPressureRange();
        }
        return property.onBubbleLine() ? bubbleTemperatureRange() : dewTemperatureRange();
    }
}
