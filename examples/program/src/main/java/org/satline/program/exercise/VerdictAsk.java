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
    private static final String NO_LEVEL = "exercise.no-level-these-readings-contradict";

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
        String unit = readout.say("exercise.in", readout.differenceUnit());
        draft.part(
                        "superheat",
                        readout.say("exercise.how-large-is-the-superheat", unit),
                        readout.answer(readings.superheat(curve)))
                .part(
                        "subcooling",
                        readout.say("exercise.how-large-is-the-subcooling", unit),
                        readout.answer(readings.subcooling(curve)));
        Working working = new Working(draft, readout, curve);
        TemperatureDifference superheat = readings.workSuperheat(working);
        TemperatureDifference subcooling = readings.workSubcooling(working);
        TemperatureDifference measured = criterion == Criterion.SUPERHEAT ? superheat : subcooling;
        TemperatureDifference value = deviation.value();
        if (difficulty == Difficulty.PRACTISED) {
            draft.part(
                    criterion.label() + ", other unit",
                    readout.say(
                            "exercise.what-is-the-in",
                            readout.words().name(criterion),
                            readout.other().differenceUnit()),
                    readout.other().answer(measured));
            working.converted(readout.words().name(criterion), measured);
        }
        draft.part("deviation", readout.say("exercise.how-far-is-the-quantity-that", unit), readout.answer(value))
                .sum(
                        readout.say("exercise.less-target", readout.words().name(criterion)),
                        readout.say("exercise.d-measured-target"),
                        readout.text(measured) + " - " + target.text(),
                        readout.text(value));
        String level = contradiction.isPresent() ? readout.say(NO_LEVEL) : words(readout, deviation.level());
        draft.part(
                        "level",
                        readout.say("exercise.is-the-charge-low-on"),
                        Answer.Words.oneOf(
                                level,
                                Stream.concat(
                                                Stream.of(ChargeLevel.values()).map(each -> words(readout, each)),
                                                Stream.of(readout.say(NO_LEVEL)))
                                        .toList()))
                .sum(
                        readout.say("exercise.level"),
                        readout.say("exercise.d-against-the-band"),
                        readout.say("exercise.against", readout.text(value), readout.text(deviation.tolerance())),
                        level);
        if (difficulty != Difficulty.EXPERIENCED) {
            advice(readout, draft, advice(readout, deviation.level(), contradiction));
        }
        if (criterion == Criterion.SUPERHEAT) {
            draft.slip(readout.say("exercise.with-a-fixed-orifice-high"));
        }
    }

    static String words(Readout readout, ChargeLevel level) {
        return readout.words().name(level);
    }

    /** Asked last: with doubtful instruments it depends on how sure the level is. */
    static void advice(Readout readout, Exercise.Draft draft, String advice) {
        draft.part(
                "advice",
                readout.say("exercise.what-is-to-be-done"),
                Answer.Words.oneOf(
                        advice,
                        Stream.of(ChargeLevel.values())
                                .map(level -> advice(readout, level, Optional.empty()))
                                .toList()));
    }

    static String advice(Readout readout, ChargeLevel level, Optional<Finding> contradiction) {
        return contradiction
                .map(finding -> readout.say(
                        "exercise.no-refrigerant-is-moved", readout.words().of(finding)))
                .orElseGet(() -> readout.words().message("charge.levelAdvice." + level.word()));
    }
}
