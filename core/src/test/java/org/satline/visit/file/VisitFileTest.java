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

    static void refused(AVisit visit, String path) {
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
}
