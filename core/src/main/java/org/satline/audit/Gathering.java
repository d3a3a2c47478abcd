package org.satline.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.TreeMap;
import java.util.TreeSet;
import org.satline.audit.AuditSummary.Bias;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.answer.Heard;
import org.satline.audit.cause.CauseFinder;
import org.satline.audit.cause.Findings;
import org.satline.audit.cause.RowSample;

/** What an audit keeps of its rows as they pass by: counts, sums and samples, however many rows there are. Not thread-safe. */
final class Gathering {
    private static final Comparator<AuditCase> WORST_FIRST = Comparator.comparingDouble(
                    (AuditCase outside) -> -outside.comparison().severity())
            .thenComparing(outside -> outside.row().id())
            .thenComparing(outside -> outside.row().toString());

    private int rows;
    private int comparable;
    private int outside;
    private final Map<String, ConstantSum> constants = new TreeMap<>();
    private final PriorityQueue<AuditCase> worst = new PriorityQueue<>(WORST_FIRST.reversed());
    private final Map<String, Map<AuditedQuantity, BiasSum>> biases = new TreeMap<>();
    private final Map<String, RowSample> outsiders = new TreeMap<>();
    private final Map<String, RowSample> insiders = new TreeMap<>();
    private final Seating<Boolean> seating = new Seating<>(this::sample);

    void add(Heard heard) {
        rows++;
        heard.made().ifPresent(row -> {
            comparable++;
            biases.computeIfAbsent(row.designation(), key -> new TreeMap<>())
                    .computeIfAbsent(row.question().quantity(), key -> new BiasSum(row.designation(), key))
                    .add(row);
            constants.computeIfAbsent(row.column(), key -> new ConstantSum(row)).add(row);
            seating.add(row, true);
            if (!row.comparison().agrees()) {
                outside(row);
            }
        });
    }

    private void outside(AuditCase row) {
        outside++;
        worst.add(row);
        if (worst.size() > AuditSummary.MOST_WORST) {
            worst.remove();
        }
    }

    private void sample(AuditCase row, boolean counted) {
        (row.comparison().agrees() ? insiders : outsiders)
                .computeIfAbsent(row.designation(), key -> new RowSample())
                .add(row);
    }

    /** Searches the samples for causes. */
    Tally searched(CauseFinder finder) {
        seating.finish();
        Map<String, Findings> found = new TreeMap<>();
        TreeSet<String> designations = new TreeSet<>(outsiders.keySet());
        designations.addAll(insiders.keySet());
        for (String each : designations) {
            found.put(each, finder.search(each, rows(outsiders, each), rows(insiders, each)));
        }
        return new Tally(found);
    }

    private static List<AuditCase> rows(Map<String, RowSample> samples, String designation) {
        RowSample sample = samples.get(designation);
        return sample == null ? List.of() : sample.rows();
    }

    AuditSummary summary(Tally tally) {
        List<Bias> means = new ArrayList<>();
        biases.values().forEach(byQuantity -> byQuantity.values().forEach(sum -> means.add(sum.bias())));
        return new AuditSummary(
                comparable - outside,
                outside,
                rows - comparable,
                worst.stream().sorted(WORST_FIRST).map(Heard::compared).toList(),
                means,
                tally.causes(),
                tally.unproven(),
                constants.values().stream()
                        .map(ConstantSum::constant)
                        .flatMap(Optional::stream)
                        .filter(constant -> !tally.explains(constant.refrigerant()))
                        .toList(),
                outside - tally.explainedOutside());
    }
}
