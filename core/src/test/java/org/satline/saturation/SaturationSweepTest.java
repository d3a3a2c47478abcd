package org.satline.saturation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equation.EquationLibrary;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Solves along whole lines without one failure: substances to 0.9999 of the equation's critical temperature, blends to 0.97 of the end. */
class SaturationSweepTest {
    private static final long SEED = 20_030_731;
    private static final double RESIDUAL = 1e-10;

    static Stream<String> substances() {
        return CurveSamples.SUBSTANCES.stream();
    }

    static Stream<String> blends() {
        return Catalogue.standard().blends().stream()
                .filter(SaturationSweepTest::hasEquations)
                .map(Refrigerant::designation);
    }

    private static boolean hasEquations(Refrigerant blend) {
        return blend.hasComposition()
                && blend.composition().components().stream()
                        .allMatch(c -> EquationLibrary.standard()
                                .hasEquation(c.substance().designation()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("substances")
    void substancesSolveFromTheColdestTemperatureToTheCriticalPoint(String name) {
        // ends included, dense towards the critical point
        sweep(name, 0.9999, 60);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("blends")
    void blendsSolveToTheirEnd(String name) {
        sweep(name, 0.97, CurveSamples.BLENDS.contains(name) ? 60 : 8);
    }

    private static void sweep(String name, double partOfEnd, int count) {
        FluidModel model = CurveSamples.model(name);
        Random random = new Random(SEED);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double u = i == 0 ? 0 : i == 1 ? 1 : random.nextDouble();
            double fraction = i % 2 == 0 ? u : 1 - (1 - u) * (1 - u) * (1 - u);
            double t = CurveSamples.temperature(name, fraction, partOfEnd);
            try {
                BoundaryPoint bubble = model.bubbleAtTemperature(t);
                BoundaryPoint dew = model.dewAtTemperature(t);
                check(t, bubble, wrong);
                check(t, dew, wrong);
                if (!(bubble.saturated().density() > dew.saturated().density())) {
                    wrong.add("densities at " + t + " K");
                }
                if (i > 1) {
                    check(t, model.bubbleAtPressure(bubble.pressurePa()), wrong);
                    check(t, model.dewAtPressure(dew.pressurePa()), wrong);
                }
            } catch (RuntimeException e) {
                wrong.add(t + " K: " + e);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static void check(double t, BoundaryPoint point, List<String> wrong) {
        boolean good = point.fugacityResidual() <= RESIDUAL
                && point.pressureResidual() <= RESIDUAL
                && point.pressurePa() > 0
                && point.incipientMolarDensity() != point.saturated().molarDensity();
        if (!good) {
            wrong.add("residuals at " + t + " K: " + point.fugacityResidual() + ", " + point.pressureResidual());
        }
    }
}
