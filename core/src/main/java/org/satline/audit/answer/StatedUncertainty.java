package org.satline.audit.answer;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import org.satline.equation.PureEquation;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
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
    private static final String ABOVE_DEW_BASIS = "heat capacity above the dew point";
    private static final String LATENT_BASIS = "heat of vaporization by Clapeyron: ";
    private static final String DISTANCE_BASIS = "heat capacity of the distance from the reference liquid";

    /** Budgets are made at whole multiples of this and used near them: they change slowly. */
    private static final double GRID_K = 2;

    /** An error of the vapour pressure keeps its size over about so many kelvins, so that its slope is not far off (assumed, no source). */
    private static final double REACH_K = 50;

    /** What is wrong with the components or a pair moves bubble and dew line alike (assumed, no source). */
    private static final double CORRELATION = 0.9;

    /** How a basis says that no source was read. */
    private static final String NOT_READ = "assumed";

    private static final String REMEMBERED = "from memory";

    private static final MathContext SEVEN_DIGITS = new MathContext(7);

    private static final double MARGIN = 1e-6;
    private static final double IIR_ENTHALPY = 200e3;
    private static final double IIR_ENTROPY = 1e3;

    private static final OnDemand<Map<String, Row>> FIGURES = new OnDemand<>() {
        @Override
        protected Map<String, Row> read() {
            return figures();
        }
    };

    private final Points points;
    private final FluidModel model;
    private final SaturationUncertainty saturation;
    private final Range range;
    private final double criticalDensity;
    private final Map<Budget, Figure> budgets = new ConcurrentHashMap<>();

    /** What was budgeted: a pressure or a temperature of one line near a temperature, K. */
    private record Budget(Dimension dimension, boolean bubble, double at) {}

    /** Uncertainty in SI, or relative, and what it rests on: the weakest of what goes into it. */
    record Figure(double width, String basis, AuditTolerance.Origin origin) {
        Figure times(double factor) {
            return new Figure(width * factor, basis, origin);
        }

        /** Both, independent of each other. */
        Figure and(Figure other) {
            return new Figure(
                    Math.hypot(width, other.width),
                    width >= other.width ? basis + "; " + other.basis : other.basis + "; " + basis,
                    origin.compareTo(other.origin) >= 0 ? origin : other.origin);
        }
    }

    StatedUncertainty(Points points) {
        this.points = points;
        this.model = points.model();
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
            case ENTHALPY -> caloric(question, answer, iir() ? IIR_ENTHALPY : 0, FluidState::specificEnthalpy);
            case ENTROPY -> caloric(question, answer, iir() ? IIR_ENTROPY : 0, FluidState::specificEntropy);
            case HEAT_CAPACITY -> property("heat_capacity", "heat capacity").times(answer);
            case SPEED -> property("speed_of_sound", "speed of sound").times(answer);
        };
    }

    /**
     * Enthalpy, or entropy. Of a liquid it lies so far from the reference liquid as its heat capacity says. A vapour lies above the
     * liquid by
     * the heat of vaporization, which slope of vapour pressure and volumes fix (Clapeyron), and above its dew point by its heat capacity.
     */
    private Figure caloric(Question question, double answer, double reference, ToDoubleFunction<FluidState> value) {
        Optional<BoundaryPoint> dew = dewBelow(question);
        if (dew.isEmpty()) {
            return property("heat_capacity", DISTANCE_BASIS).times(Math.abs(answer - reference));
        }
        BoundaryPoint vapour = dew.get();
        FluidState liquid = points.bubbleAtTemperature(vapour.temperatureK()).saturated();
        double perHeat = question.quantity().dimension() == Dimension.ENTROPY ? 1 / vapour.temperatureK() : 1;
        Figure whole = property("heat_capacity", DISTANCE_BASIS)
                .times(Math.abs(value.applyAsDouble(liquid) - reference))
                .and(latent(vapour, liquid).times(perHeat));
        double above = Math.abs(answer - value.applyAsDouble(vapour.saturated()));
        return question.quantity().onOneLine()
                ? whole
                : whole.and(property("heat_capacity", ABOVE_DEW_BASIS).times(above));
    }

    /** The dew point of a vapour; empty for a liquid, and above the critical pressure. */
    private Optional<BoundaryPoint> dewBelow(Question question) {
        if (question.quantity().onOneLine()) {
            return question.quantity().onBubbleLine() ? Optional.empty() : Optional.of(question.point(points));
        }
        double p = question.pressurePa().orElseThrow();
        Range pressures = model.dewPressureRange();
        if (!(p >= pressures.low() && p <= pressures.high())) {
            return Optional.empty();
        }
        BoundaryPoint dew = points.dewAtPressure(p);
        return question.temperatureK().orElseThrow() >= dew.temperatureK() ? Optional.of(dew) : Optional.empty();
    }

    /**
     * Of L = T dp/dT (v" - v'), J/kg. An error in the level of the vapour pressure moves the vapour volume the other way and leaves L;
     * its slope
     * counts. Along the dew line of a blend this holds nearly.
     */
    private Figure latent(BoundaryPoint vapour, FluidState liquid) {
        double heat = vapour.saturated().specificEnthalpy() - liquid.specificEnthalpy();
        double volume = 1 / vapour.saturated().density();
        double rise = Math.max(volume - 1 / liquid.density(), Double.MIN_NORMAL);
        double steepness = heat / (vapour.temperatureK() * vapour.pressurePa() * rise);
        Figure slope = pressure(false, vapour.temperatureK()).times(1 / (REACH_K * steepness));
        Figure volumes = property("vapour_density", "vapour density").times(volume / rise);
        Figure both = slope.and(volumes).times(heat);
        return new Figure(both.width, LATENT_BASIS + both.basis, both.origin);
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
        Figure line = pressure(false, question.point(points).temperatureK());
        return own.and(new Figure(line.width, "dew pressure: " + line.basis, line.origin))
                .times(answer);
    }

    /** Bubble and dew temperature are wrong together where a component or a pair is. */
    private Figure glide(double pressurePa) {
        SaturationBudget bubble =
                temperatureBudget(true, points.bubbleAtPressure(pressurePa).temperatureK());
        SaturationBudget dew =
                temperatureBudget(false, points.dewAtPressure(pressurePa).temperatureK());
        Map<String, Double> shared = new HashMap<>();
        double squares = 0;
        for (UncertaintyContribution part : counted(bubble)) {
            squares += square(part.standardUncertainty());
            if (part.origin() != Origin.PUBLISHED_POINT) {
                shared.put(part.name(), part.standardUncertainty());
            }
        }
        for (UncertaintyContribution part : counted(dew)) {
            double both = part.origin() == Origin.PUBLISHED_POINT ? 0 : shared.getOrDefault(part.name(), 0.0);
            squares += square(part.standardUncertainty()) - 2 * CORRELATION * both * part.standardUncertainty();
        }
        Figure line = without(dew);
        return new Figure(SaturationBudget.COVERAGE_FACTOR * Math.sqrt(squares), line.basis, line.origin);
    }

    private static double square(double value) {
        return value * value;
    }

    /** Composition tolerances are left out. */
    private static List<UncertaintyContribution> counted(SaturationBudget budget) {
        return budget.contributions().stream()
                .filter(part -> part.origin() != Origin.COMPOSITION)
                .toList();
    }

    private double onGrid(double temperatureK) {
        double near = Math.round(temperatureK / GRID_K) * GRID_K;
        return Math.max(range.low() * (1 + MARGIN), Math.min(range.high() * (1 - MARGIN), near));
    }

    /** Relative. */
    private Figure pressure(boolean bubble, double temperatureK) {
        double at = onGrid(temperatureK);
        return budgets.computeIfAbsent(new Budget(Dimension.PRESSURE, bubble, at), key -> {
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
                new Budget(Dimension.TEMPERATURE, bubble, at), key -> without(temperatureBudget(bubble, at)));
    }

    private SaturationBudget temperatureBudget(boolean bubble, double temperatureK) {
        double at = onGrid(temperatureK);
        return bubble
                ? saturation.bubbleTemperature(
                        Pressure.ofPascals(points.bubbleAtTemperature(at).pressurePa()))
                : saturation.dewTemperature(
                        Pressure.ofPascals(points.dewAtTemperature(at).pressurePa()));
    }

    private static Figure without(SaturationBudget budget) {
        double squares = 0;
        String basis = "no contribution";
        double largest = -1;
        for (UncertaintyContribution part : counted(budget)) {
            squares += square(part.standardUncertainty());
            if (part.standardUncertainty() > largest) {
                largest = part.standardUncertainty();
                basis = "most from " + part.name() + ": " + part.basis();
            }
        }
        return new Figure(SaturationBudget.COVERAGE_FACTOR * Math.sqrt(squares), basis, standing(basis));
    }

    private static AuditTolerance.Origin standing(String basis) {
        if (basis.contains(NOT_READ)) {
            return AuditTolerance.Origin.ASSUMED;
        }
        return basis.contains(REMEMBERED) ? AuditTolerance.Origin.FROM_MEMORY : AuditTolerance.Origin.EQUATION;
    }

    /** Relative: the largest figure of the components, and that of the mixture model for a blend. */
    private Figure property(String column, String words) {
        double largest = 0;
        String basis = "";
        AuditTolerance.Origin origin = AuditTolerance.Origin.FROM_MEMORY;
        List<PureEquation> components = model.equation().mixture().components();
        for (PureEquation component : components) {
            String designation = component.constants().designation();
            Row row = FIGURES.get().getOrDefault(designation, row("assumed"));
            boolean stated = !row.isEmpty(column);
            double figure = stated ? row.percent(column) : row("assumed").percent(column);
            if (figure > largest) {
                largest = figure;
                origin = stated ? AuditTolerance.Origin.FROM_MEMORY : AuditTolerance.Origin.ASSUMED;
                basis = percent(figure) + " " + words + ", "
                        + (stated
                                ? component.source().citation() + " (from memory)"
                                : "assumed, nothing on record for " + designation + " (no source)");
            }
        }
        double blend = components.size() > 1 ? row("blend").percent(column) : 0;
        return new Figure(
                largest + blend,
                basis + (blend > 0 ? "; mixture model " + percent(blend) + " (from memory)" : ""),
                origin);
    }

    private static Row row(String name) {
        Row row = FIGURES.get().get(name);
        if (row == null) {
            throw new IllegalStateException("stated-uncertainty.csv has no row " + name);
        }
        return row;
    }

    private static String percent(double fraction) {
        return new BigDecimal(100 * fraction, SEVEN_DIGITS).stripTrailingZeros().toPlainString() + " %";
    }
}
