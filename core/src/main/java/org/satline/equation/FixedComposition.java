package org.satline.equation;

/** A mixture at one composition, seen as an equation of density and temperature. Immutable and thread-safe. */
public final class FixedComposition implements HelmholtzEquation {
    /** Far above what rounding leaves of a solved composition, far below a digit that somebody forgot. */
    private static final double SUM_TOLERANCE = 1e-6;

    private final MixtureEquation mixture;
    private final double[] moleFractions;
    private final double molarMass;
    private final double reducingVolume;
    private final double reducingTemperature;
    private final double mixingEntropy;

    FixedComposition(MixtureEquation mixture, double[] moleFractions) {
        if (moleFractions.length != mixture.size()) {
            throw new IllegalArgumentException(moleFractions.length + " mole fractions for " + mixture.size()
                    + " components; give one for each, in their order");
        }
        this.mixture = mixture;
        this.moleFractions = moleFractions.clone();
        double mass = 0;
        double mixing = 0;
        double sum = 0;
        for (int i = 0; i < moleFractions.length; i++) {
            double x = moleFractions[i];
            if (!(x >= 0 && x <= 1)) {
                throw new IllegalArgumentException("mole fraction " + x + " is outside [0, 1]");
            }
            sum += x;
            mass += x * mixture.components().get(i).molarMass();
            mixing += x > 0 ? x * Math.log(x) : 0;
        }
        if (!(Math.abs(sum - 1) <= SUM_TOLERANCE)) {
            throw new IllegalArgumentException("mole fractions add up to " + sum + "; divide each by their sum");
        }
        molarMass = mass;
        mixingEntropy = mixing;
        reducingVolume = mixture.reducingVolume(moleFractions);
        reducingTemperature = mixture.reducingTemperature(moleFractions);
    }

    /**
     * Returns the mixture of which this is one composition.
     *
     * @return the mixture
     */
    public MixtureEquation mixture() {
        return mixture;
    }

    /**
     * Returns a copy of the mole fractions.
     *
     * @return x_i
     */
    public double[] moleFractions() {
        return moleFractions.clone();
    }

    @Override
    public double molarMass() {
        return molarMass;
    }

    @Override
    public double gasConstant() {
        return mixture.gasConstant();
    }

    @Override
    public double reducingTemperature() {
        return reducingTemperature;
    }

    @Override
    public double reducingDensity() {
        return 1 / reducingVolume;
    }

    @Override
    public void residual(double temperature, double density, ReducedHelmholtz out) {
        StateLimits.check(temperature, density);
        ResidualTerms.ReducedState state = new ResidualTerms.ReducedState();
        state.set(density * reducingVolume, reducingTemperature / temperature);
        mixture.residual(moleFractions, state, new ReducedHelmholtz(), out);
    }

    @Override
    public void ideal(double temperature, double density, ReducedHelmholtz out) {
        StateLimits.check(temperature, density);
        out.clear();
        for (int i = 0; i < moleFractions.length; i++) {
            if (moleFractions[i] > 0) {
                mixture.components().get(i).addIdeal(moleFractions[i], temperature, density, out);
            }
        }
        out.a += mixingEntropy;
    }
}
