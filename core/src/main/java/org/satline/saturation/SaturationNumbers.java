package org.satline.saturation;

import org.satline.equilibrium.Range;

/**
 * The bubble and dew lines of one refrigerant in SI doubles (K, Pa, kg/m3, J/kg, J/(kg K)): ranges, pressures, temperatures and the
 * properties of the saturated phases. Every method throws {@link org.satline.quantity.OutOfValidityException} outside its range, for NaN
 * too. See {@link SaturationCurve}.
 */
public interface SaturationNumbers {
    /**
     * Returns the temperatures of the bubble line.
     *
     * @return range, K
     */
    Range bubbleTemperatureRange();

    /**
     * Returns the temperatures of the dew line.
     *
     * @return range, K
     */
    Range dewTemperatureRange();

    /**
     * Returns the pressures of the bubble line.
     *
     * @return range, Pa
     */
    Range bubblePressureRange();

    /**
     * Returns the pressures of the dew line.
     *
     * @return range, Pa
     */
    Range dewPressureRange();

    /**
     * Returns the coldest temperature at which both lines answer.
     *
     * @return K
     */
    default double minTemperatureK() {
        return Math.max(bubbleTemperatureRange().low(), dewTemperatureRange().low());
    }

    /**
     * Returns the warmest temperature at which both lines answer.
     *
     * @return K
     */
    default double maxTemperatureK() {
        return Math.min(bubbleTemperatureRange().high(), dewTemperatureRange().high());
    }

    /**
     * Returns the bubble-point pressure.
     *
     * @param temperatureK T, K
     * @return p, Pa
     */
    double bubblePressurePa(double temperatureK);

    /**
     * Returns the dew-point pressure.
     *
     * @param temperatureK T, K
     * @return p, Pa
     */
    double dewPressurePa(double temperatureK);

    /**
     * Returns the bubble-point temperature.
     *
     * @param pressurePa p, Pa, absolute
     * @return T, K
     */
    double bubbleTemperatureK(double pressurePa);

    /**
     * Returns the dew-point temperature.
     *
     * @param pressurePa p, Pa, absolute
     * @return T, K
     */
    double dewTemperatureK(double pressurePa);

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

    /**
     * Computes many superheats, each on its own: temperature less dew-point temperature at the pressure.
     *
     * @param pressuresPa absolute pressures, Pa; NaN for one that was not read
     * @param temperaturesK temperatures of the vapour, K; NaN for one that was not read
     * @return a superheat, K, or a status for each
     * @throws IllegalArgumentException if the arrays differ in length
     */
    default BulkAnswers superheats(double[] pressuresPa, double[] temperaturesK) {
        sameLength(pressuresPa, temperaturesK);
        return BulkAnswers.of(
                pressuresPa,
                dewPressureRange(),
                "K",
                i -> temperatureK(temperaturesK[i]) - dewTemperatureK(pressuresPa[i]));
    }

    /**
     * Computes many subcoolings, each on its own: bubble-point temperature at the pressure less temperature.
     *
     * @param pressuresPa absolute pressures, Pa; NaN for one that was not read
     * @param temperaturesK temperatures of the liquid, K; NaN for one that was not read
     * @return a subcooling, K, or a status for each
     * @throws IllegalArgumentException if the arrays differ in length
     */
    default BulkAnswers subcoolings(double[] pressuresPa, double[] temperaturesK) {
        sameLength(pressuresPa, temperaturesK);
        return BulkAnswers.of(
                pressuresPa,
                bubblePressureRange(),
                "K",
                i -> bubbleTemperatureK(pressuresPa[i]) - temperatureK(temperaturesK[i]));
    }

    private Range range(SaturationProperty property) {
        if (property.askedByPressure()) {
            return property.onBubbleLine() ? bubblePressureRange() : dewPressureRange();
        }
        return property.onBubbleLine() ? bubbleTemperatureRange() : dewTemperatureRange();
    }

    /** No temperature at or below absolute zero becomes a superheat. */
    private static double temperatureK(double kelvins) {
        return kelvins <= 0 ? Double.POSITIVE_INFINITY : kelvins;
    }

    private static void sameLength(double[] pressuresPa, double[] temperaturesK) {
        if (pressuresPa.length != temperaturesK.length) {
            throw new IllegalArgumentException(pressuresPa.length + " pressures for " + temperaturesK.length
                    + " temperatures; give one of each for every row");
        }
    }
}
