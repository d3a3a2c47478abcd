package org.satline.equation;

/**
 * A published Helmholtz-energy equation of one pure substance. Immutable and thread-safe. Valid within the stated temperature and pressure
 * range; the methods compute whatever state they are given, the rooms below refuse what lies outside.
 */
public final class PureEquation implements HelmholtzEquation {
    private final PureConstants constants;
    private final EquationSource source;
    private final IdealGas idealGas;
    private final ResidualTerms[] residualTerms;

    PureEquation(PureConstants constants, EquationSource source, IdealGas idealGas, ResidualTerms[] residualTerms) {
        this.constants = constants;
        this.source = source;
        this.idealGas = idealGas;
        this.residualTerms = residualTerms;
    }

    /**
     * Returns the constants printed with the equation.
     *
     * @return designation, critical constants, validity and starting values
     */
    public PureConstants constants() {
        return constants;
    }

    /**
     * Returns the citation of the equation.
     *
     * @return source
     */
    public EquationSource source() {
        return source;
    }

    /**
     * Tells whether the equation has terms that are singular at its critical point.
     *
     * @return true for
     */
    public boolean singularAtCriticalPoint() {
        for (ResidualTerms group : residualTerms) {
            if (group instanceof CriticalRegionTerms) {
                return true;
            }
        }
        return false;
    }

    @Override
    public double molarMass() {
        return constants.molarMass();
    }

    @Override
    public double gasConstant() {
        return constants.gasConstant();
    }

    @Override
    public double reducingTemperature() {
        return constants.reducingTemperature();
    }

    @Override
    public double reducingDensity() {
        return constants.reducingDensity();
    }

    @Override
    public void residual(double temperature, double density, ReducedHelmholtz out) {
        StateLimits.check(temperature, density);
        ResidualTerms.ReducedState state = new ResidualTerms.ReducedState();
        state.set(density / constants.reducingDensity(), constants.reducingTemperature() / temperature);
        residual(state, out);
    }

    /** Same at reduced variables that need not be this substance's own, as the mixture model asks. */
    void residual(ResidualTerms.ReducedState state, ReducedHelmholtz out) {
        out.clear();
        for (ResidualTerms group : residualTerms) {
            group.addTo(state, out);
        }
    }

    @Override
    public void ideal(double temperature, double density, ReducedHelmholtz out) {
        StateLimits.check(temperature, density);
        out.clear();
        addIdeal(1, temperature, density, out);
    }

    void addIdeal(double factor, double temperature, double density, ReducedHelmholtz out) {
        idealGas.addTo(
                factor, density / constants.reducingDensity(), constants.reducingTemperature() / temperature, out);
    }

    @Override
    public String toString() {
        return "equation of " + constants.designation() + ": " + source.citation();
    }
}
