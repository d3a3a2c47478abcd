package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.MeteringDevice;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.ContentsFinding;
import org.satline.cylinder.CylinderCheck;
import org.satline.cylinder.Room;
import org.satline.cylinder.VesselStates;
import org.satline.equation.PairStatus;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.filling.VesselPoint;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;
import org.satline.step.CopperTube;
import org.satline.transfer.Flow;
import org.satline.transfer.PointKind;
import org.satline.transfer.TransferCode;
import org.satline.visit.file.AVisit;

/** What a report holds beside its action. */
class VisitReporterTest {
    private static CheckedCylinder cylinder(AVisit visit) {
        return visit.report().connected().orElseThrow();
    }

    @Test
    void theLevelIsThatOfTheSubcooling() {
        assertThat(AVisit.overcharged().report().level()).contains(ChargeLevel.HIGH);
        assertThat(AVisit.shortOfCharge().report().level()).contains(ChargeLevel.LOW);
        assertThat(AVisit.onTarget().report().level()).contains(ChargeLevel.ON_TARGET);
    }

    @Test
    void keptChecksOfCylindersChangeNothing() {
        CylinderCheck.Memory checks = new CylinderCheck.Memory();
        for (AVisit each : List.of(
                AVisit.overcharged(),
                AVisit.overcharged().with("readings.liquidLine", "99.5 degF"),
                AVisit.overcharged().weighing("40.00 lb"),
                AVisit.overcharged().with("site.altitude", "1500 m"),
                AVisit.overcharged())) {
            VisitReport whole = each.report();
            assertThat(VisitReporter.report(whole.visit(), checks))
                    .usingRecursiveComparison()
                    .isEqualTo(whole);
        }
    }

    @Test
    void eachOpenPortHasItsFlow() {
        List<Flow> flows = AVisit.overcharged().report().flows();
        assertThat(flows).hasSize(2);
        assertThat(flows)
                .anyMatch(each ->
                        each instanceof Flow.OneWay way && way.warnings().contains(TransferCode.BACKFLOW));
        assertThat(AVisit.overcharged().withoutCylinder().report().flows()).isEmpty();
        assertThat(AVisit.overcharged().evacuated().report().flows())
                .hasSize(2)
                .allMatch(flow ->
                        flow instanceof Flow.OneWay way && way.to().kind() == PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE);
    }

    @Test
    void pressuresAreAbsoluteByTheAtmosphereOfTheSite() {
        PressureReadout suction = AVisit.overcharged()
                .with("site.altitude", "310 m")
                .report()
                .pressures()
                .get(0);
        // by hand: 118 psi x 6.894757 kPa/psi + 97.656 kPa (ISO 2533 at 310 m) = 911.24 kPa; half of the last digit
        assertThat(suction.absolute().kilopascals()).isCloseTo(911.24, offset(0.005));
        assertThat(suction.glide().kelvins())
                .isCloseTo(suction.dew().kelvins() - suction.bubble().kelvins(), offset(1e-9));
        assertThat(suction.steps()).extracting(Step::formula).contains("p = p_gauge + p_atm", "T_dew(p)");
    }

    @Test
    void aBarometerServesToo() {
        Site site = Site.byBarometer("boathouse", Pressure.ofKilopascals(97));
        assertThat(site.atmosphere()).isEqualTo(Atmosphere.measured(Pressure.ofKilopascals(97)));
        assertThat(site.step().source()).contains("barometer");
    }

    @Test
    void everyStepHasItsPartsAndComesOnce() {
        List<Step> steps = AVisit.overcharged().report().steps();
        assertThat(steps).doesNotHaveDuplicates().hasSizeGreaterThan(10);
        assertThat(steps)
                .allSatisfy(step -> assertThat(List.of(
                                step.key(), step.formula(), step.result().toString(), step.source()))
                        .noneMatch(String::isBlank))
                .allSatisfy(step -> assertThat(step.key()).doesNotContain(" "));
    }

    @Test
    void theBlendNamesHowItsPairIsModelled() {
        assertThat(AVisit.overcharged().report().properties().interactions())
                .singleElement()
                .satisfies(pair -> assertThat(pair.status()).isEqualTo(PairStatus.FITTED));
    }

    @Test
    void findingsAndCautionsComeOnceTheHeaviestFirst() {
        for (AVisit visit : List.of(
                AVisit.overcharged(),
                AVisit.shortOfCharge().weighing("20 lb"),
                AVisit.overcharged().weighing("75 lb"))) {
            VisitReport report = visit.report();
            assertThat(report.cautions()).isNotEmpty().doesNotHaveDuplicates();
            assertThat(report.findings()).isNotEmpty().doesNotHaveDuplicates();
            assertThat(report.findings().stream().map(Finding::severity)).isSorted();
            assertThat(report.ask()).doesNotHaveDuplicates();
        }
    }

    @Test
    void theVesselIsThatOfTheWeighedContents() {
        VesselStates vessel = cylinder(AVisit.overcharged().gauged("")).vessel().orElseThrow();
        // by hand: 41.35 lb - 27.4 lb
        assertThat(vessel.contents().pounds()).isCloseTo(13.95, offset(1e-9));
        // about 252 psig by trade charts (from memory)
        assertThat(vessel.now().pressure()).isBetween(Pressure.ofPsia(250), Pressure.ofPsia(285));
        assertThat(vessel.warmer()).hasSize(4);
        assertThat(vessel.liquidFull()).isInstanceOf(VesselPoint.Never.class);
        assertThat(vessel.reachesService().orElseThrow()).isInstanceOf(VesselPoint.At.class);
        assertThat(cylinder(AVisit.overcharged()).room().orElseThrow()).isInstanceOf(Room.Left.class);
    }

    /** 47 lb in a cylinder of 47.7 lb of water are liquid-full well below 130 degF. */
    @Test
    void anOverfilledCylinderBecomesLiquidFull() {
        assertThat(cylinder(AVisit.overcharged().weighing("74.4 lb"))
                        .vessel()
                        .orElseThrow()
                        .liquidFull())
                .isInstanceOf(VesselPoint.At.class);
    }

    @Test
    void thePressureAtRestIsHeldAgainstTheLabel() {
        assertThat(cylinder(AVisit.overcharged()).byPressure().orElseThrow().outcome())
                .isEqualTo(ContentsFinding.Outcome.CONSISTENT);
        // R-22 saturates at about 153 psig at 84 degF (from memory of trade charts)
        ContentsFinding other =
                cylinder(AVisit.overcharged().gauged("153 psig")).byPressure().orElseThrow();
        assertThat(other.outcome()).isEqualTo(ContentsFinding.Outcome.ANOTHER_MORE_LIKELY);
        assertThat(other.candidates())
                .extracting(ContentsFinding.Candidate::designation)
                .contains("R-22");
        assertThat(cylinder(AVisit.overcharged().gauged("")).byPressure()).isEmpty();
    }

    @Test
    void theEstimateIsASmallShareOfTheCharge() {
        assertThat(AVisit.overcharged().report().estimate().orElseThrow().fraction())
                .isBetween(0.05, 0.15);
    }

    @Test
    void aLongerLineSetNeedsMore() {
        AVisit visit = AVisit.overcharged()
                .with(
                        "system.lineSet",
                        Map.of("liquidTube", "3/8", "suctionTube", "3/4", "covered", "15 ft", "actual", "40 ft"));
        Mass more = visit.report().longerLine().orElseThrow().mass();
        // trade figure for 3/8 in liquid line: about 0.6 oz a foot for R-410A (from memory); 25 ft more, the vapour
        // line adds little
        assertThat(more.ounces()).isBetween(12.0, 18.0);
        AVisit without = visit.without("readings.liquidLine");
        assertThatThrownBy(without::report)
                .isInstanceOfSatisfying(
                        FieldException.class, e -> assertThat(e.path()).isEqualTo("readings.liquidLine"));
        CopperTube tube = CopperTube.of("3/8", CopperTube.Temper.ANNEALED);
        assertThatThrownBy(() -> new LineSet(tube, tube, Length.ofFeet(40), Length.ofFeet(15)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void contradictoryPartsAreRefused() {
        assertThatThrownBy(() -> new MovedSoFar(MassDifference.ofKilograms(-1), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no earlier reading");
        assertThatThrownBy(() -> new ServicedSystem(
                        "s",
                        Catalogue.standard().find("R-410A"),
                        MeteringDevice.EXPANSION_VALVE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Mass.ZERO)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("outside (0, 5000] kg");
    }
}
