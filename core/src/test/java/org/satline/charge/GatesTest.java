package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.charge.belief.Fault;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SettlingTest;
import org.satline.quantity.Power;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.VolumeFlow;

/**
 * Conditions of judging: limits of the California Energy Code, RA3.2 (2008); a wet suction line by common practice,
 * no source.
 */
class GatesTest {
    private static final Case SOUND = Case.valve(10, 10, 0.3);

    private static void blocks(Case it, Gate.Kind kind) {
        assertThat(it.gate(kind).state()).isEqualTo(Gate.State.NOT_MET);
        assertThat(it.judged()).isInstanceOf(Judgement.Undecided.class);
        Finding first = it.judged().evidence().findings().get(0);
        assertThat(first.code()).isEqualTo(ChargeCode.GATE_NOT_MET);
        assertThat(first.severity()).isEqualTo(Severity.FORBIDS);
        assertThat(first.subject().name()).isEqualTo(kind.word());
        assertThat(first.figures()).isEqualTo(it.gate(kind).figures());
    }

    private static Case settled(SettlingTest.Outcome outcome) {
        return SOUND.under(OperatingConditions.unknown().withSettled(outcome));
    }

    @Test
    void theyStandInTheOrderOfWork() {
        assertThat(SOUND.judged().evidence().gates()).extracting(Gate::kind).containsExactly(Gate.Kind.values());
    }

    @Test
    void whatWasNotReadBlocksNoJudgementAndIsAskedFor() {
        assertThat(SOUND.judged()).isInstanceOf(Judgement.Decided.class);
        assertThat(SOUND.gate(Gate.Kind.SETTLED).missing()).containsExactly("conditions.settled");
        assertThat(SOUND.gate(Gate.Kind.SETTLED).blocksUnread()).isTrue();
        assertThat(SOUND.gate(Gate.Kind.RUNNING_TIME).asked())
                .allSatisfy(finding -> assertThat(finding.severity()).isEqualTo(Severity.MUST_BE_SUPPLIED))
                .extracting(finding -> finding.subject().name())
                .containsExactly("conditions.running");
        assertThat(SOUND.gate(Gate.Kind.AIRFLOW).missing())
                .containsExactly("conditions.airflow", "conditions.nominalCooling");
        assertThat(SOUND.gate(Gate.Kind.NAMEPLATE).state()).isEqualTo(Gate.State.NOT_READ);
        assertThat(SOUND.gate(Gate.Kind.NAMEPLATE).blocksUnread()).isFalse();
        assertThat(SOUND.without(Place.SUCTION_LINE).gate(Gate.Kind.DRY_SUCTION).missing())
                .containsExactly("readings.suctionPressure", "readings.suctionLine");
        assertThat(SOUND.without(Place.OUTDOOR_AIR).gate(Gate.Kind.OUTDOOR_AIR).missing())
                .containsExactly("readings.outdoorAir");
    }

    @Test
    void settled() {
        assertThat(settled(new SettlingTest.Settled(5, 0.01, 0.1))
                        .gate(Gate.Kind.SETTLED)
                        .state())
                .isEqualTo(Gate.State.MET);
        for (SettlingTest.Outcome outcome : List.of(
                new SettlingTest.Moving(0.1, 0.1),
                new SettlingTest.Contradicted(1, 0.5),
                new SettlingTest.TooShort(300, 3, 5))) {
            blocks(settled(outcome), Gate.Kind.SETTLED);
        }
    }

    @ParameterizedTest
    @CsvSource({"true, MET", "false, NOT_MET"})
    void watchedSettledCountsWhereThereIsNoSeries(boolean stood, Gate.State state) {
        OperatingConditions none = OperatingConditions.unknown();
        Case it = SOUND.under(new OperatingConditions(
                none.running(),
                none.settled(),
                Optional.of(stood),
                none.outdoorMinimumMet(),
                none.airflow(),
                none.standing()));
        assertThat(it.gate(Gate.Kind.SETTLED).state()).isEqualTo(state);
    }

    @Test
    void runningTime() {
        blocks(SOUND.running(Duration.ofMinutes(14)), Gate.Kind.RUNNING_TIME);
        Gate gate = SOUND.running(Duration.ofMinutes(15)).gate(Gate.Kind.RUNNING_TIME);
        assertThat(gate.state()).isEqualTo(Gate.State.MET);
        assertThat(gate.figures()).extracting(Figure::name).contains("running", "least");
    }

    @Test
    void outdoorAir() {
        blocks(SOUND.degF(Place.OUTDOOR_AIR, 54.9), Gate.Kind.OUTDOOR_AIR);
        assertThat(SOUND.degF(Place.OUTDOOR_AIR, 55).gate(Gate.Kind.OUTDOOR_AIR).state())
                .isEqualTo(Gate.State.MET);
        // the maker's own minimum goes above the published one
        blocks(SOUND.under(OperatingConditions.unknown().withOutdoorMinimumMet(false)), Gate.Kind.OUTDOOR_AIR);
        assertThat(SOUND.without(Place.OUTDOOR_AIR)
                        .under(OperatingConditions.unknown().withOutdoorMinimumMet(true))
                        .gate(Gate.Kind.OUTDOOR_AIR)
                        .state())
                .isEqualTo(Gate.State.MET);
    }

    /** 300 cfm a ton. */
    @ParameterizedTest
    @CsvSource({"899, NOT_MET", "901, MET"})
    void measuredAirflow(double cfm, Gate.State state) {
        OperatingConditions none = OperatingConditions.unknown();
        Case it = SOUND.under(new OperatingConditions(
                none.running(),
                none.settled(),
                none.watchedSettled(),
                none.outdoorMinimumMet(),
                Optional.of(new OperatingConditions.Airflow(
                        VolumeFlow.ofCubicFeetPerMinute(cfm), Power.ofTonsOfRefrigeration(3))),
                none.standing()));
        assertThat(it.gate(Gate.Kind.AIRFLOW).state()).isEqualTo(state);
        if (state == Gate.State.NOT_MET) {
            assertThat(it.judged()).isInstanceOfSatisfying(Judgement.OtherFault.class, fault -> {
                assertThat(fault.fault()).isEqualTo(Fault.LOW_EVAPORATOR_AIRFLOW);
                assertThat(fault.probability()).isEqualTo(1);
            });
        }
    }

    /**
     * Target split at 76 degF dry bulb and 64 degF wet bulb: 18.5 degF, and 1.65 degF more in air of 85 degF outdoors
     * (0.5 K and 0.07 K for each kelvin under 35 degC, after
     * NISTIR 7350); supply at 52 degF gives 24, above 20.2 + 3.
     */
    @Test
    void temperatureSplit() {
        Case low = SOUND.degF(Place.SUPPLY_DRY_BULB, 52);
        assertThat(low.gate(Gate.Kind.AIRFLOW).figures())
                .extracting(Figure::name)
                .containsExactly("split", "target", "tolerance");
        assertThat(low.judged()).isInstanceOfSatisfying(Judgement.OtherFault.class, fault -> {
            assertThat(fault.fault()).isEqualTo(Fault.LOW_EVAPORATOR_AIRFLOW);
            // 0.8 degF beyond the tolerance, as these thermometers read it, with 0.5 K between machines
            assertThat(fault.probability()).isBetween(0.5, 0.9);
        });
        assertThat(SOUND.degF(Place.SUPPLY_DRY_BULB, 58).gate(Gate.Kind.AIRFLOW).state())
                .isEqualTo(Gate.State.MET);
        // supply air that is not colder at all: why it does not cool comes first, and it is not low airflow
        blocks(SOUND.degF(Place.SUPPLY_DRY_BULB, 77), Gate.Kind.AIRFLOW);
    }

    @Test
    void nameplate() {
        assertThat(SOUND.standing(0, 5000).gate(Gate.Kind.NAMEPLATE).state()).isEqualTo(Gate.State.MET);
        assertThat(SOUND.standing(9_900, 5000).gate(Gate.Kind.NAMEPLATE).state())
                .isEqualTo(Gate.State.MET);
        Judgement gas = SOUND.standing(100_000, 5000).judged();
        assertThat(gas)
                .isInstanceOfSatisfying(
                        Judgement.OtherFault.class,
                        fault -> assertThat(fault.fault()).isEqualTo(Fault.NON_CONDENSABLE_GAS));
        // below saturation: another refrigerant, or no liquid left; no fault of the list is proven
        blocks(SOUND.standing(-100_000, 5000), Gate.Kind.NAMEPLATE);
    }

    /** Wet where superheat is below its expanded uncertainty, or below 0.5 K with perfect instruments. */
    @Test
    void drySuction() {
        blocks(Case.valve(1, 14, 0.3), Gate.Kind.DRY_SUCTION);
        assertThat(Case.valve(1.2, 14, 0.3).gate(Gate.Kind.DRY_SUCTION).state()).isEqualTo(Gate.State.MET);
        assertThat(Case.valve(0.8, 14, 0).gate(Gate.Kind.DRY_SUCTION).state()).isEqualTo(Gate.State.NOT_MET);
        assertThat(Case.valve(1, 14, 0).gate(Gate.Kind.DRY_SUCTION).state()).isEqualTo(Gate.State.MET);
        // at a fixed orifice it is what too much refrigerant looks like
        Judgement orifice = Case.orifice(0.5, 16, 0.3).judged();
        assertThat(Case.codes(orifice)).doesNotContain(ChargeCode.GATE_NOT_MET);
    }

    /** A valve controls from 4 degF on (RA3.2); told with an expanded uncertainty of at most 4 K, which is u = 2 K. */
    @ParameterizedTest
    @CsvSource({"1, 0.3, true", "3.9, 1.99, true", "3.9, 2.01, false", "4.1, 1.99, false"})
    void aWetLineBehindAValveIsToldAsFlooding(double superheatF, double uK, boolean told) {
        Case it = Case.valve(superheatF, 14, 0)
                .put(
                        Place.SUCTION_LINE,
                        Reading.of(
                                Case.R410A
                                        .dewTemperature(Case.SUCTION)
                                        .plus(TemperatureDifference.ofFahrenheitDegrees(superheatF)),
                                uK,
                                "clamp"));
        blocks(it, Gate.Kind.DRY_SUCTION);
        List<FindingCode> expected =
                told ? List.of(ChargeCode.GATE_NOT_MET, ChargeCode.VALVE_FLOODS) : List.of(ChargeCode.GATE_NOT_MET);
        assertThat(it.judged().evidence().findings()).extracting(Finding::code).isEqualTo(expected);
        assertThat(Case.codes(it.target(Optional.empty()).judged()).contains(ChargeCode.VALVE_FLOODS))
                .isEqualTo(told);
    }
}
