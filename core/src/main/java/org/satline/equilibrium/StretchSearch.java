package org.satline.equilibrium;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.satline.equation.FixedComposition;
import org.satline.equilibrium.IncipientPhase.Specified;

/**
 * Searches a stretch of an isotherm or isobar through the two-phase region for every state at which a quantity takes a
 * value, where that quantity turns on the way, as the vapour fraction does where the line leaves the region as it
 * entered it. One thread at a time.
 */
final class StretchSearch {
    /** Where the stretch is looked at, as shares of it: a dissolved gas changes much close to an end. */
    private static final double[] SHARES = shares();

    private static final int PIECES = 48;
    private static final int HALVINGS = 60;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Rounds of golden sections for a turn: its place to 1e-6 of the piece, its value to the square of that. */
    private static final int SECTIONS = 30;
    /** How well what is asked for is met: a fraction as it is, entropies in R, energies in RT. */
    private static final double MET = 1e-9;

    private final FixedComposition composition;
    private final StateSolver solver;
    private final TwoPhaseStretch stretch;
    private final TwoPhaseStretch.Values positions;
    private final boolean isotherm;
    private final double fixedValue;
    private final Given asked;

    /** A state of the stretch: its place, what is asked of it, and its unknowns. */
    @SuppressWarnings("ArrayRecordComponent") // private, never compared
    private record Sample(double position, double value, double[] x) {}

    StretchSearch(
            FixedComposition composition,
            StateSolver solver,
            Specified fixed,
            double fixedValue,
            Given asked,
            StretchEnd from,
            StretchEnd to) {
        this.composition = composition;
        this.solver = solver;
        this.isotherm = fixed == Specified.TEMPERATURE;
        this.fixedValue = fixedValue;
        this.asked = asked;
        stretch = new TwoPhaseStretch(composition, from, to);
        positions = new TwoPhaseStretch.Values(
                isotherm ? Given.PRESSURE : Given.TEMPERATURE,
                Math.log(isotherm ? from.pressure() : from.temperature()),
                Math.log(isotherm ? to.pressure() : to.temperature()));
    }

    private static double[] shares() {
        double[] near = {1e-6, 1e-5, 1e-4, 3e-4, 1e-3, 3e-3, 0.01};
        return DoubleStream.concat(
                        Arrays.stream(near).flatMap(s -> DoubleStream.of(s, 1 - s)),
                        IntStream.range(1, PIECES).mapToDouble(k -> k / (double) PIECES))
                .sorted()
                .toArray();
    }

    /**
     * Finds the states.
     *
     * @param value what is asked for
     * @param atFrom the same at the first end
     * @param atTo and at the last
     */
    List<Solution> states(double value, double atFrom, double atTo, StretchEnd from, StretchEnd to) {
        List<Sample> samples = samples(atFrom, atTo, from, to);
        addTurns(samples, value);
        List<Solution> found = new ArrayList<>();
        for (int k = 0; k + 1 < samples.size(); k++) {
            Sample a = samples.get(k);
            Sample b = samples.get(k + 1);
            if ((a.value - value) * (b.value - value) <= 0) {
                Solution between = between(a, b, value);
                if (between != null) {
                    found.add(between);
                }
            }
        }
        return found;
    }

    private List<Sample> samples(double atFrom, double atTo, StretchEnd from, StretchEnd to) {
        List<Sample> samples = new ArrayList<>();
        samples.add(new Sample(positions.atFrom(), atFrom, from.x()));
        for (double share : SHARES) {
            Sample sample = sample(positions.atFrom() + (positions.atTo() - positions.atFrom()) * share);
            if (sample != null) {
                samples.add(sample);
            }
        }
        samples.add(new Sample(positions.atTo(), atTo, to.x()));
        return samples;
    }

    /** The least and the largest value on the stretch, its turns included. */
    Range reached(double atFrom, double atTo, StretchEnd from, StretchEnd to) {
        List<Sample> samples = samples(atFrom, atTo, from, to);
        return new Range(extreme(samples, 1), extreme(samples, -1));
    }

    private double extreme(List<Sample> samples, double side) {
        int at = 0;
        for (int k = 1; k < samples.size(); k++) {
            at = side * samples.get(k).value < side * samples.get(at).value ? k : at;
        }
        double extreme = samples.get(at).value;
        if (at == 0 || at == samples.size() - 1) {
            return extreme;
        }
        Sample turn =
                turn(samples.get(at - 1).position, samples.get(at + 1).position, side * Double.NEGATIVE_INFINITY, side);
        return turn == null ? extreme : side * Math.min(side * extreme, side * turn.value);
    }

    private @Nullable Sample sample(double position) {
        TwoPhaseNewton there = stretch.solve(given(), Math.log(fixedValue), positions.asked(), position, positions);
        if (there == null) {
            there = byStability(Math.exp(position));
        }
        return there == null ? null : new Sample(position, valueOf(there), there.x.clone());
    }

    private Given given() {
        return isotherm ? Given.TEMPERATURE : Given.PRESSURE;
    }

    private double valueOf(TwoPhaseNewton split) {
        return asked == Given.VAPOUR_FRACTION ? split.vapourMassFraction() : split.overall(asked);
    }

    private @Nullable TwoPhaseNewton byStability(double at) {
        try {
            return (isotherm
                            ? solver.atTemperaturePressure(fixedValue, at)
                            : solver.atTemperaturePressure(at, fixedValue))
                    .split();
        } catch (ConvergenceException besideTheCriticalPoint) {
            return null;
        }
    }

    /** Adds the place of each turn whose neighbours lie on the same side of the value as it does. */
    private void addTurns(List<Sample> samples, double value) {
        for (int k = 1; k + 1 < samples.size(); k++) {
            double before = samples.get(k - 1).value - value;
            double here = samples.get(k).value - value;
            double after = samples.get(k + 1).value - value;
            boolean nearest = Math.abs(here) <= Math.abs(before) && Math.abs(here) <= Math.abs(after);
            if (nearest && before * here > 0 && here * after > 0) {
                Sample turn = turn(samples.get(k - 1).position, samples.get(k + 1).position, value, Math.signum(here));
                if (turn != null && (turn.value - value) * here <= 0) {
                    samples.add(turn.position < samples.get(k).position ? k : k + 1, turn);
                    k++;
                }
            }
        }
    }

    /** The least of {@code side (q - value)} between two places, or the first state beyond the value. */
    private @Nullable Sample turn(double low, double high, double value, double side) {
        double a = low;
        double b = high;
        Sample least = null;
        Sample left = sample(b - GOLDEN * (b - a));
        Sample right = sample(a + GOLDEN * (b - a));
        for (int i = 0; i < SECTIONS && left != null && right != null; i++) {
            boolean leftIsLess = side * left.value < side * right.value;
            least = leftIsLess ? left : right;
            if (side * (least.value - value) <= 0) {
                return least;
            }
            if (leftIsLess) {
                b = right.position;
                right = left;
                left = sample(b - GOLDEN * (b - a));
            } else {
                a = left.position;
                left = right;
                right = sample(a + GOLDEN * (b - a));
            }
        }
        return least;
    }

    private @Nullable Solution between(Sample a, Sample b, double value) {
        for (double[] guess : new double[][] {a.x, b.x}) {
            TwoPhaseNewton split = new TwoPhaseNewton(composition.mixture(), composition.moleFractions());
            System.arraycopy(guess, 0, split.x, 0, split.x.length);
            if (split.solve(given(), Math.log(fixedValue), asked, value) && holds(split, a, b)) {
                return Solution.of(split);
            }
        }
        return halved(a, b, value);
    }

    private boolean holds(TwoPhaseNewton split, Sample a, Sample b) {
        double position = Math.log(isotherm ? split.pressure() : split.temperature());
        return position >= Math.min(a.position, b.position) - Math.ulp(a.position)
                && position <= Math.max(a.position, b.position) + Math.ulp(a.position);
    }

    /** Close to a turn the value tells the place badly: halves the place instead. */
    private @Nullable Solution halved(Sample a, Sample b, double value) {
        Sample low = a;
        Sample high = b;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low.position + high.position) / 2;
            if (middle == low.position || middle == high.position) {
                break;
            }
            Sample there = sample(middle);
            if (there == null) {
                return null;
            }
            if ((there.value - value) * (low.value - value) > 0) {
                low = there;
            } else {
                high = there;
            }
        }
        TwoPhaseNewton split =
                stretch.solve(given(), Math.log(fixedValue), positions.asked(), high.position, positions);
        return split != null && met(split, value) ? Solution.of(split) : null;
    }

    /** Where the states of a stretch jump, as beside the critical point, halving ends beside the jump. */
    private boolean met(TwoPhaseNewton split, double value) {
        double scale = switch (asked) {
            case VAPOUR_FRACTION -> 1;
            case ENTROPY -> composition.gasConstant();
            default -> composition.gasConstant() * split.temperature();
        };
        return Math.abs(valueOf(split) - value) <= MET * scale;
    }
}
