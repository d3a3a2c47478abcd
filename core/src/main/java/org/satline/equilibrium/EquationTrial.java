package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.equation.EquationLibrary;
import org.satline.equation.HelmholtzEquation;
import org.satline.equation.InteractionModel;
import org.satline.equation.PureConstants;
import org.satline.equation.ReducedHelmholtz;
import org.satline.quantity.Parts;
import org.satline.refrigerant.Refrigerant;

/**
 * What an equation of a substance computes, held against what any must and what its own paper prints: the ideal gas at no density, the
 * critical point, equal areas along the saturation line, and the printed check values. Immutable, thread-safe.
 *
 * @param designation the substance
 * @param parts what was tried, in order; the trial ends at a part that leaves nothing to ask further
 */
public record EquationTrial(String designation, List<Part> parts) {
    private static final double IDEAL_DENSITY = 1e-6; // of the reducing density
    private static final double IDEAL_BOUND =
            1e-4; // |B rho| of every fluid at that density above 0.4 of its critical temperature
    /** Least isobaric heat capacity of an ideal gas, that of single atoms, and more than any refrigerant has, both over R. */
    private static final double LEAST_HEAT_CAPACITY = 2.5;

    private static final double LARGEST_HEAT_CAPACITY = 100;
    /**
     * The critical point of an equation and the measured one differ; those of today's equations by less, by our choice farther ones are
     * refused.
     */
    private static final double CRITICAL_K = 0.5;

    private static final double CRITICAL_PRESSURE = 0.01;
    private static final double AREA_BOUND =
            1e-6; // of p times the difference of volumes; the sum below adds less than 1e-8
    private static final double[] OF_CRITICAL = {0.65, 0.75, 0.85, 0.95};
    private static final int INTERVALS = 2000; // even, for Simpson's rule

    /** {@inheritDoc} */
    public EquationTrial {
        Parts.required("designation", designation);
        parts = Parts.list("parts", parts);
    }

    /** What is tried. */
    public enum Kind {
        /** Compressibility factor at no density. */
        IDEAL_GAS,
        /** Isobaric heat capacity of the ideal gas over R. */
        IDEAL_HEAT_CAPACITY,
        /** Critical temperature, K. */
        CRITICAL_TEMPERATURE,
        /** Critical pressure, Pa. */
        CRITICAL_PRESSURE,
        /** Work from liquid to vapour along the isotherm over p times the difference of volumes (Maxwell). */
        EQUAL_AREAS,
        /** A printed value. */
        CHECK_VALUE,
        /** Whether the saturation line can be followed at all. */
        SATURATION_LINE
    }

    /**
     * One comparison.
     *
     * @param kind what was tried
     * @param at where, in words
     * @param found what the equation computes; NaN never: what cannot be computed is 0 beside 1
     * @param expected what it should
     * @param tolerance how far they may differ
     */
    public record Part(Kind kind, String at, double found, double expected, double tolerance) {
        /** {@inheritDoc} */
        public Part {
            Parts.numbers("found expected tolerance", found, expected, tolerance);
            Parts.required("kind at", kind, at);
        }

        /**
         * Tells whether the equation computes what it should.
         *
         * @return true if it does
         */
        public boolean stands() {
            return Math.abs(found - expected) <= tolerance;
        }

        @Override
        public String toString() {
            String fault = String.format(
                    Locale.ROOT,
                    "%s at %s is %.7g, expected %.7g within %.2g",
                    kind.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    at,
                    found,
                    expected,
                    tolerance);
            return fault;
        }
    }

    /**
     * Tries the equation of a substance.
     *
     * @param substance the substance
     * @param library where its equation is
     * @return what was tried
     * @throws org.satline.equation.MissingEquationException if the library has no equation of it
     */
    public static EquationTrial of(Refrigerant substance, EquationLibrary library) {
        Parts.required("substance library", substance, library);
        List<Part> parts = new ArrayList<>();
        HelmholtzEquation equation = library.pure(substance.designation());
        PureConstants constants = library.pure(substance.designation()).constants();
        parts.add(new Part(
                Kind.IDEAL_GAS,
                "molar mass",
                substance.molarMassKilogramsPerMole(),
                constants.molarMass(),
                1e-3 * constants.molarMass()));
        for (double temperature : new double[] {constants.saturationStart(), constants.maxTemperature()}) {
            idealGas(equation, temperature, parts);
        }
        try {
            saturated(
                    FluidModel.untried(substance, library, InteractionModel.PUBLISHED_ONLY), constants, library, parts);
        } catch (IllegalArgumentException | ConvergenceException lost) {
            parts.add(new Part(Kind.SATURATION_LINE, String.valueOf(lost.getMessage()), 0, 1, 0));
        }
        return new EquationTrial(substance.designation(), parts);
    }

    /** Refuses a refrigerant of which an equation of the caller's own does not stand. */
    static void demand(Refrigerant refrigerant, EquationLibrary library) {
        refrigerant.composition().components().forEach(part -> {
            if (library.isOwn(part.substance().designation())) {
                EquationTrial trial = of(part.substance(), library);
                if (!trial.stands()) {
                    throw new FailedTrialException(trial);
                }
            }
        });
    }

    private static void idealGas(HelmholtzEquation equation, double temperature, List<Part> parts) {
        ReducedHelmholtz residual = new ReducedHelmholtz();
        double thin = IDEAL_DENSITY * equation.reducingDensity();
        double warm = Math.max(temperature, 0.4 * equation.reducingTemperature());
        equation.residual(warm, thin, residual);
        parts.add(new Part(Kind.IDEAL_GAS, shown(warm, "K"), number(1 + residual.ad()), 1, IDEAL_BOUND));
        ReducedHelmholtz ideal = new ReducedHelmholtz();
        equation.ideal(temperature, thin, ideal);
        double middle = (LEAST_HEAT_CAPACITY + LARGEST_HEAT_CAPACITY) / 2;
        parts.add(new Part(
                Kind.IDEAL_HEAT_CAPACITY,
                shown(temperature, "K"),
                number(1 - ideal.att()),
                middle,
                LARGEST_HEAT_CAPACITY - middle));
    }

    private static void saturated(
            FluidModel model, PureConstants constants, EquationLibrary library, List<Part> parts) {
        CriticalPoint critical = model.lines()
                .criticalPoint()
                .orElseThrow(() -> new IllegalArgumentException("the lines do not reach a critical point"));
        parts.add(new Part(
                Kind.CRITICAL_TEMPERATURE,
                "end of lines",
                critical.temperatureK(),
                constants.criticalTemperature(),
                CRITICAL_K));
        parts.add(new Part(
                Kind.CRITICAL_PRESSURE,
                "end of lines",
                critical.pressurePa(),
                constants.criticalPressure(),
                CRITICAL_PRESSURE * constants.criticalPressure()));
        for (double share : OF_CRITICAL) {
            double temperature = share * critical.temperatureK();
            if (temperature > model.minTemperatureK()) {
                parts.add(
                        new Part(Kind.EQUAL_AREAS, shown(temperature, "K"), areas(model, temperature), 1, AREA_BOUND));
            }
        }
        for (EquationSelfTest test : EquationSelfTest.run(model, library.checks(constants.designation()))) {
            parts.add(new Part(
                    Kind.CHECK_VALUE,
                    test.check().source(),
                    number(test.computed()),
                    test.check().printed(),
                    test.check().relativeTolerance() * Math.abs(test.check().printed())));
        }
    }

    /** The integral of p over v from liquid to vapour along the isotherm by Simpson's rule in ln v, over p_sat (v'' - v'). */
    private static double areas(FluidModel model, double temperature) {
        HelmholtzEquation equation = model.equation();
        double liquid = model.bubbleAtTemperature(temperature).saturated().density() / equation.molarMass();
        double vapour = model.dewAtTemperature(temperature).saturated().density() / equation.molarMass();
        double pressure = model.bubbleAtTemperature(temperature).pressurePa();
        double step = Math.log(liquid / vapour) / INTERVALS;
        ReducedHelmholtz at = new ReducedHelmholtz();
        double sum = 0;
        for (int i = 0; i <= INTERVALS; i++) {
            double density = liquid * Math.exp(-i * step);
            equation.residual(temperature, density, at);
            // p v, since dv = v d(ln v)
            double value = equation.gasConstant() * temperature * (1 + at.ad());
            sum += value * (i == 0 || i == INTERVALS ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return number(sum * step / 3 / (pressure * (1 / vapour - 1 / liquid)));
    }

    /**
     * Tells whether the equation stands.
     *
     * @return true if every part does
     */
    public boolean stands() {
        return faults().isEmpty();
    }

    /**
     * Returns what does not stand.
     *
     * @return the failed parts
     */
    public List<Part> faults() {
        return parts.stream().filter(part -> !part.stands()).toList();
    }

    /** A number that a comparison fails on where there is none. */
    private static double number(double value) {
        return Double.isFinite(value) ? value : Double.MAX_VALUE;
    }

    private static String shown(double value, String unit) {
        return String.format(Locale.ROOT, "%.2f %s", value, unit);
    }
}
