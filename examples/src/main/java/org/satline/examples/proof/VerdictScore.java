package org.satline.examples.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.satline.charge.ChargeDiagnosis;
import org.satline.charge.ChargeLevel;
import org.satline.charge.Deviation;
import org.satline.charge.Diagnosis;
import org.satline.charge.OperatingConditions;
import org.satline.saturation.SaturationCurve;

/** What the verdict says against what is true: confusion matrix, wrong advice, reliability of the stated probabilities. */
final class VerdictScore {
    private static final List<String> TRUTHS = List.of("low", "on-target", "high", "other fault");
    private static final List<String> ANSWERS =
            List.of("low", "on-target", "high", "undecided", "not-charge", "refused");
    private static final double[] EDGES = {0, 0.05, 0.2, 0.4, 0.6, 0.8, 0.95, 1.0000001};

    private final Map<String, int[]> counts = new TreeMap<>();
    private final int[] stated = new int[EDGES.length - 1];
    private final double[] sum = new double[EDGES.length - 1];
    private final int[] came = new int[EDGES.length - 1];
    private int visits;
    private int wrong;
    private int faulty;
    private int wrongOnFault;

    void add(Visit visit, SaturationCurve curve) {
        String truth = visit.faulty() ? "other fault" : visit.truth().label();
        String answer = "refused";
        Optional<Deviation> deviation = Optional.empty();
        try {
            Diagnosis diagnosis = ChargeDiagnosis.usual()
                    .of(
                            curve,
                            visit.readings(),
                            visit.question(),
                            OperatingConditions.unknown().withOutdoorMinimumMet(true));
            answer = diagnosis.label();
            deviation = diagnosis.evidence().deviation();
        } catch (IllegalArgumentException e) {
            answer = "refused"; // readings that no system can show: an answer of its own
        }
        visits++;
        counts.computeIfAbsent(truth, name -> new int[ANSWERS.size()])[ANSWERS.indexOf(answer)]++;
        boolean moves = answer.equals("low") || answer.equals("high");
        faulty += visit.faulty() ? 1 : 0;
        if (moves && !answer.equals(truth)) {
            wrong++;
            wrongOnFault += visit.faulty() ? 1 : 0;
        }
        deviation.ifPresent(found -> reliability(visit.truth(), found));
    }

    private void reliability(ChargeLevel truth, Deviation deviation) {
        for (ChargeLevel level : ChargeLevel.values()) {
            double probability = deviation.probability(level);
            int bin = 0;
            while (probability >= EDGES[bin + 1]) {
                bin++;
            }
            stated[bin]++;
            sum[bin] += probability;
            came[bin] += truth == level ? 1 : 0;
        }
    }

    String text() {
        StringBuilder text = new StringBuilder();
        line(text, "Verdict on %d simulated visits, risks of 5 %%", visits);
        line(text, "");
        line(text, "%-12s" + "%11s".repeat(ANSWERS.size()), withFirst("truth", ANSWERS));
        for (String truth : TRUTHS) {
            int[] row = counts.getOrDefault(truth, new int[ANSWERS.size()]);
            List<Object> cells = new ArrayList<>();
            cells.add(truth);
            for (int count : row) {
                cells.add(count);
            }
            line(text, "%-12s" + "%11d".repeat(ANSWERS.size()), cells.toArray());
        }
        line(text, "");
        line(
                text,
                "wrong charge advice (to move refrigerant where the truth is another): %d of %d, %.1f %%; of these on another fault %d of %d",
                wrong,
                visits,
                100.0 * wrong / Math.max(1, visits),
                wrongOnFault,
                faulty);
        line(text, "");
        line(text, "Reliability of the stated probabilities: truth is the level that exact instruments would find");
        line(text, "%-18s%10s%16s%16s", "stated", "cases", "mean stated", "came true");
        for (int i = 0; i < stated.length; i++) {
            line(
                    text,
                    "%-18s%10d%14.1f %%%14.1f %%",
                    String.format(Locale.ROOT, "%.0f to %.0f %%", 100 * EDGES[i], 100 * Math.min(1, EDGES[i + 1])),
                    stated[i],
                    100 * sum[i] / Math.max(1, stated[i]),
                    100.0 * came[i] / Math.max(1, stated[i]));
        }
        return text.toString();
    }

    private static Object[] withFirst(String first, List<String> rest) {
        List<Object> all = new ArrayList<>();
        all.add(first);
        all.addAll(rest);
        return all.toArray();
    }

    static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
