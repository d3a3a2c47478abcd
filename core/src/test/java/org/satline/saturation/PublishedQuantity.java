package org.satline.saturation;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;

/** Computes what the columns of published saturation tables hold, in the unit in which they print it. */
final class PublishedQuantity {
    private final Map<String, FluidModel> models = new HashMap<>();

    /** Both sides of the phase change at the state that the row names. */
    private record Sides(FluidModel model, FluidState liquid, FluidState vapour) {}

    /** Computes one cell, in the unit behind the slash of its quantity; without one: kJ/kg, kJ/(kg K), kg/m3, m3/kg. */
    double compute(PublishedPoint point) {
        FluidModel model = models.computeIfAbsent(point.refrigerant() + point.referenceState(), k -> model(point));
        return of(sides(model, point), point.quantity());
    }

    private static FluidModel model(PublishedPoint point) {
        FluidModel model = FluidModel.of(Catalogue.standard().find(point.refrigerant()));
        return switch (point.referenceState()) {
            case "" -> model;
            case "IIR" -> model.with(ReferenceState.IIR);
            case "-40 degC" -> model.with(ReferenceState.MINUS_40_CELSIUS);
            default -> throw new IllegalArgumentException("unknown reference state " + point.referenceState());
        };
    }

    private static Sides sides(FluidModel model, PublishedPoint point) {
        if (point.given().equals("pressure/kPa")) {
            double pressure = Pressure.ofKilopascals(point.givenNumber()).pascals();
            return new Sides(model, bubbleAt(model, pressure), dewAt(model, pressure));
        }
        double temperature = point.given().equals("temperature/degF")
                ? Temperature.ofFahrenheit(point.givenNumber()).kelvins()
                : Temperature.ofCelsius(point.givenNumber()).kelvins();
        if (point.quantity().startsWith("mean-line")) {
            // tables that give a blend one pressure at each temperature: the middle of the two lines
            double pressure = new BrentSolver(1e-13, 1e-9)
                    .solve(
                            100,
                            p -> (bubbleAt(model, p).temperatureK()
                                                    + dewAt(model, p).temperatureK())
                                            / 2
                                    - temperature,
                            model.dewAtTemperature(temperature).pressurePa() * 0.999,
                            model.bubbleAtTemperature(temperature).pressurePa() * 1.001);
            return new Sides(model, bubbleAt(model, pressure), dewAt(model, pressure));
        }
        return new Sides(
                model,
                model.bubbleAtTemperature(temperature).saturated(),
                model.dewAtTemperature(temperature).saturated());
    }

    private static FluidState bubbleAt(FluidModel model, double pressure) {
        return model.bubbleAtPressure(pressure).saturated();
    }

    private static FluidState dewAt(FluidModel model, double pressure) {
        return model.dewAtPressure(pressure).saturated();
    }

    private static double of(Sides at, String quantity) {
        Pressure bubble = Pressure.ofPascals(at.liquid.pressurePa());
        Pressure dew = Pressure.ofPascals(at.vapour.pressurePa());
        return switch (quantity) {
            case "saturation temperature/degC", "bubble temperature/degC" -> celsius(at.liquid);
            case "dew temperature/degC" -> celsius(at.vapour);
            case "saturation pressure/kPa", "bubble pressure/kPa" -> bubble.kilopascals();
            case "saturation pressure/MPa", "mean-line pressure/MPa" -> bubble.kilopascals() / 1000;
            case "dew pressure/kPa" -> dew.kilopascals();
            case "saturation gauge pressure/psig", "bubble gauge pressure/psig", "mean-line gauge pressure/psig" ->
                atSeaLevel(bubble).psig();
            case "saturation vacuum/inHg" -> atSeaLevel(bubble).inchesOfMercuryVacuum();
            case "liquid density" -> at.liquid.density();
            case "vapour density" -> at.vapour.density();
            case "liquid volume" -> 1 / at.liquid.density();
            case "vapour volume", "mean-line vapour volume" -> 1 / at.vapour.density();
            case "liquid enthalpy" -> at.liquid.specificEnthalpy() / 1000;
            case "vapour enthalpy" -> at.vapour.specificEnthalpy() / 1000;
            case "liquid entropy" -> at.liquid.specificEntropy() / 1000;
            case "vapour entropy" -> at.vapour.specificEntropy() / 1000;
            case "vaporization enthalpy" -> difference(at, FluidState::specificEnthalpy) / 1000;
            case "vaporization entropy" -> difference(at, FluidState::specificEntropy) / 1000;
            default -> throw new IllegalArgumentException("unknown quantity " + quantity);
        };
    }

    private static double celsius(FluidState state) {
        return Temperature.ofKelvins(state.temperatureK()).celsius();
    }

    private static GaugePressure atSeaLevel(Pressure pressure) {
        return pressure.gauge(Atmosphere.standard());
    }

    private static double difference(Sides at, ToDoubleFunction<FluidState> property) {
        return property.applyAsDouble(at.vapour) - property.applyAsDouble(at.liquid);
    }
}
