package org.satline.audit;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.equation.PureEquation;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.Range;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.OnDemand;
import org.satline.saturation.SaturationBudget;
import org.satline.saturation.SaturationUncertainty;
import org.satline.saturation.UncertaintyContribution;
import org.satline.saturation.UncertaintyContribution.Origin;

/**
 * Expanded uncertainty (coverage factor 2) of our answers about one refrigerant. Composition tolerances are left out: both calculators mean
 * the nominal blend. Thread-safe.
 */
final class StatedUncertainty {
    /** Budgets are made at whole multiples of this and used near them: they change slowly. */
    private static final String DISTANCE_BASIS = "of the distance from the reference liquid; heat capacity";

    private static final double GRID_K = 2;

    private static final double MARGIN = 1e-6;
    private static final double IIR_ENTHALPY = 200e3;
    private static final double IIR_ENTROPY = 1e3;

    private static final OnDemand<Map<String, Row>> FIGURES = new OnDemand<>() {
        @Override
        protected Map<String, Row> read() {
            return figures();
        }
    };

    private final FluidModel model;
    private final SaturationUncertainty saturation;
    private final Range range;
    private final double criticalDensity;
    private final Map<String, Figure> budgets = new ConcurrentHashMap<>();

    /** Uncertainty in SI, or relative, and what it rests on. */
    record Figure(double width, String basis) {
        Figure times(double factor) {
            return new Figure(width * factor, basis);
        }
    }

    StatedUncertainty(FluidModel model) {
        this.model = model;
        this.saturation = SaturationUncertainty.of(model);
        this.range = saturation.temperatureRange();
        this.criticalDensity =
                model.equation().reducingDensity() * model.equation().molarMass();
    }

    private static Map<String, Row> figures() {
        Map<String, Row> rows = new ConcurrentHashMap<>();
        for (Row row : CsvResource.read(
                        StatedUncertainty.class,
                        "stated-uncertainty.csv",
                        "designation",
                        "liquid_density",
                        "vapour_density",
                        "heat_capacity",
                        "speed_of_sound")
                .rows()) {
            rows.put(row.text("designation"), row);
        }
        return Map.copyOf(rows);
    }

    /** Expanded uncertainty of an answer, SI. */
    Figure of(Question question, double answer) {
        AuditedQuantity quantity = question.quantity();
        return switch (quantity.dimension()) {
            case PRESSURE ->
                pressure(quantity.onBubbleLine(), question.temperatureK().orElseThrow())
                        .times(answer);
            case TEMPERATURE -> temperature(quantity.onBubbleLine(), answer);
            case TEMPERATURE_DIFFERENCE -> glide(question.pressurePa().orElseThrow());
            case DENSITY -> density(question, answer);
            case ENTHALPY ->
                property("heat_capacity", DISTANCE_BASIS).times(Math.abs(answer - (iir() ? IIR_ENTHALPY : 0)));
            case ENTROPY ->
                property("heat_capacity", DISTANCE_BASIS).times(Math.abs(answer - (iir() ? IIR_ENTROPY : 0)));
            case HEAT_CAPACITY -> property("heat_capacity", "heat capacity").times(answer);
            case SPEED -> property("speed_of_sound", "speed of sound").times(answer);
        };
    }

    private boolean iir() {
        return model.referenceState() == ReferenceState.IIR;
    }

    private Figure density(Question question, double answer) {
        AuditedQuantity quantity = question.quantity();
        Figure own = answer > criticalDensity
                ? property("liquid_density", "liquid density")
                : property("vapour_density", "vapour density");
        if (!quantity.onOneLine() || quantity.onBubbleLine()) {
            return own.times(answer);
        }
        // the density of a dew vapour follows its pressure
        Figure line = pressure(false, question.point(model).temperatureK());
        return new Figure(
                Math.hypot(own.width(), line.width()) * answer, own.basis() + "; dew pressure: " + line.basis());
    }

    private Figure glide(double pressurePa) {
        Figure bubble = temperature(true, model.bubbleAtPressure(pressurePa).temperatureK());
        Figure dew = temperature(false, model.dewAtPressure(pressurePa).temperatureK());
        return new Figure(Math.hypot(bubble.width(), dew.width()), dew.basis());
    }

    private double onGrid(double temperatureK) {
        double near = Math.round(temperatureK / GRID_K) * GRID_K;
        return Math.max(range.low() * (1 + MARGIN), Math.min(range.high() * (1 - MARGIN), near));
    }

    /** Relative. */
    private Figure pressure(boolean bubble, double temperatureK) {
        double at = onGrid(temperatureK);
        return budgets.computeIfAbsent("pressure" + bubble + at, key -> {
            SaturationBudget budget = bubble
                    ? saturation.bubblePressure(Temperature.ofKelvins(at))
                    : saturation.dewPressure(Temperature.ofKelvins(at));
            return without(budget).times(1 / budget.value());
        });
    }

    /** In kelvins. */
    private Figure temperature(boolean bubble, double temperatureK) {
        double at = onGrid(temperatureK);
        return budgets.computeIfAbsent(
                "temperature" + bubble + at,
                key -> without(
                        bubble
                                ? saturation.bubbleTemperature(Pressure.ofPascals(
                                        model.bubbleAtTemperature(at).pressurePa()))
                                : saturation.dewTemperature(Pressure.ofPascals(
                                        model.dewAtTemperature(at).pressurePa()))));
    }

    private static Figure without(SaturationBudget budget) {
        double squares = 0;
        String basis = "no contribution";
        double largest = -1;
        for (UncertaintyContribution part : budget.contributions()) {
            if (part.origin() == Origin.COMPOSITION) {
                continue;
            }
            squares += part.standardUncertainty() * part.standardUncertainty();
            if (part.standardUncertainty() > largest) {
                largest = part.standardUncertainty();
                basis = "most from " + part.name() + ": " + part.basis();
            }
        }
        return new Figure(SaturationBudget.COVERAGE_FACTOR * Math.sqrt(squares), basis);
    }

    /** Relative: the largest figure of the components, and that of the mixture model for a blend. */
    private Figure property(String column, String words) {
        double largest = 0;
        String basis = "";
        List<PureEquation> components = model.equation().mixture().components();
        for (PureEquation component : components) {
            String designation = component.constants().designation();
            Row row = FIGURES.get().getOrDefault(designation, row("assumed"));
            boolean stated = !row.isEmpty(column);
            double figure = stated ? row.percent(column) : row("assumed").percent(column);
            if (figure > largest) {
                largest = figure;
                basis = percent(figure) + " " + words + ", "
                        + (stated
                                ? component.source().citation() + " (from memory)"
                                : "assumed, nothing on record for " + designation + " (no source)");
            }
        }
        double blend = components.size() > 1 ? row("blend").percent(column) : 0;
        return new Figure(
                largest + blend, basis + (blend > 0 ? "; mixture model " + percent(blend) + " (from memory)" : ""));
    }

    private static Row row(String name) {
        Row row = FIGURES.get().get(name);
        if (row == null) {
            throw new IllegalStateException("stated-uncertainty.csv has no row " + name);
        }
        return row;
    }

    private static String percent(double fraction) {
        return Numbers.plain(100 * fraction) + " %";
    }
}
