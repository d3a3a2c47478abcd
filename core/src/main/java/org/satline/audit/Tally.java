package org.satline.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.Function;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.cause.Findings;
import org.satline.audit.cause.Findings.Finding;
import org.satline.audit.cause.LikelyCause;
import org.satline.audit.cause.Mistake;

/** Counts which rows the mistakes that were found explain: each row by the first that does. Not thread-safe. */
final class Tally {
    private static final Comparator<LikelyCause> MOST_FIRST = Comparator.comparing(LikelyCause::withinTolerance)
            .thenComparingInt((LikelyCause cause) -> -cause.explained())
            .thenComparing(LikelyCause::refrigerant)
            .thenComparing(LikelyCause::kind)
            .thenComparing(cause -> cause.mistake().toString());

    /** One mistake and its counts. */
    private static final class Count {
        private final String refrigerant;
        private final Finding finding;
        private int explained;
        private int candidates;
        private final PriorityQueue<String> ids = new PriorityQueue<>(Comparator.reverseOrder());

        Count(String refrigerant, Finding finding) {
            this.refrigerant = refrigerant;
            this.finding = finding;
        }

        private void explain(AuditCase row) {
            explained++;
            ids.add(row.row().id());
            if (ids.size() > LikelyCause.MOST_IDS) {
                ids.remove();
            }
        }

        private LikelyCause cause() {
            return new LikelyCause(
                    refrigerant,
                    finding.mistake(),
                    finding.besides(),
                    explained,
                    candidates,
                    ids.stream().sorted().toList(),
                    finding.allWithin(),
                    finding.speaking(),
                    finding.coincidence(),
                    finding.alternatives());
        }
    }

    private final Map<String, List<Count>> causes;
    private final Map<String, List<Count>> unproven;
    private int explainedOutside;

    Tally(Map<String, Findings> found) {
        this.causes = counts(found, Findings::causes);
        this.unproven = counts(found, Findings::unproven);
    }

    private static Map<String, List<Count>> counts(
            Map<String, Findings> found, Function<Findings, List<Finding>> which) {
        Map<String, List<Count>> counts = new HashMap<>();
        found.forEach((refrigerant, findings) -> counts.put(
                refrigerant,
                which.apply(findings).stream()
                        .map(finding -> new Count(refrigerant, finding))
                        .toList()));
        return counts;
    }

    boolean isEmpty() {
        return causes.values().stream().allMatch(List::isEmpty)
                && unproven.values().stream().allMatch(List::isEmpty);
    }

    /** Whether a mistake was found for a refrigerant, proven or not. */
    boolean explains(String refrigerant) {
        return !causes.getOrDefault(refrigerant, List.of()).isEmpty()
                || !unproven.getOrDefault(refrigerant, List.of()).isEmpty();
    }

    /**
     * Counts a row in its place.
     *
     * @return the mistake that explains it, and the other one if two were made
     */
    List<Mistake> add(AuditCase row) {
        Optional<Count> first = counted(causes, row);
        counted(unproven, row);
        first.ifPresent(count -> explainedOutside += row.comparison().agrees() ? 0 : 1);
        return first.map(count -> {
                    List<Mistake> made = new ArrayList<>(List.of(count.finding.mistake()));
                    count.finding.besides().ifPresent(made::add);
                    return made;
                })
                .orElse(List.of());
    }

    private static Optional<Count> counted(Map<String, List<Count>> counts, AuditCase row) {
        Optional<Count> first = Optional.empty();
        for (Count count : counts.getOrDefault(row.designation(), List.of())) {
            boolean asked =
                    count.finding.allWithin() ? row.isOdd() : !row.comparison().agrees();
            Optional<AuditCase.Expected> there = asked ? count.finding.expected(row) : Optional.empty();
            if (there.isPresent()) {
                count.candidates++;
                if (first.isEmpty() && there.get().holds(row)) {
                    count.explain(row);
                    first = Optional.of(count);
                }
            }
        }
        return first;
    }

    int explainedOutside() {
        return explainedOutside;
    }

    List<LikelyCause> causes() {
        return sorted(causes);
    }

    List<LikelyCause> unproven() {
        return sorted(unproven);
    }

    private static List<LikelyCause> sorted(Map<String, List<Count>> counts) {
        return counts.values().stream()
                .flatMap(List::stream)
                .map(Count::cause)
                .sorted(MOST_FIRST)
                .toList();
    }
}
