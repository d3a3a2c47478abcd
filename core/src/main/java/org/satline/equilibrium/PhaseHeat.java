package org.satline.equilibrium;

import java.util.List;
import org.satline.equation.MixtureEquation;
import org.satline.equation.PartialDensityDerivatives;
import org.satline.equation.PureEquation;
import org.satline.equation.ReducedHelmholtz;

/**
 * Enthalpy, entropy and internal energy of one phase with their derivatives by ln of the partial densities and by ln T. Energies are over
 * RT, entropy and heat capacity over R, from the zero of the equations. One thread at a time.
 */
final class PhaseHeat {
    private final List<PureEquation> components;
    private final double[] energy;
    private final double[] helmholtz;
    private final ReducedHelmholtz ideal = new ReducedHelmholtz();
    private PartialDensityDerivatives phase = new PartialDensityDerivatives(0);
    private double u;
    private double s;
    private double h;
    private double heat;
    private double thermal;

    PhaseHeat(MixtureEquation equation) {
        components = equation.components();
        energy = new double[components.size()];
        helmholtz = new double[components.size()];
    }

    /** Takes over a state that the equation has just filled. */
    void evaluate(double temperature, double[] partialDensities, PartialDensityDerivatives state) {
        phase = state;
        u = state.residualEnergy();
        s = state.residualEnergy() - state.residualHelmholtz();
        heat = state.residualHeat();
        thermal = state.thermalPressure();
        for (int i = 0; i < energy.length; i++) {
            components.get(i).ideal(temperature, partialDensities[i], ideal);
            energy[i] = ideal.at();
            helmholtz[i] = ideal.a();
            u += state.moleFraction(i) * ideal.at();
            s += state.moleFraction(i) * (ideal.at() - ideal.a());
            heat -= state.moleFraction(i) * ideal.att();
        }
        h = u + state.z();
    }

    double value(Given what) {
        return what == Given.ENTHALPY ? h : what == Given.ENTROPY ? s : u;
    }

    /** Derivative by ln of the partial density of component j. */
    double slope(Given what, int j) {
        double ofEnergy = energy[j] - phase.temperature(j);
        return phase.moleFraction(j)
                * switch (what) {
                    case ENTHALPY -> ofEnergy + phase.pressure(j) - h;
                    case ENTROPY -> ofEnergy - helmholtz[j] - 1 - phase.first(j) - s;
                    default -> ofEnergy - u;
                };
    }

    /** Derivative by ln T at constant partial densities: of the energies themselves, over RT. */
    double temperatureSlope(Given what) {
        return what == Given.ENTHALPY ? heat + thermal : heat;
    }
}
