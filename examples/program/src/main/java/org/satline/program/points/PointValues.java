package org.satline.program.points;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.refrigerant.Refrigerant;

/** Values of quantities solved from the equations. Prepared models are kept, one for each refrigerant. Thread-safe. */
final class PointValues {
    private final Map<String, FluidModel> models = new ConcurrentHashMap<>();

    FluidModel model(Refrigerant refrigerant) {
        return models.computeIfAbsent(refrigerant.designation(), designation -> FluidModel.of(refrigerant));
    }

    double atTemperature(FluidModel model, PointQuantity quantity, double temperatureK) {
        BoundaryPoint point = quantity.onBubbleLine()
                ? model.bubbleAtTemperature(temperatureK)
                : model.dewAtTemperature(temperatureK);
        return onLine(quantity, point);
    }

    double atPressure(FluidModel model, PointQuantity quantity, double pressurePa) {
        if (quantity == PointQuantity.GLIDE) {
            return model.dewAtPressure(pressurePa).temperatureK()
                    - model.bubbleAtPressure(pressurePa).temperatureK();
        }
        BoundaryPoint point =
                quantity.onBubbleLine() ? model.bubbleAtPressure(pressurePa) : model.dewAtPressure(pressurePa);
        return onLine(quantity, point);
    }

    double ofOnePhase(FluidModel model, PointQuantity quantity, double temperatureK, double pressurePa) {
        FluidState state = model.stateAt(temperatureK, pressurePa);
        return switch (quantity) {
            case DENSITY -> state.density();
            case ENTHALPY -> state.specificEnthalpy();
            case ENTROPY -> state.specificEntropy();
            case ISOBARIC_HEAT_CAPACITY -> state.isobaricHeatCapacity();
            case SPEED_OF_SOUND -> state.speedOfSound();
            default -> throw notHere(quantity);
        };
    }

    private static double onLine(PointQuantity quantity, BoundaryPoint point) {
        FluidState state = point.saturated();
        return switch (quantity) {
            case BUBBLE_PRESSURE, DEW_PRESSURE -> point.pressurePa();
            case BUBBLE_TEMPERATURE, DEW_TEMPERATURE -> point.temperatureK();
            case BUBBLE_LIQUID_DENSITY, DEW_VAPOUR_DENSITY -> state.density();
            case BUBBLE_LIQUID_ENTHALPY, DEW_VAPOUR_ENTHALPY -> state.specificEnthalpy();
            case BUBBLE_LIQUID_ENTROPY, DEW_VAPOUR_ENTROPY -> state.specificEntropy();
            case BUBBLE_LIQUID_ISOBARIC_HEAT_CAPACITY, DEW_VAPOUR_ISOBARIC_HEAT_CAPACITY ->
                state.isobaricHeatCapacity();
            case BUBBLE_LIQUID_SPEED_OF_SOUND, DEW_VAPOUR_SPEED_OF_SOUND -> state.speedOfSound();
            default -> throw notHere(quantity);
        };
    }

    private static IllegalStateException notHere(PointQuantity quantity) {
        return new IllegalStateException(quantity.label() + " is not found this way");
    }
}
