package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.measurement.TemperatureReading;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;

/** What is odd about a visit as a whole and would be missed reading by reading. */
final class VisitDoubts {
    private static final String PRACTICE = "common practice, no source";
    private static final double COVERAGE = 2;

    private VisitDoubts() {}

    static List<Caution> of(VisitInput input) {
        List<Caution> doubts = new ArrayList<>();
        otherRefrigerant(input, doubts);
        warmSuctionLine(input, doubts);
        return doubts;
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
        Optional<TemperatureReading> air = input.readings().returnDryBulb();
        input.readings()
                .suctionLine()
                .ifPresent(line -> air.ifPresent(entering -> {
                    double excess = line.value().kelvins() - entering.value().kelvins();
                    if (excess > COVERAGE * Math.hypot(line.standardUncertaintyK(), entering.standardUncertaintyK())) {
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
