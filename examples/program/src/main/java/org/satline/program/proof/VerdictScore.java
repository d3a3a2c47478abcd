package org.satline.program.proof;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.Judgement;
import org.satline.charge.belief.ChargeBelief;
import org.satline.charge.belief.Fault;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.ImplausibleReadingException;
import org.satline.program.page.Printed;
import org.satline.quantity.OutOfValidityException;

/**
 * What the verdict says against what is true: confusion matrix, wrong advice, reliability of the stated probabilities.
 *
 * <p>What is true of a charge is what exact instruments would find on the same system with the same charge in the
 * same weather once every
 * other fault is mended. Charge advice, to add or to take out, is wrong where that is another level, and on another
 * refrigerant than on the
 * plate always. Where it is right although another fault is there, it is counted apart: the mass goes the right way,
 * the fault stays
 * unseen.
 */
final class VerdictScore {
    private static final List<String> ANSWERS =
            List.of("low", "on-target", "high", "undecided", "not-charge", "refused");
    /** Charge errors beyond this share have to be acted on. */
    private static final double SERIOUS = 0.10;

    private static final String UNPLATED = "another refrigerant";

    private final Map<String, int[]> answers = new LinkedHashMap<>();
    private final Map<Visit.Kind, Advice> advice = new EnumMap<>(Visit.Kind.class);
    private final Map<String, int[]> named = new TreeMap<>();
    private final Reliability levels = new Reliability();
    private final Map<Fault, Reliability> faults = new EnumMap<>(Fault.class);
    private int beyondTenth;
    private int actedOn;
    private int readAgain;
    private int visits;

    private final String machines;

    VerdictScore(String machines) {
        this.machines = machines;
        for (String what : List.of("", "fault, ")) {
            for (ChargeLevel level : ChargeLevel.values()) {
                answers.put(what + "charge " + level.label(), new int[ANSWERS.size()]);
            }
        }
        answers.put(UNPLATED, new int[ANSWERS.size()]);
        for (Visit.Kind kind : Visit.Kind.values()) {
            advice.put(kind, new Advice());
        }
    }

    private static final class Advice {
        private int visits;
        private int wrong;
        private int unseen;
    }

    void add(Visit visit) {
        Optional<Judgement> judgement = judgement(visit);
        String answer = judgement.map(Judgement::label).orElse("refused");
        visits++;
        readAgain += answer.equals("undecided") ? 1 : 0;
        if (visit.kind() != Visit.Kind.REFRIGERANT && Math.abs(visit.chargeError()) > SERIOUS) {
            beyondTenth++;
            actedOn += answer.equals(visit.chargeError() < 0 ? "low" : "high") ? 1 : 0;
        }
        row(visit)[ANSWERS.indexOf(answer)]++;
        count(advice.computeIfAbsent(visit.kind(), kind -> new Advice()), visit, answer);
        visit.named().ifPresent(fault -> {
            boolean found = judgement
                    .filter(it -> it instanceof Judgement.OtherFault other && other.fault() == fault)
                    .isPresent();
            int[] row = named.computeIfAbsent(fault.label(), name -> new int[4]);
            row[0]++;
            row[found ? 1 : answer.equals("not-charge") ? 2 : 3] += found || !moves(answer) ? 1 : 0;
        });
        judgement.ifPresent(found -> reliability(visit, found.evidence()));
    }

    /** Nothing where the readings are refused as those that no system can show: an answer of its own. */
    private static Optional<Judgement> judgement(Visit visit) {
        try {
            return Optional.of(ChargeJudge.usual()
                    .judge(new ChargeCase(visit.curve(), visit.readings(), visit.question(), visit.conditions())));
        } catch (ImplausibleReadingException | OutOfValidityException e) {
            return Optional.empty();
        }
    }

    private int[] row(Visit visit) {
        String row = visit.chargeAlone()
                .map(level -> (visit.faulty() ? "fault, " : "") + "charge " + level.label())
                .orElse(UNPLATED);
        return answers.computeIfAbsent(row, truth -> new int[ANSWERS.size()]);
    }

    private static boolean moves(String answer) {
        return answer.equals("low") || answer.equals("high");
    }

    private static void count(Advice kind, Visit visit, String answer) {
        kind.visits++;
        if (moves(answer)) {
            boolean right = visit.chargeAlone().map(ChargeLevel::label).equals(Optional.of(answer));
            kind.wrong += right ? 0 : 1;
            kind.unseen += right && visit.faulty() ? 1 : 0;
        }
    }

    private void reliability(Visit visit, Judgement.Evidence evidence) {
        ChargeBelief belief = evidence.weighed().belief();
        if (evidence.deviation().isPresent()) {
            for (ChargeLevel level : ChargeLevel.values()) {
                levels.add(belief.probability(level), visit.chargeAlone().equals(Optional.of(level)));
            }
        }
        for (Fault fault : Fault.values()) {
            if (!fault.ofCharge()) {
                boolean there = fault == Fault.ANOTHER_REFRIGERANT
                        ? visit.kind() == Visit.Kind.REFRIGERANT
                        : visit.named().equals(Optional.of(fault));
                faults.computeIfAbsent(fault, each -> new Reliability()).add(belief.probability(fault), there);
            }
        }
    }

    String text() {
        StringBuilder text = new StringBuilder();
        line(text, "Verdict on %d visits to %s, risks of 5 %%", visits, machines);
        line(text, "");
        line(text, "%-26s" + "%11s".repeat(ANSWERS.size()), cells("truth", ANSWERS));
        answers.forEach((truth, row) -> line(text, "%-26s" + "%11d".repeat(ANSWERS.size()), cells(truth, boxed(row))));
        line(text, "");
        line(
                text,
                "Visits with wrong charge advice (to move refrigerant where the charge itself, all else mended, is not of that level)");
        line(text, "%-30s%8s%8s%8s%26s", "what is wrong", "visits", "wrong", "share", "right, a fault unseen");
        Advice all = new Advice();
        advice.forEach((kind, found) -> {
            line(text, kind.label(), found);
            all.visits += found.visits;
            all.wrong += found.wrong;
            all.unseen += found.unseen;
        });
        line(text, "all", all);
        line(text, "");
        line(
                text,
                "%-30s%8s%10s%16s%11s%9s",
                "Other faults",
                "visits",
                "named",
                "another named",
                "no advice",
                "advice");
        named.forEach((fault, row) -> line(
                text,
                "%-30s%8d%10d%16d%11d%9d",
                fault,
                row[0],
                row[1],
                row[2],
                row[3],
                row[0] - row[1] - row[2] - row[3]));
        line(text, "");
        line(
                text,
                "Charge off by more than 10 %%: %d visits, acted on in the right direction on %.1f %%",
                beyondTenth,
                100.0 * actedOn / Math.max(1, beyondTenth));
        line(text, "Undecided, read again: %.1f %% of all visits", 100.0 * readAgain / Math.max(1, visits));
        line(text, "");
        line(
                text,
                "Reliability of the stated probabilities of a level of the charge itself: truth is what exact instruments would find with every fault mended");
        levels.print(text);
        faults.forEach((fault, reliability) -> {
            line(text, "");
            line(text, "Reliability of the stated probability of %s", fault.label());
            reliability.print(text);
        });
        return text.toString();
    }

    private static void line(StringBuilder text, String name, Advice found) {
        line(
                text,
                "%-30s%8d%8d%6.1f %%%26d",
                name,
                found.visits,
                found.wrong,
                100.0 * found.wrong / Math.max(1, found.visits),
                found.unseen);
    }

    private static List<Integer> boxed(int[] row) {
        List<Integer> boxed = new ArrayList<>();
        for (int count : row) {
            boxed.add(count);
        }
        return boxed;
    }

    private static Object[] cells(String first, List<?> rest) {
        List<Object> all = new ArrayList<>();
        all.add(first);
        all.addAll(rest);
        return all.toArray();
    }

    static void line(StringBuilder text, String format, Object... values) {
        text.append(Printed.figure(format, values)).append('\n');
    }
}
