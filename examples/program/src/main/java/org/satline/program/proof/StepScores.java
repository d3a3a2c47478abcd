package org.satline.program.proof;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * All ways to charge side by side on the same plants, those that follow the charge from the start apart from those
 * that do not.
 */
final class StepScores {
    private static final double FARTHEST = 0.3;

    private final Map<Way, StepScore> following = ways();
    private final Map<Way, StepScore> pinned = ways();

    private static Map<Way, StepScore> ways() {
        Map<Way, StepScore> ways = new EnumMap<>(Way.class);
        for (Way way : Way.values()) {
            ways.put(way, new StepScore(way));
        }
        return ways;
    }

    /** Whether the steps are scored on a visit: nothing but the charge is wrong, and that by at most 30 %. */
    static boolean takes(Visit visit) {
        return !visit.faulty() && Math.abs(visit.chargeError()) <= FARTHEST;
    }

    /** As many plants of the second kind as asked for that begin off target. */
    static StepScores ofSaturatingPlants(long seed, int plants) {
        StepScores scores = new StepScores();
        int found = 0;
        SplittableRandom seeds = new SplittableRandom(seed);
        while (found < plants) {
            long own = seeds.nextLong();
            found += scores.add(() -> new SaturatingPlant(new Random(own))) ? 1 : 0;
        }
        return scores;
    }

    /** Charges the plant in every way unless it begins within its band; tells whether it did. */
    boolean add(Supplier<Plant> made) {
        Plant plant = made.get();
        if (Math.abs(plant.deviationK()) <= plant.toleranceK()) {
            return false;
        }
        (plant.follows() ? following : pinned).values().forEach(score -> score.add(made));
        return true;
    }

    StepScore following(Way way) {
        return following.getOrDefault(way, new StepScore(way));
    }

    StepScore pinned(Way way) {
        return pinned.getOrDefault(way, new StepScore(way));
    }

    String text() {
        StringBuilder text = new StringBuilder("superheat or subcooling follows the charge\n");
        text.append(StepScore.head());
        following.values().forEach(score -> text.append(score.text()));
        text.append("\nit stands at zero in the beginning\n").append(StepScore.head());
        pinned.values().forEach(score -> text.append(score.text()));
        return text.toString();
    }
}
