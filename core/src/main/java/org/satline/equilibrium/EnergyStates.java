package org.satline.equilibrium;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.IncipientPhase.Specified;
import org.satline.quantity.OutOfValidityException;

/** States at a pair without temperature or pressure: enthalpy and entropy, internal energy and density. Immutable and thread-safe. */
final class EnergyStates {
    private static final int MOST_ROUNDS = 100;
    /** Enthalpy met, over RT. */
    private static final double MET = 2e-12;

    private static final double LEAST_PRESSURE = 1e-6;
    private static final double ROUGH = 1e-7;
    private static final int MOST_EVALUATIONS = 100;
    private static final double AT_THE_LIMIT = 1e-9;
    /** Water is densest at 4 degC, by a thousandth. */
    private static final double DENSEST = 1.002;

    private final SinglePhase singlePhase;
    private final StateSolver solver;
    private final FixedComposition composition;
    private final double start;
    private final double coldestBubble;
    /** Molar density of the coldest liquid under the largest pressure; 0 until it is first asked for. */
    private volatile double knownDensest;

    private final String designation;

    EnergyStates(String designation, Envelope envelope, SinglePhase singlePhase, StateSolver solver) {
        this.designation = designation;
        this.singlePhase = singlePhase;
        this.solver = solver;
        this.composition = envelope.composition;
        this.coldestBubble = envelope.bubble.minPressure();
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
        double bestAt = at;
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
            bestAt = at;
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
        if (best == null) {
            throw beyondEveryIsentrope(entropy);
        }
        if (missBefore < AT_THE_LIMIT * composition.gasConstant() * best.temperature()) {
            return best;
        }
        double least = enthalpyAtEnd(entropy, bestAt, Math.log(LEAST_PRESSURE));
        double most = enthalpyAtEnd(entropy, bestAt, Math.log(singlePhase.maxPressure()));
        if (enthalpy > least && enthalpy < most) {
            throw solver.notFound(Specified.PRESSURE, Math.exp(bestAt));
        }
        throw new BeyondRangeException(least, most);
    }

    /** Entropy falls with pressure and rises with temperature. */
    private RuntimeException beyondEveryIsentrope(double entropy) {
        double coldest = singlePhase.minTemperature();
        // at the triple point the melting pressure is that of saturation: the liquid is wanted
        double liquid = Math.max(solver.mostPressure(coldest), coldestBubble * (1 + ROUGH));
        double least = overall(solver.atTemperaturePressure(coldest, liquid), Given.ENTROPY);
        double most =
                overall(solver.atTemperaturePressure(singlePhase.maxTemperature(), LEAST_PRESSURE), Given.ENTROPY);
        return entropy > least && entropy < most
                ? solver.notFound(Specified.TEMPERATURE, coldest)
                : BeyondRangeException.ofEntropy(least, most);
    }

    /** Enthalpy where an isentrope ends between a pressure at which it holds and one at which it need not. */
    private double enthalpyAtEnd(double entropy, double holds, double logLimit) {
        double inside = holds;
        double outside = logLimit;
        double enthalpy = Double.NaN;
        for (int i = 0; i < MOST_ROUNDS && Math.abs(outside - inside) > ROUGH; i++) {
            // the limit itself first: most isentropes reach it
            double next = i == 0 ? logLimit : (inside + outside) / 2;
            try {
                enthalpy = overall(
                        solver.along(Specified.PRESSURE, Math.exp(next), Given.ENTROPY, entropy), Given.ENTHALPY);
                inside = next;
            } catch (BeyondRangeException e) {
                outside = next;
            }
        }
        return Double.isNaN(enthalpy)
                ? overall(solver.along(Specified.PRESSURE, Math.exp(holds), Given.ENTROPY, entropy), Given.ENTHALPY)
                : enthalpy;
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
        checkDensity(coldest, logDensity);
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

    /** Denser than the coldest liquid under the largest pressure an equation is not asked for energies. */
    private void checkDensity(double coldest, double logDensity) {
        double densest = knownDensest;
        if (!(densest > 0)) {
            densest = solver.atTemperaturePressure(coldest, singlePhase.maxPressure())
                    .molarDensity();
            knownDensest = densest;
        }
        if (!(Math.exp(logDensity) <= densest * DENSEST)) {
            double toSpecific = composition.molarMass();
            throw OutOfValidityException.of(
                    "density",
                    Math.exp(logDensity) * toSpecific,
                    "kg/m3",
                    0,
                    densest * toSpecific,
                    "the equations of " + designation + " at their largest pressure",
                    "give a larger volume");
        }
    }

    private double energyAt(double temperature, double logDensity) {
        return overall(solver.along(Specified.TEMPERATURE, temperature, Given.DENSITY, logDensity), Given.ENERGY);
    }
}
