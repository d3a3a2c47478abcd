package org.satline.audit;

import java.util.function.DoubleUnaryOperator;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Density;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.QuantityFormatException;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.SpecificHeatCapacity;
import org.satline.quantity.Speed;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** From SI to the unit of an answer. Immutable. */
final class AnswerUnit {
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
     * @throws QuantityFormatException if the unit does not belong to the dimension
     */
    static AnswerUnit of(Dimension dimension, String spelling, Atmosphere atmosphere) {
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

    /** A unit that the quantities here do not read: so many SI units each. */
    static AnswerUnit ofSize(double si, String spelling) {
        return signed(value -> value / si, spelling);
    }

    /** The same unit with every number off by a factor. */
    AnswerUnit times(double factor) {
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

    /** A temperature difference that was turned into another unit as if it were a temperature on the Celsius scale. */
    static AnswerUnit ofDifferenceTakenForTemperature(String spelling) {
        return new AnswerUnit(si -> Temperature.ofCelsius(si).valueIn(spelling), -200, spelling, false);
    }

    String spelling() {
        return spelling;
    }

    boolean isGauge() {
        return gauge;
    }

    /** Whether nothing is zero in it, so that ratios mean something. */
    boolean hasTrueZero(Dimension dimension) {
        boolean scale = dimension == Dimension.TEMPERATURE && !"K".equals(spelling);
        return !gauge && !scale && !dimension.countsFromReference();
    }

    /** Value in this unit; also of pressures below vacuum, which only mistakes lead to. */
    double fromSi(double si) {
        return si >= lowest ? exact.applyAsDouble(si) : atLow + (si - LOW) * slope;
    }

    /** Width in this unit of a width in SI. */
    double width(double si) {
        return Math.abs(slope) * si;
    }

    /** SI difference of a difference in this unit. */
    double differenceToSi(double difference) {
        return difference / slope;
    }
}
