package org.satline.fleet;

import java.util.Optional;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.ChargeRow;
import org.satline.charge.Judgement;
import org.satline.charge.OperatingConditions;
import org.satline.charge.ScreenedCharge;
import org.satline.charge.belief.Symptom;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.fleet.ModelKnowledge.Expected;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * The one place where the library judges a window. What a sound unit of the model shows in this weather is the target
 * and what is expected. Most windows end at the library's screen; those that stand out, and all whose coils are far
 * from what the model does, go to its judge, who weighs faults too.
 */
final class WindowVerdict {
    private static final double ZERO_CELSIUS_K = Temperature.ofCelsius(0).kelvins();

    /** Standard uncertainties of what a unit of the model shows against what the model says; our choice, K. */
    private static final double UNIT_K = 1.0, DISCHARGE_K = 4;

    private static final Optional<ChargeLevel> ON_TARGET = Optional.of(ChargeLevel.ON_TARGET);

    private WindowVerdict() {}

    static void give(SettledWindow said, SystemReadings readings, float[] means) {
        ModelKnowledge knowledge = ModelKnowledge.of(said.model);
        Expected rated = knowledge.expected(said.outdoorC, WindowJudge.of(means, Channel.RETURN_WET_BULB_C));
        boolean bySuperheat = said.model.metering().judgedBy() == Criterion.SUPERHEAT;
        double target = Math.max(0, bySuperheat ? rated.superheatK() : rated.subcoolingK());
        if (!said.alike || !isOnTarget(said, knowledge, target, means)) {
            judge(said, knowledge, rated, target, readings, means);
        }
    }

    private static boolean isOnTarget(SettledWindow said, ModelKnowledge knowledge, double targetK, float[] means) {
        ChargeRow row = ChargeRow.of(knowledge.curve().refrigerant(), said.model.metering())
                .suction(pascals(means, Channel.SUCTION_KPA), kelvins(means, Channel.SUCTION_LINE_C))
                .liquid(pascals(means, Channel.LIQUID_KPA), kelvins(means, Channel.LIQUID_LINE_C))
                .read(Place.DISCHARGE_LINE, kelvins(means, Channel.DISCHARGE_LINE_C))
                .read(Place.RETURN_DRY_BULB, kelvins(means, Channel.RETURN_DRY_BULB_C))
                .read(Place.RETURN_WET_BULB, kelvins(means, Channel.RETURN_WET_BULB_C))
                .read(Place.SUPPLY_DRY_BULB, kelvins(means, Channel.SUPPLY_DRY_BULB_C))
                .read(Place.OUTDOOR_AIR, kelvins(means, Channel.OUTDOOR_C))
                .uncertainty(WindowJudge.PRESSURE_PA, WindowJudge.TEMPERATURE_K)
                .target(targetK)
                .build();
        if (knowledge.screen().screen(row) instanceof ScreenedCharge.Level found
                && found.level().equals(ON_TARGET)) {
            say(said, Outcome.ON_TARGET, Cause.NONE);
            said.probability = found.onTarget();
            return true;
        }
        return false;
    }

    private static double pascals(float[] means, Channel channel) {
        return 1000 * WindowJudge.of(means, channel);
    }

    private static double kelvins(float[] means, Channel channel) {
        return WindowJudge.of(means, channel) + ZERO_CELSIUS_K;
    }

    private static void judge(
            SettledWindow said,
            ModelKnowledge knowledge,
            Expected rated,
            double target,
            SystemReadings readings,
            float[] means) {
        double dryBulbK = WindowJudge.of(means, Channel.RETURN_DRY_BULB_C) + ZERO_CELSIUS_K;
        ChargeJudge judge = ChargeJudge.usual()
                .expecting(Symptom.SUPERHEAT, rated.superheatK(), UNIT_K)
                .expecting(Symptom.SUBCOOLING, rated.subcoolingK(), UNIT_K)
                .expecting(Symptom.EVAPORATING, rated.evaporatingK() - dryBulbK, UNIT_K)
                .expecting(Symptom.CONDENSING, rated.condensingK() - said.outdoorC - ZERO_CELSIUS_K, UNIT_K)
                .expecting(Symptom.DISCHARGE, rated.dischargeC(), DISCHARGE_K);
        ChargeQuestion question =
                ChargeQuestion.of(said.model.metering(), Optional.of(TemperatureDifference.ofKelvins(target)));
        try {
            take(
                    said,
                    judge.judge(new ChargeCase(knowledge.curve(), readings, question, OperatingConditions.unknown())));
        } catch (ImplausibleReadingException | OutOfValidityException e) {
            say(said, Outcome.IMPLAUSIBLE, Cause.SENSOR);
            said.probability = 1;
            said.causeProbability = 1;
        }
    }

    private static void take(SettledWindow said, Judgement judgement) {
        if (judgement instanceof Judgement.Decided decided) {
            said.probability = decided.probability();
            said.causeProbability = decided.probability();
            switch (decided.level()) {
                case LOW -> say(said, Outcome.LOW, Cause.UNDERCHARGE);
                case HIGH -> say(said, Outcome.HIGH, Cause.OVERCHARGE);
                case ON_TARGET -> {
                    say(said, Outcome.ON_TARGET, Cause.NONE);
                    beside(said, judgement);
                }
            }
        } else if (judgement instanceof Judgement.OtherFault other) {
            said.probability = other.probability();
            said.causeProbability = other.probability();
            say(said, Outcome.OTHER_FAULT, Cause.of(other.fault()));
        } else {
            say(said, Outcome.UNDECIDED, Cause.NONE);
            beside(said, judgement);
        }
    }

    /**
     * Coils far from what the model does, while nothing is decided against the charge: the likeliest other fault is the
     * cause.
     */
    private static void beside(SettledWindow said, Judgement judgement) {
        if (said.alike) {
            return;
        }
        judgement.evidence().faults().stream()
                .filter(each -> !each.fault().ofCharge())
                .findFirst()
                .ifPresent(each -> {
                    said.cause = Cause.of(each.fault());
                    said.causeProbability = each.probability();
                });
    }

    private static void say(SettledWindow said, Outcome outcome, Cause cause) {
        said.outcome = outcome;
        said.cause = cause;
    }
}
