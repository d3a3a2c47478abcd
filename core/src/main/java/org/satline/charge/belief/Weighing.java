package org.satline.charge.belief;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Deviation;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.UncertaintyBudget;

/**
 * Bayes' rule over charge error and fault together, with all clues as one likelihood: a multivariate Student
 * distribution about the mean of the systems of a
 * hypothesis, with their scatter, what measured machines scatter beyond it, and the errors of the instruments, shared
 * ones as shared.
 */
final class Weighing {
    /**
     * Degrees of freedom: readings two or three times farther out than the simulation thinks are seen on real
     * machines. Our choice.
     */
    private static final double FREEDOM = 6;
    /** Share of the scatter over systems that is left for one known unit; our choice. */
    private static final double SHARE_OF_A_UNIT = 0.4;
    /**
     * Squared distance in standard deviations, by the number of clues, that one reading in ten thousand of a system
     * of some hypothesis exceeds (chi-square).
     */
    private static final double[] FARTHEST = {0, 15.1, 18.4, 21.1, 23.5, 25.7, 27.9, 29.9};
    /** Below that the judged quantity stands at zero, K; common practice, no source. */
    private static final double LEAST_SIGNAL_K = 0.5;
    /** Variance between hypotheses over that within them from which a reading is worth asking for; our choice. */
    private static final double LEAST_TELLING = 0.1;
    /** Standard uncertainty with which such a reading would come, K; common practice, no source. */
    private static final double USUAL_READING_K = 1;

    private final Behaviour behaviour;
    private final int[] used;
    private final double[] seen;
    private final double[] share;
    private final double[] around;
    private final double[] instruments;
    private final boolean airflowMeasured;
    private double nearest = Double.POSITIVE_INFINITY;

    private Weighing(Behaviour behaviour, Clues clues, boolean airflowMeasured) {
        this.behaviour = behaviour;
        this.airflowMeasured = airflowMeasured;
        Symptom[] all = Symptom.values();
        int[] found = new int[all.length];
        int count = 0;
        for (Symptom clue : all) {
            if (clues.get(clue).isPresent()) {
                found[count++] = clue.column();
            }
        }
        used = Arrays.copyOf(found, count);
        around = new double[Behaviour.AROUND];
        for (Around each : Around.values()) {
            around[each.column()] = clues.around(each).kelvins() - each.usual();
        }
        seen = new double[count];
        share = new double[count];
        UncertaintyBudget[] errors = new UncertaintyBudget[count];
        for (int i = 0; i < count; i++) {
            Clues.Clued clued = clues.get(all[used[i]]).orElseThrow();
            seen[i] = clued.kelvins();
            UncertaintyBudget error = clued.budget();
            for (Around each : Around.values()) {
                double slope = behaviour.sound().slope(used[i], each.column());
                error = error.minus(clues.around(each).budget().scaled(slope));
            }
            errors[i] = error;
            known(i, clues.sound(all[used[i]]));
        }
        instruments = new double[count * (count + 1) / 2];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                instruments[Behaviour.at(i, j)] = errors[i].covariance(errors[j]);
            }
        }
    }

    /**
     * A unit that is known stands off the mean of all systems by a fixed amount, whatever is wrong with it, and
     * scatters less: by the doubt of what is known
     * and by a share of the scatter, since units differ in their answer to faults too.
     */
    private void known(int i, Optional<Weighed.Expected> sound) {
        share[i] = 1;
        sound.ifPresent(unit -> {
            Behaviour.Cell usual = behaviour.sound();
            seen[i] += expected(usual, i) - unit.kelvins();
            double scatter = Math.sqrt(usual.scatter(used[i], used[i]));
            share[i] = Math.min(1, Math.hypot(unit.standardUncertaintyK() / scatter, SHARE_OF_A_UNIT));
        });
    }

    private double expected(Behaviour.Cell cell, int i) {
        double expected = cell.mean(used[i]);
        for (int k = 0; k < around.length; k++) {
            expected += cell.slope(used[i], k) * around[k];
        }
        return expected;
    }

    /** What is believed, what each choice costs, and what would change it. */
    static Weighed of(Weighed.Observed it) {
        Clues clues = Clues.of(it);
        Weighing weighing = new Weighing(Behaviour.of(it.metering()), clues, it.airflowMeasured());
        double[] posterior = weighing.posterior();
        ChargeBelief belief = weighing.belief(it, posterior);
        return new Weighed(
                belief,
                it.deviation().isPresent() ? Losses.weigh(belief) : List.of(),
                weighing.mostTelling(posterior, clues).flatMap(clue -> clue.missing(it.readings())),
                weighing.nearest <= FARTHEST[weighing.used.length]);
    }

    /**
     * The clue that was not read and by which the hypotheses that are left differ most, in standard deviations within
     * them.
     */
    private Optional<Symptom> mostTelling(double[] posterior, Clues clues) {
        Optional<Symptom> best = Optional.empty();
        double most = LEAST_TELLING;
        for (Symptom clue : Symptom.values()) {
            if (clues.get(clue).isPresent()) {
                continue;
            }
            int which = clue.column();
            double mean = 0;
            double square = 0;
            double within = USUAL_READING_K * USUAL_READING_K;
            for (int i = 0; i < posterior.length; i++) {
                Behaviour.Cell cell = behaviour.cells().get(i);
                mean += posterior[i] * cell.mean(which);
                square += posterior[i] * cell.mean(which) * cell.mean(which);
                within += posterior[i] * cell.scatter(which, which);
            }
            double telling = (square - mean * mean) / within;
            if (telling > most) {
                most = telling;
                best = Optional.of(clue);
            }
        }
        return best;
    }

    private double[] posterior() {
        List<Behaviour.Cell> cells = behaviour.cells();
        double[] logs = new double[cells.size()];
        double[] triangle = new double[instruments.length];
        double[] off = new double[used.length];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < logs.length; i++) {
            logs[i] = cells.get(i).logPrior() + logLikelihood(cells.get(i), triangle, off);
            if (airflowMeasured && cells.get(i).ofAirflow()) {
                logs[i] += Math.log(Priors.value("low airflow though measured"));
            }
            most = Math.max(most, logs[i]);
        }
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            logs[i] = Math.exp(logs[i] - most);
            sum += logs[i];
        }
        for (int i = 0; i < logs.length; i++) {
            logs[i] /= sum;
        }
        return logs;
    }

    private double logLikelihood(Behaviour.Cell cell, double[] triangle, double[] off) {
        int n = used.length;
        for (int i = 0; i < n; i++) {
            off[i] = seen[i] - expected(cell, i);
            for (int j = 0; j <= i; j++) {
                triangle[Behaviour.at(i, j)] =
                        share[i] * share[j] * cell.scatter(used[i], used[j]) + instruments[Behaviour.at(i, j)];
            }
        }
        double logDeterminant = 0;
        double distance = 0;
        for (int i = 0; i < n; i++) { // Cholesky, and forward substitution on the way
            int row = i * (i + 1) / 2;
            for (int j = 0; j <= i; j++) {
                double sum = triangle[row + j];
                int other = j * (j + 1) / 2;
                for (int k = 0; k < j; k++) {
                    sum -= triangle[row + k] * triangle[other + k];
                }
                triangle[row + j] = i == j ? Math.sqrt(sum) : sum / triangle[other + j];
            }
            double rest = off[i];
            for (int k = 0; k < i; k++) {
                rest -= triangle[row + k] * off[k];
            }
            off[i] = rest / triangle[row + i];
            distance += off[i] * off[i];
            logDeterminant += Math.log(triangle[row + i]);
        }
        nearest = Math.min(nearest, distance);
        return -logDeterminant - (FREEDOM + n) / 2 * Math.log1p(distance / FREEDOM);
    }

    /**
     * Without another fault the level is that of the deviation itself and of what the field knows beforehand; with
     * one the deviation is partly the fault's, and the charge error of the hypothesis says
     * it, with the response of a typical system. So it does where the judged quantity stands at zero and follows the
     * charge no longer.
     */
    private ChargeBelief belief(Weighed.Observed observed, double[] posterior) {
        MeteringDevice metering = observed.metering();
        Optional<Deviation> deviation = observed.deviation();
        double sound = 0;
        double low = 0;
        double high = 0;
        double plated = 0;
        double mean = 0;
        double square = 0;
        Map<Fault, Double> faults = new EnumMap<>(Fault.class);
        boolean follows = deviation
                .filter(it -> it.measured().kelvins() > Math.max(LEAST_SIGNAL_K, it.standardUncertaintyK())
                        || it.target().kelvins() <= it.tolerance().kelvins()
                        || it.likeliest() != ChargeLevel.ON_TARGET)
                .isPresent();
        double beside = Priors.value("level beside a fault at " + metering.label());
        double band = observed.tolerance().kelvins() / Priors.responseK(metering);
        for (int i = 0; i < posterior.length; i++) {
            Behaviour.Cell cell = behaviour.cells().get(i);
            double p = posterior[i];
            cell.fault().ifPresent(fault -> faults.merge(fault, p, Double::sum));
            if (cell.fault().filter(fault -> fault == Fault.ANOTHER_REFRIGERANT).isPresent()) {
                continue;
            }
            plated += p;
            mean += p * cell.chargeError();
            square += p * cell.chargeError() * cell.chargeError();
            if (cell.fault().isEmpty() && follows) {
                sound += p;
            } else {
                double trust = cell.fault().isEmpty() ? 1 : beside;
                low += p * Priors.mixed(trust, Priors.beyond(-cell.chargeError(), band), "under");
                high += p * Priors.mixed(trust, Priors.beyond(cell.chargeError(), band), "over");
            }
        }
        if (follows) {
            SoundLevels levels = SoundLevels.of(metering, deviation.orElseThrow());
            low += sound * levels.low();
            high += sound * levels.high();
        }
        double centre = plated > 0 ? mean / plated : 0;
        double variance = plated > 0 ? square / plated - centre * centre : 0;
        faults.put(Fault.UNDERCHARGE, low);
        faults.put(Fault.OVERCHARGE, high);
        return new ChargeBelief(
                Math.min(1, low),
                Math.max(0, plated - low - high),
                Math.min(1, high),
                centre,
                Math.sqrt(Math.max(0, variance)),
                faults);
    }
}
