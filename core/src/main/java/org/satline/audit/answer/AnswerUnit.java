package org.satline.audit.answer;

import java.util.function.DoubleUnaryOperator;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.QuantityFormatException;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.SpecificHeatCapacity;
import org.satline.quantity.Speed;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** From SI to the unit of an answer. Immutable, thread-safe. */
public final class AnswerUnit {
    /** Two SI values that every quantity can have, far apart: the conversion is a straight line. */
    private static final double LOW = 200;

    private static final double HIGH = 1200;

    private final DoubleUnaryOperator exact;
    private final double lowest;
    private final double slope;
    private final double atLow;
    private final String spelling;
    private final boolean gauge;

    private AnswerUnit(DoubleUnaryOperator exact, double lowest, String spelling, boolean gauge) {
        this.exact = exact;
        this.lowest = lowest;
        this.spelling = spelling;
        this.gauge = gauge;
        this.atLow = exact.applyAsDouble(LOW);
        this.slope = (exact.applyAsDouble(HIGH) - atLow) / (HIGH - LOW);
    }

    /**
     * Finds a unit.
     *
     * @param dimension what is measured
     * @param spelling the unit, in any spelling that {@code org.satline.quantity} reads
     * @param atmosphere from where gauge pressures count
     * @return the unit
     * @throws QuantityFormatException if the unit does not belong to the dimension
     */
    public static AnswerUnit of(Dimension dimension, String spelling, Atmosphere atmosphere) {
        Parts.required("dimension spelling atmosphere", dimension, spelling, atmosphere);
        return switch (dimension) {
            case PRESSURE -> ofPressure(spelling, atmosphere);
            case TEMPERATURE ->
                new AnswerUnit(si -> Temperature.ofKelvins(si).valueIn(spelling), 1e-9, spelling, false);
            case TEMPERATURE_DIFFERENCE ->
                signed(si -> TemperatureDifference.ofKelvins(si).valueIn(spelling), spelling);
            case DENSITY -> signed(si -> Density.ofKilogramsPerCubicMetre(si).valueIn(spelling), spelling);
            case ENTHALPY ->
                signed(si -> SpecificEnthalpy.ofJoulesPerKilogram(si).valueIn(spelling), spelling);
            case ENTROPY ->
                signed(si -> SpecificEntropy.ofJoulesPerKilogramKelvin(si).valueIn(spelling), spelling);
            case HEAT_CAPACITY ->
                signed(si -> SpecificHeatCapacity.ofJoulesPerKilogramKelvin(si).valueIn(spelling), spelling);
            case SPEED -> signed(si -> Speed.ofMetresPerSecond(si).valueIn(spelling), spelling);
        };
    }

    /**
     * Makes a unit that the quantities here do not read.
     *
     * @param si how many SI units one of it is, above 0
     * @param spelling its name
     * @return the unit
     */
    public static AnswerUnit ofSize(double si, String spelling) {
        Parts.required("spelling", spelling);
        Parts.numbers("si", si);
        return signed(value -> value / si, spelling);
    }

    /**
     * Returns the same unit with every number off.
     *
     * @param factor by what
     * @return the unit
     */
    public AnswerUnit times(double factor) {
        return new AnswerUnit(si -> factor * fromSi(si), lowest, spelling, gauge);
    }

    private static AnswerUnit signed(DoubleUnaryOperator exact, String spelling) {
        return new AnswerUnit(exact, Double.NEGATIVE_INFINITY, spelling, false);
    }

    private static AnswerUnit ofPressure(String spelling, Atmosphere atmosphere) {
        if (isGauge(spelling)) {
            return new AnswerUnit(si -> Pressure.ofPascals(si).gauge(atmosphere).valueIn(spelling), 0, spelling, true);
        }
        return new AnswerUnit(si -> Pressure.ofPascals(si).valueIn(spelling), 0, spelling, false);
    }

    private static boolean isGauge(String spelling) {
        try {
            GaugePressure.ofPascals(0).valueIn(spelling);
            return true;
        } catch (QuantityFormatException e) {
            return false;
        }
    }

    /**
     * Makes the unit of a temperature difference that was turned into it as if it were a temperature on the Celsius scale.
     *
     * @param spelling the unit
     * @return the unit
     * @throws QuantityFormatException if it is none of temperature
     */
    public static AnswerUnit ofDifferenceTakenForTemperature(String spelling) {
        Parts.required("spelling", spelling);
        return new AnswerUnit(si -> Temperature.ofCelsius(si).valueIn(spelling), -200, spelling, false);
    }

    /** {@return its spelling, as it was given} */
    public String spelling() {
        return spelling;
    }

    /** {@return whether it counts from the atmosphere} */
    public boolean isGauge() {
        return gauge;
    }

    /**
     * Tells whether nothing is zero in it, so that ratios mean something.
     *
     * @param dimension what is measured
     * @return whether it has a true zero
     */
    public boolean hasTrueZero(Dimension dimension) {
        boolean scale = dimension == Dimension.TEMPERATURE && !"K".equals(spelling);
        return !gauge && !scale && !dimension.countsFromReference();
    }

    /**
     * Returns a value in this unit; also of pressures below vacuum, which only mistakes lead to.
     *
     * @param si the value, SI
     * @return the number
     */
    public double fromSi(double si) {
        return si >= lowest ? exact.applyAsDouble(si) : atLow + (si - LOW) * slope;
    }

    /** Width in this unit of a width in SI. */
    double width(double si) {
        return Math.abs(slope) * si;
    }

    /**
     * Returns a difference in SI.
     *
     * @param difference in this unit
     * @return the same, SI
     */
    public double differenceToSi(double difference) {
        return difference / slope;
    }
}
