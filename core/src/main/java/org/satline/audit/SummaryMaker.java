package org.satline.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.satline.audit.AuditOutcome.Compared;
import org.satline.audit.AuditSummary.Bias;

/** Makes the summary of an audit from its rows, in an order of its own. */
final class SummaryMaker {
    private static final Comparator<Compared> WORST_FIRST = Comparator.comparingDouble(
                    (Compared outside) -> -outside.comparison().severity())
            .thenComparing(outside -> outside.row().id())
            .thenComparing(outside -> outside.row().toString());

    private SummaryMaker() {}

    static AuditSummary summary(List<AuditOutcome> outcomes, List<AuditCase> cases, CauseFinder finder) {
        List<LikelyCause> causes = new ArrayList<>();
        Map<String, List<AuditCase>> outside = new TreeMap<>();
        for (AuditCase each : cases) {
            if (!each.comparison().agrees()) {
                outside.computeIfAbsent(designation(each), key -> new ArrayList<>())
                        .add(each);
            }
        }
        outside.values().forEach(rows -> causes.addAll(finder.causes(rows)));
        causes.sort(Comparator.comparingInt((LikelyCause cause) -> -cause.explained())
                .thenComparing(LikelyCause::refrigerant)
                .thenComparing(LikelyCause::kind)
                .thenComparing(cause -> cause.mistake().toString()));
        List<Compared> outsiders = outcomes.stream()
                .filter(Compared.class::isInstance)
                .map(Compared.class::cast)
                .filter(compared -> !compared.within())
                .sorted(WORST_FIRST)
                .toList();
        int compared = cases.size();
        int allOutside = outsiders.size();
        int explained = causes.stream().mapToInt(LikelyCause::explained).sum();
        return new AuditSummary(
                compared - allOutside,
                allOutside,
                outcomes.size() - compared,
                outsiders.subList(0, Math.min(AuditSummary.MOST_WORST, allOutside)),
                biases(cases),
                causes,
                allOutside - explained);
    }

    private static String designation(AuditCase each) {
        return each.fluid().model().refrigerant().designation();
    }

    private static List<Bias> biases(List<AuditCase> cases) {
        Map<String, Map<AuditedQuantity, List<AuditCase>>> groups = new TreeMap<>();
        for (AuditCase each : cases) {
            groups.computeIfAbsent(designation(each), key -> new TreeMap<>())
                    .computeIfAbsent(each.question().quantity(), key -> new ArrayList<>())
                    .add(each);
        }
        List<Bias> biases = new ArrayList<>();
        groups.forEach((refrigerant, byQuantity) ->
                byQuantity.forEach((quantity, rows) -> biases.add(bias(refrigerant, quantity, rows))));
        return biases;
    }

    private static Bias bias(String refrigerant, AuditedQuantity quantity, List<AuditCase> rows) {
        // sorted, so that the sums do not depend on the order of the rows, to the last bit
        double[] differences = rows.stream()
                .mapToDouble(row -> row.unit().differenceToSi(row.comparison().difference()))
                .sorted()
                .toArray();
        double[] ratios = rows.stream()
                .filter(row -> row.comparison().tolerance().width() > 0)
                .mapToDouble(row -> row.comparison().difference()
                        / row.comparison().tolerance().width())
                .sorted()
                .toArray();
        return new Bias(refrigerant, quantity, rows.size(), mean(differences), quantity.siUnit(), mean(ratios));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return values.length == 0 ? 0 : sum / values.length;
    }
}
