package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.charge.ChargeEstimate;
import org.satline.charge.Diagnosis;
import org.satline.charge.MeteringDevice;
import org.satline.charge.OperatingConditions;
import org.satline.charge.StepAdvice;
import org.satline.cylinder.ContentsFinding;
import org.satline.cylinder.Scale;
import org.satline.duty.Holder.Provenance;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.filling.VesselPoint;
import org.satline.measurement.Place;
import org.satline.measurement.PressureReading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.TemperatureReading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.step.CopperTube;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.EndFitting;
import org.satline.transfer.Hose;
import org.satline.transfer.HoseSide;
import org.satline.transfer.PointKind;
import org.satline.transfer.PurgePlan;

/**
 * What a visit says about the cylinder, the hoses, the rules and the next step. Rules: 40 CFR 82 subpart F; purging away from a self-sealing end, a source
 * cylinder of new or reclaimed refrigerant, and non-condensable gas as the first suspect of far too hot condensing: common practice, no source.
 */
class HookUpReportTest {
    private static final Refrigerant R410A = Catalogue.standard().find("R-410A");
    private static final Atmosphere SEA_LEVEL = Atmosphere.standard();

    @Test
    void theVesselIsThatOfTheWeighedContents() {
        VesselReport vessel = hookUp(cylinder().build()).vessel().orElseThrow();
        // by hand: 41.35 lb - 27.4 lb
        assertThat(vessel.contents().pounds()).isCloseTo(13.95, offset(1e-9));
        assertThat(vessel.now().pressure()).isBetween(Pressure.ofPsia(250), Pressure.ofPsia(285));
        assertThat(vessel.warmer()).hasSize(4);
        assertThat(vessel.liquidFull()).isInstanceOf(VesselPoint.Never.class);
        assertThat(vessel.servicePressure().orElseThrow()).isInstanceOf(VesselPoint.At.class);
    }

    @Test
    void anOverfilledCylinderIsCautionedLoudly() {
        // 47 lb in a cylinder of WC 47.7 lb: liquid-full well below 130 degF
        VisitReport report = report(cylinder().gross("74.4 lb").build());
        assertThat(report.hookUp().orElseThrow().vessel().orElseThrow().liquidFull())
                .isInstanceOf(VesselPoint.At.class);
        assertThat(report.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).startsWith("LIQUID-FULL"));
        assertThat(report.cylinder().orElseThrow().room().orElseThrow())
                .isInstanceOf(org.satline.cylinder.Room.Overfilled.class);
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).startsWith("THE CYLINDER IS OVERFILLED"));
    }

    @Test
    void thePressureAtRestIsHeldAgainstTheLabel() {
        assertThat(hookUp(cylinder().pressure("252 psig").build()).contents().orElseThrow())
                .isInstanceOf(ContentsFinding.Consistent.class);
        assertThat(hookUp(cylinder().pressure("153 psig").build()).contents().orElseThrow())
                .isInstanceOfSatisfying(
                        ContentsFinding.AnotherMoreLikely.class,
                        finding -> assertThat(finding.candidates())
                                .extracting(ContentsFinding.Candidate::designation)
                                .contains("R-22"));
        assertThat(hookUp(cylinder().build()).contents()).isEmpty();
    }

    @Test
    void aHoseIsPurgedAwayFromItsSelfSealingEnd() {
        HookUpReport report = hookUp(cylinder()
                .hose(PointKind.HIGH_SIDE_LIQUID_PORT, EndFitting.SELF_SEALING, EndFitting.PLAIN_FLARE)
                .build());
        assertThat(report.purges())
                .singleElement()
                .satisfies(purge -> assertThat(purge.plan()).isInstanceOfSatisfying(PurgePlan.Purge.class, plan -> {
                    assertThat(plan.from()).isEqualTo(HoseSide.SYSTEM);
                    assertThat(plan.looseJoint()).isEqualTo(HoseSide.CYLINDER);
                }));
        assertThat(report.steps()).anySatisfy(step -> assertThat(step.key()).contains("released by the purge"));
    }

    @Test
    void aHoseAtAPortWithoutPressureIsRefused() {
        assertThatThrownBy(() -> hookUp(cylinder()
                        .hose(PointKind.HIGH_SIDE_VAPOUR_PORT, EndFitting.PLAIN_FLARE, EndFitting.PLAIN_FLARE)
                        .build()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pressure is not known");
    }

    @Test
    void recoveredRefrigerantOfAnotherOwnerIsNotCharged() {
        CylinderOnSite source = cylinder()
                .valve(PointKind.SOURCE_CYLINDER_LIQUID_VALVE)
                .owner("the rowing club", Provenance.RECOVERED)
                .build();
        VisitReport report =
                VisitReporter.report(visit("113 degF", "68 degF", Optional.of(source), MovedSoFar.nothing()));
        assertThat(report.hookUp().orElseThrow().forbidding())
                .anySatisfy(rule -> assertThat(rule.rule()).isEqualTo("same-owner"));
        assertThat(report.nextSteps())
                .isNotEmpty()
                .allSatisfy(step -> assertThat(step.text()).startsWith("do not add from this cylinder"));
    }

    @Test
    void theOwnersOwnRecoveredRefrigerantGoesBackOnCondition() {
        CylinderOnSite source = cylinder()
                .valve(PointKind.SOURCE_CYLINDER_LIQUID_VALVE)
                .owner("the sailing club", Provenance.RECOVERED)
                .build();
        VisitReport report =
                VisitReporter.report(visit("113 degF", "68 degF", Optional.of(source), MovedSoFar.nothing()));
        assertThat(report.hookUp().orElseThrow().forbidding()).isEmpty();
    }

    @Test
    void aCylinderOfAnotherRefrigerantWarnsOfContaminationFirst() {
        VisitReport report =
                report(cylinder().holding(Catalogue.standard().find("R-22")).build());
        assertThat(report.cautions().get(0).text()).startsWith("CONTAMINATION");
    }

    @Test
    void theNextStepHasASizeThatFitsTheRoom() {
        VisitReport report = report(cylinder().build());
        StepAdvice.Move move = (StepAdvice.Move) report.work().advice().orElseThrow();
        assertThat(move.direction()).isEqualTo(StepAdvice.Direction.REMOVE);
        // the deviation is 6.1 degF = 3.4 K; without any doubt 34 K less a tenth for the whole charge would ask for 3.4
        // / 30.6 x 3.2 kg = 0.36 kg
        assertThat(move.amount().kilograms()).isBetween(0.05, 0.36);
        ChargeEstimate estimate = report.work().estimate().orElseThrow();
        assertThat(estimate.fraction()).isBetween(0.05, 0.15);
        assertThat(report.nextSteps().get(0).text()).contains("as the next step out from the high-side liquid port");
    }

    @Test
    void aChargeThatDoesNotAnswerIsNotTheFault() {
        MovedSoFar moved = new MovedSoFar(
                MassDifference.ofKilograms(-0.6),
                List.of(
                        new MovedSoFar.EarlierReading(
                                MassDifference.ZERO, TemperatureDifference.ofFahrenheitDegrees(16)),
                        new MovedSoFar.EarlierReading(
                                MassDifference.ofKilograms(-0.3), TemperatureDifference.ofFahrenheitDegrees(16))));
        VisitReport report = VisitReporter.report(
                visit("98 degF", "53 degF", Optional.of(cylinder().build()), moved));
        assertThat(report.work().advice().orElseThrow()).isInstanceOf(StepAdvice.NotCharge.class);
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).startsWith("stop: the charge is not what is wrong"));
    }

    @Test
    void farTooHotCondensingIsNotCalledTooMuchRefrigerant() {
        // condensing 114 degF over outdoor air of 60 degF; the airside expects about 22 degF
        SystemReadings readings = readings("98 degF", "53 degF")
                .put(Place.OUTDOOR_AIR, at("60 degF"))
                .build();
        VisitReport report = VisitReporter.report(new VisitInput(
                "a visit",
                Optional.empty(),
                Site.atAltitude("quay", Length.ofMetres(0)),
                system(Optional.empty()),
                readings,
                OperatingConditions.unknown(),
                MovedSoFar.nothing(),
                ports(),
                Optional.of(cylinder().build())));
        assertThat(report.diagnosis()).isInstanceOf(Diagnosis.Undecided.class);
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).startsWith("take nothing out yet"));
    }

    @Test
    void aSuctionLineWarmerThanTheReturnAirIsQuestioned() {
        SystemReadings readings = readings("98 degF", "90 degF")
                .put(Place.RETURN_DRY_BULB, at("78 degF"))
                .build();
        assertThat(VisitDoubts.of(visit(readings, Optional.empty(), MovedSoFar.nothing(), Optional.empty())))
                .singleElement()
                .satisfies(caution -> assertThat(caution.text()).contains("warmer than the return air"));
    }

    @Test
    void aLongerLineSetNeedsMore() {
        LineSet lines = new LineSet(
                CopperTube.of("3/8", CopperTube.Temper.ANNEALED),
                CopperTube.of("3/4", CopperTube.Temper.ANNEALED),
                Length.ofFeet(15),
                Length.ofFeet(40));
        VisitInput input = visit(
                readings("98 degF", "53 degF").build(), Optional.empty(), MovedSoFar.nothing(), Optional.of(lines));
        Mass more = VisitReporter.report(input).longerLine().orElseThrow().mass();
        // trade figure for 3/8 in liquid line: about 0.6 oz a foot for R-410A (from memory); 25 ft more, the vapour
        // line adds little
        assertThat(more.ounces()).isBetween(12.0, 18.0);
        assertThatThrownBy(() ->
                        new LineSet(lines.liquidLine(), lines.suctionLine(), Length.ofFeet(40), Length.ofFeet(15)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void contradictoryInputIsRefused() {
        assertThatThrownBy(() -> new MovedSoFar(MassDifference.ofKilograms(-1), List.of()))
                .hasMessageContaining("no earlier reading");
        assertThatThrownBy(() -> readings("98 degF", "53 degF").suctionDrop(PressureDifference.ofKilopascals(-1)))
                .hasMessageContaining("below zero");
        assertThatThrownBy(() -> new ServicedSystem(
                        "s",
                        R410A,
                        MeteringDevice.EXPANSION_VALVE,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Mass.ZERO)))
                .hasMessageContaining("outside (0, 5000] kg");
        List<ConnectionPoint> twice = List.of(ports().get(0), ports().get(0));
        assertThatThrownBy(() -> new VisitInput(
                        "a visit",
                        Optional.empty(),
                        Site.atAltitude("quay", Length.ofMetres(0)),
                        system(Optional.empty()),
                        readings("98 degF", "53 degF").build(),
                        twice,
                        Optional.empty()))
                .hasMessageContaining("named twice");
    }

    private static HookUpReport hookUp(CylinderOnSite cylinder) {
        return report(cylinder).hookUp().orElseThrow();
    }

    private static VisitReport report(CylinderOnSite cylinder) {
        return VisitReporter.report(visit("98 degF", "53 degF", Optional.of(cylinder), MovedSoFar.nothing()));
    }

    private static VisitInput visit(
            String liquidLine, String suctionLine, Optional<CylinderOnSite> cylinder, MovedSoFar moved) {
        return visit(readings(liquidLine, suctionLine).build(), cylinder, moved, Optional.empty());
    }

    private static VisitInput visit(
            SystemReadings readings, Optional<CylinderOnSite> cylinder, MovedSoFar moved, Optional<LineSet> lines) {
        return new VisitInput(
                "a visit",
                Optional.of(LocalDate.of(2026, 7, 14)),
                Site.atAltitude("quay", Length.ofMetres(0)),
                system(lines),
                readings,
                OperatingConditions.unknown(),
                moved,
                ports(),
                cylinder);
    }

    private static ServicedSystem system(Optional<LineSet> lines) {
        return new ServicedSystem(
                "split air conditioner",
                R410A,
                MeteringDevice.EXPANSION_VALVE,
                Optional.empty(),
                Optional.of(TemperatureDifference.ofFahrenheitDegrees(10)),
                Optional.of(Mass.ofKilograms(3.2)),
                Optional.of("the sailing club"),
                lines);
    }

    private static SystemReadings.Builder readings(String liquidLine, String suctionLine) {
        return SystemReadings.builder()
                .suction(gauge("118 psig"), at(suctionLine))
                .liquid(gauge("388 psig"), at(liquidLine));
    }

    private static List<ConnectionPoint> ports() {
        return List.of(port(PointKind.HIGH_SIDE_LIQUID_PORT, "388 psig"), port(PointKind.LOW_SIDE_PORT, "118 psig"));
    }

    private static ConnectionPoint port(PointKind kind, String gauge) {
        return new ConnectionPoint(
                kind, Pressure.parse(gauge, SEA_LEVEL), PressureDifference.ofKilopascals(10), List.of());
    }

    private static PressureReading gauge(String text) {
        return PressureReading.of(Pressure.parse(text, SEA_LEVEL), 3000, "gauge " + text);
    }

    private static TemperatureReading at(String text) {
        return TemperatureReading.of(Temperature.parse(text), 0.3, "probe at " + text);
    }

    private static Draft cylinder() {
        return new Draft();
    }

    private static final class Draft {
        private PointKind valve = PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE;
        private Refrigerant holding = R410A;
        private Optional<Pressure> pressure = Optional.empty();
        private String gross = "41.35 lb";
        private Optional<String> owner = Optional.empty();
        private Optional<Provenance> provenance = Optional.empty();
        private List<HoseOnSite> hoses = List.of();

        Draft valve(PointKind kind) {
            valve = kind;
            return this;
        }

        Draft holding(Refrigerant refrigerant) {
            holding = refrigerant;
            return this;
        }

        Draft pressure(String gauge) {
            pressure = Optional.of(Pressure.parse(gauge, SEA_LEVEL));
            return this;
        }

        Draft gross(String text) {
            gross = text;
            return this;
        }

        Draft owner(String name, Provenance from) {
            owner = Optional.of(name);
            provenance = Optional.of(from);
            return this;
        }

        Draft hose(PointKind port, EndFitting systemEnd, EndFitting cylinderEnd) {
            hoses = List.of(new HoseOnSite(
                    port, new Hose(systemEnd, cylinderEnd, Length.ofMillimetres(4.8), Length.ofFeet(5))));
            return this;
        }

        CylinderOnSite build() {
            return new CylinderOnSite(
                    "grey and yellow cylinder",
                    valve,
                    CylinderStamps.builder()
                            .tare(Mass.ofPounds(27.4))
                            .waterCapacity(Mass.ofPounds(47.7))
                            .specification(CylinderSpecification.parse("DOT-4BW400"))
                            .retestDue(LocalDate.of(2029, 4, 30))
                            .build(),
                    Optional.of(holding),
                    Temperature.ofFahrenheit(84),
                    TemperatureDifference.ofKelvins(1),
                    pressure,
                    PressureDifference.ofKilopascals(10),
                    Optional.of(new Scale.RunningGross(Mass.parse(gross), Mass.ofGrams(20))),
                    Mass.ofGrams(90),
                    FillRules.standard().defaultJurisdiction(),
                    FillQuestion.USUAL_MAXIMUM,
                    true,
                    owner,
                    provenance,
                    hoses);
        }
    }
}
