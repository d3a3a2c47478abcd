package org.satline.transfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.duty.Holder;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.filling.Provenance;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;
import org.satline.transfer.hookup.Medium;

/**
 * May refrigerant go from here to there? A running R-410A unit with 388 psig in the liquid line and 118 psig in the suction (orders of
 * magnitude from memory). Refrigerant flows from high pressure to low (physics); 40 CFR 82.154(d) on owners; swept hoses, liquid of a blend
 * and charging at the suction side alone: common practice, no source.
 */
class PermitTest {
    private static final PermitOffice OFFICE = PermitOffice.standard();
    private static final Optional<PointKind> ANY_PORT = Optional.empty();

    private static ConnectionPoint point(PointKind kind, double psig) {
        return new ConnectionPoint(
                kind,
                Reading.ofExpanded(Pressure.parse(psig + " psig", Atmosphere.standard()), 10_000, "gauge"),
                List.of());
    }

    private static Holder holder(Holder.Kind kind, String owner, String refrigerant, Provenance provenance) {
        return new Holder(
                kind,
                owner,
                refrigerant.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Catalogue.standard().find(refrigerant)),
                provenance);
    }

    private static final Holder SYSTEM = holder(Holder.Kind.SYSTEM, "club", "R-410A", Provenance.RECOVERED);
    private static final List<ConnectionPoint> PORTS =
            List.of(point(PointKind.HIGH_SIDE_LIQUID_PORT, 388), point(PointKind.LOW_SIDE_PORT, 118));

    private static PermitRequest request(
            Direction direction, Optional<PointKind> hoseAt, ConnectionPoint cylinder, Holder held, HoseState hose) {
        return new PermitRequest(
                direction,
                PORTS,
                hoseAt,
                Optional.of(cylinder),
                "cylinder",
                SYSTEM,
                Optional.of(held),
                List.of(),
                true,
                hose);
    }

    /** Sorted by weight, and among the same weight in the order in which they were found. */
    private static String answer(PermitRequest request) {
        return OFFICE.ask(request) instanceof Permit.Refused refused
                ? refused.first().code().word()
                : "granted";
    }

    @ParameterizedTest(name = "{0} {1} {2} of {3} {4}, {5} psig, hose {6} at {7}: {8}")
    @CsvSource({
        // direction, valve, label, provenance, owner, pressure, hose, hose at, answer
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 252, READY, '', granted",
        "OUT, RECOVERY_CYLINDER_LIQUID_VALVE, R-410A, RECOVERED, club, 252, READY, '', granted",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, '', RECOVERED, club, -14.6, READY, '', granted",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, other, 252, READY, '', granted",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 252, READY, HIGH_SIDE_LIQUID_PORT, granted",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 252, READY, LOW_SIDE_PORT, wrongPort",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 80, READY, LOW_SIDE_PORT, granted",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-22, RECOVERED, club, 153, READY, '', mixing",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 420, READY, '', backflow",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 388, READY, '', tooCloseToCall",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 252, NOT_PURGED, '', hoseNotPurged",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 252, CANNOT_BE_PURGED, '', hoseCannotBePurged",
        "OUT, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 252, UNKNOWN, '', hoseUnknown",
        "OUT, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, club, 252, READY, '', otherCylinderNeeded",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, trader, 252, READY, '', granted",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, RECLAIMED, trader, 252, READY, LOW_SIDE_PORT, granted",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, RECOVERED, club, 252, READY, '', granted",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, RECOVERED, other, 252, READY, '', otherOwner",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, MIXED_RECOVERED, club, 252, READY, '', mixedRecovered",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-22, NEW, trader, 153, READY, '', mixing",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, '', NEW, trader, 252, READY, '', mixing",
        "IN, SOURCE_CYLINDER_VAPOUR_VALVE, R-410A, NEW, trader, 252, READY, '', wrongPhase",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, trader, 100, READY, '', backflow",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, trader, 118, READY, '', tooCloseToCall",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, trader, 450, READY, HIGH_SIDE_LIQUID_PORT, wrongPort",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, trader, 252, NOT_PURGED, '', hoseNotPurged",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, trader, 252, CANNOT_BE_PURGED, '', hoseCannotBePurged",
        "IN, SOURCE_CYLINDER_LIQUID_VALVE, R-410A, NEW, trader, 252, UNKNOWN, '', hoseUnknown",
        "IN, RECOVERY_CYLINDER_VAPOUR_VALVE, R-410A, RECOVERED, club, 252, READY, '', otherCylinderNeeded"
    })
    void theFirstReasonOrNone(
            Direction direction,
            PointKind valve,
            String label,
            Provenance provenance,
            String owner,
            double psig,
            HoseState hose,
            String hoseAt,
            String answer) {
        boolean receiver = valve.owner() == PointKind.Owner.RECOVERY_CYLINDER || provenance.isUsed();
        Holder held = holder(
                receiver ? Holder.Kind.RECOVERY_CYLINDER : Holder.Kind.SOURCE_CYLINDER, owner, label, provenance);
        Optional<PointKind> port = hoseAt.isEmpty() ? ANY_PORT : Optional.of(PointKind.valueOf(hoseAt));
        assertThat(answer(request(direction, port, point(valve, psig), held, hose)))
                .isEqualTo(answer);
    }

    private static final Holder RECEIVER =
            holder(Holder.Kind.RECOVERY_CYLINDER, "club", "R-410A", Provenance.RECOVERED);

    private static PermitRequest out(List<Finding> ofCylinder) {
        return new PermitRequest(
                Direction.OUT,
                PORTS,
                ANY_PORT,
                Optional.of(point(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, 252)),
                "cylinder",
                SYSTEM,
                Optional.of(RECEIVER),
                ofCylinder,
                true,
                HoseState.READY);
    }

    @Test
    void theGrantedFlowGoesFromThePortToTheValve() {
        Permit.Granted granted = (Permit.Granted) OFFICE.ask(out(List.of()));
        assertThat(granted.flow().from().kind()).isEqualTo(PointKind.HIGH_SIDE_LIQUID_PORT);
        assertThat(granted.flow().to().kind()).isEqualTo(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE);
        assertThat(granted.flow().medium()).isEqualTo(Medium.LIQUID);
        assertThat(granted.findings())
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.severity()).isEqualTo(Severity.CAUTION));
    }

    /** Whatever the check of the cylinder found: all but a caution bars, and the heaviest comes first. */
    @ParameterizedTest
    @EnumSource(Severity.class)
    void whatTheCylinderSaysCounts(Severity severity) {
        FindingCode code = TransferCode.TOXIC;
        Finding found = Finding.of(severity, code, Subject.cylinder("cylinder"));
        Permit permit = OFFICE.ask(out(List.of(found)));
        if (severity == Severity.CAUTION) {
            assertThat(permit).isInstanceOf(Permit.Granted.class);
        } else {
            assertThat(((Permit.Refused) permit).first()).isEqualTo(found);
        }
    }

    @Test
    void everyReasonIsGivenAtOnceTheHeaviestFirst() {
        Holder other = holder(Holder.Kind.RECOVERY_CYLINDER, "other", "R-22", Provenance.MIXED_RECOVERED);
        Permit.Refused refused = (Permit.Refused) OFFICE.ask(request(
                Direction.IN,
                ANY_PORT,
                point(PointKind.SOURCE_CYLINDER_VAPOUR_VALVE, 60),
                other,
                HoseState.NOT_PURGED));
        List<String> codes =
                refused.findings().stream().map(each -> each.code().word()).toList();
        assertThat(codes).contains("mixing", "mixedRecovered", "otherOwner", "backflow", "wrongPhase", "hoseNotPurged");
        assertThat(refused.findings().stream().map(Finding::severity)).isSorted();
    }

    @Test
    void aPureRefrigerantMayComeAsVapour() {
        Holder system = holder(Holder.Kind.SYSTEM, "club", "R-32", Provenance.RECOVERED);
        PermitRequest pure = new PermitRequest(
                Direction.IN,
                PORTS,
                ANY_PORT,
                Optional.of(point(PointKind.SOURCE_CYLINDER_VAPOUR_VALVE, 252)),
                "cylinder",
                system,
                Optional.of(holder(Holder.Kind.SOURCE_CYLINDER, "trader", "R-32", Provenance.NEW)),
                List.of(),
                false,
                HoseState.READY);
        assertThat(answer(pure)).isEqualTo("granted");
    }

    @Test
    void withoutACylinderOrItsPressureNothingIsGranted() {
        assertThat(answer(without(Optional.empty(), List.of()))).isEqualTo("noCylinder");
        assertThat(answer(without(Optional.of(RECEIVER), List.of()))).isEqualTo("noCylinder");
        Finding pressure =
                Finding.of(Severity.MUST_BE_SUPPLIED, TransferCode.TOXIC, Subject.reading("cylinder.pressure"));
        assertThat(answer(without(Optional.of(RECEIVER), List.of(pressure)))).isEqualTo("toxic");
    }

    private static PermitRequest without(Optional<Holder> held, List<Finding> found) {
        return new PermitRequest(
                Direction.OUT, PORTS, ANY_PORT, Optional.empty(), "", SYSTEM, held, found, true, HoseState.READY);
    }

    @Test
    void withoutAPortNothingIsGranted() {
        PermitRequest nowhere = new PermitRequest(
                Direction.OUT,
                List.of(),
                ANY_PORT,
                Optional.of(point(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, 252)),
                "cylinder",
                SYSTEM,
                Optional.of(RECEIVER),
                new ArrayList<>(),
                true,
                HoseState.READY);
        assertThat(OFFICE.ask(nowhere)).isInstanceOf(Permit.Refused.class);
        assertThatThrownBy(() -> new Permit.Refused(List.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
