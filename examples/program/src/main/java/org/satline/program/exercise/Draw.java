package org.satline.program.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Draws numbers and choices; same seed, same draws on every machine. For one thread. */
final class Draw {
    private final SplittableRandom random;

    Draw(SplittableRandom random) {
        this.random = random;
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /** A whole number in [low, high]. */
    int whole(int low, int high) {
        return random.nextInt(low, high + 1);
    }

    boolean chance(double share) {
        return random.nextDouble() < share;
    }

    <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    <T> List<T> shuffled(List<T> list) {
        List<T> rest = new ArrayList<>(list);
        List<T> drawn = new ArrayList<>();
        while (!rest.isEmpty()) {
            drawn.add(rest.remove(random.nextInt(rest.size())));
        }
        return drawn;
    }

    /** Draws of its own, so that one exercise does not shift the next. */
    Draw split() {
        return new Draw(random.split());
    }
}
