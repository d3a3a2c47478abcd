package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.satline.equation.MissingEquationException;
import org.satline.equation.PureConstants;
import org.satline.equation.PureEquation;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/**
 * States put back by each pair of their own quantities, all refrigerants, none refused. The pair is met to 1e-9: p, T and density relative, h and u in units
 * of RT, s in units of R. The state itself is met as well as the pair tells it.
 */
class FlashRoundTripTest {
    private static final double MET = 1e-9;
    private static final double GAS_CONSTANT = 8.314462618;

    private final List<String> faults = new ArrayList<>();
    private int asked;

    @Test
    void everyPairGivesItsStateBack() {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            if (!refrigerant.hasComposition()) {
                continue;
            }
            FluidModel model;
            try {
                model = FluidModel.of(refrigerant);
            } catch (MissingEquationException e) {
                continue;
            }
            Random random = new Random(refrigerant.designation().hashCode());
            for (int i = 0; i < 2; i++) {
                onePhase(model, random, i == 0);
                twoPhases(model, random);
            }
        }
        assertThat(asked).isGreaterThan(14_000);
        assertThat(faults).isEmpty();
    }

    private void onePhase(FluidModel model, Random random, boolean logarithmic) {
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
        try {
            putBack(model, model.states().atTemperatureAndPressure(temperature, pressure), false);
        } catch (SolidStateException e) {
            // no state to put back
        }
    }

    private void twoPhases(FluidModel model, Random random) {
        double end = 0.995 * model.lines().criticalPoint().orElseThrow().temperatureK();
        double temperature = model.minTemperatureK() + (end - model.minTemperatureK()) * random.nextDouble();
        FluidState liquid = model.bubbleAtTemperature(temperature).saturated();
        FluidState vapour = model.dewAtTemperature(temperature).saturated();
        double share = random.nextDouble();
        double density = Math.exp(Math.log(vapour.density()) + share * Math.log(liquid.density() / vapour.density()));
        putBack(model, model.states().atTemperatureAndDensity(temperature, density), false);
        putBack(model, saturated(liquid, PhaseSplit.Phases.LIQUID), true);
        putBack(model, saturated(vapour, PhaseSplit.Phases.VAPOUR), true);
    }

    private static PhaseSplit saturated(FluidState state, PhaseSplit.Phases phases) {
        return PhaseSplit.onePhase(phases, state, new double[0]);
    }

    private void putBack(FluidModel model, PhaseSplit s, boolean saturated) {
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
        assertThat(all).isNotEmpty();
        PhaseSplit best = all.get(0);
        for (PhaseSplit each : all) {
            best = distance(each, to) < distance(best, to) ? each : best;
        }
        return best;
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

    @Test
    void superheatedVapourBetweenTheDewAndTheBubblePressureOfTheColdestTemperatureIsAnswered() {
        for (Refrigerant blend : Catalogue.standard().blends()) {
            if (!blend.hasComposition()) {
                continue;
            }
            FluidModel model;
            try {
                model = FluidModel.of(blend);
            } catch (MissingEquationException e) {
                continue;
            }
            double low = model.dewPressureRange().low();
            double high = model.bubblePressureRange().low();
            for (double share : new double[] {0.1, 0.5, 0.9}) {
                double pressure = low * Math.pow(high / low, share);
                PhaseSplit vapour = model.states().atTemperatureAndPressure(model.maxTemperatureK(), pressure);
                putBack(model, vapour, false);
            }
        }
        assertThat(faults).isEmpty();
    }
}
