package org.satline.visit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.margin.MeteringDevice;
import org.satline.cylinder.Cylinder;
import org.satline.cylinder.Role;
import org.satline.cylinder.Valve;
import org.satline.cylinder.Weighing;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.filling.Provenance;
import org.satline.filling.Stamp;
import org.satline.measurement.Place;
import org.satline.transfer.PointKind;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.visit.FieldException;
import org.satline.visit.HookUpFacts;
import org.satline.visit.MovedSoFar;
import org.satline.visit.ServicedSystem;
import org.satline.visit.SystemMode;
import org.satline.visit.Visit;

/** Each field of a visit file, and each way to write it wrongly. */
class VisitFileTest {
    private static final AVisit VISIT = AVisit.overcharged();

    private static Cylinder cylinder(AVisit visit) {
        return visit.read().cylinders().get(0);
    }

    private static void refused(AVisit visit, String path) {
        assertThatThrownBy(visit::read)
                .isInstanceOfSatisfying(
                        FieldException.class, e -> assertThat(e.path()).isEqualTo(path));
    }

    @Test
    void siteAndSystem() {
        Visit visit = VISIT.with("system.targetSuperheat", "12 degF").read();
        assertThat(visit.title()).isEqualTo("the upstairs workshop is warm");
        assertThat(visit.date()).contains(LocalDate.of(2026, 7, 14));
        assertThat(visit.site().name()).isEqualTo("boathouse");
        assertThat(visit.site().atmosphere().pressure().kilopascals()).isCloseTo(101.325, within(1e-9));
        ServicedSystem system = visit.system();
        assertThat(system.name()).isEqualTo("split air conditioner");
        assertThat(system.refrigerant().designation()).isEqualTo("R-410A");
        assertThat(system.metering()).isEqualTo(MeteringDevice.EXPANSION_VALVE);
        assertThat(system.targetSubcooling().orElseThrow().fahrenheitDegrees()).isCloseTo(10, within(1e-9));
        assertThat(system.targetSuperheat().orElseThrow().fahrenheitDegrees()).isCloseTo(12, within(1e-9));
        assertThat(system.fullCharge().orElseThrow().kilograms()).isEqualTo(3.2);
        assertThat(system.owner()).contains("the sailing club");
        assertThat(system.mode()).isEqualTo(SystemMode.COOLING);
        assertThat(system.lineSet()).isEmpty();
        assertThat(VISIT.with("system.mode", "heating").read().system().mode()).isEqualTo(SystemMode.HEATING);
    }

    @ParameterizedTest
    @CsvSource({
        "txv, EXPANSION_VALVE",
        "eev, EXPANSION_VALVE",
        "piston, FIXED_ORIFICE",
        "capillary-tube, FIXED_ORIFICE",
        "fixed-orifice, FIXED_ORIFICE"
    })
    void meteringByTheWordsOfTheTrade(String word, MeteringDevice device) {
        assertThat(VISIT.with("system.metering", word).read().system().metering())
                .isEqualTo(device);
    }

    @Test
    void everyReadingByItsPlace() {
        AVisit all = VISIT;
        for (Place place : Place.values()) {
            all = all.with("readings." + place.field(), place.example());
        }
        var readings = all.read().readings();
        for (Place place : Place.values()) {
            assertThat(readings.all()).as(place.field()).containsKey(place);
            refused(VISIT.with("readings." + place.field(), "many"), "readings." + place.field());
        }
    }

    @Test
    void conditions() {
        var conditions = VISIT.with("conditions.outdoorMinimumMet", true)
                .with("conditions.standingPressure", "230 psig")
                .with("conditions.standingTemperature", "75 degF")
                .read()
                .conditions();
        assertThat(conditions.running()).contains(Duration.ofMinutes(25));
        assertThat(conditions.outdoorMinimumMet()).contains(true);
        assertThat(conditions.airflow()).isPresent();
        assertThat(conditions.standing()).isPresent();
        assertThat(VISIT.settlingAt("16.1 degF").read().conditions().settled()).isPresent();
        refused(VISIT.without("conditions.airflow"), "conditions.airflow");
        refused(VISIT.with("conditions.standingPressure", "230 psig"), "conditions.standingTemperature");
        refused(VISIT.with("conditions.running", "a while"), "conditions.running");
    }

    @Test
    void moved() {
        MovedSoFar moved = VISIT.moved("-0.3 lb", List.of(AVisit.earlier("0 lb", "18.9 degF")))
                .read()
                .moved();
        assertThat(moved.net().pounds()).isCloseTo(-0.3, within(1e-9));
        assertThat(moved.earlier())
                .singleElement()
                .satisfies(
                        each -> assertThat(each.measured().fahrenheitDegrees()).isCloseTo(18.9, within(1e-9)));
        refused(VISIT.moved("-0.3 lb", List.of()), "moved.net");
        assertThat(VISIT.read().moved()).isEqualTo(MovedSoFar.nothing());
    }

    @Test
    void openPortsAreThoseOfTheReadingsUnlessTheyAreNamed() {
        assertThat(VISIT.read().openPorts())
                .extracting(each -> each.kind())
                .containsExactly(PointKind.HIGH_SIDE_LIQUID_PORT, PointKind.LOW_SIDE_PORT);
        AVisit named = VISIT.with("openPorts", List.of(Map.of("port", "high-side-vapour", "pressure", "390 psig")));
        assertThat(named.read().openPorts()).singleElement().satisfies(each -> {
            assertThat(each.kind()).isEqualTo(PointKind.HIGH_SIDE_VAPOUR_PORT);
            assertThat(each.pressure().value().psia()).isCloseTo(390 + 14.69595, within(1e-4));
        });
        refused(
                VISIT.with(
                        "openPorts",
                        List.of(
                                Map.of("port", "low-side", "pressure", "118 psig"),
                                Map.of("port", "low-side", "pressure", "118 psig"))),
                "");
        refused(VISIT.with("openPorts", List.of(Map.of("port", "side", "pressure", "118 psig"))), "openPorts[0].port");
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
        refused(VISIT.with("cylinder.valve", "vapour"), "cylinder.valve");
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

    @Test
    void hosesManifoldAndPorts() {
        HookUpFacts facts = VISIT.with("cylinder.hoses[0].bore", "8 mm")
                .with("ports.high-side-liquid.fitting", "core-tool")
                .with("vacuumPump", true)
                .with("recoveryMachine", true)
                .read()
                .hookUp();
        assertThat(facts.hoses()).singleElement().satisfies(each -> {
            assertThat(each.port()).isEqualTo(HookUpFacts.HosePort.CENTRE);
            assertThat(each.hose().systemEnd()).isEqualTo(EndFitting.SELF_SEALING);
            assertThat(each.hose().cylinderEnd()).isEqualTo(EndFitting.PLAIN_FLARE);
            assertThat(each.hose().bore().millimetres()).isCloseTo(8, within(1e-9));
            assertThat(each.holds()).isEqualTo(VolumeContent.VAPOUR);
            assertThat(each.origin()).isEqualTo(GasOrigin.SYSTEM);
        });
        assertThat(facts.manifold()).contains(new HookUpFacts.ManifoldOnSite(4, VolumeContent.VAPOUR));
        assertThat(facts.fittings())
                .containsExactly(Map.entry(PointKind.HIGH_SIDE_LIQUID_PORT, SystemPort.Fitting.CORE_TOOL));
        assertThat(facts.vacuumPump()).isTrue();
        assertThat(facts.recoveryMachine()).isTrue();
        refused(VISIT.with("manifold.valves", 3), "manifold.valves");
        refused(VISIT.with("manifold.valves", 2.5), "manifold.valves");
        refused(VISIT.with("cylinder.hoses[0].port", "top"), "cylinder.hoses[0].port");
        refused(VISIT.with("cylinder.hoses[0].holds", "air"), "cylinder.hoses[0].contentsFrom");
        refused(VISIT.with("ports.roof.fitting", "stem"), "ports.roof");
    }

    @Test
    void instruments() {
        AVisit dial = VISIT.with(
                "instruments.suctionGauge",
                Map.of("name", "dial", "accuracyClass", "en-837-1", "scaleFrom", "0 psig", "scaleTo", "500 psig"));
        refused(dial.with("instruments.suctionGauge.percentOfReading", "1 %"), "instruments.suctionGauge");
        refused(VISIT.with("instruments.thermometer.pipeContact", "20 K"), "instruments.thermometer.pipeContact");
        refused(VISIT.with("instruments.scale.percentOfReading", "five"), "instruments.scale.percentOfReading");
        refused(VISIT.without("instruments.liquidGauge"), "instruments.liquidGauge");
        assertThat(cylinder(VISIT).contents().orElseThrow().standardUncertainty())
                .isPositive();
        double digital = VISIT.read()
                .readings()
                .pressure(Place.SUCTION_PRESSURE)
                .orElseThrow()
                .standardUncertainty();
        double dialled = dial.read()
                .readings()
                .pressure(Place.SUCTION_PRESSURE)
                .orElseThrow()
                .standardUncertainty();
        assertThat(dialled).isGreaterThan(digital);
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

    @ParameterizedTest
    @CsvSource({"2026-07-14, 2026-07-14", "7/14/2026, 2026-07-14", "4/4/2026, 2026-04-04"})
    void dates(String written, LocalDate day) {
        assertThat(VISIT.with("date", written).read().date()).contains(day);
    }

    @ParameterizedTest
    @CsvSource({"7/4/2026", "13/7/2026", "2026-02-30", "14 July 2026", "2/30/2026", "''"})
    void whatIsNoDayOrMayBeTwoIsRefused(String written) {
        refused(VISIT.with("date", written), "date");
    }

    @ParameterizedTest
    @CsvSource({
        "colour, colour",
        "site.colour, site.colour",
        "system.colour, system.colour",
        "instruments.scale.colour, instruments.scale.colour",
        "readings.colour, readings.colour",
        "conditions.colour, conditions.colour",
        "cylinder.colour, cylinder.colour",
        "cylinder.hoses[0].colour, cylinder.hoses[0].colour",
        "manifold.colour, manifold.colour"
    })
    void anUnknownFieldIsRefusedByItsPath(String field, String path) {
        refused(VISIT.with(field, "red"), path);
    }

    @Test
    void aValueOfAnotherTypeIsRefusedByItsPath() {
        refused(VISIT.with("readings.suctionPressure", 118), "readings.suctionPressure");
        refused(VISIT.with("title", true), "title");
        refused(VISIT.with("site", "boathouse"), "site");
        refused(VISIT.with("cylinder", List.of()), "cylinder");
        refused(VISIT.with("cylinders", "two").withoutCylinder(), "cylinders");
        refused(VISIT.with("conditions.settled", "yes"), "conditions.settled");
        refused(VISIT.with("manifold.valves", "4"), "manifold.valves");
        refused(VISIT.with("system.owner", new FieldValue.Nothing()), "system.owner");
        refused(VISIT.with("cylinder.hoses", "one"), "cylinder.hoses");
    }

    @ParameterizedTest
    @CsvSource({
        "site",
        "system",
        "instruments",
        "readings",
        "system.refrigerant",
        "system.metering",
        "site.altitude",
        "cylinder.tare",
        "cylinder.waterCapacity",
        "cylinder.temperature",
        "cylinder.valve"
    })
    void whatMustBeThereIsAskedForByItsPath(String field) {
        refused(VISIT.without(field), field.equals("site.altitude") ? "site" : field);
    }

    @Test
    void aRefrigerantWithoutAnEquationIsRefusedByItsField() {
        refused(VISIT.with("system.refrigerant", "R-999"), "system.refrigerant");
        refused(VISIT.holding("R-999"), "cylinder.holding");
    }

    /** A file that cannot be read as a whole hides no danger in the part that can. */
    @Test
    void dangersAreToldFromTheReadablePart() {
        AVisit overfull = VISIT.weighing("75 lb");
        assertThat(codes(overfull)).containsExactly("overfilled");
        assertThat(codes(overfull.with("readings.liquidLine", "many"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("readings").without("conditions"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("site").with("colour", "red"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("instruments"))).containsExactly("overfilled");
        assertThat(codes(overfull.without("system"))).containsExactly("overfilled");
        assertThat(codes(VISIT.withBeside(Map.of()).with("cylinders[0].scaleReading", "75 lb")))
                .containsExactly("overfilled");
        assertThat(codes(VISIT.with("readings.liquidLine", "many"))).isEmpty();
        assertThat(codes(overfull.with("cylinder.tare", "light"))).isEmpty();
        assertThat(codes(overfull.with("cylinder", "a drum"))).isEmpty();
    }

    private static List<String> codes(AVisit visit) {
        List<Finding> dangers = VisitFile.dangersInReadablePart(visit.fields());
        assertThat(dangers).allSatisfy(each -> assertThat(each.severity()).isEqualTo(Severity.DANGER_NOW));
        return dangers.stream().map(each -> each.code().word()).toList();
    }

    @Test
    void whatTheSentenceSaysIsOnOneLineWithoutControls() {
        assertThatThrownBy(() ->
                        VISIT.with("readings.liquidLine", "9\u001b[31m8\n degF").read())
                .isInstanceOf(FieldException.class)
                .satisfies(
                        e -> assertThat(String.valueOf(e.getMessage()).chars().filter(Character::isISOControl))
                                .isEmpty());
    }
}
