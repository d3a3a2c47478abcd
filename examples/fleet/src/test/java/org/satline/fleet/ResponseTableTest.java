package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.quantity.Mass;
import org.satline.simulation.AirConditions;
import org.satline.simulation.ImposedFault;
import org.satline.simulation.SimulatedSystem;
import org.satline.simulation.SteadyState;

/** The table in the jar is what the library simulates. */
class ResponseTableTest {
    @ParameterizedTest
    @EnumSource(UnitModel.class)
    void rowsAreThoseOfTheSimulation(UnitModel model) throws IOException {
        SimulatedSystem system = SimulatedSystem.of(model.design());
        try (InputStream stream = Objects.requireNonNull(ResponseTable.class.getResourceAsStream("responses.csv"))) {
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(text)
                    .contains(ResponseMaker.line(model, system, UnitFault.NONE, 0.85, 24.0, 22.0) + "\n")
                    .contains(ResponseMaker.line(model, system, UnitFault.LOW_AIRFLOW, 1, 36.0, 18.5) + "\n");
        }
    }

    /** Between the nodes the answers of the table stay near: half a kelvin is a tenth of what a leak of 10 % does. */
    @ParameterizedTest
    @EnumSource(UnitModel.class)
    void betweenTheNodesTheAnswersStayNear(UnitModel model) {
        SimulatedSystem system = SimulatedSystem.of(model.design());
        SteadyState state = system.steadyState(
                Mass.ofKilograms(0.975 * system.ratedCharge().kilograms()),
                AirConditions.ofCelsius(33, ResponseTable.RETURN_C, 17.6),
                ImposedFault.none());
        double[] answers = new double[ResponseTable.ANSWERS];
        ResponseTable.of(model).sound(0.975, 33, 17.6, answers);
        assertThat(answers[2]).isCloseTo(state.suctionLine().celsius(), org.assertj.core.api.Assertions.within(0.5));
        assertThat(answers[3]).isCloseTo(state.liquidLine().celsius(), org.assertj.core.api.Assertions.within(0.5));
        assertThat(answers[1] * 1000)
                .isCloseTo(state.liquidPressure().pascals(), org.assertj.core.api.Assertions.withinPercentage(1));
    }
}
