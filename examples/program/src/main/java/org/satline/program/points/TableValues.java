package org.satline.program.points;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Values of saturation quantities read through the saturation curve, as a program that embeds the library reads them. Thread-safe. */
final class TableValues {
    private final Map<String, SaturationCurve> curves = new ConcurrentHashMap<>();

    /** Whether a table holds the quantity; speed of sound, slopes and latent heat are in none. */
    boolean has(Refrigerant refrigerant, PointQuantity quantity) {
        return switch (quantity) {
            case BUBBLE_LIQUID_SPEED_OF_SOUND,
                    DEW_VAPOUR_SPEED_OF_SOUND,
                    BUBBLE_PRESSURE_SLOPE,
                    DEW_PRESSURE_SLOPE,
                    LATENT_HEAT -> false;
            default -> curve(refrigerant).engine() == Engine.TABLE;
        };
    }

    double value(
            Refrigerant refrigerant,
            PointQuantity quantity,
            Optional<Double> temperatureK,
            Optional<Double> pressurePa) {
        SaturationCurve curve = curve(refrigerant);
        if (quantity == PointQuantity.GLIDE) {
            double p = pressurePa.orElseThrow();
            return curve.dewTemperatureK(p) - curve.bubbleTemperatureK(p);
        }
        double t = temperatureK.orElseGet(() -> quantity.onBubbleLine()
                ? curve.bubbleTemperatureK(pressurePa.orElseThrow())
                : curve.dewTemperatureK(pressurePa.orElseThrow()));
        return switch (quantity) {
            case BUBBLE_PRESSURE -> curve.bubblePressurePa(t);
            case DEW_PRESSURE -> curve.dewPressurePa(t);
            case BUBBLE_TEMPERATURE, DEW_TEMPERATURE -> t;
            case BUBBLE_LIQUID_DENSITY -> curve.bubbleLiquidDensity(t);
            case BUBBLE_LIQUID_ENTHALPY -> curve.bubbleLiquidEnthalpy(t);
            case BUBBLE_LIQUID_ENTROPY -> curve.bubbleLiquidEntropy(t);
            case BUBBLE_LIQUID_ISOBARIC_HEAT_CAPACITY -> curve.bubbleLiquidIsobaricHeatCapacity(t);
            case DEW_VAPOUR_DENSITY -> curve.dewVapourDensity(t);
            case DEW_VAPOUR_ENTHALPY -> curve.dewVapourEnthalpy(t);
            case DEW_VAPOUR_ENTROPY -> curve.dewVapourEntropy(t);
            case DEW_VAPOUR_ISOBARIC_HEAT_CAPACITY -> curve.dewVapourIsobaricHeatCapacity(t);
            default -> throw new IllegalStateException(quantity.label() + " is in no table");
        };
    }

    private SaturationCurve curve(Refrigerant refrigerant) {
        return curves.computeIfAbsent(refrigerant.designation(), designation -> SaturationCurves.of(refrigerant));
    }
}
