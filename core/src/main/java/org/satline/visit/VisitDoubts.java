package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.measurement.Reading;
import org.satline.quantity.Temperature;
import org.satline.safety.Caution;

/** What is odd about a visit as a whole and would be missed reading by reading. */
final class VisitDoubts {
    private static final String PRACTICE = "common practice, no source";

    private VisitDoubts() {}

    static List<Caution> of(VisitInput input) {
        List<Caution> doubts = new ArrayList<>();
        warmSuctionLine(input, doubts);
        return doubts;
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
