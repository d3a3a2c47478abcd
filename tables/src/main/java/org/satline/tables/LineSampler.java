package org.satline.tables;

import java.util.HashMap;
import java.util.Map;
import org.satline.equilibrium.BoundaryEnd;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.Range;
import org.satline.saturation.SaturationProperty;

/** Solves points of one line and remembers them: the columns of a line share most of their nodes. One thread. */
final class LineSampler {
    private final FluidModel model;
    private final boolean bubble;
    private final Map<Double, Point> byTemperature = new HashMap<>();
    private final Map<Double, Double> byPressure = new HashMap<>();

    /** What the columns hold of a point; a boundary point itself would keep arrays alive. */
    private record Point(double pressure, double density, double enthalpy, double entropy, double heatCapacity) {}

    LineSampler(FluidModel model, boolean bubble) {
        this.model = model;
        this.bubble = bubble;
    }

    FluidModel model() {
        return model;
    }

    LineFacts facts() {
        return bubble
                ? new LineFacts(model.bubbleTemperatureRange(), model.bubblePressureRange(), model.bubbleEnd())
                : new LineFacts(model.dewTemperatureRange(), model.dewPressureRange(), model.dewEnd());
    }

    BoundaryEnd end() {
        return facts().end();
    }

    Range temperatures() {
        return facts().temperatures();
    }

    double value(SaturationProperty property, double x) {
        if (property.askedByPressure()) {
            return byPressure.computeIfAbsent(x, this::temperature);
        }
        Point point = byTemperature.computeIfAbsent(x, this::solve);
        return switch (property) {
            case BUBBLE_PRESSURE, DEW_PRESSURE -> point.pressure();
            case BUBBLE_LIQUID_DENSITY, DEW_VAPOUR_DENSITY -> point.density();
            case BUBBLE_LIQUID_ENTHALPY, DEW_VAPOUR_ENTHALPY -> point.enthalpy();
            case BUBBLE_LIQUID_ENTROPY, DEW_VAPOUR_ENTROPY -> point.entropy();
            case BUBBLE_LIQUID_HEAT_CAPACITY, DEW_VAPOUR_HEAT_CAPACITY -> point.heatCapacity();
            case BUBBLE_TEMPERATURE, DEW_TEMPERATURE -> throw new IllegalStateException("asked by pressure");
        };
    }

    private double temperature(double pressure) {
        return (bubble ? model.bubbleAtPressure(pressure) : model.dewAtPressure(pressure)).temperatureK();
    }

    private Point solve(double temperature) {
        BoundaryPoint point = bubble ? model.bubbleAtTemperature(temperature) : model.dewAtTemperature(temperature);
        FluidState state = point.saturated();
        return new Point(
                point.pressurePa(),
                state.density(),
                state.specificEnthalpy(),
                state.specificEntropy(),
                state.isobaricHeatCapacity());
    }
}
