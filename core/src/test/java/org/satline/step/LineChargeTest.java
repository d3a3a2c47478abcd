package org.satline.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Finding;
import org.satline.quantity.Length;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.step.CopperTube.Temper;

class LineChargeTest {
    private static final Refrigerant R134A = Catalogue.standard().find("R-134a");
    private static final SaturationCurve CURVE = SaturationCurves.of(R134A);
    private static final Length TEN_METRES = Length.ofMetres(10);

    /** ASTM B280 as printed: bore area in mm2. */
    @ParameterizedTest
    @CsvSource({
        "1/4, ANNEALED, 18.3",
        "3/8, ANNEALED, 49.0",
        "3/8, DRAWN, 50.3",
        "5/8, ANNEALED, 156.1",
        "3/4, ANNEALED, 234.2",
        "3/4, ANNEALED_HEAVY, 224.5",
        "7/8, DRAWN, 312.3",
        "1-1/8, DRAWN, 532.3",
    })
    void boresArePrinted(String size, Temper temper, double squareMillimetres) {
        double area = CopperTube.of(size, temper).volume(Length.ofMetres(1)).cubicMetres() * 1e6;
        // half of the last digit, and the inch diameters are printed to 0.001 in, which is 0.3 % of the area of 3/8 in
        assertThat(area).isCloseTo(squareMillimetres, within(0.05 + 0.003 * squareMillimetres));
    }

    /** By hand: 49.0 mm2 x 10 m = 0.490 L; Cengel and Boles, table A-11: R-134a at 40 degC v_l 0.0008720 m3/kg: 0.562 kg. */
    @Test
    void liquidLineByHand() {
        LineCharge charge = LineCharge.of(
                CopperTube.of("3/8 in", Temper.ANNEALED),
                TEN_METRES,
                LineCharge.liquid(CURVE, Temperature.ofCelsius(40)));
        assertThat(charge.mass().kilograms()).isCloseTo(0.562, within(0.001)); // three digits by hand
        assertThat(charge.steps()).hasSize(3);
    }

    /** Same table, 0 degC: v_v 0.068891 m3/kg (from memory: 0.069255 in another edition): 1.56 L hold about 0.0226 kg. */
    @Test
    void suctionLineHoldsLittle() {
        CopperTube tube = CopperTube.of("5/8\"", Temper.ANNEALED);
        LineCharge saturated =
                LineCharge.of(tube, TEN_METRES, LineCharge.saturatedVapour(CURVE, Temperature.ofCelsius(0)));
        assertThat(saturated.mass().grams()).isCloseTo(22.6, within(0.2)); // the two editions differ by that
        LineCharge superheated = LineCharge.of(
                tube,
                TEN_METRES,
                LineCharge.onePhase(FluidModel.of(R134A), Temperature.ofCelsius(10), Pressure.ofKilopascals(290)));
        assertThat(superheated.mass()).isLessThan(saturated.mass());
    }

    @Test
    void aLongerLineSetNeedsTheDifferenceOnly() {
        LineCharge.Filling liquid = LineCharge.liquid(CURVE, Temperature.ofCelsius(40));
        LineCharge.Filling vapour = LineCharge.saturatedVapour(CURVE, Temperature.ofCelsius(0));
        CopperTube small = CopperTube.of("3/8", Temper.ANNEALED);
        CopperTube large = CopperTube.of("5/8", Temper.ANNEALED);
        LineCharge extra = LineCharge.additional(small, liquid, large, vapour, Length.ofMetres(5), Length.ofMetres(15));
        assertThat(extra.mass().kilograms()).isCloseTo(0.562 + 0.0226, within(0.001)); // the two tests above
        assertThat(extra.cautions()).extracting(Finding::code).containsExactly(StepCode.MAKERS_FIGURE_FIRST);
        assertThatThrownBy(() ->
                        LineCharge.additional(small, liquid, large, vapour, Length.ofMetres(15), Length.ofMetres(5)))
                .hasMessageContaining("nothing is added");
    }

    @Test
    void anUnknownSizeListsTheKnownOnes() {
        assertThatThrownBy(() -> CopperTube.of("5/7", Temper.DRAWN))
                .hasMessageContaining("3/8")
                .hasMessageContaining("B280");
    }

    @Test
    void aHoseHoldsLiquidToo() {
        // 4.8 mm bore, 1.5 m long
        Volume hose = Volume.ofCubicMetres(Math.PI / 4 * 0.0048 * 0.0048 * 1.5);
        LineCharge charge = LineCharge.of(hose, LineCharge.liquid(CURVE, Temperature.ofCelsius(40)));
        assertThat(charge.mass().grams()).isCloseTo(31.1, within(0.1)); // 0.027143 L over 0.0008720 m3/kg
    }
}
