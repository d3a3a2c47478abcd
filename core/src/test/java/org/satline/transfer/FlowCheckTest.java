package org.satline.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.transfer.hookup.Medium;

/**
 * Which way it flows, and what is wrong with that way: refrigerant flows from high pressure to low (physics); the rest common practice, no
 * source.
 */
class FlowCheckTest {
    private static final PressureDifference ONE_PSI = PressureDifference.ofPsi(1);

    private static ConnectionPoint gauge(PointKind kind, double psig) {
        return ConnectionPoint.byGauge(
                kind,
                Reading.ofExpanded(GaugePressure.ofPsig(psig), ONE_PSI.pascals(), "gauge"),
                Atmosphere.standard());
    }

    private static ConnectionPoint vacuum(PointKind kind, double microns) {
        return ConnectionPoint.byVacuumGauge(kind, Reading.ofExpanded(Pressure.ofMicrons(microns), 1, "vacuum gauge"));
    }

    private static Flow.OneWay oneWay(Flow flow) {
        assertThat(flow).isInstanceOf(Flow.OneWay.class);
        return (Flow.OneWay) flow;
    }

    @Test
    void theLiquidPortFlowsIntoACoolerCylinder() {
        Flow.OneWay flow = oneWay(FlowCheck.between(
                gauge(PointKind.HIGH_SIDE_LIQUID_PORT, 340), gauge(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, 200)));
        assertThat(flow.from().kind()).isEqualTo(PointKind.HIGH_SIDE_LIQUID_PORT);
        assertThat(flow.medium()).isEqualTo(Medium.LIQUID);
        assertThat(flow.driving().psi()).isCloseTo(140, within(1e-9)); // round-off
        assertThat(flow.expandedUncertainty().psi()).isCloseTo(Math.sqrt(2), within(1e-9)); // JCGM 100, 5.1.2
        assertThat(flow.warnings()).isEmpty();
    }

    @Test
    void theLowSideOfARunningSystemWouldTakeTheCylinderBackIn() {
        Flow.OneWay flow = oneWay(FlowCheck.between(
                gauge(PointKind.LOW_SIDE_PORT, 118), gauge(PointKind.RECOVERY_CYLINDER_LIQUID_VALVE, 200)));
        assertThat(flow.warnings()).containsExactlyInAnyOrder(TransferCode.BACKFLOW, TransferCode.LIQUID_TO_SUCTION);
    }

    @Test
    void withinTheUncertaintyNothingIsDecided() {
        Flow flow = FlowCheck.between(
                gauge(PointKind.LOW_SIDE_PORT, 118), gauge(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, 119));
        assertThat(flow).isInstanceOfSatisfying(Flow.TooCloseToCall.class, close -> {
            assertThat(close.difference().psi()).isCloseTo(-1, within(1e-9)); // round-off
            assertThat(close.expandedUncertainty().psi()).isCloseTo(Math.sqrt(2), within(1e-9)); // JCGM 100, 5.1.2
        });
    }

    @Test
    void anEvacuatedCylinderTakesFastAndDrawsAir() {
        ConnectionPoint cylinder = vacuum(PointKind.RECOVERY_CYLINDER_LIQUID_VALVE, 500);
        assertThat(oneWay(FlowCheck.between(gauge(PointKind.HIGH_SIDE_LIQUID_PORT, 340), cylinder))
                        .warnings())
                .containsExactly(TransferCode.FAST_INTO_VACUUM);
        Flow.OneWay air = oneWay(FlowCheck.between(cylinder, ConnectionPoint.atmosphere(Atmosphere.standard())));
        assertThat(air.medium()).isEqualTo(Medium.AIR);
        assertThat(air.warnings()).containsExactly(TransferCode.VACUUM_AIR);
    }

    @Test
    void aSourceCylinderWarmerThanTheLowSideChargesAndTheHighSideWouldFillIt() {
        ConnectionPoint source = gauge(PointKind.SOURCE_CYLINDER_LIQUID_VALVE, 200);
        assertThat(oneWay(FlowCheck.between(source, gauge(PointKind.LOW_SIDE_PORT, 118)))
                        .warnings())
                .containsExactly(TransferCode.LIQUID_TO_SUCTION);
        assertThat(oneWay(FlowCheck.between(source, gauge(PointKind.HIGH_SIDE_LIQUID_PORT, 340)))
                        .warnings())
                .containsExactly(TransferCode.BACKFLOW);
    }

    @Test
    void aVacuumPumpIsForAnEmptySystemOnly() {
        ConnectionPoint pump = vacuum(PointKind.VACUUM_PUMP, 50);
        assertThat(oneWay(FlowCheck.between(gauge(PointKind.LOW_SIDE_PORT, 118), pump))
                        .warnings())
                .containsExactly(TransferCode.PRESSURE_INTO_PUMP);
        assertThat(oneWay(FlowCheck.between(vacuum(PointKind.LOW_SIDE_PORT, 2000), pump))
                        .warnings())
                .isEmpty();
        assertThat(oneWay(FlowCheck.between(pump, vacuum(PointKind.LOW_SIDE_PORT, 10)))
                        .warnings())
                .containsExactly(TransferCode.OUT_OF_PUMP);
    }

    @Test
    void allPairsAreLookedAt() {
        List<ConnectionPoint> points = List.of(
                gauge(PointKind.HIGH_SIDE_LIQUID_PORT, 340),
                gauge(PointKind.LOW_SIDE_PORT, 118),
                gauge(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, 200),
                ConnectionPoint.atmosphere(Atmosphere.standard()));
        List<Flow> flows = FlowCheck.betweenAll(points);
        assertThat(flows).hasSize(6);
        assertThat(oneWay(flows.get(0)).warnings()).contains(TransferCode.ACROSS_SYSTEM);
        assertThat(oneWay(flows.get(2)).warnings()).containsExactly(TransferCode.RELEASE);
    }
}
