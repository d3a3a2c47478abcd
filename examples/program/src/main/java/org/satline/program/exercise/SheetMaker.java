package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Draws sheets; keeps what is costly to make from one sheet to the next. Thread-safe. */
final class SheetMaker {
    /** Far more draws than any topic needs; reaching it is a fault of the maker. */
    private static final int MOST_DRAWS = 5000;

    private final Map<Topic, Maker> makers;

    SheetMaker() {
        Bench bench = new Bench();
        makers = Map.of(
                Topic.SATURATION, new SaturationMaker(bench),
                Topic.MARGINS, new MarginsMaker(bench),
                Topic.GLIDE, new GlideMaker(bench),
                Topic.ALTITUDE, new AltitudeMaker(bench),
                Topic.FILL_LIMIT, new FillLimitMaker(bench),
                Topic.FLOW, new FlowMaker(bench),
                Topic.PURGE, new PurgeMaker(bench),
                Topic.VERDICT, new VerdictMaker(bench),
                Topic.NEXT_STEP, new NextStepMaker(bench));
    }

    ExerciseSheet sheet(SheetOrder order) {
        return sheet(order, ProgramWording.of(Language.ENGLISH, UnitSystem.US));
    }

    ExerciseSheet sheet(SheetOrder order, Wording words) {
        Draw draw = new Draw(new SplittableRandom(order.seed()));
        // A rising sheet would otherwise give each topic always the same grade.
        List<Topic> topics = order.difficulty().isPresent() ? order.topics() : draw.shuffled(order.topics());
        List<Exercise> exercises = new ArrayList<>();
        for (int i = 0; i < order.count(); i++) {
            Topic topic = topics.get(i % topics.size());
            Difficulty grade = order.difficulty().orElse(rising((double) i / order.count()));
            Draw own = draw.split();
            boolean us = own.chance(0.5);
            Readout readout = new Readout(order.units().orElse(us ? UnitSystem.US : UnitSystem.SI), words);
            exercises.add(exercise(figures(own, grade, order.version()), topic, grade, readout));
        }
        return new ExerciseSheet(order, exercises, words);
    }

    /** The grade at a share of the way through a sheet. */
    private static Difficulty rising(double share) {
        if (share < 1.0 / 3) {
            return Difficulty.STARTING;
        }
        return share < 2.0 / 3 ? Difficulty.PRACTISED : Difficulty.EXPERIENCED;
    }

    /** Grades and versions never share readings: neither a student's neighbour nor last week's sheet gives an answer away. */
    @SuppressWarnings("EnumOrdinal") // a stretch of draws for each pair of grade and version
    private static Draw figures(Draw own, Difficulty grade, SheetOrder.Version version) {
        Draw figures = own;
        int others = grade.ordinal() * SheetOrder.Version.values().length + version.ordinal();
        for (int i = 0; i < others; i++) {
            figures = own.split();
        }
        return figures;
    }

    private Exercise exercise(Draw draw, Topic topic, Difficulty difficulty, Readout readout) {
        Maker maker = makers.get(topic);
        for (int i = 0; maker != null && i < MOST_DRAWS; i++) {
            Optional<Exercise> drawn = maker.draw(draw, readout, difficulty);
            if (drawn.isPresent()) {
                return drawn.get();
            }
        }
        throw new IllegalStateException("no exercise on " + topic.label() + ", " + difficulty.label() + ", came up");
    }
}
