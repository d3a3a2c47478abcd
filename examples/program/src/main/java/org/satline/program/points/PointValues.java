package org.satline.program.points;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.Fugacities;
import org.satline.equilibrium.PhaseSplit;
import org.satline.program.file.Shown;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Values of quantities solved from the equations. Prepared models are kept, one for each refrigerant. Thread-safe. */
final class PointValues {
    private final Map<String, FluidModel> models = new ConcurrentHashMap<>();

    FluidModel model(Refrigerant refrigerant) {
        return models.computeIfAbsent(refrigerant.designation(), designation -> FluidModel.of(refrigerant));
    }

    double atTemperature(FluidModel model, PointQuantity quantity, double temperatureK) {
        if (quantity == PointQuantity.BUBBLE_PRESSURE_SLOPE) {
            return model.lines().bubbleSlope(temperatureK);
        }
        if (quantity == PointQuantity.DEW_PRESSURE_SLOPE) {
            return model.lines().dewSlope(temperatureK);
        }
        BoundaryPoint point = quantity.onBubbleLine()
                ? model.bubbleAtTemperature(temperatureK)
                : model.dewAtTemperature(temperatureK);
        return onLine(quantity, point);
    }

    double atPressure(FluidModel model, PointQuantity quantity, double pressurePa) {
        if (quantity == PointQuantity.LATENT_HEAT) {
            return model.lines().latentHeat(pressurePa);
        }
        if (quantity == PointQuantity.GLIDE) {
            return model.dewAtPressure(pressurePa).temperatureK()
                    - model.bubbleAtPressure(pressurePa).temperatureK();
        }
        BoundaryPoint point =
                quantity.onBubbleLine() ? model.bubbleAtPressure(pressurePa) : model.dewAtPressure(pressurePa);
        return onLine(quantity, point);
    }

    /** Value of a state; {@code component} is heeded by fugacity coefficients alone. */
    double ofState(FluidModel model, PointQuantity quantity, PhaseSplit state, Optional<String> component) {
        if (quantity.ofTheWhole()) {
            return ofTheWhole(quantity, state);
        }
        if (state.phases() == PhaseSplit.Phases.LIQUID_AND_VAPOUR) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s at %.10g K and %.10g Pa is a mixture of liquid and vapour, quality %.4g: %s belongs to one"
                            + " phase;"
                            + " ask for that of a saturated phase, or give another state",
                    model.refrigerant().designation(),
                    state.temperatureK(),
                    state.pressurePa(),
                    state.vapourFraction(),
                    quantity.label()));
        }
        FluidState phase = state.vapour().or(state::liquid).orElseThrow();
        return switch (quantity) {
            case ISOBARIC_HEAT_CAPACITY -> phase.isobaricHeatCapacity();
            case ISOCHORIC_HEAT_CAPACITY -> phase.isochoricHeatCapacity();
            case SPEED_OF_SOUND -> phase.speedOfSound();
            case ISENTROPIC_EXPONENT -> phase.isentropicExponent();
            case JOULE_THOMSON_COEFFICIENT -> phase.jouleThomsonCoefficient();
            case COMPRESSIBILITY_FACTOR -> phase.compressibilityFactor();
            case ISOTHERMAL_COMPRESSIBILITY -> phase.isothermalCompressibility();
            case VOLUME_EXPANSIVITY -> phase.volumeExpansivity();
            case FUGACITY_COEFFICIENT -> fugacityCoefficient(model, phase, component);
            default -> throw notHere(quantity);
        };
    }

    private static double ofTheWhole(PointQuantity quantity, PhaseSplit state) {
        return switch (quantity) {
            case TEMPERATURE -> state.temperatureK();
            case PRESSURE -> state.pressurePa();
            case DENSITY -> state.density();
            case ENTHALPY -> state.specificEnthalpy();
            case ENTROPY -> state.specificEntropy();
            case INTERNAL_ENERGY -> state.specificInternalEnergy();
            case GIBBS_ENERGY -> state.specificEnthalpy() - state.temperatureK() * state.specificEntropy();
            case QUALITY -> {
                if (state.phases() == PhaseSplit.Phases.SUPERCRITICAL) {
                    throw new IllegalArgumentException(
                            "quality is not defined above the warmest point of the two-phase region; ask for the"
                                    + " phase");
                }
                yield state.vapourFraction();
            }
            default -> throw notHere(quantity);
        };
    }

    private static double fugacityCoefficient(FluidModel model, FluidState phase, Optional<String> component) {
        List<String> names = model.equation().mixture().components().stream()
                .map(c -> c.constants().designation())
                .toList();
        if (names.size() > 1 && component.isEmpty()) {
            throw new IllegalArgumentException(
                    "fugacity_coefficient is that of one component; name it in the column component: " + names);
        }
        int index = component
                .map(name -> names.indexOf(Catalogue.standard().find(name).designation()))
                .orElse(0);
        if (index < 0) {
            throw new IllegalArgumentException(
                    "component " + Shown.quoted(component.orElseThrow()) + " is not in the blend; allowed: " + names);
        }
        return Fugacities.of(model, phase, model.equation().moleFractions())
                .coefficients()
                .get(index);
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
