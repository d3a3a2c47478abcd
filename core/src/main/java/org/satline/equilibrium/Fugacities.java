package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.List;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;
import org.satline.quantity.Parts;

/**
 * Fugacities of the components in one phase; in phases at equilibrium they are equal. Immutable and thread-safe.
 *
 * @param fugacitiesPa f_i, Pa, in the order of the blend's components; 0 where a component is absent
 * @param coefficients {@code phi_i = f_i / (x_i p)}, dimensionless; of an absent component that at infinite dilution
 */
public record Fugacities(List<Double> fugacitiesPa, List<Double> coefficients) {
    /** {@inheritDoc} */
    public Fugacities {
        fugacitiesPa = Parts.list("fugacitiesPa", fugacitiesPa);
        coefficients = Parts.list("coefficients", coefficients);
    }

    /**
     * Computes the fugacities of a phase.
     *
     * @param model the refrigerant
     * @param phase the phase, as found by the model
     * @param moleFractions its composition, in the order of the blend's components
     * @return its fugacities
     * @throws IllegalArgumentException if the composition has not as many fractions as the blend has components
     */
    public static Fugacities of(FluidModel model, FluidState phase, double[] moleFractions) {
        Parts.required("model phase moleFractions", model, phase, moleFractions);
        MixtureEquation mixture = model.equation().mixture();
        if (moleFractions.length != mixture.size()) {
            throw new IllegalArgumentException(
                    moleFractions.length + " mole fractions for " + mixture.size() + " components; give one for each");
        }
        int n = moleFractions.length;
        double[] partial = new double[n];
        for (int i = 0; i < n; i++) {
            partial[i] = Math.max(moleFractions[i], Double.MIN_NORMAL) * phase.molarDensity();
        }
        PartialDensityDerivatives state = new PartialDensityDerivatives(n);
        mixture.evaluate(phase.temperatureK(), partial, state);
        List<Double> fugacities = new ArrayList<>();
        List<Double> coefficients = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double perFraction =
                    phase.molarDensity() * mixture.gasConstant() * phase.temperatureK() * Math.exp(state.first(i));
            fugacities.add(moleFractions[i] * perFraction);
            coefficients.add(perFraction / phase.pressurePa());
        }
        return new Fugacities(fugacities, coefficients);
    }
}
