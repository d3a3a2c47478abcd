package org.satline.visit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.visit.file.VisitFileTest.refused;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.Role;
import org.satline.cylinder.Valve;
import org.satline.cylinder.Weighing;
import org.satline.filling.Provenance;
import org.satline.filling.Stamp;
import org.satline.visit.Visit;

/** The fields of the cylinders of a visit file. */
class VisitFileCylinderTest {
    private static final AVisit VISIT = AVisit.overcharged();

    private static Cylinder cylinder(AVisit visit) {
        return visit.read().cylinders().get(0);
    }

    @Test
    void theCylinder() {
        Cylinder cylinder = cylinder(VISIT.with("cylinder.inverted", true)
                .with("cylinder.warmest", "120 degF")
                .with("cylinder.atRest", false)
                .with("cylinder.hanging", "0.4 lb")
                .with("cylinder.fillRules", "us"));
        assertThat(cylinder.name()).isEqualTo("cylinder no. 4");
        assertThat(cylinder.role()).isEqualTo(Role.RECEIVER);
        assertThat(cylinder.valve()).isEqualTo(Valve.VAPOUR);
        assertThat(cylinder.inverted()).isTrue();
        assertThat(cylinder.label().orElseThrow().designation()).isEqualTo("R-410A");
        assertThat(cylinder.provenance()).contains(Provenance.RECOVERED);
        assertThat(cylinder.owner()).contains("the sailing club");
        assertThat(cylinder.temperature().value().fahrenheit()).isCloseTo(84, within(1e-9));
        assertThat(cylinder.pressure()).isPresent();
        assertThat(cylinder.warmest().fahrenheit()).isCloseTo(120, within(1e-9));
        assertThat(cylinder.atRest()).isFalse();
        assertThat(cylinder.weighing().orElseThrow()).isInstanceOf(Weighing.Gross.class);
        assertThat(cylinder.stamps().tare().pounds()).isCloseTo(27.4, within(1e-9));
        assertThat(cylinder.stamps().retestDue()).contains(LocalDate.of(2029, 4, 30));
        // the liquid in 5 ft of 4.8 mm bore: 27.6 ml of about 1.04 kg/l (from memory of trade charts)
        assertThat(cylinder.hoseContents().grams()).isBetween(25.0, 32.0);
        assertThat(cylinder(VISIT.with("cylinder.hoseContents", "0.1 lb"))
                        .hoseContents()
                        .pounds())
                .isCloseTo(0.1, within(1e-9));
        refused(VISIT.with("cylinder.hoseContents", "2 lb"), "cylinder.hoseContents");
        refused(VISIT.with("cylinder.valve", "gas"), "cylinder.valve");
        refused(VISIT.with("cylinder.provenance", "found"), "cylinder.provenance");
        refused(VISIT.with("cylinder.fillRules", "moon"), "cylinder.fillRules");
    }

    @ParameterizedTest
    @CsvSource({
        "recovery-vapour, RECEIVER, VAPOUR",
        "recovery-liquid, RECEIVER, LIQUID",
        "source-vapour, SOURCE, VAPOUR",
        "source-liquid, SOURCE, LIQUID"
    })
    void theValveSaysWhatTheCylinderIsFor(String word, Role role, Valve valve) {
        Cylinder cylinder = cylinder(VISIT.with("cylinder.valve", word));
        assertThat(cylinder.role()).isEqualTo(role);
        assertThat(cylinder.valve()).isEqualTo(valve);
    }

    @Test
    void everyStampByItsField() {
        for (Stamp stamp : Stamp.values()) {
            Object value = stamp.type() == Boolean.class ? (Object) true : stamp.example();
            if (stamp == Stamp.REFILLABLE) {
                assertThat(cylinder(VISIT.with("cylinder." + stamp.field(), value))
                                .stamps()
                                .refillable())
                        .contains(true);
                refused(VISIT.with("cylinder." + stamp.field(), "yes"), "cylinder." + stamp.field());
            } else if (stamp.type() != Boolean.class) {
                assertThat(VISIT.with("cylinder." + stamp.field(), value).read())
                        .isNotNull();
                if (stamp != Stamp.SPECIFICATION) { // any mark may stand on a cylinder
                    refused(VISIT.with("cylinder." + stamp.field(), "?"), "cylinder." + stamp.field());
                }
            }
        }
    }

    /** One litre of water weighs a kilogram within a few grams (from memory), but a volume is a volume. */
    @ParameterizedTest
    @CsvSource({"21.6 L", "21.6 l", "21.6 litres", "21.6 liters"})
    void aWaterCapacityInLitresIsAVolume(String text) {
        assertThat(cylinder(VISIT.with("cylinder.waterCapacity", text))
                        .stamps()
                        .volume()
                        .litres())
                .isCloseTo(21.6, within(1e-9));
    }

    @Test
    void aScaleZeroedAfterHookUpMayShowBelowZero() {
        AVisit zeroed =
                VISIT.withSource().with("cylinder.grossBefore", "41.35 lb").with("cylinder.scaleReading", "-0.55 lb");
        Weighing.SinceZero weighing =
                (Weighing.SinceZero) cylinder(zeroed).weighing().orElseThrow();
        assertThat(weighing.shown().value().pounds()).isCloseTo(-0.55, within(1e-9));
        // by hand: 41.35 - 27.4 - 0.55
        assertThat(cylinder(zeroed).contents().orElseThrow().value().pounds()).isCloseTo(13.4, within(1e-9));
        refused(zeroed.with("cylinder.scaleReading", "-50 lb"), "cylinder.scaleReading");
        // what it shows now is asked for, not refused
        assertThat(cylinder(zeroed.without("cylinder.scaleReading")).weighing()).isEmpty();
        refused(VISIT.weighing("-1 lb"), "cylinder.scaleReading");
        refused(VISIT.weighing("41.35 t"), "cylinder.scaleReading");
        refused(VISIT.without("instruments.scale"), "cylinder.scaleReading");
    }

    @ParameterizedTest
    @CsvSource({
        "receiver, vapour, RECEIVER, VAPOUR",
        "receiver, recovery-liquid, RECEIVER, LIQUID",
        "source, liquid, SOURCE, LIQUID",
        "source, source-vapour, SOURCE, VAPOUR"
    })
    void theRoleMayBeStated(String role, String word, Role read, Valve valve) {
        Cylinder cylinder = cylinder(
                VISIT.with("cylinder.role", role).with("cylinder.valve", word).without("cylinder.hoses"));
        assertThat(cylinder.role()).isEqualTo(read);
        assertThat(cylinder.valve()).isEqualTo(valve);
    }

    @Test
    void aRoleThatIsUnknownMissingOrContradictsItsValveIsRefused() {
        refused(VISIT.with("cylinder.role", "drum"), "cylinder.role");
        refused(VISIT.with("cylinder.valve", "vapour"), "cylinder.role");
        AVisit contradicting = VISIT.with("cylinder.role", "source");
        refused(contradicting, "cylinder.role");
        assertThatThrownBy(contradicting::read).hasMessageContainingAll("\"source\"", "\"recovery-vapour\"");
    }

    @Test
    void severalCylindersAndTheOneThatIsConnected() {
        AVisit two = VISIT.withBeside(Map.of(
                "name",
                "drum",
                "valve",
                "source-liquid",
                "tare",
                "7 lb",
                "waterCapacity",
                "30 lb",
                "holding",
                "R-410A",
                "temperature",
                "84 degF",
                "scaleReading",
                "20 lb"));
        Visit visit = two.read();
        assertThat(visit.cylinders()).extracting(Cylinder::name).containsExactly("cylinder no. 4", "drum");
        assertThat(visit.connected()).contains("cylinder no. 4");
        assertThat(visit.hookUp().hoses()).hasSize(1);
        assertThat(two.without("connected").read().connected()).isEmpty();
        assertThat(two.without("connected").read().hookUp().hoses()).isEmpty();
        assertThat(VISIT.read().connected()).contains("cylinder no. 4");
        refused(two.with("connected", "cylinder no. 9"), "");
        refused(two.with("cylinders[1].name", "cylinder no. 4"), "");
        refused(VISIT.with("connected", "cylinder no. 4"), "connected");
        refused(VISIT.with("cylinders", List.of()), "cylinders");
        refused(two.with("cylinders[1].tare", "light"), "cylinders[1].tare");
    }
}
