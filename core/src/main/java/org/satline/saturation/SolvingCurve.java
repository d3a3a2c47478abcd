package org.satline.saturation;

import java.util.List;
import java.util.stream.Collectors;
import org.satline.equation.MixtureEvidence;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.equilibrium.ReferenceState;
import org.satline.explanation.Finding;
import org.satline.refrigerant.Refrigerant;

/** Solves each answer from the equation of state. */
final class SolvingCurve implements SaturationCurve {
    private final FluidModel model;
    private final List<Finding> warnings;

    SolvingCurve(FluidModel model) {
        this.model = model;
        this.warnings = MixtureEvidence.of(
                        model.refrigerant(),
                        model.interactionModel(),
                        model.equation().mixture().pairs())
                .warnings();
    }

    @Override
    public Refrigerant refrigerant() {
        return model.refrigerant();
    }

    @Override
    public Engine engine() {
        return Engine.EQUATION;
    }

    @Override
    public String source() {
        return model.equation().mixture().components().stream()
                .map(c -> c.constants().designation() + ": " + c.source().citation())
                .collect(Collectors.joining("; "));
    }

    @Override
    public List<Finding> warnings() {
        return warnings;
    }

    @Override
    public ReferenceState referenceState() {
        return model.referenceState();
    }

    @Override
    public Range bubbleTemperatureRange() {
        return model.bubbleTemperatureRange();
    }

    @Override
    public Range dewTemperatureRange() {
        return model.dewTemperatureRange();
    }

    @Override
    public Range bubblePressureRange() {
        return model.bubblePressureRange();
    }

    @Override
    public Range dewPressureRange() {
        return model.dewPressureRange();
    }

    @Override
    public double bubblePressurePa(double temperatureK) {
        return model.bubbleAtTemperature(temperatureK).pressurePa();
    }

    @Override
    public double dewPressurePa(double temperatureK) {
        return model.dewAtTemperature(temperatureK).pressurePa();
    }

    @Override
    public double bubbleTemperatureK(double pressurePa) {
        return model.bubbleAtPressure(pressurePa).temperatureK();
    }

    @Override
    public double dewTemperatureK(double pressurePa) {
        return model.dewAtPressure(pressurePa).temperatureK();
    }

    @Override
    public double bubbleLiquidDensity(double temperatureK) {
        return model.bubbleAtTemperature(temperatureK).saturated().density();
    }

    @Override
    public double dewVapourDensity(double temperatureK) {
        return model.dewAtTemperature(temperatureK).saturated().density();
    }

    @Override
    public double bubbleLiquidEnthalpy(double temperatureK) {
        return model.bubbleAtTemperature(temperatureK).saturated().specificEnthalpy();
    }

    @Override
    public double dewVapourEnthalpy(double temperatureK) {
        return model.dewAtTemperature(temperatureK).saturated().specificEnthalpy();
    }

    @Override
    public double bubbleLiquidEntropy(double temperatureK) {
        return model.bubbleAtTemperature(temperatureK).saturated().specificEntropy();
    }

    @Override
    public double dewVapourEntropy(double temperatureK) {
        return model.dewAtTemperature(temperatureK).saturated().specificEntropy();
    }

    @Override
    public double bubbleLiquidIsobaricHeatCapacity(double temperatureK) {
        return model.bubbleAtTemperature(temperatureK).saturated().isobaricHeatCapacity();
    }

    @Override
    public double dewVapourIsobaricHeatCapacity(double temperatureK) {
        return model.dewAtTemperature(temperatureK).saturated().isobaricHeatCapacity();
    }

    @Override
    public String toString() {
        return "lines of " + refrigerant() + " (solved)";
    }
}
