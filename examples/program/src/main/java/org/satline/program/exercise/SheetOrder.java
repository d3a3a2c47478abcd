package org.satline.program.exercise;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.quantity.UnitSystem;

/**
 * What a teacher asks for. Immutable, thread-safe.
 *
 * @param seed same seed and same wishes give the same sheet
 * @param count how many exercises, [1, 100]
 * @param difficulty how hard; empty for a sheet that rises through all three
 * @param topics topics in the wanted order, taken in turn; not empty
 * @param units family of units; empty to draw it for each exercise
 * @param version which of the sheets for one class
 */
public record SheetOrder(
        long seed,
        int count,
        Optional<Difficulty> difficulty,
        List<Topic> topics,
        Optional<UnitSystem> units,
        Version version) {
    /** Most exercises on one sheet. */
    public static final int MOST = 100;

    /** Sheets for neighbours in a class: the same topics, grades and units in the same order, with other figures. */
    public enum Version {
        /** The first. */
        A,
        /** The second. */
        B,
        /** The third. */
        C,
        /** The fourth. */
        D
    }

    /** {@inheritDoc} */
    public SheetOrder {
        Objects.requireNonNull(difficulty, "difficulty");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(version, "version");
        topics = List.copyOf(topics);
        if (!(count >= 1 && count <= MOST)) {
            throw new IllegalArgumentException(
                    "count " + count + " is outside [1, " + MOST + "]; ask for several sheets with different seeds");
        }
        if (topics.isEmpty()) {
            throw new IllegalArgumentException("no topic is given; use one or more of " + Topic.labels());
        }
    }

    /**
     * The first version of a sheet.
     *
     * @param seed same seed and same wishes give the same sheet
     * @param count how many exercises, [1, 100]
     * @param difficulty how hard; empty for a sheet that rises through all three
     * @param topics topics in the wanted order, taken in turn; not empty
     * @param units family of units; empty to draw it for each exercise
     */
    public SheetOrder(
            long seed, int count, Optional<Difficulty> difficulty, List<Topic> topics, Optional<UnitSystem> units) {
        this(seed, count, difficulty, topics, units, Version.A);
    }

    /**
     * The same wishes with other figures.
     *
     * @param other which version
     * @return its order
     */
    public SheetOrder as(Version other) {
        return new SheetOrder(seed, count, difficulty, topics, units, other);
    }

    /**
     * One exercise of every topic, rising in difficulty, units drawn.
     *
     * @param seed the seed
     * @return the order
     */
    public static SheetOrder usual(long seed) {
        List<Topic> all = List.of(Topic.values());
        return new SheetOrder(seed, all.size(), Optional.empty(), all, Optional.empty());
    }
}
