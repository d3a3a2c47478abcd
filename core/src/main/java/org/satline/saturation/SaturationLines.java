package org.satline.saturation;

import org.satline.equilibrium.Range;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;

/**
 * The bubble and dew lines of one refrigerant, pressure against temperature and back, and what follows from them: superheat, subcooling,
 * glide. It is all that a printed card can answer ({@link PrintedCard}); {@link SaturationCurve} knows the saturated phases too.
 *
 * <p>Numbers are SI doubles (K, Pa). Every method throws {@link org.satline.quantity.OutOfValidityException} outside its range, for NaN
 * too. Implementations are immutable and thread-safe.
 */
public interface SaturationLines {
    /**
     * Returns the refrigerant.
     *
     * @return the refrigerant
     */
    Refrigerant refrigerant();

    /**
     * Returns the citation of what the numbers rest on.
     *
     * @return one line
     */
    String source();

    /**
     * Returns how far a temperature of these lines may be wrong for reasons of their own that a judgement has to allow for,
     * such as the rounding of a card. What an equation or a certified table adds, some 0.1 K, is not in it.
     *
     * @return half-width of limits, K; 0 where nothing is stated
     */
    default double limitOfErrorK() {
        return 0;
    }

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
