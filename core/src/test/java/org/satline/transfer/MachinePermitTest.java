package org.satline.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.duty.Holder;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.filling.Provenance;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;

/**
 * What a recovery machine in the way changes: it moves refrigerant against the difference of pressure, out of the system alone, and lifts
 * no other bar. Common practice, no source. The unit is the R-410A one of {@code PermitTest}: 388 psig in the liquid line, 118 psig in the
 * suction (orders of magnitude from memory).
 */
class MachinePermitTest {
    private static ConnectionPoint point(PointKind kind, double psig) {
        return new ConnectionPoint(
                kind,
                Reading.ofExpanded(Pressure.parse(psig + " psig", Atmosphere.standard()), 10_000, "gauge"),
                List.of());
    }

    private static Permit ask(Direction direction, double psig, String label, HoseState hose, String hoseAt) {
        boolean out = direction == Direction.OUT;
        PointKind valve = out ? PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE : PointKind.SOURCE_CYLINDER_LIQUID_VALVE;
        Holder held = new Holder(
                out ? Holder.Kind.RECOVERY_CYLINDER : Holder.Kind.SOURCE_CYLINDER,
                "club",
                Optional.of(Catalogue.standard().find(label)),
                out ? Provenance.RECOVERED : Provenance.NEW);
        Holder system = new Holder(
                Holder.Kind.SYSTEM, "club", Optional.of(Catalogue.standard().find("R-410A")), Provenance.RECOVERED);
        return PermitOffice.standard()
                .ask(new PermitRequest(
                                direction,
                                List.of(
                                        point(PointKind.HIGH_SIDE_LIQUID_PORT, 388),
                                        point(PointKind.LOW_SIDE_PORT, 118)),
                                hoseAt.isEmpty() ? Optional.empty() : Optional.of(PointKind.valueOf(hoseAt)),
                                Optional.of(point(valve, psig)),
                                "cylinder",
                                system,
                                Optional.of(held),
                                List.of(),
                                true,
                                hose)
                        .withMachine());
    }

    @ParameterizedTest(name = "cylinder at {0} psig, hose at {1}: out of {2}")
    @CsvSource({
        "420, '', HIGH_SIDE_LIQUID_PORT",
        "388, '', HIGH_SIDE_LIQUID_PORT",
        "420, LOW_SIDE_PORT, LOW_SIDE_PORT",
        "252, LOW_SIDE_PORT, LOW_SIDE_PORT"
    })
    void againstThePressureItGoesThroughTheMachine(double psig, String hoseAt, PointKind from) {
        Permit.Granted granted = (Permit.Granted) ask(Direction.OUT, psig, "R-410A", HoseState.READY, hoseAt);
        assertThat(granted.flow().from().kind()).isEqualTo(from);
        assertThat(granted.flow().to().kind()).isEqualTo(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE);
        assertThat(granted.findings()).extracting(Finding::code).contains(TransferCode.BY_MACHINE);
        assertThat(granted.findings()).extracting(Finding::severity).containsOnly(Severity.CAUTION);
    }

    @Test
    void whatFlowsByItselfNeedsNoMachine() {
        Permit.Granted granted = (Permit.Granted) ask(Direction.OUT, 252, "R-410A", HoseState.READY, "");
        assertThat(granted.findings()).extracting(Finding::code).doesNotContain(TransferCode.BY_MACHINE);
    }

    @ParameterizedTest(name = "{0} of {2} at {1} psig, hose {3}: {4}")
    @CsvSource({
        "OUT, 420, R-22, READY, mixing",
        "OUT, 420, R-410A, NOT_PURGED, hoseNotPurged",
        "OUT, 420, R-410A, UNKNOWN, hoseUnknown",
        "IN, 100, R-410A, READY, backflow",
        "IN, 118, R-410A, READY, tooCloseToCall"
    })
    void itLiftsNoOtherBar(Direction direction, double psig, String label, HoseState hose, String code) {
        Permit permit = ask(direction, psig, label, hose, "");
        assertThat(permit)
                .isInstanceOfSatisfying(
                        Permit.Refused.class,
                        refused -> assertThat(refused.first().code().word()).isEqualTo(code));
    }
}
