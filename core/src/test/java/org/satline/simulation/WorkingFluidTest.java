package org.satline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Holds the interpolation against the equation it was made from, within the bounds that {@link WorkingFluid} states. */
class WorkingFluidTest {
    @ParameterizedTest
    @ValueSource(strings = {"R-410A", "R-22", "R-32", "R-454B", "R-407C", "R-134a"})
    void interpolationKeepsItsStatedBounds(String designation) {
        Refrigerant refrigerant = Catalogue.standard().find(designation);
        WorkingFluid fluid = WorkingFluid.of(refrigerant);
        FluidModel model = FluidModel.of(refrigerant);
        SplittableRandom random = new SplittableRandom(1);
        double low = 3e5;
        double high = Math.min(4.2e6, 0.85 * fluid.highPa());
        for (int i = 0; i < 100; i++) {
            double pa = low * Math.pow(high / low, random.nextDouble());
            BoundaryPoint bubble = model.bubbleAtPressure(pa);
            BoundaryPoint dew = model.dewAtPressure(pa);
            double superheat = 0.5 + 39.5 * random.nextDouble();
            assertThat(fluid.bubbleK(pa)).isCloseTo(bubble.temperatureK(), within(0.01));
            assertThat(fluid.dewK(pa)).isCloseTo(dew.temperatureK(), within(0.01));
            assertThat(fluid.liquidEnthalpy(pa)).isCloseTo(bubble.saturated().specificEnthalpy(), within(100.0));
            assertThat(fluid.vapourEnthalpy(pa, superheat))
                    .isCloseTo(model.stateAt(dew.temperatureK() + superheat, pa).specificEnthalpy(), within(1000.0));
        }
    }
}
