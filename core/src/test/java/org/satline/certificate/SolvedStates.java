package org.satline.certificate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.satline.equation.EquationLibrary;
import org.satline.equation.MissingEquationException;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.ConvergenceException;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Random states of every refrigerant: how many were solved, how many failed, how well the equations are met. */
final class SolvedStates {
    private static final int TEMPERATURES = 200;
    private static final double CRITERION = 1e-10;

    private final List<String> splits = new ArrayList<>();

    private final List<String> rows = new ArrayList<>();
    private int states;
    private int failures;

    private double fugacity;
    private double pressure;
    private double roundTrip;
    private double balance;

    static SolvedStates ofAllRefrigerants() {
        SolvedStates all = new SolvedStates();
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            if (refrigerant.hasComposition()) {
                all.solve(refrigerant);
            }
        }
        return all;
    }

    static boolean hasEquations(Refrigerant refrigerant) {
        return refrigerant.composition().components().stream()
                .allMatch(c ->
                        EquationLibrary.standard().hasEquation(c.substance().designation()));
    }

    int states() {
        return states;
    }

    int failures() {
        return failures;
    }

    private void solve(Refrigerant refrigerant) {
        FluidModel model;
        try {
            model = FluidModel.of(refrigerant);
        } catch (MissingEquationException e) {
            return;
        }
        model.liquidSplitTemperatureK()
                .ifPresent(t -> splits.add(String.format(Locale.ROOT, "%s %.1f K", refrigerant.designation(), t)));
        int before = states;
        int failedBefore = failures;
        fugacity = 0;
        pressure = 0;
        roundTrip = 0;
        balance = 0;
        double low = model.minTemperatureK();
        double end = model.twoPhaseEnd().temperatureK();
        double high = refrigerant.isBlend() ? 0.97 * end : 0.9999 * end;
        Random random = new Random(refrigerant.designation().hashCode());
        for (int i = 0; i < TEMPERATURES; i++) {
            double temperature = i == 0 ? low : i == 1 ? high : low + (high - low) * random.nextDouble();
            try {
                lines(model, temperature, end);
                split(model, temperature, random.nextDouble(), i % 2 == 0);
            } catch (ConvergenceException | IllegalArgumentException e) {
                failures++;
                rows.add("| " + refrigerant.designation() + " | failed | " + e.getMessage() + " | | | | |");
            }
        }
        rows.add(String.format(
                Locale.ROOT,
                "| %s | %d | %d | %.2f to %.2f | %s %.4f K | %.0e / %.0e | %.0e | %.0e |",
                refrigerant.designation(),
                states - before,
                failures - failedBefore,
                low,
                high,
                model.twoPhaseEnd().kind().words(),
                end,
                fugacity,
                pressure,
                roundTrip,
                balance));
    }

    private void lines(FluidModel model, double temperature, double end) {
        BoundaryPoint bubble = model.bubbleAtTemperature(temperature);
        BoundaryPoint dew = model.dewAtTemperature(temperature);
        BoundaryPoint bubbleBack = model.bubbleAtPressure(bubble.pressurePa());
        BoundaryPoint dewBack = model.dewAtPressure(dew.pressurePa());
        for (BoundaryPoint point : List.of(bubble, dew, bubbleBack, dewBack)) {
            fugacity = Math.max(fugacity, point.fugacityResidual());
            pressure = Math.max(pressure, point.pressureResidual());
            states++;
            if (!(point.fugacityResidual() < CRITERION && point.pressureResidual() < CRITERION)) {
                failures++;
            }
        }
        if (temperature < 0.95 * end) {
            roundTrip = Math.max(roundTrip, Math.abs(bubbleBack.temperatureK() - temperature));
            roundTrip = Math.max(roundTrip, Math.abs(dewBack.temperatureK() - temperature));
        }
    }

    private void split(FluidModel model, double temperature, double share, boolean logarithmic) {
        double liquid = model.bubbleAtTemperature(temperature).saturated().density();
        double vapour = model.dewAtTemperature(temperature).saturated().density();
        double density = logarithmic
                ? Math.exp(Math.log(vapour) + share * Math.log(liquid / vapour))
                : vapour + share * (liquid - vapour);
        PhaseSplit split = model.states().atTemperatureAndDensity(temperature, density);
        states++;
        double[] z = model.equation().moleFractions();
        double[] x = split.liquidMoleFractions();
        double[] y = split.vapourMoleFractions();
        double liquidMoles =
                (1 - split.vapourFraction()) / model.equation().mixture().at(x).molarMass();
        double vapourMoles =
                split.vapourFraction() / model.equation().mixture().at(y).molarMass();
        for (int i = 0; i < z.length; i++) {
            double whole = (liquidMoles * x[i] + vapourMoles * y[i]) / (liquidMoles + vapourMoles);
            balance = Math.max(balance, Math.abs(whole - z[i]));
        }
    }

    List<String> report() {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("## States solved");
        lines.add("");
        lines.add(
                states + " states, " + failures
                        + " failures. For each refrigerant: bubble and dew points at random temperatures and back at their pressures, and a two-phase state at"
                        + " a random overall density. Pure substances to 0.9999 of the critical temperature, blends to 0.97 of the end of the two-phase line."
                        + " Residuals: largest difference of ln f / of the pressures over rho R T of the liquid. T -> p -> T below 0.95 of the end.");
        lines.add("");
        lines.add(
                "| refrigerant | states | failures | range, K | end of the line | residuals | T -> p -> T, K | balance |");
        lines.add("|---|---|---|---|---|---|---|---|");
        lines.addAll(rows);
        lines.add("");
        lines.add(
                "The lines of these blends begin where a second liquid would form, warmer than their components' equations do (tangent-plane test; colder states are"
                        + " refused by name): " + String.join(", ", splits) + ".");
        return lines;
    }
}
