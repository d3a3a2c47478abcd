package org.satline.certificate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.satline.equation.EquationLibrary;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.PhaseSplit;
import org.satline.equilibrium.TwoLiquidsException;
import org.satline.quantity.OutOfValidityException;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/**
 * States put back by every pair of quantities, ends of the two-phase region, and the decision between one phase and two between those ends.
 */
final class FlashesAndEnds {
    private static final int ROUNDS = 5;
    private static final int USER_BLENDS = 2000;
    private static final int BETWEEN_ENDS = 10;
    /** Their liquids mix with nothing here but each other. */
    private static final Set<String> NOT_DRAWN = Set.of("R-717", "R-718", "R-764");

    private final List<String> lines = new ArrayList<>();
    private int faults;

    int faults() {
        return faults;
    }

    List<String> report() {
        return lines;
    }

    static FlashesAndEnds ofEverything() {
        FlashesAndEnds all = new FlashesAndEnds();
        all.refrigerants();
        all.userBlends();
        all.lines.addAll(PairSweep.report());
        return all;
    }

    private void refrigerants() {
        lines.add("");
        lines.add("## Flashes, ends and stability");
        lines.add("");
        lines.add(
                "States of one phase over the range of each equation, of two phases, and saturated ones, put back by every pair of their own quantities (T,p p,h p,s p,rho"
                        + " T,rho h,s u,v T,h T,s, of two phases p,q T,q too): asked and refused or missed by more than 1e-9. Critical point by the two criticality conditions;"
                        + " warmest point and highest pressure of the two-phase region. Between the colder end of the lines and the warmest point: states answered as two phases"
                        + " and, of these, such with a Gibbs energy not below that of one phase.");
        lines.add("");
        lines.add(
                "| refrigerant | asked | refused or missed | critical point | warmest | highest pressure | two phases between the ends | wrong |");
        lines.add("|---|---|---|---|---|---|---|---|");
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            if (refrigerant.hasComposition() && SolvedStates.hasEquations(refrigerant)) {
                row(refrigerant);
            }
        }
    }

    private void row(Refrigerant refrigerant) {
        FluidModel model = FluidModel.of(refrigerant);
        RoundTrips trips = new RoundTrips();
        Random random = new Random(refrigerant.designation().hashCode());
        for (int i = 0; i < ROUNDS; i++) {
            trips.onePhase(model, random, i % 2 == 0);
            trips.twoPhases(model, random);
        }
        int[] between = betweenTheEnds(model, random);
        faults += trips.faults().size() + between[1];
        lines.add(String.format(
                Locale.ROOT,
                "| %s | %d | %d | %s | %.3f K | %.4f MPa | %d | %d |",
                refrigerant.designation(),
                trips.asked(),
                trips.faults().size(),
                model.lines()
                        .criticalPoint()
                        .map(c -> String.format(
                                Locale.ROOT,
                                "%.4f K, %.4f MPa, %.2f kg/m3",
                                c.temperatureK(),
                                c.pressurePa() / 1e6,
                                c.density()))
                        .orElse("not reached"),
                model.lines().warmestPoint().temperatureK(),
                model.lines().highestPressure().pressurePa() / 1e6,
                between[0],
                between[1]));
        trips.faults().forEach(f -> lines.add("| | | " + f + " | | | | | |"));
    }

    /** Number of two-phase answers between the ends of the lines, and of those that one phase of lower Gibbs energy contradicts. */
    private static int[] betweenTheEnds(FluidModel model, Random random) {
        int two = 0;
        int wrong = 0;
        double from = Math.min(model.bubbleEnd().temperatureK(), model.dewEnd().temperatureK());
        double to = model.lines().warmestPoint().temperatureK();
        double highest = model.lines().highestPressure().pressurePa();
        for (int i = 0; i < BETWEEN_ENDS && to > from; i++) {
            double temperature = from + (to - from) * random.nextDouble();
            double pressure = highest * (0.8 + 0.2 * random.nextDouble());
            PhaseSplit split;
            try {
                split = model.states().atTemperatureAndPressure(temperature, pressure);
            } catch (ConvergenceException | OutOfValidityException besideTheCriticalPoint) {
                continue;
            }
            if (split.phases() == PhaseSplit.Phases.LIQUID_AND_VAPOUR) {
                two++;
                FluidState liquid = split.liquid().orElseThrow();
                FluidState vapour = split.vapour().orElseThrow();
                double g = (1 - split.vapourFraction()) * liquid.specificGibbsEnergy()
                        + split.vapourFraction() * vapour.specificGibbsEnergy();
                wrong += g < OnePhaseGibbs.least(model, temperature, pressure) ? 0 : 1;
            }
        }
        return new int[] {two, wrong};
    }

    private void userBlends() {
        List<Refrigerant> pool = Catalogue.standard().substances().stream()
                .filter(r -> EquationLibrary.standard().hasEquation(r.designation()))
                .filter(r -> !NOT_DRAWN.contains(r.designation()))
                .toList();
        Random random = new Random(1);
        RoundTrips trips = new RoundTrips();
        Map<String, Integer> refused = new TreeMap<>();
        int traced = 0;
        int critical = 0;
        int two = 0;
        int wrong = 0;
        for (int k = 0; k < USER_BLENDS; k++) {
            FluidModel model;
            try {
                model = FluidModel.of(blend(pool, random));
            } catch (TwoLiquidsException e) {
                refused.merge("second liquid beside the first", 1, Integer::sum);
                continue;
            } catch (ConvergenceException e) {
                refused.merge("no bubble line that rises with temperature was found", 1, Integer::sum);
                continue;
            }
            traced++;
            critical += model.lines().criticalPoint().isPresent() ? 1 : 0;
            trips.onePhase(model, random, k % 2 == 0);
            trips.twoPhases(model, random);
            int[] between = betweenTheEnds(model, random);
            two += between[0];
            wrong += between[1];
        }
        faults += wrong;
        lines.add("");
        lines.add("### Random blends with light gases");
        lines.add("");
        lines.add(String.format(
                Locale.ROOT,
                "%d blends of two to six of %d substances, R-14, R-50 and R-728 among them, mole fractions down to 1e-4: %d traced, %d of them to their critical point;"
                        + " refused: %s. %d questions asked by pairs, %d refused or missed. %d states answered as two phases between the ends, %d of them wrong.",
                USER_BLENDS,
                pool.size(),
                traced,
                critical,
                refused.isEmpty() ? "none" : refused.toString(),
                trips.asked(),
                trips.faults().size(),
                two,
                wrong));
        trips.faults().stream().limit(20).forEach(f -> lines.add("- " + f));
    }

    private static Refrigerant blend(List<Refrigerant> pool, Random random) {
        List<Refrigerant> order = new ArrayList<>(pool);
        Collections.shuffle(order, random);
        int size = 2 + random.nextInt(5);
        double[] x = new double[size];
        double sum = 0;
        for (int i = 0; i < size; i++) {
            x[i] = random.nextInt(4) == 0 ? Math.pow(10, -4 * random.nextDouble()) : 1e-4 + random.nextDouble();
            sum += x[i];
        }
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        StringBuilder name = new StringBuilder();
        for (int i = 0; i < size; i++) {
            fractions.put(order.get(i), x[i] / sum);
            name.append(String.format(Locale.ROOT, "%s %.4f ", order.get(i).designation(), x[i] / sum));
        }
        return Refrigerant.blend(name.toString().trim(), Composition.ofMoleFractions(fractions));
    }
}
