package org.satline.equation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Analytic derivatives of the Helmholtz energy against finite differences of the values, for every equation and for blends. */
class HelmholtzDerivativeProperties {
    private static final List<Refrigerant> SUBSTANCES = Catalogue.standard().substances().stream()
            .filter(r -> EquationLibrary.standard().hasEquation(r.designation()))
            .toList();
    private static final Set<String> SHARP = Set.of("R-718", "R-744");
    private static final List<String> BLENDS =
            List.of("R-404A", "R-407C", "R-410A", "R-448A", "R-454B", "R-507A", "R-513A", "R-455A", "R-438A", "R-466A");

    /** What is differentiated: residual or ideal part at a temperature and density. */
    private interface Part {
        void evaluate(double temperature, double density, ReducedHelmholtz out);
    }

    /** How it is differentiated: function, where, first step. */
    private interface Rule {
        CentralDifference of(DoubleUnaryOperator f, double x, double step);
    }

    @Provide
    Arbitrary<HelmholtzEquation> substances() {
        return Arbitraries.of(SUBSTANCES)
                .map(r -> EquationLibrary.standard().of(r, InteractionModel.ADJUSTED_OVER_PUBLISHED));
    }

    @Provide
    Arbitrary<HelmholtzEquation> blends() {
        return Arbitraries.of(BLENDS)
                .map(name -> EquationLibrary.standard()
                        .of(Catalogue.standard().find(name), InteractionModel.ADJUSTED_OVER_PUBLISHED));
    }

    @Provide
    Arbitrary<Double> reducedDensities() {
        return Arbitraries.doubles().between(0.001, 3.2).ofScale(4);
    }

    @Provide
    Arbitrary<Double> reducedTemperatures() {
        return Arbitraries.doubles().between(0.5, 1.6).ofScale(4);
    }

    @Property(tries = 1500)
    void residualPartOfASubstance(
            @ForAll("substances") HelmholtzEquation equation,
            @ForAll("reducedDensities") double delta,
            @ForAll("reducedTemperatures") double inverseTau) {
        check(equation, equation::residual, CentralDifference::of, delta, inverseTau);
    }

    @Property(tries = 500)
    void idealPartOfASubstance(
            @ForAll("substances") HelmholtzEquation equation,
            @ForAll("reducedDensities") double delta,
            @ForAll("reducedTemperatures") double inverseTau) {
        check(equation, equation::ideal, CentralDifference::of, delta, inverseTau);
    }

    @Property(tries = 300)
    void bothPartsOfABlend(
            @ForAll("blends") HelmholtzEquation equation,
            @ForAll("reducedDensities") double delta,
            @ForAll("reducedTemperatures") double inverseTau) {
        check(equation, equation::residual, CentralDifference::ofThree, delta, inverseTau);
        check(equation, equation::ideal, CentralDifference::ofThree, delta, inverseTau);
    }

    /**
     * Terms of a Bender-type equation that do not vanish with density add up to 1.1E3 in magnitude at tau = 2; half a unit of their
     * last place (2^-53 of 1.1E3) on either side of the smallest step of the extrapolation. At 0.02 / 1.6^7 that makes 3.3E-10.
     */
    private static double roundOff(CentralDifference difference) {
        return 2 * Math.pow(2, -53) * 1.1e3 / difference.smallestStep();
    }

    /**
     * Beside their critical points the terms of are not analytic: no difference quotient means anything across the kink.
     */
    private static boolean isSharp(HelmholtzEquation equation) {
        return ((FixedComposition) equation)
                .mixture().components().stream()
                        .map(component -> component.constants().designation())
                        .anyMatch(SHARP::contains);
    }

    /** Steps in ln delta and ln tau, in which the derivatives are the scaled ones: d alpha/d ln delta = ad, d ad/d ln delta = ad + add. */
    private static void check(HelmholtzEquation equation, Part part, Rule rule, double delta, double inverseTau) {
        Assume.that(!isSharp(equation) || Math.abs(inverseTau - 1) > 0.01 || Math.abs(delta - 1) > 0.3);
        double density = delta * equation.reducingDensity();
        double temperature = inverseTau * equation.reducingTemperature();
        ReducedHelmholtz at = evaluate(part, temperature, density);
        double scale = Math.abs(at.a) + Math.abs(at.ad) + Math.abs(at.at) + Math.abs(at.adt) + 1e-3;

        close(at.ad, byDensity(part, rule, temperature, density, r -> r.a), scale);
        close(at.at, byTau(part, rule, temperature, density, r -> r.a), scale);
        close(at.ad + at.add, byDensity(part, rule, temperature, density, r -> r.ad), scale + Math.abs(at.add));
        close(at.adt, byTau(part, rule, temperature, density, r -> r.ad), scale);
        close(at.adt, byDensity(part, rule, temperature, density, r -> r.at), scale);
        close(at.at + at.att, byTau(part, rule, temperature, density, r -> r.at), scale + Math.abs(at.att));
    }

    private static void close(double analytic, CentralDifference difference, double scale) {
        // ten times the error that the extrapolation estimates for itself, the cancellation of terms some thousand
        // times larger than their sum, and the round-off of the differences
        assertThat(analytic)
                .isCloseTo(difference.value(), within(10 * difference.error() + 1e-9 * scale + roundOff(difference)));
        // the check means nothing where the extrapolation itself fails; beside the critical point of it
        // needs room
        assertThat(difference.error()).isLessThan(1e-4 * scale);
    }

    private static CentralDifference byDensity(
            Part part,
            Rule differentiate,
            double temperature,
            double density,
            ToDoubleFunction<ReducedHelmholtz> value) {
        return differentiate.of(u -> value.applyAsDouble(evaluate(part, temperature, density * Math.exp(u))), 0, 0.02);
    }

    private static CentralDifference byTau(
            Part part,
            Rule differentiate,
            double temperature,
            double density,
            ToDoubleFunction<ReducedHelmholtz> value) {
        return differentiate.of(u -> value.applyAsDouble(evaluate(part, temperature * Math.exp(-u), density)), 0, 0.02);
    }

    private static ReducedHelmholtz evaluate(Part part, double temperature, double density) {
        ReducedHelmholtz out = new ReducedHelmholtz();
        part.evaluate(temperature, density, out);
        return out;
    }
}
