package org.satline.certificate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import org.satline.equation.PureConstants;
import org.satline.equation.PureEquation;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.SolidStateException;
import org.satline.equilibrium.StateFinder;

/**
 * States put back by each pair of their own quantities. The pair is met to 1e-9: p, T and density relative, h and u in units of RT, s in
 * units of R. The state itself is met as well as the pair tells it.
 */
public final class RoundTrips {
    private static final double MET = 1e-9;
    private static final double GAS_CONSTANT = 8.314462618;

    private final List<String> faults = new ArrayList<>();
    private int asked;

    /** Adds what another one asked and found. */
    public RoundTrips and(RoundTrips other) {
        asked += other.asked;
        faults.addAll(other.faults);
        return this;
    }

    /** Questions asked so far. */
    public int asked() {
        return asked;
    }

    /** Questions refused or missed, each with its state. */
    public List<String> faults() {
        return faults;
    }

    /** Puts back a state of one phase anywhere in the range of the equation; a solid one is passed over. */
    public void onePhase(FluidModel model, Random random, boolean logarithmic) {
        double warmest = Double.POSITIVE_INFINITY;
        double highest = Double.POSITIVE_INFINITY;
        for (PureEquation component : model.equation().mixture().components()) {
            PureConstants c = component.constants();
            warmest = Math.min(warmest, c.maxTemperature());
            highest = Math.min(highest, c.maxPressure());
        }
        double coldest = model.minTemperatureK();
        double temperature = coldest + (warmest - coldest) * random.nextDouble();
        double pressure = logarithmic
                ? Math.exp(Math.log(100) + random.nextDouble() * Math.log(highest / 100))
                : highest * random.nextDouble();
        PhaseSplit state;
        try {
            state = model.states().atTemperatureAndPressure(temperature, pressure);
        } catch (SolidStateException e) {
            return;
        } catch (RuntimeException e) {
            asked++;
            faults.add(model.refrigerant().designation() + " at " + temperature + " K, " + pressure + " Pa: " + e);
            return;
        }
        putBack(model, state, false);
    }

    /** Puts back a two-phase state and both saturated states of one temperature. */
    public void twoPhases(FluidModel model, Random random) {
        double end = Math.min(
                model.maxTemperatureK(),
                0.995 * model.lines().criticalPoint().map(c -> c.temperatureK()).orElse(model.maxTemperatureK()));
        double temperature = model.minTemperatureK() + Math.max(0, end - model.minTemperatureK()) * random.nextDouble();
        FluidState liquid = model.bubbleAtTemperature(temperature).saturated();
        FluidState vapour = model.dewAtTemperature(temperature).saturated();
        double share = random.nextDouble();
        double density = Math.exp(Math.log(vapour.density()) + share * Math.log(liquid.density() / vapour.density()));
        putBack(model, model.states().atTemperatureAndDensity(temperature, density), false);
        putBack(model, saturated(model, liquid, PhaseSplit.Phases.LIQUID), true);
        putBack(model, saturated(model, vapour, PhaseSplit.Phases.VAPOUR), true);
    }

    private static PhaseSplit saturated(FluidModel model, FluidState state, PhaseSplit.Phases phases) {
        boolean isLiquid = phases == PhaseSplit.Phases.LIQUID;
        List<Double> z = Arrays.stream(model.equation().moleFractions()).boxed().toList();
        return PhaseSplit.of(new PhaseSplit.Values(
                phases,
                state.temperatureK(),
                state.pressurePa(),
                state.density(),
                isLiquid ? 0 : 1,
                isLiquid ? 1 : 0,
                isLiquid ? Optional.of(state) : Optional.empty(),
                isLiquid ? Optional.empty() : Optional.of(state),
                z,
                z));
    }

    /** Asks for a state by each pair of its own quantities. */
    public void putBack(FluidModel model, PhaseSplit s, boolean saturated) {
        StateFinder f = model.states();
        boolean two = s.phases() == PhaseSplit.Phases.LIQUID_AND_VAPOUR;
        double t = s.temperatureK();
        double p = s.pressurePa();
        double rho = s.density();
        double h = s.specificEnthalpy();
        double entropy = s.specificEntropy();
        double u = s.specificInternalEnergy();
        if (model.refrigerant().isBlend() || !(two || saturated)) {
            met(model, "T, p", s, () -> f.atTemperatureAndPressure(t, p), "Tp");
        }
        met(model, "p, h", s, () -> f.atPressureAndEnthalpy(p, h), "ph");
        met(model, "p, s", s, () -> f.atPressureAndEntropy(p, entropy), "ps");
        met(model, "p, rho", s, () -> f.atPressureAndDensity(p, rho), "pr");
        met(model, "T, rho", s, () -> f.atTemperatureAndDensity(t, rho), "Tr");
        met(model, "h, s", s, () -> f.atEnthalpyAndEntropy(h, entropy), "hs");
        met(model, "u, v", s, () -> f.atEnergyAndVolume(u, 1 / rho), "ur");
        met(model, "T, h", s, () -> nearest(s, f.allAtTemperatureAndEnthalpy(t, h)), "Th");
        met(model, "T, s", s, () -> nearest(s, f.allAtTemperatureAndEntropy(t, entropy)), "Ts");
        if (two) {
            double q = s.vapourFraction();
            met(model, "p, q", s, () -> nearest(s, f.allAtPressureAndVapourFraction(p, q)), "pq");
            met(model, "T, q", s, () -> nearest(s, f.allAtTemperatureAndVapourFraction(t, q)), "Tq");
        }
    }

    private static PhaseSplit nearest(PhaseSplit to, List<PhaseSplit> all) {
        return all.stream()
                .min((a, b) -> Double.compare(distance(a, to), distance(b, to)))
                .orElseThrow();
    }

    private static double distance(PhaseSplit a, PhaseSplit b) {
        return Math.abs(Math.log(a.density() / b.density()));
    }

    private void met(FluidModel model, String pair, PhaseSplit s, Supplier<PhaseSplit> flash, String quantities) {
        asked++;
        String where = model.refrigerant().designation() + " by " + pair + " at " + s.temperatureK() + " K, "
                + s.pressurePa() + " Pa, " + s.density() + " kg/m3: ";
        try {
            PhaseSplit back = flash.get();
            for (int k = 0; k < quantities.length(); k++) {
                char q = quantities.charAt(k);
                double miss = miss(model, q, s, back);
                if (!(miss < MET)) {
                    faults.add(where + q + " missed by " + miss);
                }
            }
        } catch (RuntimeException e) {
            faults.add(where + e);
        }
    }

    private static double miss(FluidModel model, char quantity, PhaseSplit s, PhaseSplit back) {
        double r = GAS_CONSTANT / model.equation().molarMass();
        double rt = r * s.temperatureK();
        return Math.abs(
                switch (quantity) {
                    case 'T' -> back.temperatureK() / s.temperatureK() - 1;
                    case 'p' -> back.pressurePa() / s.pressurePa() - 1;
                    case 'r' -> back.density() / s.density() - 1;
                    case 'h' -> (back.specificEnthalpy() - s.specificEnthalpy()) / rt;
                    case 'u' -> (back.specificInternalEnergy() - s.specificInternalEnergy()) / rt;
                    case 's' -> (back.specificEntropy() - s.specificEntropy()) / r;
                    default -> back.vapourFraction() - s.vapourFraction();
                });
    }
}
