package org.satline.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.charge.Diagnosis;
import org.satline.charge.Gate;
import org.satline.charge.MeteringDevice;
import org.satline.charge.OperatingConditions;
import org.satline.charge.StepAdvice;
import org.satline.cylinder.CylinderSpecification;
import org.satline.cylinder.CylinderStamps;
import org.satline.cylinder.FillQuestion;
import org.satline.cylinder.FillRules;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Refusal.Reason;
import org.satline.cylinder.Scale;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRules;
import org.satline.measurement.PressureReading;
import org.satline.measurement.SettlingTest;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.TemperatureReading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Length;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurves;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.PointKind;

/**
 * Weights, stamps and series that must not lead to an advice to move refrigerant. Basis: contents = gross - tare; R-410A at 84 degF saturates at about 252
 * psig, its vapour weighs about 4.6 lb/ft3 and its liquid about 64 lb/ft3 there (from memory of trade charts); a cylinder of 47.7 lb of water has 0.76 ft3.
 * 49 CFR 173.301a(c), 173.304(b), 180.205(c) (the last from memory).
 */
class WeightAndStampsTest {
    private static final Refrigerant R410A = Catalogue.standard().find("R-410A");
    private static final Atmosphere SEA_LEVEL = Atmosphere.standard();
    private static final String HIGH = "98 degF";
    private static final String LOW = "113 degF";

    private PointKind valve = PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE;
    private Optional<Refrigerant> holding = Optional.of(R410A);
    private Optional<String> gauge = Optional.of("252 psig");
    private Optional<String> gross = Optional.of("41.35 lb");
    private Optional<String> since = Optional.empty();
    private String temperature = "84 degF";
    private boolean atRest = true;
    private Optional<LocalDate> date = Optional.of(LocalDate.of(2026, 7, 14));
    private Optional<Mass> fullCharge = Optional.of(Mass.ofKilograms(3.2));
    private OperatingConditions conditions = OperatingConditions.unknown();
    private MovedSoFar moved = MovedSoFar.nothing();
    private final CylinderStamps.Builder stamps = CylinderStamps.builder()
            .tare(Mass.ofPounds(27.4))
            .waterCapacity(Mass.ofPounds(47.7))
            .specification(CylinderSpecification.parse("DOT-4BW400"))
            .retestDue(LocalDate.of(2029, 4, 30));

    @ParameterizedTest(name = "recovery cylinder, gross {0}: {1}")
    @CsvSource({
        "62 lb, OVERFILLED",
        "75 lb, OVERFILLED",
        "90 lb, LIQUID_FULL",
        "26 lb, STAMPS_CONTRADICTORY",
        "60.6 lb, FULL",
        "27.4 lb, CONTENTS_DOUBTFUL",
        "30 lb, CONTENTS_DOUBTFUL",
        "'', NOT_WEIGHED"
    })
    void aRecoveryCylinderOfSuchAWeightIsRefused(String weight, Reason reason) {
        gross = Optional.of(weight).filter(text -> !text.isEmpty());
        VisitReport report = report(HIGH);
        assertThat(report.cylinder().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .containsExactly(reason);
        refused(report);
    }

    /** 11 lb of R-410A in 0.76 ft3 keep liquid at 84 degF, so 150 psig is not R-410A, however the scale was used. */
    @ParameterizedTest(name = "gross {0}, since zeroed {1}")
    @CsvSource({"38.4 lb, ''", "27.4 lb, 11 lb"})
    void aMislabelledCylinderIsRefusedHoweverTheScaleWasZeroed(String weight, String transferred) {
        gauge = Optional.of("150 psig");
        gross = Optional.of(weight);
        since = Optional.of(transferred).filter(text -> !text.isEmpty());
        VisitReport report = report(HIGH);
        assertThat(report.cylinder().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .containsExactly(Reason.CONTENTS_DOUBTFUL);
        refused(report);
    }

    @Test
    void anImpossibleWeightGivesNoPressureAndNoConsistentLabel() {
        gross = Optional.of("90 lb");
        VisitReport report = report(HIGH);
        assertThat(report.hookUp().orElseThrow().vessel()).isEmpty();
        assertThat(report.hookUp().orElseThrow().contents()).isEmpty();
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step -> assertThat(step.text())
                        .startsWith("keep people away")
                        .contains("the weight is impossible", "weigh it")
                        .doesNotContain("another cylinder"));
        assertThat(report.cautions())
                .anySatisfy(caution -> assertThat(caution.text()).startsWith("LIQUID-FULL: keep people away"));
    }

    /** R-744 ends at 30.98 degC (from memory); 47.7 lb of water are 0.76 ft3, in which 45 lb make 950 kg/m3 and 2 lb 42 kg/m3. */
    @ParameterizedTest
    @CsvSource({
        "72.4 lb, 87 degF, ''",
        "72.4 lb, 88.5 degF, ''",
        "72.4 lb, 88.5 degF, 900 psig",
        "72.4 lb, 120 degF, ''"
    })
    void aCylinderFullOfCarbonDioxideIsLiquidFullOnBothSidesOfTheCriticalTemperature(
            String weight, String warm, String read) {
        carbonDioxide(weight, warm, read);
        assertThat(report(HIGH).cylinder().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .contains(Reason.LIQUID_FULL);
        source();
        assertThat(report(LOW).hookUp().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .contains(Reason.LIQUID_FULL);
    }

    @ParameterizedTest
    @CsvSource({"29.4 lb, 100 degF, ''", "29.4 lb, 100 degF, 320 psig", "29.4 lb, 88 degF, ''"})
    void aCylinderWarmerThanTheCriticalTemperatureIsAnsweredAsAState(String weight, String warm, String read) {
        carbonDioxide(weight, warm, read);
        VesselReport vessel = report(HIGH).hookUp().orElseThrow().vessel().orElseThrow();
        assertThat(vessel.now().liquidVolumeFraction()).isEmpty();
        refused(report(HIGH));
        source();
        refused(report(LOW));
    }

    private void carbonDioxide(String weight, String warm, String read) {
        holding = Optional.of(Catalogue.standard().find("R-744"));
        stamps.specification(CylinderSpecification.parse("DOT-3AA1800"));
        gross = Optional.of(weight);
        temperature = warm;
        gauge = Optional.of(read).filter(text -> !text.isEmpty());
    }

    @Test
    void aWeightThatFitsItsPressureWithinTheDoubtOfTheScaleIsNoContradiction() {
        // 0.76 ft3 of saturated vapour weigh about 3.55 lb: 3.52 lb are within what scale, gauge and thermometer
        // resolve
        gross = Optional.of("30.92 lb");
        assertThat(report(HIGH).cylinder().orElseThrow().refusals()).isEmpty();
        // vapour alone at the pressure that its weight gives: no contradiction either, only no liquid
        gross = Optional.of("29.4 lb");
        gauge = Optional.of("158 psig");
        assertThat(report(HIGH).cylinder().orElseThrow().refusals()).isEmpty();
    }

    @ParameterizedTest(name = "source cylinder, gross {0}: {1}")
    @CsvSource({
        "20 lb, STAMPS_CONTRADICTORY",
        "27.4 lb, NOTHING_TO_GIVE",
        "28 lb, CONTENTS_DOUBTFUL",
        "90 lb, LIQUID_FULL",
        "'', NOT_WEIGHED"
    })
    void aSourceCylinderOfSuchAWeightIsRefused(String weight, Reason reason) {
        source();
        gross = Optional.of(weight).filter(text -> !text.isEmpty());
        VisitReport report = report(LOW);
        assertThat(report.hookUp().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .contains(reason);
        assertThat(report.work().advice()).isEmpty();
        refused(report);
    }

    @Test
    void aBlendOfWhichNoLiquidIsLeftIsNotChargedEvenWithoutAGauge() {
        source();
        gauge = Optional.empty();
        gross = Optional.of("28 lb");
        assertThat(report(LOW).hookUp().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .containsExactly(Reason.NOTHING_TO_GIVE);
    }

    @Test
    void aSourceWithAStampTooWeakOrContradictoryIsRefused() {
        source();
        stamps.specification(CylinderSpecification.parse("DOT-4BA240"));
        assertThat(report(LOW).hookUp().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .containsExactly(Reason.PRESSURE_TOO_LOW);
        refused(report(LOW));
        stamps.specification(CylinderSpecification.parse("DOT-4BA400")).servicePressure(GaugePressure.ofPsig(240));
        assertThat(report(LOW).hookUp().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .contains(Reason.STAMPS_CONTRADICTORY);
        refused(report(LOW));
        stamps.servicePressure(GaugePressure.ofPsig(400)).testPressure(GaugePressure.ofPsig(300));
        assertThat(report(LOW).hookUp().orElseThrow().refusals())
                .extracting(Refusal::reason)
                .containsExactly(Reason.STAMPS_CONTRADICTORY);
        refused(report(LOW));
    }

    @ParameterizedTest
    @ValueSource(strings = {"R-22", "R-134a", "R-404A", "R-407C", "R-410A"})
    void theUsualNonRefillableSourceIsNotRefused(String refrigerant) {
        source();
        holding = Optional.of(Catalogue.standard().find(refrigerant));
        gauge = Optional.empty();
        stamps.tare(Mass.ofPounds(7))
                .waterCapacity(Mass.ofPounds(30))
                .specification(CylinderSpecification.parse("DOT-39"));
        gross = Optional.of("20 lb");
        assertThat(SourceDoubts.of(cylinder(), SaturationCurves.of(holding.get()), SEA_LEVEL))
                .isEmpty();
    }

    @Test
    void anOverdueSourceIsUsedUpWithACaution() {
        source();
        stamps.retestDue(LocalDate.of(2020, 1, 1));
        VisitReport overdue = report(LOW);
        assertThat(overdue.mustNotConnect()).isFalse();
        assertThat(overdue.cautions())
                .anySatisfy(caution -> assertThat(caution.text() + caution.basis())
                        .contains("RETEST OVERDUE", "must not be refilled", "180.205(c)", "from memory"));
        date = Optional.empty();
        assertThat(report(LOW).cautions())
                .anySatisfy(caution -> assertThat(caution.text()).contains("could not be checked"));
        stamps.specification(CylinderSpecification.parse("DOT-39"));
        assertThat(VisitDoubts.of(input(LOW))).isEmpty();
    }

    @ParameterizedTest(name = "series at {0}, liquid line {1}")
    @CsvSource({"16.1, 110 degF", "3, 98 degF"})
    void aSeriesThatEndsElsewhereThanTheReadingsClosesTheGate(double ended, String liquidLine) {
        conditions = settledAt(ended);
        VisitReport report = report(liquidLine);
        assertThat(report.diagnosis()).isInstanceOf(Diagnosis.Undecided.class);
        assertThat(report.diagnosis().evidence().gates())
                .anySatisfy(gate -> assertThat(gate.state() + gate.finding() + gate.advice())
                        .contains(Gate.State.CLOSED.name(), "the series ends at", "the readings say", "read again"));
        assertThat(report.movesNow()).isFalse();
        conditions = settledAt(16.1);
        assertThat(report(HIGH).diagnosis()).isInstanceOf(Diagnosis.Decided.class);
    }

    private static OperatingConditions settledAt(double fahrenheitDegrees) {
        double kelvins =
                TemperatureDifference.ofFahrenheitDegrees(fahrenheitDegrees).kelvins();
        return new OperatingConditions(
                Optional.empty(),
                Optional.of(new SettlingTest.Settled(kelvins, 0, 0.05, "settled")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void aBlendAtTheVapourValveIsAskedForAsLiquidFirst() {
        source();
        valve = PointKind.SOURCE_CYLINDER_VAPOUR_VALVE;
        assertThat(report(LOW).nextSteps())
                .anySatisfy(step -> assertThat(step.text()).startsWith("first move the hose to the liquid valve"));
    }

    @Test
    void aSourceColderThanTheSystemIsWarmedFirst() {
        source();
        gauge = Optional.empty();
        temperature = "20 degF";
        VisitReport report = report(LOW);
        assertThat(report.nextSteps())
                .anySatisfy(step ->
                        assertThat(step.text()).startsWith("open no valve yet").contains("lukewarm", "flame"))
                .noneSatisfy(step -> assertThat(step.text()).startsWith("add"));
        assertThat(report.movesNow()).isFalse();
    }

    @Test
    void onlyThePortsThroughWhichSomethingGoesArePurged() {
        VisitReport high = report(HIGH);
        assertThat(high.goesThrough(PointKind.HIGH_SIDE_LIQUID_PORT)).isTrue();
        assertThat(high.goesThrough(PointKind.LOW_SIDE_PORT)).isFalse();
        assertThat(report(LOW).movesNow()).isFalse();
        assertThat(report("104 degF").movesNow()).isFalse();
        source();
        assertThat(report(HIGH).movesNow()).isFalse();
        assertThat(report(LOW).goesThrough(PointKind.LOW_SIDE_PORT)).isTrue();
        assertThat(report(LOW).goesThrough(PointKind.HIGH_SIDE_LIQUID_PORT)).isFalse();
    }

    @Test
    void theStepNamesTheReadingAtWhichItEnds() {
        VisitReport high = report(HIGH);
        assertThat(high.nextSteps().get(0).text())
                .contains(String.format(Locale.ROOT, "that is %.2f lb", 41.35 + step(high)))
                .contains("on the scale, and whatever happens stop before");
        source();
        VisitReport low = report(LOW);
        assertThat(low.nextSteps())
                .anySatisfy(step -> assertThat(step.text())
                        .contains(String.format(Locale.ROOT, "that is %.2f lb", 41.35 - step(low))));
    }

    /** The step in pounds as it is printed, rounded down. */
    private static double step(VisitReport report) {
        StepAdvice.Move move = (StepAdvice.Move) report.work().advice().orElseThrow();
        return Math.floor(100 * move.amount().pounds()) / 100;
    }

    @Test
    void nothingIsSaidOfTheContentsOfACylinderThatIsNotAtRest() {
        atRest = false;
        gauge = Optional.of("300 psig");
        VisitReport report = report(HIGH);
        assertThat(report.cylinder().orElseThrow().refusals()).singleElement().satisfies(refusal -> {
            assertThat(refusal.reason()).isEqualTo(Reason.NOT_AT_REST);
            assertThat(refusal.text()).contains("nothing can be said").doesNotContain("non-condensable");
        });
        refused(report);
    }

    @Test
    void withoutTheFullChargeThePlateIsToBeRead() {
        fullCharge = Optional.empty();
        assertThat(report(HIGH).nextSteps().get(0).text()).contains("not known here: read it on the nameplate");
    }

    @Test
    void theRightCylinderIsNotToBeChanged() {
        moved = new MovedSoFar(
                MassDifference.ofKilograms(0.227),
                List.of(new MovedSoFar.EarlierReading(
                        MassDifference.ZERO, TemperatureDifference.ofFahrenheitDegrees(4))));
        assertThat(report(HIGH).nextSteps().get(0).text()).startsWith("take").doesNotContain("change of cylinder");
    }

    @Test
    void anEvacuatedSourceHasNothingToGive() {
        source();
        holding = Optional.empty();
        gauge = Optional.of("0.01 psia");
        gross = Optional.of("27.4 lb");
        VisitReport report = report(LOW);
        assertThat(report.mustNotConnect()).isTrue();
        assertThat(report.nextSteps())
                .singleElement()
                .satisfies(step ->
                        assertThat(step.text()).contains("nothing to add").doesNotContain("mixing"));
    }

    private static void refused(VisitReport report) {
        assertThat(report.mustNotConnect()).isTrue();
        assertThat(report.movesNow()).isFalse();
        assertThat(report.nextSteps())
                .isNotEmpty()
                .noneMatch(
                        step -> step.text().startsWith("take ") && step.text().contains("out from"))
                .noneMatch(step -> step.text().startsWith("add "));
    }

    private void source() {
        valve = PointKind.SOURCE_CYLINDER_LIQUID_VALVE;
    }

    private CylinderOnSite cylinder() {
        return new CylinderOnSite(
                "cylinder",
                valve,
                stamps.build(),
                holding,
                Temperature.parse(temperature),
                TemperatureDifference.ofKelvins(1),
                gauge.map(text -> Pressure.parse(text, SEA_LEVEL)),
                PressureDifference.ofKilopascals(10),
                gross.map(this::scale),
                Mass.ofGrams(90),
                FillRules.standard().defaultJurisdiction(),
                FillQuestion.USUAL_MAXIMUM,
                atRest,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    private Scale scale(String text) {
        Mass weight = Mass.parse(text);
        return since.<Scale>map(moved -> new Scale.ZeroedAfterHookUp(weight, Mass.parse(moved), Mass.ofGrams(20)))
                .orElseGet(() -> new Scale.RunningGross(weight, Mass.ofGrams(20)));
    }

    private VisitReport report(String liquidLine) {
        return VisitReporter.report(input(liquidLine));
    }

    private VisitInput input(String liquidLine) {
        SystemReadings readings = SystemReadings.builder()
                .suction(pressure("118 psig"), line(liquidLine.equals(LOW) ? "68 degF" : "53 degF"))
                .liquid(pressure("388 psig"), line(liquidLine))
                .build();
        return new VisitInput(
                "a visit",
                date,
                Site.atAltitude("quay", Length.ofMetres(0)),
                new ServicedSystem(
                        "split air conditioner",
                        R410A,
                        MeteringDevice.EXPANSION_VALVE,
                        Optional.empty(),
                        Optional.of(TemperatureDifference.ofFahrenheitDegrees(10)),
                        fullCharge),
                readings,
                conditions,
                moved,
                List.of(port(PointKind.HIGH_SIDE_LIQUID_PORT, "388 psig"), port(PointKind.LOW_SIDE_PORT, "118 psig")),
                Optional.of(cylinder()));
    }

    private static PressureReading pressure(String text) {
        return PressureReading.of(Pressure.parse(text, SEA_LEVEL), 3000, "gauge " + text);
    }

    private static TemperatureReading line(String text) {
        return TemperatureReading.of(Temperature.parse(text), 0.4, "probe at " + text);
    }

    private static ConnectionPoint port(PointKind kind, String text) {
        return new ConnectionPoint(
                kind, Pressure.parse(text, SEA_LEVEL), PressureDifference.ofKilopascals(10), List.of());
    }
}
