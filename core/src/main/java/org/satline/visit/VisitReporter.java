package org.satline.visit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.satline.charge.ChargeDiagnosis;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Criterion;
import org.satline.charge.Diagnosis;
import org.satline.charge.Margins;
import org.satline.charge.OperatingConditions;
import org.satline.cylinder.Room;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.transfer.Flow;

/** Puts the rooms of the library together: from what was found on a visit to what follows from it. Stateless, thread-safe. */
public final class VisitReporter {
    private VisitReporter() {}

    /**
     * Works out the report of a visit.
     *
     * @param input what was found on site
     * @return the report
     * @throws IllegalArgumentException if readings are physically impossible
     * @throws org.satline.quantity.OutOfValidityException if a pressure or temperature lies outside the saturation line
     * @throws org.satline.equation.MissingEquationException if the refrigerant has no equation
     */
    public static VisitReport report(VisitInput input) {
        Objects.requireNonNull(input, "input");
        SaturationCurve curve = SaturationCurves.of(input.system().refrigerant());
        List<PressureReadout> pressures =
                new PressureReadouts(curve, input.site().atmosphere()).of(input.readings());
        Margins margins = Margins.of(curve, input.readings());
        Diagnosis diagnosis = ChargeDiagnosis.usual()
                .of(curve, input.readings(), question(input.system()), OperatingConditions.unknown());
        Optional<CylinderReport> cylinder = input.cylinder()
                .filter(CylinderOnSite::receives)
                .map(each -> CylinderReports.of(each, curve, input.site().atmosphere(), input.date()));
        List<Flow> flows = Flows.of(input, curve);
        return new VisitReport(
                input,
                PropertySource.of(curve),
                pressures,
                margins,
                diagnosis,
                cylinder,
                flows,
                NextSteps.of(input, diagnosis, cylinder, flows),
                cautions(input, diagnosis, pressures, cylinder, flows));
    }

    private static ChargeQuestion question(ServicedSystem system) {
        return ChargeQuestion.of(
                system.metering(),
                system.metering().judgedBy() == Criterion.SUPERHEAT
                        ? system.targetSuperheat()
                        : system.targetSubcooling());
    }

    private static List<Caution> cautions(
            VisitInput input,
            Diagnosis diagnosis,
            List<PressureReadout> pressures,
            Optional<CylinderReport> cylinder,
            List<Flow> flows) {
        List<Caution> all = new ArrayList<>();
        flows.forEach(flow -> all.addAll(flow.cautions()));
        cylinder.flatMap(CylinderReport::room).map(Room::cautions).ifPresent(all::addAll);
        cylinder.ifPresent(each -> all.addAll(each.assessment().cautions()));
        all.addAll(VisitCautions.of(input, diagnosis, pressures));
        Set<Caution> once = new LinkedHashSet<>(all);
        return List.copyOf(once);
    }
}
