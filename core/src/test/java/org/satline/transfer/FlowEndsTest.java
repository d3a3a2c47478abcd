package org.satline.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.measurement.Reading;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.transfer.hookup.Medium;

/** The exact ends of what decides the way of a flow: in pascals that a double holds exactly. */
class FlowEndsTest {
    private static ConnectionPoint point(PointKind kind, double pascals, double expandedPa) {
        return new ConnectionPoint(
                kind, Reading.ofExpanded(Pressure.ofPascals(pascals), expandedPa, "gauge"), List.of());
    }

    private static Flow flow(PointKind from, double fromPa, PointKind to, double toPa) {
        return FlowCheck.between(point(from, fromPa, 3000), point(to, toPa, 4000)); // together 5000 Pa
    }

    private static List<TransferCode> warnings(PointKind from, double fromPa, PointKind to, double toPa) {
        return ((Flow.OneWay) flow(from, fromPa, to, toPa)).warnings();
    }

    @Test
    void aDifferenceOfJustTheUncertaintyDecidesNothing() {
        PointKind port = PointKind.HIGH_SIDE_LIQUID_PORT;
        PointKind cylinder = PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE;
        for (double sign : new double[] {1, -1}) {
            Flow even = flow(port, 1e6 + sign * 5000, cylinder, 1e6);
            assertThat(even).isInstanceOfSatisfying(Flow.TooCloseToCall.class, close -> {
                assertThat(close.difference()).isEqualTo(PressureDifference.ofPascals(sign * 5000));
                assertThat(close.expandedUncertainty()).isEqualTo(PressureDifference.ofPascals(5000));
            });
            assertThat(flow(port, 1e6 + sign * 5001, cylinder, 1e6)).isInstanceOfSatisfying(Flow.OneWay.class, way -> {
                assertThat(way.from().kind()).isEqualTo(sign > 0 ? port : cylinder);
                assertThat(way.to().kind()).isEqualTo(sign > 0 ? cylinder : port);
                assertThat(way.driving()).isEqualTo(PressureDifference.ofPascals(5001));
            });
        }
    }

    /** Half of the pressure of the air and less counts as evacuated; our choice, no source. */
    @Test
    void evacuatedIsBelowFiftyKilopascals() {
        PointKind port = PointKind.HIGH_SIDE_LIQUID_PORT;
        PointKind cylinder = PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE;
        assertThat(warnings(port, 1e6, cylinder, 50_000)).doesNotContain(TransferCode.FAST_INTO_VACUUM);
        assertThat(warnings(port, 1e6, cylinder, Math.nextDown(50_000.0))).contains(TransferCode.FAST_INTO_VACUUM);
        assertThat(warnings(port, 50_000, PointKind.VACUUM_PUMP, 100)).doesNotContain(TransferCode.PRESSURE_INTO_PUMP);
        assertThat(warnings(port, Math.nextUp(50_000.0), PointKind.VACUUM_PUMP, 100))
                .contains(TransferCode.PRESSURE_INTO_PUMP);
        PointKind liquidValve = PointKind.RECOVERY_CYLINDER_LIQUID_VALVE;
        PointKind low = PointKind.LOW_SIDE_PORT;
        Flow.OneWay full = (Flow.OneWay) flow(liquidValve, 50_000, low, 30_000);
        assertThat(full.medium()).isEqualTo(Medium.LIQUID);
        assertThat(full.warnings()).contains(TransferCode.LIQUID_TO_SUCTION, TransferCode.BACKFLOW);
        Flow.OneWay empty = (Flow.OneWay) flow(liquidValve, Math.nextDown(50_000.0), low, 30_000);
        assertThat(empty.medium()).isEqualTo(Medium.VAPOUR);
        assertThat(empty.warnings()).contains(TransferCode.BACKFLOW).doesNotContain(TransferCode.LIQUID_TO_SUCTION);
    }
}
