package org.satline.program.exercise;

import java.util.Optional;
import java.util.stream.Stream;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Finding;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/** What a question about the charge asks, and how it is worked out. */
final class VerdictAsk {
    private static final String NO_LEVEL = "no level: these readings contradict each other";

    private final Exercise.Draft draft;
    private final Readout readout;
    private final SaturationCurve curve;
    private final LineReadings readings;
    private final MeteringDevice metering;

    VerdictAsk(
            Exercise.Draft draft,
            Readout readout,
            SaturationCurve curve,
            LineReadings readings,
            MeteringDevice metering) {
        this.draft = draft;
        this.readout = readout;
        this.curve = curve;
        this.readings = readings;
        this.metering = metering;
    }

    void write(
            Difficulty difficulty,
            Deviation deviation,
            Optional<Finding> contradiction,
            Given<TemperatureDifference> target) {
        Criterion criterion = metering.judgedBy();
        draft.rule(Tolerances.rule(metering, readout));
        String unit = ", in " + readout.differenceUnit() + "?";
        draft.part("superheat", "How large is the superheat" + unit, readout.answer(readings.superheat(curve)))
                .part("subcooling", "How large is the subcooling" + unit, readout.answer(readings.subcooling(curve)));
        Working working = new Working(draft, readout, curve);
        TemperatureDifference superheat = readings.workSuperheat(working);
        TemperatureDifference subcooling = readings.workSubcooling(working);
        TemperatureDifference measured = criterion == Criterion.SUPERHEAT ? superheat : subcooling;
        TemperatureDifference value = deviation.value();
        if (difficulty == Difficulty.PRACTISED) {
            draft.part(
                    criterion.label() + ", other unit",
                    "What is the " + criterion.label() + " in "
                            + readout.other().differenceUnit() + "?",
                    readout.other().answer(measured));
            working.converted(criterion.label(), measured);
        }
        draft.part(
                        "deviation",
                        "How far is the quantity that shows the charge from its target (measured less target)" + unit,
                        readout.answer(value))
                .sum(
                        criterion.label() + " less target",
                        "d = measured - target",
                        readout.text(measured) + " - " + target.text(),
                        readout.text(value));
        String level = contradiction.isPresent() ? NO_LEVEL : words(deviation.level());
        draft.part(
                        "level",
                        "Is the charge low, on target or high, or do these readings allow no level?",
                        Answer.Words.oneOf(
                                level,
                                Stream.concat(
                                                Stream.of(ChargeLevel.values()).map(VerdictAsk::words),
                                                Stream.of(NO_LEVEL))
                                        .toList()))
                .sum(
                        "level",
                        "d against the band",
                        readout.text(value) + " against +/- " + readout.text(deviation.tolerance()),
                        level);
        if (difficulty != Difficulty.EXPERIENCED) {
            advice(draft, advice(deviation.level(), contradiction));
        }
        if (criterion == Criterion.SUPERHEAT) {
            draft.slip(
                    "With a fixed orifice high superheat means too little refrigerant; whoever judges it as subcooling gets the level upside"
                            + " down.");
        }
    }

    static String words(ChargeLevel level) {
        return level.label().replace('-', ' ');
    }

    /** Asked last: with doubtful instruments it depends on how sure the level is. */
    static void advice(Exercise.Draft draft, String advice) {
        draft.part(
                "advice",
                "What is to be done?",
                Answer.Words.oneOf(
                        advice,
                        Stream.of(ChargeLevel.values())
                                .map(level -> advice(level, Optional.empty()))
                                .toList()));
    }

    static String advice(ChargeLevel level, Optional<Finding> contradiction) {
        return contradiction
                .map(finding -> "no refrigerant is moved: " + Bench.WORDS.of(finding))
                .orElseGet(() -> Bench.WORDS.message("charge.levelAdvice." + level.word()));
    }
}
