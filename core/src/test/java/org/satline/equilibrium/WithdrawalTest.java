package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.equilibrium.Withdrawal.Drawn;
import org.satline.equilibrium.Withdrawal.Remainder;
import org.satline.refrigerant.Catalogue;

/**
 * Composition shift. Common practice, no source: zeotropic blends are charged as liquid, because vapour drawn from the cylinder is richer
 * in the volatile components and leaves a poorer blend behind.
 */
class WithdrawalTest {
    private static final FluidModel R407C = FluidModel.of(Catalogue.standard().find("R-407C"));

    private static double r32(Remainder remainder) {
        return remainder.remaining().composition().components().get(0).massFraction();
    }

    @Test
    void vapourTakesTheVolatileComponentsAway() {
        List<Remainder> track = Withdrawal.from(R407C, 298.15, 800).track(Drawn.VAPOUR, 0, 0.2, 0.5);
        assertThat(r32(track.get(0))).isEqualTo(0.23);
        assertThat(r32(track.get(1))).isLessThan(0.23);
        assertThat(r32(track.get(2))).isLessThan(r32(track.get(1)));
        assertThat(track.get(2).bubblePressurePa()).isLessThan(track.get(0).bubblePressurePa());
        assertThat(track).allSatisfy(r -> assertThat(r.massFractionError()).isLessThan(1e-4));
    }

    @Test
    void liquidHardlyShiftsTheBlend() {
        List<Remainder> vapour = Withdrawal.from(R407C, 298.15, 800).track(Drawn.VAPOUR, 0.5);
        List<Remainder> liquid = Withdrawal.from(R407C, 298.15, 800).track(Drawn.LIQUID, 0.5);
        double byVapour = Math.abs(r32(vapour.get(0)) - 0.23);
        double byLiquid = Math.abs(r32(liquid.get(0)) - 0.23);
        assertThat(byLiquid).isLessThan(byVapour / 5);
    }

    @Test
    void aPureSubstanceStaysWhatItIs() {
        FluidModel r134a = FluidModel.of(Catalogue.standard().find("R-134a"));
        Remainder left =
                Withdrawal.from(r134a, 298.15, 800).track(Drawn.VAPOUR, 0.5).get(0);
        assertThat(r32(left)).isEqualTo(1);
        assertThat(left.bubblePressurePa()).isEqualTo(left.dewPressurePa());
    }

    @Test
    void onePhaseAndBrokenSharesAreRefused() {
        assertThatThrownBy(() -> Withdrawal.from(R407C, 298.15, 1500)).hasMessageContaining("liquid and vapour");
        assertThatThrownBy(() -> Withdrawal.from(R407C, 298.15, 800).track(Drawn.VAPOUR, Double.NaN))
                .hasMessageContaining("NaN");
    }
}
