package org.satline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Mass;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;

/** The system at rest, and with another refrigerant in it than it is built for. */
class RestTest {
    private static final Temperature REST = Temperature.ofCelsius(30);

    /** ASHRAE Handbook Fundamentals, R-22 and R-134a saturation tables (from memory): 1191.9 kPa and 770.2 kPa at 30 degC. */
    @ParameterizedTest
    @CsvSource({"R-22, 1191.9", "R-134a, 770.2"})
    void standsAtTheSaturationPressure(String refrigerant, double kilopascals) {
        SimulatedSystem system = Systems.typical(refrigerant, MeteringDevice.EXPANSION_VALVE);
        // interpolated properties: 0.01 K, some 0.3 kPa; half of the last digit is less
        assertThat(standing(system, ImposedFault.none()).kilopascals()).isCloseTo(kilopascals, within(0.5));
    }

    /**
     * Common practice: foreign gas raises the pressure at rest above saturation. Behind a closed valve all of it stays in the condenser.
     */
    @ParameterizedTest
    @EnumSource(MeteringDevice.class)
    void foreignGasRaisesThePressureAtRest(MeteringDevice metering) {
        SimulatedSystem system = Systems.typical("R-410A", metering);
        double clean = standing(system, ImposedFault.none()).kilopascals();
        double raised = standing(system, ImposedFault.nonCondensableGas(Pressure.ofKilopascals(100)))
                        .kilopascals()
                - clean;
        if (metering == MeteringDevice.EXPANSION_VALVE) {
            assertThat(raised)
                    .isBetween(90.0, 100.0); // an ideal gas, cooled from some 45 degC to 30 degC at constant volume
        } else {
            assertThat(raised).isBetween(5.0, 60.0);
        }
    }

    @Test
    void anotherRefrigerantStandsAtItsOwnPressureAndRunsOtherwise() {
        SimulatedSystem system = Systems.typical("R-22", MeteringDevice.EXPANSION_VALVE);
        SimulatedSystem mistaken =
                system.filledWith(WorkingFluid.of(Catalogue.standard().find("R-134a")));
        assertThat(standing(mistaken, ImposedFault.none()).kilopascals()).isCloseTo(770.2, within(0.5));
        assertThat(mistaken.design()).isEqualTo(system.design());
        assertThat(mistaken.ratedCharge()).isEqualTo(system.ratedCharge());
        // the same swept volume draws a thinner vapour: R-134a cools less (common practice)
        assertThat(Systems.at(mistaken, 1, ImposedFault.none()).cooling().watts())
                .isLessThan(0.9
                        * Systems.at(system, 1, ImposedFault.none()).cooling().watts());
    }

    @Test
    void refusesAChargeThatIsNone() {
        SimulatedSystem system = Systems.typical("R-22", MeteringDevice.EXPANSION_VALVE);
        assertThatThrownBy(() ->
                        system.standingPressure(Mass.ofGrams(5), REST, AirConditions.rated(), ImposedFault.none()))
                .isInstanceOf(OutOfValidityException.class);
    }

    private static Pressure standing(SimulatedSystem system, ImposedFault fault) {
        return system.standingPressure(system.ratedCharge(), REST, AirConditions.rated(), fault);
    }
}
