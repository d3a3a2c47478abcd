package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.charge.ChargeLevel;
import org.satline.charge.Diagnosis;
import org.satline.charge.MeteringDevice;
import org.satline.cylinder.CylinderSpecification;
import org.satline.cylinder.CylinderStamps;
import org.satline.cylinder.FillQuestion;
import org.satline.cylinder.FillRules;
import org.satline.cylinder.Room;
import org.satline.cylinder.Scale;
import org.satline.equation.PairStatus;
import org.satline.explanation.Step;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowWarning;
import org.satline.transfer.PointKind;

class VisitReporterTest {
    private static final Refrigerant R410A = Catalogue.standard().find("R-410A");
    private static final Site SITE = Site.atAltitude("boathouse", Length.ofMetres(310));

    @Test
    void tooMuchSubcoolingAsksForTakingOutFromThePortThatFlowsThatWay() {
        VisitReport report = VisitReporter.report(visit("98 degF", Optional.of(recovery("41.35 lb"))));
        assertThat(level(report)).isEqualTo(ChargeLevel.HIGH);
        assertThat(report.nextSteps())
                .anySatisfy(step -> assertThat(step.text())
                        .contains("from the high-side liquid port into the cylinder")
                        .contains("stop before the scale shows")
                        .doesNotContain("low-side"));
        assertThat(report.flows())
                .anyMatch(flow ->
                        flow instanceof Flow.OneWay way && way.warnings().contains(FlowWarning.BACKFLOW_INTO_SYSTEM));
        assertThat(report.cylinder().orElseThrow().room().orElseThrow()).isInstanceOf(Room.Left.class);
    }

    @Test
    void tooLittleSubcoolingAsksForTheLeakFirstAndForLiquidOfABlend() {
        VisitReport report = VisitReporter.report(visit("113 degF", Optional.empty(), "68 degF"));
        assertThat(level(report)).isEqualTo(ChargeLevel.LOW);
        assertThat(report.nextSteps().get(0).text()).contains("leak");
        assertThat(report.nextSteps())
                .anySatisfy(step -> assertThat(step.text()).contains("as liquid"));
        assertThat(report.nextSteps())
                .anySatisfy(step -> assertThat(step.text()).contains("never add from a cylinder of mixed"));
        assertThat(report.flows()).isEmpty();
    }

    @Test
    void onTargetNothingIsMoved() {
        VisitReport report = VisitReporter.report(visit("104 degF", Optional.of(recovery("41.35 lb"))));
        assertThat(level(report)).isEqualTo(ChargeLevel.ON_TARGET);
        assertThat(report.nextSteps()).hasSize(1);
    }

    @Test
    void withoutACylinderOneHasToBeHookedUp() {
        VisitReport report = VisitReporter.report(visit("98 degF", Optional.empty()));
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).contains("hook up a recovery cylinder"));
    }

    @Test
    void aFullCylinderOrOneWithoutScaleIsNotFilled() {
        assertThat(VisitReporter.report(visit("98 degF", Optional.of(recovery("60.6 lb"))))
                        .nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).contains("take another recovery cylinder"));
        CylinderOnSite cylinder = recovery("41.35 lb");
        CylinderOnSite unweighed = withScale(cylinder, Optional.empty());
        assertThat(VisitReporter.report(visit("98 degF", Optional.of(unweighed)))
                        .nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).contains("put the cylinder on a scale first"));
    }

    @Test
    void aMissingReadingLeavesTheLevelUndecidedAndSaysWhatToRead() {
        SystemReadings readings = SystemReadings.builder()
                .suction(pressure("118 psig"), temperature("53 degF"))
                .build();
        VisitReport report = VisitReporter.report(
                new VisitInput("a visit", Optional.empty(), SITE, system(), readings, List.of(), Optional.empty()));
        assertThat(report.diagnosis()).isInstanceOf(Diagnosis.Undecided.class);
        assertThat(report.margins().subcooling()).isEmpty();
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text()).contains("liquid"));
    }

    @Test
    void pressuresAreAbsoluteByTheAtmosphereOfTheSite() {
        PressureReadout suction = VisitReporter.report(visit("98 degF", Optional.empty()))
                .pressures()
                .get(0);
        // by hand: 118 psi x 6.894757 kPa/psi + 97.656 kPa (ISO 2533 at 310 m) = 911.24 kPa; half of the last digit
        assertThat(suction.absolute().kilopascals()).isCloseTo(911.24, offset(0.005));
        assertThat(suction.glide().kelvins())
                .isCloseTo(suction.dew().kelvins() - suction.bubble().kelvins(), offset(1e-9));
        assertThat(suction.steps()).extracting(Step::formula).contains("p = p_gauge + p_atm", "T_dew(p)");
    }

    @Test
    void everyStepHasItsPartsAndComesOnce() {
        List<Step> steps = VisitReporter.report(visit("98 degF", Optional.of(recovery("41.35 lb"))))
                .steps();
        assertThat(steps).doesNotHaveDuplicates().hasSizeGreaterThan(10);
        assertThat(steps)
                .allSatisfy(step -> assertThat(List.of(
                                step.key(), step.formula(), step.result().toString(), step.source()))
                        .noneMatch(String::isBlank));
    }

    @Test
    void theBlendNamesHowItsPairIsModelled() {
        PropertySource source =
                VisitReporter.report(visit("98 degF", Optional.empty())).properties();
        assertThat(source.interactions())
                .singleElement()
                .satisfies(pair -> assertThat(pair.status()).isEqualTo(PairStatus.FITTED));
    }

    @Test
    void cautionsComeOnce() {
        assertThat(VisitReporter.report(visit("98 degF", Optional.of(recovery("41.35 lb"))))
                        .cautions())
                .isNotEmpty()
                .doesNotHaveDuplicates();
    }

    @Test
    void anEmptyCylinderNeedsItsPressure() {
        CylinderOnSite held = recovery("41.35 lb");
        assertThatThrownBy(() -> new CylinderOnSite(
                        held.name(),
                        held.valve(),
                        held.stamps(),
                        Optional.empty(),
                        held.temperature(),
                        Optional.empty(),
                        held.scale(),
                        held.hoseContents(),
                        held.jurisdiction(),
                        held.warmest()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("state its pressure");
    }

    @Test
    void anEvacuatedCylinderTakesFromBothPorts() {
        CylinderOnSite held = recovery("27.4 lb");
        CylinderOnSite evacuated = new CylinderOnSite(
                held.name(),
                held.valve(),
                held.stamps(),
                Optional.empty(),
                held.temperature(),
                Optional.of(Reading.ofExpanded(Pressure.ofMicrons(500), 10, "vacuum gauge")),
                held.scale(),
                held.hoseContents(),
                held.jurisdiction(),
                held.warmest());
        assertThat(VisitReporter.report(visit("98 degF", Optional.of(evacuated)))
                        .flows())
                .hasSize(2)
                .allMatch(flow ->
                        flow instanceof Flow.OneWay way && way.to().kind() == PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE);
    }

    @Test
    void aBarometerServesToo() {
        Site site = Site.byBarometer("boathouse", Pressure.ofKilopascals(97));
        assertThat(site.atmosphere()).isEqualTo(Atmosphere.measured(Pressure.ofKilopascals(97)));
        assertThat(site.step().source()).contains("barometer");
    }

    private static ChargeLevel level(VisitReport report) {
        return ((Diagnosis.Decided) report.diagnosis()).level();
    }

    private static VisitInput visit(String liquidLine, Optional<CylinderOnSite> cylinder) {
        return visit(liquidLine, cylinder, "53 degF");
    }

    private static VisitInput visit(String liquidLine, Optional<CylinderOnSite> cylinder, String suctionLine) {
        SystemReadings readings = SystemReadings.builder()
                .suction(pressure("118 psig"), temperature(suctionLine))
                .liquid(pressure("388 psig"), temperature(liquidLine))
                .build();
        return new VisitInput(
                "a visit",
                Optional.of(LocalDate.of(2026, 7, 14)),
                SITE,
                system(),
                readings,
                List.of(port(PointKind.HIGH_SIDE_LIQUID_PORT, "388 psig"), port(PointKind.LOW_SIDE_PORT, "118 psig")),
                cylinder);
    }

    private static ServicedSystem system() {
        return new ServicedSystem(
                "split air conditioner",
                R410A,
                MeteringDevice.EXPANSION_VALVE,
                Optional.empty(),
                Optional.of(TemperatureDifference.ofFahrenheitDegrees(10)),
                Optional.of(Mass.ofKilograms(3.2)));
    }

    private static CylinderOnSite recovery(String reading) {
        return new CylinderOnSite(
                "recovery cylinder",
                PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE,
                CylinderStamps.builder()
                        .tare(Mass.ofPounds(27.4))
                        .waterCapacity(Mass.ofPounds(47.7))
                        .specification(CylinderSpecification.parse("DOT-4BW400"))
                        .retestDue(LocalDate.of(2029, 4, 30))
                        .build(),
                Optional.of(R410A),
                Reading.ofExpanded(Temperature.ofFahrenheit(84), 1, "thermometer"),
                Optional.empty(),
                Optional.of(new Scale.RunningGross(Reading.ofExpanded(Mass.parse(reading), 0.02, "scale"))),
                Mass.ofGrams(90),
                FillRules.standard().defaultJurisdiction(),
                FillQuestion.USUAL_MAXIMUM);
    }

    private static CylinderOnSite withScale(CylinderOnSite held, Optional<Scale> scale) {
        return new CylinderOnSite(
                held.name(),
                held.valve(),
                held.stamps(),
                held.holding(),
                held.temperature(),
                held.pressure(),
                scale,
                held.hoseContents(),
                held.jurisdiction(),
                held.warmest());
    }

    private static ConnectionPoint port(PointKind kind, String gauge) {
        return new ConnectionPoint(
                kind,
                Reading.ofExpanded(Pressure.parse(gauge, SITE.atmosphere()), 10_000, "gauge at the " + kind),
                List.of());
    }

    private static Reading<Pressure> pressure(String gauge) {
        return Reading.of(Pressure.parse(gauge, SITE.atmosphere()), 5000, "gauge");
    }

    private static Reading<Temperature> temperature(String text) {
        return Reading.of(Temperature.parse(text), 0.5, "thermometer");
    }
}
