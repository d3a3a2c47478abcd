package org.satline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Heat transfer of a coil against its own definition and the 0.8th power of Dittus and Boelter. */
class CoilTest {
    private static final Coil COIL = new Coil(1000, 0.6, 0.05, Assumptions.standard());

    @Test
    void inSeriesBothSidesGiveTheConductanceOfTheWhole() {
        double inner = COIL.innerConductance(0.05);
        double outer = COIL.outerConductance(1);
        assertThat(inner * outer / (inner + outer)).isCloseTo(1000, within(1e-9));
    }

    @Test
    void insideGoesWithTheFlow() {
        assertThat(COIL.innerConductance(0.025) / COIL.innerConductance(0.05))
                .isCloseTo(0.5743, within(5e-5)); // 0.5^0.8
        assertThat(COIL.innerConductance(0)).isPositive();
    }

    @Test
    void twoPhasesTransferMoreThanLiquidAndLiquidMoreThanVapour() {
        assertThat(COIL.twoPhase(1, 0.05)).isGreaterThan(COIL.liquid(1, 0.05));
        assertThat(COIL.liquid(1, 0.05)).isGreaterThan(COIL.vapour(1, 0.05));
    }
}
