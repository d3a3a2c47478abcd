package org.satline.equilibrium;

import java.util.List;
import org.satline.equation.EquationCheck;
import org.satline.quantity.Parts;
import org.satline.quantity.SpecificEnthalpy;
import org.satline.quantity.SpecificEntropy;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;

/**
 * Computes the check values published for an equation and holds them against print.
 *
 * @param check what is printed
 * @param computed the same value as computed here, in the unit of the printed one
 */
public record EquationSelfTest(EquationCheck check, double computed) {
    /** {@inheritDoc} */
    public EquationSelfTest {
        Parts.numbers("computed", computed);
        Parts.required("check", check);
    }

    /**
     * Computes all check values of a substance.
     *
     * @param designation ISO 817 designation, such as {@code R-718}
     * @return one for each check value; empty if none is on record
     */
    public static List<EquationSelfTest> run(String designation) {
        List<EquationCheck> checks = EquationCheck.of(designation);
        if (checks.isEmpty()) {
            return List.of();
        }
        return run(FluidModel.of(Catalogue.standard().find(designation)), checks);
    }

    static List<EquationSelfTest> run(FluidModel prepared, List<EquationCheck> checks) {
        FluidModel model = countedAsInThePaper(prepared);
        return checks.stream()
                .map(check -> new EquationSelfTest(check, compute(model, check)))
                .toList();
    }

    /**
     * Tells whether the computed value is the printed one.
     *
     * @return true if both agree within the tolerance of the check
     */
    public boolean repeats() {
        return Math.abs(computed - check.printed()) <= check.relativeTolerance() * Math.abs(check.printed());
    }

    private static FluidModel countedAsInThePaper(FluidModel model) {
        if (!model.refrigerant().designation().equals("R-718")) {
            return model;
        }
        // the paper's own zero: saturated liquid at the triple point
        return model.with(ReferenceState.ofSaturatedLiquid(
                Temperature.ofKelvins(273.16),
                SpecificEnthalpy.ofJoulesPerKilogram(0),
                SpecificEntropy.ofJoulesPerKilogramKelvin(0)));
    }

    private static double compute(FluidModel model, EquationCheck check) {
        return switch (check.point()) {
            case BOILING ->
                model.bubbleAtPressure(check.pressurePa().orElseThrow()).temperatureK();
            case SATURATION -> saturated(model, check, check.temperatureK().orElseThrow());
            case ONE_PHASE -> {
                PhaseSplit split = model.states()
                        .atTemperatureAndDensity(
                                check.temperatureK().orElseThrow(),
                                check.densityKgPerM3().orElseThrow());
                yield onePhase(split.liquid().or(split::vapour).orElseThrow(), check);
            }
        };
    }

    private static double onePhase(FluidState state, EquationCheck check) {
        return switch (check.quantity()) {
            case PRESSURE -> state.pressurePa();
            case ISOCHORIC_HEAT_CAPACITY -> state.isochoricHeatCapacity();
            case SPEED_OF_SOUND -> state.speedOfSound();
            case ENTROPY -> state.specificEntropy();
            default -> throw unfit(check);
        };
    }

    private static double saturated(FluidModel model, EquationCheck check, double temperatureK) {
        return switch (check.quantity()) {
            case PRESSURE -> model.bubbleAtTemperature(temperatureK).pressurePa();
            case LIQUID_DENSITY ->
                model.bubbleAtTemperature(temperatureK).saturated().density();
            case VAPOUR_DENSITY -> dew(model, temperatureK).density();
            case VAPOUR_ENTHALPY_IIR -> dew(model, temperatureK).specificEnthalpy();
            case VAPOUR_ENTROPY_IIR -> dew(model, temperatureK).specificEntropy();
            default -> throw unfit(check);
        };
    }

    private static FluidState dew(FluidModel model, double temperatureK) {
        return model.dewAtTemperature(temperatureK).saturated();
    }

    private static IllegalArgumentException unfit(EquationCheck check) {
        return new IllegalArgumentException(check.quantity() + " is not computed at a point of the kind "
                + check.point() + "; take a quantity that belongs to such a point");
    }
}
