package org.satline.saturation;

import java.util.List;
import org.satline.equation.MixtureEvidence;
import org.satline.equilibrium.Range;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Density;
import org.satline.quantity.Pressure;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.SpecificHeatCapacity;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Refrigerant;

/**
 * Bubble and dew lines of one refrigerant with the saturated liquid of the bubble line and the saturated vapour of the dew line. Implementations are
 * immutable and thread-safe. For a pure substance both lines coincide.
 *
 * <p>Primitive methods take and return SI doubles (K, Pa, kg/m3, J/kg, J/(kg K)); the typed methods stand on them. Every method throws
 * {@link org.satline.quantity.OutOfValidityException} outside its range, for NaN too.
 */
public interface SaturationCurve {
    /**
     * Returns the refrigerant.
     *
     * @return the refrigerant
     */
    Refrigerant refrigerant();

    /**
     * Returns how numbers are found.
     *
     * @return the engine
     */
    Engine engine();

    /**
     * Returns the citation of what the numbers rest on.
     *
     * @return one line
     */
    String source();

    /**
     * Returns what every result of this curve should say about the mixture model behind it, such as a known difference from published points.
     * Looked up when asked for: it reads the equations, which a first answer from a table does not need.
     *
     * @return lines to print, each without a full stop; none if there is nothing to warn of
     */
    default List<String> warnings() {
        return MixtureEvidence.of(refrigerant()).warnings();
    }

    /**
     * Returns where enthalpy and entropy count from.
     *
     * @return the reference state
     */
    ReferenceState referenceState();

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
     * Tells how {@link #value} finds one answer: a curve that reads a table solves the equation where the table stops.
     *
     * @param property which property
     * @param at T, K, or p, Pa
     * @return the engine of that answer
     */
    default Engine engineAt(SaturationProperty property, double at) {
        return engine();
    }

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
