package org.satline.program.verdicts;

import java.util.OptionalDouble;
import org.satline.charge.Judgement;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Deviation;
import org.satline.quantity.Parts;

/**
 * Answer to one {@link VerdictQuery}, in SI doubles; what could not be computed is empty. Immutable, thread-safe.
 *
 * @param id name of the row
 * @param superheatK superheat, K
 * @param subcoolingK subcooling, K
 * @param judgedBy name of the quantity judged, or empty
 * @param targetK target of the quantity judged, K
 * @param deviationK measured less target, K
 * @param standardUncertaintyK standard uncertainty of the deviation, K
 * @param probabilityLow probability that the charge is low
 * @param probabilityOnTarget probability that it is on target
 * @param probabilityHigh probability that it is high
 * @param level {@code low}, {@code on-target}, {@code high}, {@code undecided}, {@code not-charge} or {@code refused}
 * @param note reasons in one line
 */
public record VerdictAnswer(
        String id,
        OptionalDouble superheatK,
        OptionalDouble subcoolingK,
        String judgedBy,
        OptionalDouble targetK,
        OptionalDouble deviationK,
        OptionalDouble standardUncertaintyK,
        OptionalDouble probabilityLow,
        OptionalDouble probabilityOnTarget,
        OptionalDouble probabilityHigh,
        String level,
        String note) {
    /** Level of a row that is broken or physically impossible. */
    public static final String REFUSED = "refused";

    /** {@inheritDoc} */
    public VerdictAnswer {
        Parts.required("id superheatK subcoolingK judgedBy targetK", id, superheatK, subcoolingK, judgedBy, targetK);
        Parts.required("deviationK standardUncertaintyK", deviationK, standardUncertaintyK);
        Parts.required("probabilityLow probabilityOnTarget", probabilityLow, probabilityOnTarget);
        Parts.required("probabilityHigh level note", probabilityHigh, level, note);
    }

    static VerdictAnswer refused(String id, String note) {
        OptionalDouble none = OptionalDouble.empty();
        return new VerdictAnswer(id, none, none, "", none, none, none, none, none, none, REFUSED, note);
    }

    static VerdictAnswer of(String id, Criterion criterion, Judgement judgement, String note) {
        Judgement.Evidence evidence = judgement.evidence();
        return new VerdictAnswer(
                id,
                kelvins(evidence, Criterion.SUPERHEAT),
                kelvins(evidence, Criterion.SUBCOOLING),
                criterion.label(),
                part(evidence, d -> d.target().kelvins()),
                part(evidence, d -> d.value().kelvins()),
                part(evidence, Deviation::standardUncertaintyK),
                part(evidence, d -> d.probability(ChargeLevel.LOW)),
                part(evidence, d -> d.probability(ChargeLevel.ON_TARGET)),
                part(evidence, d -> d.probability(ChargeLevel.HIGH)),
                judgement.label(),
                note);
    }

    private static OptionalDouble kelvins(Judgement.Evidence evidence, Criterion criterion) {
        return evidence.margins().get(criterion).stream()
                .mapToDouble(m -> m.value().kelvins())
                .findFirst();
    }

    private static OptionalDouble part(
            Judgement.Evidence evidence, java.util.function.ToDoubleFunction<Deviation> part) {
        return evidence.deviation().stream().mapToDouble(part).findFirst();
    }
}
