package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.Diagnosis;
import org.satline.charge.MeteringDevice;
import org.satline.cylinder.CylinderSpecification;
import org.satline.cylinder.CylinderStamps;
import org.satline.cylinder.FillQuestion;
import org.satline.cylinder.FillRules;
import org.satline.cylinder.Refusal.Reason;
import org.satline.cylinder.Scale;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.measurement.Place;
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
import org.satline.transfer.PointKind;

/**
 * Readings and cylinders that must not lead to an advice to move refrigerant. Basis: heat flows from warm to cold (physics); gauge, weight and label of a
 * cylinder have to agree (arithmetic, saturation of R-410A: about 252 psig at 84 degF, from memory of trade charts); common practice, no source.
 */
class VisitSafetyTest {
    private static final Refrigerant R410A = Catalogue.standard().find("R-410A");
    private static final Atmosphere SEA_LEVEL = Atmosphere.standard();
    private static final Site SITE = Site.atAltitude("quay", Length.ofMetres(0));

    private static Reading<Temperature> at(String text) {
        return Reading.of(Temperature.parse(text), 0.5, "probe at " + text);
    }

    private static Reading<Pressure> gauge(String text, double standardUncertaintyPa) {
        return Reading.of(Pressure.parse(text, SEA_LEVEL), standardUncertaintyPa, "gauge " + text);
    }

    private static SystemReadings.Builder overfull() {
        return SystemReadings.builder()
                .suction(gauge("118 psig", 3000), at("53 degF"))
                .liquid(gauge("388 psig", 3000), at("98 degF"));
    }

    private static VisitReport report(SystemReadings readings, Optional<CylinderOnSite> cylinder) {
        return VisitReporter.report(new VisitInput(
                "a visit",
                Optional.of(LocalDate.of(2026, 7, 14)),
                SITE,
                new ServicedSystem(
                        "split air conditioner",
                        R410A,
                        MeteringDevice.EXPANSION_VALVE,
                        Optional.empty(),
                        Optional.of(TemperatureDifference.ofFahrenheitDegrees(10)),
                        Optional.empty()),
                readings,
                List.of(port(PointKind.HIGH_SIDE_LIQUID_PORT, "388 psig"), port(PointKind.LOW_SIDE_PORT, "118 psig")),
                cylinder));
    }

    private static ConnectionPoint port(PointKind kind, String gauge) {
        return new ConnectionPoint(
                kind, Reading.ofExpanded(Pressure.parse(gauge, SEA_LEVEL), 10_000, "gauge at the " + kind), List.of());
    }

    private static CylinderOnSite cylinder(
            Optional<Refrigerant> holding, String temperature, Optional<String> pressure, String gross) {
        return new CylinderOnSite(
                "recovery cylinder",
                PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE,
                CylinderStamps.builder()
                        .tare(Mass.ofPounds(27.4))
                        .waterCapacity(Mass.ofPounds(47.7))
                        .specification(CylinderSpecification.parse("DOT-4BW400"))
                        .retestDue(LocalDate.of(2029, 4, 30))
                        .build(),
                holding,
                Reading.ofExpanded(Temperature.parse(temperature), 1, "thermometer"),
                pressure.map(text -> Reading.ofExpanded(Pressure.parse(text, SEA_LEVEL), 10_000, "gauge")),
                Optional.of(new Scale.RunningGross(Reading.ofExpanded(Mass.parse(gross), 0.02, "scale"))),
                Mass.ofGrams(90),
                FillRules.standard().defaultJurisdiction(),
                FillQuestion.USUAL_MAXIMUM);
    }

    private static void movesNothing(VisitReport report) {
        assertThat(report.nextSteps()).noneMatch(step -> step.text().startsWith("take refrigerant out"));
        assertThat(report.nextSteps()).noneMatch(step -> step.text().startsWith("add from"));
    }

    @Test
    void theSameReadingsByGoodInstrumentsAreDecidedAndByBadOnesAreNot() {
        assertThat(report(overfull().build(), Optional.empty()).diagnosis()).isInstanceOf(Diagnosis.Decided.class);
        SystemReadings poor = overfull()
                .put(Place.LIQUID_PRESSURE, gauge("388 psig", 400_000))
                .build();
        VisitReport report = report(poor, Optional.empty());
        assertThat(report.diagnosis()).isInstanceOf(Diagnosis.Undecided.class);
        movesNothing(report);
    }

    @Test
    void aLiquidLineColderThanTheCondenserAirIsRefused() {
        SystemReadings readings = overfull()
                .put(Place.LIQUID_LINE, at("60 degF"))
                .put(Place.OUTDOOR_AIR, at("91 degF"))
                .build();
        assertThatThrownBy(() -> report(readings, Optional.empty()))
                .hasMessageContaining("liquid line")
                .hasMessageContaining("colder than the air entering the condenser");
    }

    @Test
    void aDischargeLineColderThanCondensingIsRefused() {
        SystemReadings readings =
                overfull().put(Place.DISCHARGE_LINE, at("80 degF")).build();
        assertThatThrownBy(() -> report(readings, Optional.empty())).hasMessageContaining("discharge line");
    }

    @Test
    void aWarmSupplyOrACoolDayGivesNoChargeAdvice() {
        VisitReport warm = report(
                overfull()
                        .put(Place.RETURN_DRY_BULB, at("78 degF"))
                        .put(Place.RETURN_WET_BULB, at("65 degF"))
                        .put(Place.SUPPLY_DRY_BULB, at("85 degF"))
                        .build(),
                Optional.empty());
        assertThat(warm.diagnosis()).isNotInstanceOf(Diagnosis.Decided.class);
        movesNothing(warm);
        // California Energy Code RA3.2 (2008): at least 55 degF outdoors
        VisitReport cool =
                report(overfull().put(Place.OUTDOOR_AIR, at("20 degF")).build(), Optional.empty());
        assertThat(cool.diagnosis()).isInstanceOf(Diagnosis.Undecided.class);
        movesNothing(cool);
    }

    @ParameterizedTest(name = "{4}")
    @CsvSource({
        "'', 84 degF, 500 micron, 41.35 lb, CONTENTS_DOUBTFUL",
        "'', 84 degF, 0 psig, 27.4 lb, CONTENTS_DOUBTFUL",
        "R-410A, 84 degF, 0 psig, 41.35 lb, CONTENTS_DOUBTFUL",
        "R-410A, 84 degF, 330 psig, 41.35 lb, CONTENTS_DOUBTFUL",
        "R-410A, 150 degF, '', 41.35 lb, TOO_WARM",
    })
    void aCylinderWhoseFactsContradictIsNotFilled(
            String holding, String temperature, String pressure, String gross, Reason reason) {
        CylinderOnSite cylinder = cylinder(
                holding.isEmpty()
                        ? Optional.empty()
                        : Optional.of(Catalogue.standard().find(holding)),
                temperature,
                pressure.isEmpty() ? Optional.empty() : Optional.of(pressure),
                gross);
        VisitReport report = report(overfull().build(), Optional.of(cylinder));
        assertThat(report.cylinder().orElseThrow().refusals()).anyMatch(each -> each.reason() == reason);
        assertThat(report.cylinder().orElseThrow().room()).isEmpty();
        movesNothing(report);
    }

    @Test
    void aCylinderWhosePressureFitsIsFilled() {
        CylinderOnSite fitting = cylinder(Optional.of(R410A), "84 degF", Optional.of("252 psig"), "41.35 lb");
        assertThat(report(overfull().build(), Optional.of(fitting))
                        .cylinder()
                        .orElseThrow()
                        .refusals())
                .isEmpty();
    }

    @Test
    void anEvacuatedCylinderIsOpenedACrack() {
        CylinderOnSite evacuated = cylinder(Optional.empty(), "84 degF", Optional.of("500 micron"), "27.4 lb");
        assertThat(report(overfull().build(), Optional.of(evacuated)).nextSteps())
                .anyMatch(step -> step.text().startsWith("take no more than 5 %"))
                .anyMatch(step -> step.text().contains("open the valve a crack"));
    }

    private static CylinderOnSite source(CylinderOnSite held) {
        return new CylinderOnSite(
                "source cylinder",
                PointKind.SOURCE_CYLINDER_LIQUID_VALVE,
                held.stamps(),
                held.holding(),
                held.temperature(),
                held.pressure(),
                held.scale(),
                held.hoseContents(),
                held.jurisdiction(),
                held.warmest());
    }

    private static VisitReport shortOfCharge(CylinderOnSite held) {
        return report(
                overfull()
                        .put(Place.LIQUID_LINE, at("113 degF"))
                        .put(Place.SUCTION_LINE, at("68 degF"))
                        .build(),
                Optional.of(source(held)));
    }

    @Test
    void aSourceOfAnotherRefrigerantIsNotConnected() {
        VisitReport report = shortOfCharge(
                cylinder(Optional.of(Catalogue.standard().find("R-22")), "84 degF", Optional.empty(), "41.35 lb"));
        assertThat(report.mustNotConnect()).isTrue();
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step ->
                        assertThat(step.text()).contains("do not connect").contains("R-22"));
    }

    /** Saturation of R-410A at 84 degF is about 252 psig; the cylinder holds 47.7 lb of water, hence no 52 lb of R-410A at 84 degF. */
    @ParameterizedTest(name = "{0}, {1}, {2}")
    @CsvSource({
        "84 degF, 150 psig, 41.35 lb",
        "84 degF, 330 psig, 41.35 lb",
        "84 degF, 252 psig, 80 lb",
        "140 degF, 550 psig, 41.35 lb"
    })
    void aSourceWhoseFactsContradictIsNotConnected(String temperature, String pressure, String gross) {
        VisitReport report = shortOfCharge(cylinder(Optional.of(R410A), temperature, Optional.of(pressure), gross));
        assertThat(report.mustNotConnect()).isTrue();
        assertThat(report.nextSteps())
                .isNotEmpty()
                .allSatisfy(step -> assertThat(step.text()).startsWith("do not connect or add"));
    }

    @Test
    void aSoundSourceIsAddedFromByName() {
        VisitReport report =
                shortOfCharge(cylinder(Optional.of(R410A), "84 degF", Optional.of("252 psig"), "41.35 lb"));
        assertThat(report.mustNotConnect()).isFalse();
        assertThat(report.nextSteps()).anyMatch(step -> step.text().contains("from source cylinder"));
    }

    @Test
    void aWeightBelowTheTareIsWeighedAgain() {
        CylinderOnSite light = cylinder(Optional.of(R410A), "84 degF", Optional.of("252 psig"), "20 lb");
        assertThat(report(overfull().build(), Optional.of(light)).nextSteps())
                .anyMatch(step -> step.text().contains("weigh the cylinder again"))
                .noneMatch(step -> step.text().contains("no room"));
    }
}
