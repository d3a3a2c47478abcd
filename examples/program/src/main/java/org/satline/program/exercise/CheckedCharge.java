package org.satline.program.exercise;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeCode;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeLevel;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Deviation;
import org.satline.charge.Judgement;
import org.satline.charge.OperatingConditions;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.UnitSystem;
import org.satline.saturation.SaturationCurve;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * The published check of a charge: level by the reading, unless superheat and subcooling contradict each other.
 *
 * @param deviation measured less target
 * @param contradiction what contradicts, where something does
 * @param steps the derivation
 */
record CheckedCharge(Deviation deviation, Optional<Finding> contradiction, List<Step> steps) {
    private static final double WANTED = 0.95;
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.SI);
    private static final Set<ChargeCode> CONTRADICTIONS = Set.of(
            ChargeCode.VALVE_FLOODS,
            ChargeCode.EVAPORATOR_STARVES,
            ChargeCode.AMPLE_SUBCOOLING,
            ChargeCode.SCANT_SUBCOOLING);

    /** Of a system that cools, in weather that allows it. */
    static CheckedCharge of(SaturationCurve curve, SystemReadings readings, ChargeQuestion question) {
        Judgement judgement = ChargeJudge.usual()
                .judge(new ChargeCase(
                        curve, readings, question, OperatingConditions.unknown().withOutdoorMinimumMet(true)));
        return new CheckedCharge(
                judgement.evidence().deviation().orElseThrow(),
                judgement.evidence().findings().stream()
                        .filter(finding -> CONTRADICTIONS.contains(finding.code()))
                        .findFirst(),
                judgement.evidence().steps());
    }

    boolean judged() {
        return contradiction.isEmpty();
    }

    /** The level that holds with the wanted probability. */
    Optional<ChargeLevel> decided() {
        return Stream.of(ChargeLevel.values())
                .filter(level -> deviation.probability(level) >= WANTED)
                .findFirst();
    }

    String advice() {
        return contradiction
                .map(WORDING::of)
                .orElseGet(() -> WORDING.message(
                        "charge.levelAdvice." + deviation.level().word()));
    }
}
