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
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Room;
import org.satline.measurement.Reading;
import org.satline.quantity.Temperature;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.step.LineCharge;
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
        OperatingConditions conditions =
                SettledSeries.against(margins.get(input.system().metering().judgedBy()), input.conditions());
        Diagnosis diagnosis = ChargeDiagnosis.usual().of(curve, input.readings(), question(input.system()), conditions);
        Optional<CylinderReport> cylinder = input.cylinder()
                .filter(CylinderOnSite::receives)
                .map(each -> CylinderReports.of(each, curve, input.site().atmosphere(), input.date()));
        List<Flow> flows = Flows.of(input, curve);
        Optional<HookUpReport> hookUp = input.cylinder().map(each -> HookUpReports.of(input, each, curve));
        ChargeWork work = ChargeWorks.of(input, margins, diagnosis, cylinder, hookUp);
        return new VisitReport(
                input,
                PropertySource.of(curve),
                pressures,
                margins,
                diagnosis,
                work,
                longerLine(input, curve),
                cylinder,
                hookUp,
                flows,
                NextSteps.of(input, diagnosis, work, cylinder, hookUp, flows),
                cautions(input, diagnosis, pressures, cylinder, hookUp, flows));
    }

    private static Optional<LineCharge> longerLine(VisitInput input, SaturationCurve curve) {
        return input.system().lineSet().map(lines -> {
            Temperature liquid = input.readings()
                    .liquidLine()
                    .map(Reading::value)
                    .orElseThrow(
                            () -> new IllegalArgumentException(
                                    "a line set is given, but no liquid line temperature; read it, the density in the line goes by it"));
            Temperature suction = input.readings()
                    .suctionPressure()
                    .map(reading -> curve.dewTemperature(reading.value()))
                    .orElseThrow(
                            () -> new IllegalArgumentException(
                                    "a line set is given, but no suction pressure; read it, the density in the line goes by it"));
            return LineCharge.additional(
                    lines.liquidLine(),
                    LineCharge.liquid(curve, liquid),
                    lines.suctionLine(),
                    LineCharge.saturatedVapour(curve, suction),
                    lines.covered(),
                    lines.actual());
        });
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
            Optional<HookUpReport> hookUp,
            List<Flow> flows) {
        List<Caution> all = new ArrayList<>(VisitDoubts.of(input));
        hookUp.map(HookUpReport::cautions).ifPresent(all::addAll);
        flows.forEach(flow -> all.addAll(flow.cautions()));
        cylinder.map(CylinderReport::refusals).orElse(List.of()).stream()
                .filter(refusal -> refusal.reason() == Refusal.Reason.LIQUID_FULL)
                .forEach(refusal -> all.add(new Caution("LIQUID-FULL: " + refusal.text(), refusal.basis())));
        cylinder.flatMap(CylinderReport::room).map(Room::cautions).ifPresent(all::addAll);
        cylinder.ifPresent(each -> all.addAll(each.assessment().cautions()));
        all.addAll(VisitCautions.of(input, diagnosis, pressures));
        Set<Caution> once = new LinkedHashSet<>(all);
        return List.copyOf(once);
    }
}
