package org.satline.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Belief in a response, against Bayes' rule by adaptive integration and the normal equations by a library's linear algebra. */
class ResponsePriorTest {
    private static final ResponsePrior PRIOR = new ResponsePrior(10, 3.3);
    private static final double FULL_KG = 3;

    private static double integral(DoubleUnaryOperator density) {
        return new SimpsonIntegrator(1e-10, 1e-14, 6, 22).integrate(4_000_000, density::applyAsDouble, 1, 40);
    }

    private static ResponsePrior byBayes(DoubleUnaryOperator density) {
        double whole = integral(density);
        double mean = integral(x -> x * density.applyAsDouble(x)) / whole;
        double square = integral(x -> (x - mean) * (x - mean) * density.applyAsDouble(x)) / whole;
        return new ResponsePrior(mean, Math.sqrt(square));
    }

    /** Normal belief 10 +/- 3.3 K/kg, normal charge error of a tenth of 3 kg; the Jacobian is one over the response. */
    private static double belief(double response, StepReading first) {
        double error = first.deviationK() / response - first.netMassKg();
        double belief = Math.exp(-Math.pow((response - 10) / 3.3, 2) / 2);
        return belief * Math.exp(-Math.pow(error / 0.3, 2) / 2) / response;
    }

    // the grid of the implementation is 0.49 K/kg wide against curves of more than 2 K/kg: far below a thousandth

    @ParameterizedTest
    @CsvSource({"6, 0", "-5, 0", "4, -0.2", "-3, 0.4", "3, 0"})
    void aFirstReadingSharpensTheBelief(double deviationK, double netKg) {
        StepReading first = new StepReading(netKg, deviationK, 0.2, true);
        ResponsePrior expected = byBayes(x -> belief(x, first));
        ResponsePrior found = PRIOR.given(first, Optional.empty(), FULL_KG);
        assertThat(found.mean()).isCloseTo(expected.mean(), within(1e-3 * expected.mean()));
        assertThat(found.deviation()).isCloseTo(expected.deviation(), within(5e-3 * expected.deviation()));
    }

    @ParameterizedTest
    @CsvSource({"-5.6, 0, -2, 0.3", "-5.6, 0.1, -1, 0.6"})
    void aStepThatLeftZeroMovedAtLeastAsFarAsItShows(double zeroK, double zeroKg, double firstK, double firstKg) {
        StepReading zero = new StepReading(zeroKg, zeroK, 0.5, false);
        StepReading first = new StepReading(firstKg, firstK, 1.2, true);
        ResponsePrior expected = byBayes(x -> {
            double beyond = x * (firstKg - zeroKg) - (firstK - zeroK);
            return belief(x, first) * (1 + Erf.erf(beyond / 1.3 / Math.sqrt(2))) / 2; // 1.3 = root of 0.5^2 + 1.2^2
        });
        ResponsePrior found = PRIOR.given(first, Optional.of(zero), FULL_KG);
        assertThat(found.mean()).isCloseTo(expected.mean(), within(2e-3 * expected.mean()));
        assertThat(found.deviation()).isCloseTo(expected.deviation(), within(1e-2 * expected.deviation()));
        assertThat(found.mean()).isGreaterThan(PRIOR.given(first, Optional.empty(), FULL_KG).mean());
    }

    @Test
    void aReadingThatNoResponseExplainsChangesNothing() {
        StepReading wild = new StepReading(0, 1e6, 0.2, true);
        assertThat(PRIOR.given(wild, Optional.empty(), FULL_KG)).isEqualTo(PRIOR);
    }

    /** Level at the present mass and response; an older reading is doubted by a quarter of what the prior expects of its mass. */
    @Test
    void theRegressionSolvesTheNormalEquations() {
        List<StepReading> readings = List.of(
                new StepReading(0.1, 6, 0.3, true),
                new StepReading(-0.3, 3.1, 0.2, true),
                new StepReading(-0.7, 1.2, 0.4, true));
        double prior = 9;
        double doubt = 4;
        RealMatrix information = new Array2DRowRealMatrix(new double[][] {{0, 0}, {0, 1 / (doubt * doubt)}});
        RealVector right = new ArrayRealVector(new double[] {0, prior / (doubt * doubt)});
        for (StepReading each : readings) {
            double away = each.netMassKg() + 0.7;
            double variance = Math.pow(each.repeatabilityK(), 2) + Math.pow(0.25 * prior * away, 2);
            RealVector row = new ArrayRealVector(new double[] {1, away});
            information = information.add(row.outerProduct(row).scalarMultiply(1 / variance));
            right = right.add(row.mapMultiply(each.deviationK() / variance));
        }
        RealMatrix covariance = new LUDecomposition(information).getSolver().getInverse();
        RealVector solution = covariance.operate(right);
        LearnedResponse learned = LearnedResponse.from(readings, prior, doubt);
        // round-off of a well-conditioned system of two
        assertThat(learned.deviationK()).isCloseTo(solution.getEntry(0), within(1e-9));
        assertThat(learned.kelvinsPerKilogram()).isCloseTo(solution.getEntry(1), within(1e-9));
        assertThat(learned.deviationVariance()).isCloseTo(covariance.getEntry(0, 0), within(1e-9));
        assertThat(learned.responseVariance()).isCloseTo(covariance.getEntry(1, 1), within(1e-9));
        assertThat(learned.covariance()).isCloseTo(covariance.getEntry(0, 1), within(1e-9));
        assertThat(learned.informativeReadings()).isEqualTo(3);
    }
}
