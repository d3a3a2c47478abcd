package org.satline.saturation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.equation.PairInteraction;
import org.satline.equation.PureEquation;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.UncertaintyContribution.Origin;

/** Adds up the shares of one saturation state; {@link SaturationUncertainty} states the formulas. */
final class BudgetBuilder {
    private static final String GUM = "JCGM 100:2008, 5.1.2 and 6.2";
    /** Half the distance over which the slope of a line is taken, K: its error is far below the two digits an uncertainty has. */
    private static final double SLOPE_K = 0.05;

    private final FluidModel model;
    private final ToleranceVariants tolerances;
    private final SaturationProperty property;
    private final BoundaryPoint point;
    private final double miss;
    private final double[] liquid;
    private final double[] vapour;
    private final boolean bubble;
    private final double logSlope;
    /** Pa for a pressure, K for a temperature, of a relative uncertainty of the pressure of 1. */
    private final double scale;

    private final List<UncertaintyContribution> contributions = new ArrayList<>();

    BudgetBuilder(
            FluidModel model,
            ToleranceVariants tolerances,
            SaturationProperty property,
            BoundaryPoint point,
            double miss,
            Range range) {
        this.model = model;
        this.tolerances = tolerances;
        this.property = property;
        this.point = point;
        this.miss = miss;
        bubble = property.onBubbleLine();
        double[] whole = model.equation().moleFractions();
        double[] other = point.incipientMoleFractions();
        liquid = bubble ? whole : other;
        vapour = bubble ? other : whole;
        logSlope = logSlope(model, bubble, point.temperatureK(), range);
        scale = property.askedByPressure() ? 1 / logSlope : point.pressurePa();
    }

    /** d ln p / dT of a line, 1/K. */
    static double logSlope(FluidModel model, boolean bubble, double temperatureK, Range range) {
        double low = Math.max(range.low(), temperatureK - SLOPE_K);
        double high = Math.min(range.high(), temperatureK + SLOPE_K);
        return Math.log(pressure(model, bubble, high) / pressure(model, bubble, low)) / (high - low);
    }

    private static double pressure(FluidModel model, boolean bubble, double temperatureK) {
        return (bubble ? model.bubbleAtTemperature(temperatureK) : model.dewAtTemperature(temperatureK)).pressurePa();
    }

    SaturationBudget budget() {
        equations();
        pairs();
        if (miss > 0) {
            add(
                    Origin.PUBLISHED_POINT,
                    "published " + (bubble ? "bubble" : "dew") + " point at 101.325 kPa",
                    miss,
                    model.refrigerant().source());
        }
        composition();
        double squares = 0;
        for (UncertaintyContribution c : contributions) {
            squares += c.standardUncertainty() * c.standardUncertainty();
        }
        double combined = Math.sqrt(squares);
        return new SaturationBudget(
                property,
                property.askedByPressure() ? point.temperatureK() : point.pressurePa(),
                combined,
                contributions,
                steps(combined));
    }

    private void equations() {
        List<PureEquation> components = model.equation().mixture().components();
        for (int i = 0; i < components.size(); i++) {
            UncertaintyFigures.Figure figure =
                    UncertaintyFigures.STANDARD.equation(components.get(i), point.temperatureK());
            double weight = bubble ? vapour[i] : liquid[i];
            add(
                    Origin.EQUATION,
                    components.get(i).constants().designation(),
                    weight * figure.relative(),
                    figure.basis());
        }
    }

    private void pairs() {
        List<PairInteraction> pairs = model.equation().mixture().pairs();
        List<PureEquation> components = model.equation().mixture().components();
        int k = 0;
        for (int i = 0; i < liquid.length; i++) {
            for (int j = i + 1; j < liquid.length; j++) {
                PairInteraction pair = pairs.get(k++);
                UncertaintyFigures.Figure figure =
                        UncertaintyFigures.STANDARD.pair(pair, isGas(components.get(i)) || isGas(components.get(j)));
                double both = liquid[i] * liquid[j];
                double weight = bubble ? Math.abs(vapour[i] * liquid[j] + vapour[j] * liquid[i] - both) : both;
                add(
                        Origin.PAIR,
                        pair.first() + " + " + pair.second() + ", "
                                + pair.status().word(),
                        4 * weight * figure.relative(),
                        figure.basis());
            }
        }
    }

    private boolean isGas(PureEquation component) {
        return point.temperatureK() > component.constants().criticalTemperature();
    }

    private void composition() {
        double free = Math.sqrt((liquid.length - 1) / (double) liquid.length);
        for (ToleranceVariants.Variant v : tolerances.variants()) {
            double half = Math.abs(pressure(v.more(), bubble, point.temperatureK())
                            - pressure(v.fewer(), bubble, point.temperatureK()))
                    / 2;
            add(
                    Origin.COMPOSITION,
                    String.format(
                            Locale.ROOT,
                            "%s +%.3g -%.3g %% by mass",
                            v.component(),
                            100 * v.tolerance().above(),
                            100 * v.tolerance().below()),
                    free * half / Math.sqrt(3) / point.pressurePa(),
                    model.refrigerant().source());
        }
    }

    private void add(Origin origin, String name, double relative, String basis) {
        contributions.add(new UncertaintyContribution(origin, name, relative * scale, basis));
    }

    private List<Step> steps(double combined) {
        String unit = property.unit();
        List<Step> steps = new ArrayList<>();
        if (property.askedByPressure()) {
            steps.add(new Step(
                    bubble ? "bubbleLineSlope" : "dewLineSlope",
                    "d ln p / dT",
                    List.of(
                            Figure.of("T", Temperature.ofKelvins(point.temperatureK())),
                            Figure.of("p", Pressure.ofPascals(point.pressurePa()))),
                    Figure.of("slope", logSlope, "1/K"),
                    "equation of state"));
        }
        for (UncertaintyContribution c : contributions) {
            steps.add(new Step(
                    "uncertaintyShare",
                    "u_i",
                    List.of(
                            Figure.of("origin", c.origin().words()),
                            Figure.of("name", c.name()),
                            Figure.of("relative", 100 * c.standardUncertainty() / scale, "%")),
                    Figure.of("u_i", c.standardUncertainty(), unit),
                    c.basis()));
        }
        steps.add(new Step(
                "combinedUncertainty",
                "u_c = sqrt(sum u_i^2)",
                contributions.stream()
                        .map(c -> Figure.of("u_i", c.standardUncertainty(), unit))
                        .toList(),
                Figure.of("u_c", combined, unit),
                GUM));
        steps.add(new Step(
                "expandedUncertainty",
                "U = k u_c",
                List.of(Figure.of("k", SaturationBudget.COVERAGE_FACTOR, "1"), Figure.of("u_c", combined, unit)),
                Figure.of("U", SaturationBudget.COVERAGE_FACTOR * combined, unit),
                GUM));
        return steps;
    }
}
