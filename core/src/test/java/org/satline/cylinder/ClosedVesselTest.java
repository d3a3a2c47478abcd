package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.PhaseSplit.Phases;
import org.satline.filling.VesselPoint;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.refrigerant.Catalogue;

class ClosedVesselTest {
    private static final FluidModel R134A = FluidModel.of(Catalogue.standard().find("R-134a"));
    private static final FluidModel R410A = FluidModel.of(Catalogue.standard().find("R-410A"));
    private static final Volume TEN_LITRES = Volume.ofLitres(10);

    private static ClosedVessel vessel(FluidModel model, double kilograms) {
        return ClosedVessel.of(model, TEN_LITRES, Mass.ofKilograms(kilograms));
    }

    /**
     * Cengel and Boles, property tables, table A-11: R-134a at 20 degC p 572.07 kPa, v_l 0.0008161, v_v 0.035969 m3/kg. By hand for 5 kg in
     * 10 L: m_v = (0.010 - 5 x 0.0008161) / (0.035969 - 0.0008161) = 0.16839 kg; level (5 - 0.16839) x 0.0008161 / 0.010 = 0.39431.
     */
    @Test
    void halfFullOfR134a() {
        VesselCondition condition = vessel(R134A, 5).at(Temperature.ofCelsius(20));
        assertThat(condition.phases()).isEqualTo(Phases.LIQUID_AND_VAPOUR);
        // the table rests on another equation; the two differ by less than 0.1 % here
        assertThat(condition.pressure().kilopascals()).isCloseTo(572.07, within(0.5));
        assertThat(condition.vapourMass().kilograms())
                .isCloseTo(0.16839, within(3e-4)); // v_v differs by 0.1 % likewise
        assertThat(condition.liquidVolumeFraction().orElseThrow())
                .isCloseTo(0.39431, within(1e-4)); // last digit of v_l
        assertThat(condition.cautions()).isEmpty();
    }

    /** Same table, 60 degC: v_l 0.0009497 m3/kg, that is 1052.96 kg/m3: 10.5296 kg fill 10 L at 60 degC. */
    @Test
    void becomesLiquidFullWhereTheLiquidHasTheOverallDensity() {
        VesselPoint full = vessel(R134A, 10.5296).liquidFull();
        assertThat(full)
                .isInstanceOfSatisfying(
                        VesselPoint.At.class,
                        at -> assertThat(at.temperature().celsius())
                                .isCloseTo(
                                        60,
                                        within(0.05))); // half a digit of v_l is 0.05 %, and the density falls 0.5 % a
        // kelvin
        VesselCondition warm = vessel(R134A, 10.5296).at(Temperature.ofCelsius(63));
        assertThat(warm.phases()).isEqualTo(Phases.LIQUID);
        assertThat(warm.cautions().get(0).code()).isEqualTo(CylinderCode.LIQUID_FULL);
        // far above the vapour pressure at 63 degC, about 18 bar
        assertThat(warm.pressure().bars()).isGreaterThan(25);
        assertThat(vessel(R134A, 10.5296).at(Temperature.ofCelsius(55)).cautions())
                .hasSize(1);
    }

    /**
     * Critical temperatures from the pages of each fluid in common handbooks, from memory: R-744 30.98 degC, R-23 26.14, R-32 78.11,
     * R-410A 71.34. Density does not change as a closed vessel warms, so what filled it with liquid below that temperature is as dangerous
     * above.
     */
    @ParameterizedTest
    @CsvSource({"R-744, 950, 30.9, 31.1", "R-23, 900, 26.0, 26.5", "R-32, 700, 78.0, 78.5", "R-410A, 800, 70.5, 72.5"})
    void theDangerOfAFullVesselDoesNotEndAtTheCriticalTemperature(
            String gas, double density, double belowCelsius, double aboveCelsius) {
        FluidModel model = FluidModel.of(Catalogue.standard().find(gas));
        ClosedVessel vessel = vessel(model, density * TEN_LITRES.cubicMetres());
        VesselCondition below = vessel.at(Temperature.ofCelsius(belowCelsius));
        VesselCondition above = vessel.at(Temperature.ofCelsius(aboveCelsius));
        assertThat(below.phases()).isEqualTo(Phases.LIQUID);
        assertThat(below.liquidVolumeFraction()).contains(1.0);
        assertThat(above.phases()).isEqualTo(Phases.SUPERCRITICAL);
        assertThat(above.liquidVolumeFraction()).isEmpty();
        assertThat(above.pressure()).isGreaterThan(below.pressure());
        for (VesselCondition each : List.of(below, above)) {
            assertThat(each.cautions())
                    .anySatisfy(caution -> assertThat(caution.code()).isEqualTo(CylinderCode.LIQUID_FULL));
        }
        // a light fill is no danger there
        VesselCondition light =
                vessel(model, 0.1 * density * TEN_LITRES.cubicMetres()).at(Temperature.ofCelsius(aboveCelsius));
        assertThat(light.liquidVolumeFraction()).isEmpty();
        assertThat(light.cautions()).isEmpty();
    }

    /** 49 CFR 173.301a(c): at 131 degF no more than 5/4 of the service pressure. */
    @Test
    void aPressureAboveItsMarkIsADangerAtAnyTemperature() {
        FluidModel carbonDioxide = FluidModel.of(Catalogue.standard().find("R-744"));
        Temperature warm = Temperature.ofCelsius(55);
        Optional<Pressure> weak = Optional.of(Pressure.ofPsia(414.7));
        assertThat(vessel(carbonDioxide, 3).at(warm).cautions()).isEmpty();
        assertThat(vessel(carbonDioxide, 3).at(warm, weak).cautions())
                .singleElement()
                .satisfies(caution -> assertThat(caution.code()).isEqualTo(CylinderCode.OVER_PRESSURE));
        assertThat(vessel(carbonDioxide, 3)
                        .at(warm, Optional.of(Pressure.ofPsia(1814.7)))
                        .cautions())
                .isEmpty();
        // R-410A has about 481 psig at 131 degF, less than 500
        assertThat(vessel(R410A, 5).at(warm, weak).cautions()).isEmpty();
    }

    @Test
    void aLightFillNeverBecomesLiquidFull() {
        assertThat(vessel(R134A, 3).liquidFull()).isInstanceOf(VesselPoint.Never.class);
        assertThat(vessel(R134A, 16).liquidFull()).isInstanceOf(VesselPoint.Always.class);
    }

    @Test
    void servicePressureIsReachedOnTheSaturationLineOrSoonAfterLiquidFull() {
        Pressure service = Pressure.ofPsia(414.7);
        VesselPoint light = vessel(R410A, 8).reaches(service);
        double saturation = R410A.bubbleAtPressure(service.pascals()).temperatureK();
        assertThat(light)
                .isInstanceOfSatisfying(
                        VesselPoint.At.class,
                        at -> assertThat(at.temperature().kelvins())
                                .isCloseTo(
                                        saturation,
                                        within(0.2))); // a blend with some vapour: a little above its bubble point
        VesselPoint heavy = vessel(R410A, 10.8).reaches(service);
        assertThat(heavy)
                .isInstanceOfSatisfying(
                        VesselPoint.At.class,
                        at -> assertThat(at.temperature().kelvins()).isLessThan(saturation - 5));
        assertThat(vessel(R134A, 5).reaches(Pressure.ofBars(100))).isInstanceOf(VesselPoint.Never.class);
        assertThat(vessel(R134A, 5).reaches(Pressure.ofPascals(1))).isInstanceOf(VesselPoint.Always.class);
    }

    @Test
    void overASpanOfTemperaturesThePressureRises() {
        List<VesselCondition> conditions =
                vessel(R410A, 9).over(Temperature.ofCelsius(-20), Temperature.ofCelsius(60), 9);
        assertThat(conditions).hasSize(9);
        assertThat(conditions.get(8).temperature().celsius()).isCloseTo(60, within(1e-9));
        for (int i = 1; i < conditions.size(); i++) {
            assertThat(conditions.get(i).pressure())
                    .isGreaterThan(conditions.get(i - 1).pressure());
        }
    }

    @Test
    void refusesWhatIsNoVessel() {
        assertThatThrownBy(() -> vessel(R134A, 0)).hasMessageContaining("not above zero");
        ClosedVessel vessel = vessel(R134A, 5);
        assertThatThrownBy(() -> vessel.over(Temperature.ofCelsius(0), Temperature.ofCelsius(10), 1))
                .hasMessageContaining("[2, 10000]");
        assertThatThrownBy(() -> vessel.over(Temperature.ofCelsius(10), Temperature.ofCelsius(0), 5))
                .hasMessageContaining("backwards");
    }
}
