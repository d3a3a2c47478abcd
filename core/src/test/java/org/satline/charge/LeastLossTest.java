package org.satline.charge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.charge.belief.Choice;
import org.satline.charge.belief.Fault;
import org.satline.charge.belief.Symptom;
import org.satline.charge.margin.ChargeLevel;
import org.satline.measurement.Place;
import org.satline.quantity.TemperatureDifference;

/**
 * What a technician does on readings that decide nothing by themselves; common practice, no source, where nothing
 * else is named.
 */
class LeastLossTest {
    private static final double CLAMP_K = 0.5;

    private static Case orifice(double superheatK, double subcoolingK, double targetK) {
        return Case.orifice(1.8 * superheatK, 1.8 * subcoolingK, CLAMP_K)
                .target(Optional.of(TemperatureDifference.ofKelvins(targetK)));
    }

    /** Superheat 1.8 K against 6.7 K and subcooling 9 K: a small step out costs little and decides it. */
    @Test
    void lowSuperheatWithPlentyOfSubcoolingGetsASmallStepOut() {
        Judgement judgement = orifice(1.8, 9, 6.7).judged();
        assertThat(judgement.label()).isEqualTo(ChargeLevel.HIGH.label());
        assertThat(judgement.evidence().weighed().choices().get(0).choice()).isEqualTo(Choice.STEP_OUT);
    }

    /**
     * A capillary with a weak condenser fan, measured by two student laboratories: superheat falls by 11 to 15 K, subcooling hardly moves.
     */
    @Test
    void aWeakCondenserFanAtACapillaryIsNotToldAsTooMuchRefrigerant() {
        Judgement judgement = orifice(2.3, 6, 13.1)
                .degF(Place.OUTDOOR_AIR, 72)
                .degF(Place.RETURN_DRY_BULB, 78)
                .judged();
        assertThat(judgement instanceof Judgement.Decided decided && decided.level() != ChargeLevel.ON_TARGET)
                .as("%s", judgement.evidence().weighed().belief())
                .isFalse();
    }

    /** Subcooling 12.8 K over the target, foreign gas ruled out by the pressure at rest. */
    @Test
    void aSevereOverchargeIsTakenOut() {
        Case severe = Case.valve(10, 10 + 1.8 * 12.8, CLAMP_K).degF(Place.OUTDOOR_AIR, 76);
        assertThat(severe.standing(0, 3000).judged().label()).isEqualTo(ChargeLevel.HIGH.label());
    }

    /**
     * A valve that floods because the system is grossly overfull is offered removal; one that floods with little
     * subcooling is not.
     */
    @Test
    void aFloodedOverfullValveSystemIsTakenOutAndAFloodedShortOneIsNot() {
        Judgement overfull = Case.valve(1, 10 + 1.8 * 13, CLAMP_K)
                .degF(Place.OUTDOOR_AIR, 80)
                .standing(0, 3000)
                .judged();
        assertThat(overfull.label())
                .as("%s", overfull.evidence().weighed().belief())
                .isEqualTo(ChargeLevel.HIGH.label());
        assertThat(Case.valve(1, 6, CLAMP_K).judged()).isNotInstanceOf(Judgement.Decided.class);
    }

    @Test
    void everyAnswerSaysTheNextBestAndWhatWouldChangeIt() {
        Judgement judgement = orifice(1.8, 9, 6.7).judged();
        assertThat(Case.codes(judgement)).contains(ChargeCode.NEXT_BEST, ChargeCode.WOULD_CHANGE, ChargeCode.BELIEF);
        assertThat(judgement.evidence().weighed().wouldChange()).isPresent();
        assertThat(judgement.evidence().weighed().choices()).hasSize(Choice.values().length);
    }

    /** A quantity that is known of the unit counts for more than the mean of all systems. */
    @Test
    void whatIsKnownOfTheUnitSharpensTheBelief() {
        ChargeCase it = Case.valve(10, 10, CLAMP_K).made();
        double usual =
                ChargeJudge.usual().judge(it).evidence().weighed().belief().probability(Fault.CONDENSER_FOULING);
        double hot = ChargeJudge.usual()
                .expecting(Symptom.CONDENSING, 8, 0.5)
                .judge(it)
                .evidence()
                .weighed()
                .belief()
                .probability(Fault.CONDENSER_FOULING);
        assertThat(hot).isGreaterThan(usual);
    }
}
