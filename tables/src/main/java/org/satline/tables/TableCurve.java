package org.satline.tables;

import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.satline.equilibrium.Range;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;
import org.satline.tables.Column.OctaveQuartic;
import org.satline.tables.Column.OctaveSextic;
import org.satline.tables.Column.UniformNonic;

/**
 * Reads answers from a table. Where a column stops short of the line the equation is solved; {@link #engineAt} tells. Thread-safe: all is
 * final but the equation engine, which is made when first needed and is the same whichever thread makes it.
 */
final class TableCurve implements SaturationCurve {
    /** Relative. Other exponential functions and logarithms moved ends by at most 5e-8, those of pressure at the end of a blend most. */
    private static final double SAME_END = 1e-7;

    private final Refrigerant refrigerant;
    private final TableData data;
    private final OctaveQuartic bubblePressure;
    private final OctaveQuartic dewPressure;
    private final OctaveSextic bubbleTemperature;
    private final OctaveSextic dewTemperature;
    private final UniformNonic liquidDensity;
    private final UniformNonic vapourDensity;
    private final UniformNonic liquidEnthalpy;
    private final UniformNonic vapourEnthalpy;
    private final UniformNonic liquidEntropy;
    private final UniformNonic vapourEntropy;
    private final UniformNonic liquidHeatCapacity;
    private final UniformNonic vapourHeatCapacity;
    private volatile @Nullable SaturationCurve solving;

    /** The equation is that of the library. */
    TableCurve(Refrigerant refrigerant, TableData data) {
        this(refrigerant, data, null);
    }

    TableCurve(Refrigerant refrigerant, TableData data, @Nullable SaturationCurve solving) {
        this.solving = solving;
        this.refrigerant = refrigerant;
        this.data = data;
        Map<SaturationProperty, Column> columns = data.columns();
        bubblePressure = (OctaveQuartic) column(columns, SaturationProperty.BUBBLE_PRESSURE);
        dewPressure = (OctaveQuartic) column(columns, SaturationProperty.DEW_PRESSURE);
        bubbleTemperature = (OctaveSextic) column(columns, SaturationProperty.BUBBLE_TEMPERATURE);
        dewTemperature = (OctaveSextic) column(columns, SaturationProperty.DEW_TEMPERATURE);
        liquidDensity = (UniformNonic) column(columns, SaturationProperty.BUBBLE_LIQUID_DENSITY);
        vapourDensity = (UniformNonic) column(columns, SaturationProperty.DEW_VAPOUR_DENSITY);
        liquidEnthalpy = (UniformNonic) column(columns, SaturationProperty.BUBBLE_LIQUID_ENTHALPY);
        vapourEnthalpy = (UniformNonic) column(columns, SaturationProperty.DEW_VAPOUR_ENTHALPY);
        liquidEntropy = (UniformNonic) column(columns, SaturationProperty.BUBBLE_LIQUID_ENTROPY);
        vapourEntropy = (UniformNonic) column(columns, SaturationProperty.DEW_VAPOUR_ENTROPY);
        liquidHeatCapacity = (UniformNonic) column(columns, SaturationProperty.BUBBLE_LIQUID_HEAT_CAPACITY);
        vapourHeatCapacity = (UniformNonic) column(columns, SaturationProperty.DEW_VAPOUR_HEAT_CAPACITY);
    }

    private static Column column(Map<SaturationProperty, Column> columns, SaturationProperty property) {
        return Objects.requireNonNull(columns.get(property), property.words());
    }

    Column column(SaturationProperty property) {
        return column(data.columns(), property);
    }

    TableData data() {
        return data;
    }

    @Override
    public Refrigerant refrigerant() {
        return refrigerant;
    }

    @Override
    public Engine engine() {
        return Engine.TABLE;
    }

    @Override
    public String source() {
        return data.source();
    }

    @Override
    public ReferenceState referenceState() {
        return switch (data.reference().kind()) {
            case IIR -> ReferenceState.IIR;
            case NORMAL_BOILING_POINT -> ReferenceState.NORMAL_BOILING_POINT;
            case COLDEST_LIQUID ->
                ReferenceState.ofSaturatedLiquid(
                        Temperature.ofKelvins(data.reference().temperatureK()),
                        SpecificEnthalpy.ofJoulesPerKilogram(0),
                        SpecificEntropy.ofJoulesPerKilogramKelvin(0));
        };
    }

    @Override
    public Range bubbleTemperatureRange() {
        return data.bubble().temperatures();
    }

    @Override
    public Range dewTemperatureRange() {
        return data.dew().temperatures();
    }

    @Override
    public Range bubblePressureRange() {
        return data.bubble().pressures();
    }

    @Override
    public Range dewPressureRange() {
        return data.dew().pressures();
    }

    @Override
    public Engine engineAt(SaturationProperty property, double at) {
        checked(property, at);
        return column(property).covers(at) ? Engine.TABLE : Engine.EQUATION;
    }

    @Override
    public double bubblePressurePa(double temperatureK) {
        return temperatureK >= bubblePressure.low && temperatureK < bubblePressure.split
                ? bubblePressure.body(temperatureK)
                : rest(SaturationProperty.BUBBLE_PRESSURE, temperatureK);
    }

    @Override
    public double dewPressurePa(double temperatureK) {
        return temperatureK >= dewPressure.low && temperatureK < dewPressure.split
                ? dewPressure.body(temperatureK)
                : rest(SaturationProperty.DEW_PRESSURE, temperatureK);
    }

    @Override
    public double bubbleTemperatureK(double pressurePa) {
        return pressurePa >= bubbleTemperature.low && pressurePa < bubbleTemperature.split
                ? bubbleTemperature.body(pressurePa)
                : rest(SaturationProperty.BUBBLE_TEMPERATURE, pressurePa);
    }

    @Override
    public double dewTemperatureK(double pressurePa) {
        return pressurePa >= dewTemperature.low && pressurePa < dewTemperature.split
                ? dewTemperature.body(pressurePa)
                : rest(SaturationProperty.DEW_TEMPERATURE, pressurePa);
    }

    @Override
    public double bubbleLiquidDensity(double temperatureK) {
        return temperatureK >= liquidDensity.low && temperatureK < liquidDensity.split
                ? liquidDensity.body(temperatureK)
                : rest(SaturationProperty.BUBBLE_LIQUID_DENSITY, temperatureK);
    }

    @Override
    public double dewVapourDensity(double temperatureK) {
        return temperatureK >= vapourDensity.low && temperatureK < vapourDensity.split
                ? vapourDensity.body(temperatureK)
                : rest(SaturationProperty.DEW_VAPOUR_DENSITY, temperatureK);
    }

    @Override
    public double bubbleLiquidEnthalpy(double temperatureK) {
        return temperatureK >= liquidEnthalpy.low && temperatureK < liquidEnthalpy.split
                ? liquidEnthalpy.body(temperatureK)
                : rest(SaturationProperty.BUBBLE_LIQUID_ENTHALPY, temperatureK);
    }

    @Override
    public double dewVapourEnthalpy(double temperatureK) {
        return temperatureK >= vapourEnthalpy.low && temperatureK < vapourEnthalpy.split
                ? vapourEnthalpy.body(temperatureK)
                : rest(SaturationProperty.DEW_VAPOUR_ENTHALPY, temperatureK);
    }

    @Override
    public double bubbleLiquidEntropy(double temperatureK) {
        return temperatureK >= liquidEntropy.low && temperatureK < liquidEntropy.split
                ? liquidEntropy.body(temperatureK)
                : rest(SaturationProperty.BUBBLE_LIQUID_ENTROPY, temperatureK);
    }

    @Override
    public double dewVapourEntropy(double temperatureK) {
        return temperatureK >= vapourEntropy.low && temperatureK < vapourEntropy.split
                ? vapourEntropy.body(temperatureK)
                : rest(SaturationProperty.DEW_VAPOUR_ENTROPY, temperatureK);
    }

    @Override
    public double bubbleLiquidIsobaricHeatCapacity(double temperatureK) {
        return temperatureK >= liquidHeatCapacity.low && temperatureK < liquidHeatCapacity.split
                ? liquidHeatCapacity.body(temperatureK)
                : rest(SaturationProperty.BUBBLE_LIQUID_HEAT_CAPACITY, temperatureK);
    }

    @Override
    public double dewVapourIsobaricHeatCapacity(double temperatureK) {
        return temperatureK >= vapourHeatCapacity.low && temperatureK < vapourHeatCapacity.split
                ? vapourHeatCapacity.body(temperatureK)
                : rest(SaturationProperty.DEW_VAPOUR_HEAT_CAPACITY, temperatureK);
    }

    @Override
    public void values(SaturationProperty property, double[] at, double[] out) {
        if (out.length < at.length) {
            throw new IllegalArgumentException(
                    "output holds " + out.length + " values, input " + at.length + "; give a longer output array");
        }
        Column column = column(property);
        // one loop for each form, so that each call in it has a single target
        if (column instanceof OctaveQuartic quartic) {
            for (int i = 0; i < at.length; i++) {
                double x = at[i];
                out[i] = x >= quartic.low && x < quartic.split ? quartic.body(x) : rest(property, x);
            }
        } else if (column instanceof OctaveSextic sextic) {
            for (int i = 0; i < at.length; i++) {
                double x = at[i];
                out[i] = x >= sextic.low && x < sextic.split ? sextic.body(x) : rest(property, x);
            }
        } else if (column instanceof UniformNonic nonic) {
            for (int i = 0; i < at.length; i++) {
                double x = at[i];
                out[i] = x >= nonic.low && x < nonic.split ? nonic.body(x) : rest(property, x);
            }
        }
    }

    /** Out of line, to keep the methods above small: the top of the table, the equation engine, or a refusal. */
    private double rest(SaturationProperty property, double at) {
        Column column = column(property);
        if (column.covers(at)) {
            return column.at(at);
        }
        SaturationCurve engine = solving();
        return engine.value(property, reachedBy(engine, property, checked(property, at)));
    }

    /**
     * The end of a line is found by iteration, and a Java whose exponential function or logarithm differs in its last bit finds it a last
     * bit elsewhere than the table has it.
     */
    private static double reachedBy(SaturationCurve engine, SaturationProperty property, double at) {
        Range reached = property.onBubbleLine()
                ? property.askedByPressure() ? engine.bubblePressureRange() : engine.bubbleTemperatureRange()
                : property.askedByPressure() ? engine.dewPressureRange() : engine.dewTemperatureRange();
        double nearest = Math.max(reached.low(), Math.min(at, reached.high()));
        return Math.abs(nearest - at) <= SAME_END * Math.abs(at) ? nearest : at;
    }

    private double checked(SaturationProperty property, double at) {
        LineFacts line = property.onBubbleLine() ? data.bubble() : data.dew();
        Range range = property.askedByPressure() ? line.pressures() : line.temperatures();
        if (!(at >= range.low() && at <= range.high())) {
            throw OutOfValidityException.of(
                    property.askedByPressure() ? "pressure" : "temperature",
                    at,
                    property.askedByPressure() ? "Pa" : "K",
                    range.low(),
                    range.high(),
                    "the " + (property.onBubbleLine() ? "bubble" : "dew") + " line of " + refrigerant.designation()
                            + ", which ends at its " + line.end().kind().words(),
                    "ask for a single-phase state outside it");
        }
        return at;
    }

    private SaturationCurve solving() {
        SaturationCurve curve = solving;
        if (curve == null) {
            curve = SaturationCurves.solving(refrigerant);
            solving = curve;
        }
        return curve;
    }

    @Override
    public String toString() {
        return "lines of " + refrigerant + ", from its certified table";
    }
}
