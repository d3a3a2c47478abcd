package org.satline.equilibrium;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.IncipientPhase.Specified;

/** States at a pair without temperature or pressure: enthalpy and entropy, internal energy and density. Immutable and thread-safe. */
final class EnergyStates {
    private static final int MOST_ROUNDS = 100;
    /** Enthalpy met, over RT. */
    private static final double MET = 2e-12;

    private static final double LEAST_PRESSURE = 1e-6;
    private static final double ROUGH = 1e-7;
    private static final int MOST_EVALUATIONS = 100;
    private static final double AT_THE_LIMIT = 1e-9;

    private final SinglePhase singlePhase;
    private final StateSolver solver;
    private final FixedComposition composition;
    private final double start;

    EnergyStates(Envelope envelope, SinglePhase singlePhase, StateSolver solver) {
        this.singlePhase = singlePhase;
        this.solver = solver;
        this.composition = envelope.composition;
        this.start = Math.sqrt(envelope.bubble.minPressure() * envelope.bubble.maxPressure());
    }

    /**
     * Along an isentrope h rises with pressure, dh = v dp: Newton's method in ln p, kept between a pressure that is too low and one too
     * high.
     */
    Solution atEnthalpyAndEntropy(double enthalpy, double entropy) {
        double low = Math.log(LEAST_PRESSURE);
        double high = Math.log(singlePhase.maxPressure());
        double at = Math.log(start);
        double missBefore = Double.POSITIVE_INFINITY;
        Solution best = null;
        for (int i = 0; i < MOST_ROUNDS; i++) {
            Solution here;
            try {
                here = solver.along(Specified.PRESSURE, Math.exp(at), Given.ENTROPY, entropy);
            } catch (BeyondRangeException e) {
                // at a pressure too low the isentrope is colder than the equation's limit, at one too high warmer
                if (entropy < Math.min(e.low, e.high)) {
                    low = at;
                } else {
                    high = at;
                }
                at = (low + high) / 2;
                if (high - low < 1e-12) {
                    break;
                }
                continue;
            }
            double pressure = Math.exp(at);
            double miss = overall(here, Given.ENTHALPY) - enthalpy;
            double rt = composition.gasConstant() * here.temperature();
            if (Math.abs(miss) < MET * rt || (Math.abs(miss) < 1e-10 * rt && Math.abs(miss) >= missBefore)) {
                return best != null && Math.abs(miss) > missBefore ? best : here;
            }
            best = here;
            missBefore = Math.abs(miss);
            if (miss > 0) {
                high = at;
            } else {
                low = at;
            }
            double next = at - miss * here.molarDensity() / pressure;
            at = next > low && next < high ? next : (low + high) / 2;
            if (high - low < 1e-14) {
                break;
            }
        }
        if (best != null) {
            double rt = composition.gasConstant() * best.temperature();
            if (missBefore < AT_THE_LIMIT * rt) {
                return best;
            }
            double met = overall(best, Given.ENTHALPY);
            throw new BeyondRangeException(Math.min(met, met), met);
        }
        throw new BeyondRangeException(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private double overall(Solution solution, Given what) {
        TwoPhaseNewton split = solution.split();
        return split != null
                ? split.overall(what)
                : new HomogeneousNewton(composition).value(solution.temperature(), solution.molarDensity(), what);
    }

    /** At constant volume the energy rises with temperature. */
    Solution atEnergyAndDensity(double energy, double logDensity) {
        double coldest = singlePhase.minTemperature();
        double warmest = singlePhase.maxTemperature();
        double atColdest = energyAt(coldest, logDensity);
        double atWarmest = energyAt(warmest, logDensity);
        double rt = composition.gasConstant() * coldest;
        if (!(energy >= atColdest - AT_THE_LIMIT * rt && energy <= atWarmest + AT_THE_LIMIT * rt)) {
            throw new BeyondRangeException(atColdest, atWarmest);
        }
        double t = energy <= atColdest
                ? coldest
                : energy >= atWarmest
                        ? warmest
                        : new BrentSolver(ROUGH, ROUGH * coldest)
                                .solve(MOST_EVALUATIONS, x -> energyAt(x, logDensity) - energy, coldest, warmest);
        Solution near = solver.along(Specified.TEMPERATURE, t, Given.DENSITY, logDensity);
        TwoPhaseNewton split = near.split();
        if (split != null) {
            TwoPhaseNewton polished = new TwoPhaseNewton(composition.mixture(), composition.moleFractions());
            System.arraycopy(split.x, 0, polished.x, 0, split.x.length);
            if (polished.solve(Given.DENSITY, logDensity, Given.ENERGY, energy)
                    && polished.vapourMoleFraction() >= 0
                    && polished.vapourMoleFraction() <= 1) {
                return Solution.of(polished);
            }
        }
        HomogeneousNewton newton = new HomogeneousNewton(composition);
        if (newton.solve(t, Math.exp(logDensity), Given.DENSITY, logDensity, Given.ENERGY, energy)) {
            Solution found = solver.along(Specified.TEMPERATURE, newton.temperature(), Given.DENSITY, logDensity);
            if (found.split() == null) {
                return found;
            }
        }
        // beside the line where one phase becomes two the kink keeps both iterations off: narrow the temperature itself
        double exact = new BrentSolver(1e-15, 1e-14 * t)
                .solve(MOST_EVALUATIONS, x -> energyAt(x, logDensity) - energy, t * (1 - 1e-5), t * (1 + 1e-5));
        return solver.along(Specified.TEMPERATURE, exact, Given.DENSITY, logDensity);
    }

    private double energyAt(double temperature, double logDensity) {
        return overall(solver.along(Specified.TEMPERATURE, temperature, Given.DENSITY, logDensity), Given.ENERGY);
    }
}
