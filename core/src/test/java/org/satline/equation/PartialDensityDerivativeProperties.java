package org.satline.equation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Derivatives by partial densities and temperature, from which fugacities and Newton's method live, against finite differences and
 * identities.
 */
class PartialDensityDerivativeProperties {
    /** With and without departure functions, asymmetric and adjusted pairs, one to seven components. */
    private static final List<List<String>> MIXTURES = List.of(
            List.of("R-134a"),
            List.of("R-32", "R-125"),
            List.of("R-32", "R-1234yf"),
            List.of("R-290", "R-600a"),
            List.of("R-744", "R-32"),
            List.of("R-744", "R-1234yf"),
            List.of("R-125", "R-143a", "R-134a"),
            List.of("R-32", "R-125", "R-1234yf", "R-134a", "R-1234ze(E)"),
            List.of("R-744", "R-170", "R-290", "R-600a", "R-600", "R-E170", "R-152a"));

    /** A state: fractions, reduced density and temperature of the mixture at them. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Case(MixtureEquation mixture, double temperature, double[] densities) {}

    @Provide
    Arbitrary<Case> cases() {
        return Arbitraries.randomValue(random -> {
            List<String> names = MIXTURES.get(random.nextInt(MIXTURES.size()));
            MixtureEquation mixture =
                    EquationLibrary.standard().mixture(names, InteractionModel.ADJUSTED_OVER_PUBLISHED);
            double[] x = new double[names.size()];
            double sum = 0;
            for (int i = 0; i < x.length; i++) {
                x[i] = 0.02 + random.nextDouble();
                sum += x[i];
            }
            for (int i = 0; i < x.length; i++) {
                x[i] /= sum;
            }
            double delta = 0.01 + 2.8 * random.nextDouble();
            double rho = delta / mixture.reducingVolume(x);
            double theta;
            do {
                theta = 0.55 + random.nextDouble();
                // there the terms of R-744 are not analytic: no difference quotient means anything across the kink
            } while (names.contains("R-744") && Math.abs(theta - 1) < 0.001 && Math.abs(delta - 1) < 0.3);
            double temperature = mixture.reducingTemperature(x) * theta;
            for (int i = 0; i < x.length; i++) {
                x[i] *= rho;
            }
            return new Case(mixture, temperature, x);
        });
    }

    private static PartialDensityDerivatives evaluate(Case c, double temperature, double[] densities) {
        PartialDensityDerivatives out = new PartialDensityDerivatives(densities.length);
        c.mixture.evaluate(temperature, densities, out);
        return out;
    }

    private static PartialDensityDerivatives evaluate(Case c) {
        return evaluate(c, c.temperature, c.densities);
    }

    private static double total(double[] densities) {
        double sum = 0;
        for (double density : densities) {
            sum += density;
        }
        return sum;
    }

    /** Difference quotient by one partial density, in units of the total density. */
    private static CentralDifference byDensity(Case c, int j, ToDoubleFunction<PartialDensityDerivatives> value) {
        double rho = total(c.densities);
        return CentralDifference.ofThree(
                u -> {
                    double[] moved = c.densities.clone();
                    moved[j] += u * rho;
                    return value.applyAsDouble(evaluate(c, c.temperature, moved));
                },
                0,
                0.4 * Math.min(0.05, c.densities[j] / rho));
    }

    private static CentralDifference byTemperature(Case c, ToDoubleFunction<PartialDensityDerivatives> value) {
        return CentralDifference.ofThree(
                u -> value.applyAsDouble(evaluate(c, c.temperature * Math.exp(u), c.densities)), 0, 0.02);
    }

    private static void close(String what, double analytic, CentralDifference difference, double scale) {
        // ten times the error that the extrapolation estimates for itself, and the cancellation of large terms
        assertThat(analytic).as(what).isCloseTo(difference.value(), within(10 * difference.error() + 1e-9 * scale));
        assertThat(difference.error()).as("difference quotient of " + what).isLessThan(1e-4 * scale);
    }

    private static double size(PartialDensityDerivatives at) {
        double size = 1;
        for (double value : at.first) {
            size = Math.max(size, Math.abs(value));
        }
        for (double value : at.second) {
            size = Math.max(size, Math.abs(value));
        }
        for (double value : at.temperature) {
            size = Math.max(size, Math.abs(value));
        }
        return size;
    }

    @Property(tries = 250)
    void firstDerivativesComeFromTheEnergyDensity(@ForAll("cases") Case c) {
        PartialDensityDerivatives at = evaluate(c);
        for (int k = 0; k < at.first.length; k++) {
            // Psi/rho times rho/rho0: dimensionless
            double rho0 = at.density;
            CentralDifference difference = byDensity(c, k, d -> d.mixture.a * d.density / rho0);
            close("Psi_" + k, at.first[k], difference, size(at));
        }
    }

    @Property(tries = 250)
    void secondDerivativesComeFromTheFirst(@ForAll("cases") Case c) {
        PartialDensityDerivatives at = evaluate(c);
        int n = at.first.length;
        for (int j = 0; j < n; j++) {
            for (int k = 0; k < n; k++) {
                int row = k;
                close("rho Psi_" + k + j, at.second[k * n + j], byDensity(c, j, d -> d.first[row]), size(at));
                assertThat(at.second[k * n + j]).isEqualTo(at.second[j * n + k]);
            }
        }
    }

    @Property(tries = 250)
    void temperatureDerivativesComeFromTheFirst(@ForAll("cases") Case c) {
        PartialDensityDerivatives at = evaluate(c);
        for (int k = 0; k < at.first.length; k++) {
            int row = k;
            close("T dPsi_" + k + "/dT", at.temperature[k], byTemperature(c, d -> d.first[row]), size(at));
        }
    }

    @Property(tries = 250)
    void pressureDerivativesComeFromTheCompressibilityFactor(@ForAll("cases") Case c) {
        PartialDensityDerivatives at = evaluate(c);
        double rho0 = at.density;
        for (int j = 0; j < at.first.length; j++) {
            close("dp/drho_" + j, at.pressure[j], byDensity(c, j, d -> d.z * d.density / rho0), size(at));
        }
        // p/(rho R) = T Z; its derivative by T is dZ/d ln T + Z
        CentralDifference byLogT = byTemperature(c, d -> d.z);
        close("dp/dT", at.thermalPressure - at.z, byLogT, size(at));
    }

    @Property(tries = 250)
    void pressureAndFugacitiesBelongTogether(@ForAll("cases") Case c) {
        PartialDensityDerivatives at = evaluate(c);
        double sum = 0;
        for (int i = 0; i < at.first.length; i++) {
            sum += at.moleFractions[i] * at.first[i];
        }
        // p = sum rho_i dPsi/drho_i - Psi + rho R T (Gibbs and Duhem); round-off of terms of that size
        assertThat(at.z).isCloseTo(1 + sum - at.mixture.a, within(1e-11 * size(at)));
    }

    @Property(tries = 100)
    void orderOfTheComponentsDoesNotMatter(@ForAll("cases") Case c) {
        int n = c.densities.length;
        List<String> names = c.mixture.components().stream()
                .map(e -> e.constants().designation())
                .toList();
        List<String> turned = new ArrayList<>(names);
        Collections.reverse(turned);
        double[] densities = new double[n];
        for (int i = 0; i < n; i++) {
            densities[i] = c.densities[n - 1 - i];
        }
        Case other = new Case(
                EquationLibrary.standard().mixture(turned, InteractionModel.ADJUSTED_OVER_PUBLISHED),
                c.temperature,
                densities);
        PartialDensityDerivatives a = evaluate(c);
        PartialDensityDerivatives b = evaluate(other);
        for (int i = 0; i < n; i++) {
            assertThat(b.first[n - 1 - i]).isCloseTo(a.first[i], within(1e-10 * size(a)));
        }
        assertThat(b.z).isCloseTo(a.z, within(1e-10 * size(a)));
    }
}
