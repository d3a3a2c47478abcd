package org.satline.charge.belief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/**
 * What a choice costs where it turns out wrong, in call-backs, from {@code losses.csv}: each figure stands there with
 * its basis.
 */
final class Losses {
    private static final OnDemand<Map<String, Double>> TABLE = new OnDemand<>() {
        @Override
        protected Map<String, Double> read() {
            Map<String, Double> losses = new HashMap<>();
            for (CsvResource.Row row : CsvResource.read(
                            Losses.class, "losses.csv", "choice", "truth", "call_backs", "basis", "source")
                    .rows()) {
                losses.put(row.text("choice") + ", " + row.text("truth"), row.number("call_backs"));
            }
            return losses;
        }
    };

    private Losses() {}

    /** Each choice, the one that is expected to cost least first. */
    static List<WeighedChoice> weigh(ChargeBelief belief) {
        double other = belief.probability(Fault.ANOTHER_REFRIGERANT);
        double fault = belief.likeliestOther().map(belief::probability).orElse(0.0);
        List<WeighedChoice> choices = new ArrayList<>();
        choices.add(step(Choice.STEP_OUT, belief.low(), belief.onTarget(), other, fault));
        choices.add(step(Choice.STEP_IN, belief.high(), belief.onTarget(), other, fault));
        choices.add(new WeighedChoice(
                Choice.DONE,
                Optional.empty(),
                (belief.low() + belief.high()) * loss(Choice.DONE, "charge off")
                        + other * loss(Choice.DONE, "another refrigerant")
                        + Math.max(0, others(belief) - other) * loss(Choice.DONE, "another fault")));
        choices.add(new WeighedChoice(Choice.READ_BETTER, Optional.empty(), loss(Choice.READ_BETTER, "always")));
        belief.likeliestOther().ifPresent(likeliest -> {
            double p = belief.probability(likeliest);
            choices.add(new WeighedChoice(
                    Choice.MEND_FIRST,
                    Optional.of(likeliest),
                    p * loss(Choice.MEND_FIRST, "fault there") + (1 - p) * loss(Choice.MEND_FIRST, "fault not there")));
        });
        choices.sort(Comparator.comparingDouble(WeighedChoice::expectedLoss));
        return choices;
    }

    private static WeighedChoice step(Choice choice, double wrongWay, double onTarget, double other, double fault) {
        return new WeighedChoice(
                choice,
                Optional.empty(),
                wrongWay * loss(choice, "wrong way")
                        + onTarget * loss(choice, "right charge")
                        + other * loss(choice, "another refrigerant")
                        + Math.max(0, fault - other) * loss(choice, "another fault unseen"));
    }

    private static double others(ChargeBelief belief) {
        double sum = 0;
        for (Fault fault : Fault.values()) {
            sum += fault.ofCharge() ? 0 : belief.probability(fault);
        }
        return Math.min(1, sum);
    }

    private static double loss(Choice choice, String truth) {
        Double loss = TABLE.get().get(choice.word() + ", " + truth);
        if (loss == null) {
            throw new IllegalStateException("losses.csv has no row \"" + choice.word() + ", " + truth + "\"");
        }
        return loss;
    }
}
