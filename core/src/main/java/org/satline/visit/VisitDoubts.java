package org.satline.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.measurement.Reading;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;

/** What is odd about a visit as a whole and would be missed reading by reading. */
final class VisitDoubts {
    private static final String PRACTICE = "common practice, no source";
    private static final String RETEST =
            "49 CFR 180.205(c): a cylinder filled before its due date may stay in service until it is emptied (from memory)";

    private VisitDoubts() {}

    static List<Caution> of(VisitInput input) {
        List<Caution> doubts = new ArrayList<>();
        otherRefrigerant(input, doubts);
        warmSuctionLine(input, doubts);
        input.cylinder()
                .filter(each -> !each.receives() && !each.stamps().refillable().equals(Optional.of(false)))
                .flatMap(source -> retest(source, input.date()))
                .ifPresent(doubts::add);
        return doubts;
    }

    /** Of a cylinder that is only drawn from; one that may not be refilled is never retested. */
    private static Optional<Caution> retest(CylinderOnSite source, Optional<LocalDate> date) {
        Optional<LocalDate> due = source.stamps().retestDue();
        if (due.isEmpty() || date.isEmpty()) {
            return Optional.of(new Caution(
                    "whether the retest of " + source.name() + " is overdue could not be checked: "
                            + (due.isEmpty() ? "its retest date" : "the date of the visit") + " is not given",
                    RETEST));
        }
        return date.get().isAfter(due.get())
                ? Optional.of(new Caution(
                        "RETEST OVERDUE: " + source.name() + " was due on " + due.get()
                                + "; what it held by then may be used up, but it must not be refilled: look for dents, rust and leaks before it is"
                                + " connected; the local code decides",
                        RETEST))
                : Optional.empty();
    }

    private static void otherRefrigerant(VisitInput input, List<Caution> doubts) {
        Refrigerant inSystem = input.system().refrigerant();
        Optional<CylinderOnSite> other = input.cylinder()
                .filter(each ->
                        each.holding().isPresent() && !each.holding().get().equals(inSystem));
        other.ifPresent(cylinder -> doubts.add(new Caution(
                "CONTAMINATION: " + cylinder.name() + " holds "
                        + cylinder.holding().orElseThrow().designation() + ", the system " + inSystem.designation()
                        + "; any flow between them, either way, makes a mixture that no one can reclaim: do not connect them",
                PRACTICE)));
    }

    private static void warmSuctionLine(VisitInput input, List<Caution> doubts) {
        Optional<Reading<Temperature>> air = input.readings().returnDryBulb();
        input.readings()
                .suctionLine()
                .ifPresent(line -> air.ifPresent(entering -> {
                    double excess = line.value().kelvins() - entering.value().kelvins();
                    if (excess > line.budget().minus(entering.budget()).expanded()) {
                        doubts.add(new Caution(
                                "the suction line, " + line.value() + ", is warmer than the return air, "
                                        + entering.value()
                                        + "; no evaporator warms its vapour above its air: the line takes up heat on the way or the clamp is loose; "
                                        + "the superheat shown is not that of the evaporator",
                                PRACTICE));
                    }
                }));
    }
}
