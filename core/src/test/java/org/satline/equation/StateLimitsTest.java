package org.satline.equation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.quantity.OutOfValidityException;

/** What is no state of anything is refused, by a pure equation and by a mixture. */
class StateLimitsTest {
    private static final InteractionModel MODEL = InteractionModel.PUBLISHED_ONLY;

    private static List<HelmholtzEquation> equations() {
        EquationLibrary library = EquationLibrary.standard();
        return List.of(
                library.pure("R-32"),
                library.mixture(List.of("R-32", "R-125"), MODEL).at(new double[] {0.5, 0.5}));
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 100",
        "300, NaN",
        "-300, 100",
        "300, -100",
        "0, 100",
        "300, 0",
        "Infinity, 100",
        "300, Infinity",
        "1e6, 100",
        "300, 1e8"
    })
    void absurdStatesAreRefused(double temperature, double density) {
        assertThat(HelmholtzEquation.isState(temperature, density)).isFalse();
        for (HelmholtzEquation equation : equations()) {
            ReducedHelmholtz out = new ReducedHelmholtz();
            assertThatExceptionOfType(OutOfValidityException.class)
                    .isThrownBy(() -> equation.residual(temperature, density, out));
            assertThatExceptionOfType(OutOfValidityException.class)
                    .isThrownBy(() -> equation.ideal(temperature, density, out));
        }
    }

    @Test
    void compositionsAreWholeAndFit() {
        MixtureEquation mixture = EquationLibrary.standard().mixture(List.of("R-32", "R-125"), MODEL);
        for (double[] wrong :
                new double[][] {{1}, {0.5, 0.25, 0.25}, {0.5, 0.4}, {-0.5, 1.5}, {Double.NaN, 0.5}, {50, 50}, {}}) {
            assertThatIllegalArgumentException().isThrownBy(() -> mixture.at(wrong));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> mixture.evaluate(300, new double[] {1}, new PartialDensityDerivatives(2)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> mixture.evaluate(300, new double[] {1, 1}, new PartialDensityDerivatives(3)));
    }
}
