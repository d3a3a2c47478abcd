package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CheckedCylinder;
import org.satline.cylinder.CylinderCode;
import org.satline.cylinder.Role;
import org.satline.cylinder.Weighing;
import org.satline.duty.DutyCode;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.step.LineCharge;
import org.satline.step.LineCharge.FirstFilling;
import org.satline.transfer.Direction;
import org.satline.transfer.Permit;

/**
 * The first filling of an evacuated system, by the charge of the plate and the line set.
 *
 * @param visit what was found on site
 * @param longerLine what a line set longer than the plate covers takes more
 * @param cylinders those at hand
 * @param connected the one that is connected, where one is
 */
record FirstFillings(
        Visit visit,
        Optional<LineCharge> longerLine,
        List<CheckedCylinder> cylinders,
        Optional<CheckedCylinder> connected) {
    /** The filling; empty unless the system is evacuated, its charge known and a source weighed. */
    Optional<FirstFilling> filling() {
        if (!visit.system().build().evacuated()) {
            return Optional.empty();
        }
        return visit.system()
                .fullCharge()
                .flatMap(plate -> source().flatMap(each -> each.cylinder()
                        .weighing()
                        .map(scale -> FirstFilling.of(
                                plate,
                                longerLine,
                                // difference of two readings of one scale, each read by itself
                                UncertaintyBudget.of(
                                        "scale",
                                        Math.sqrt(2) * scale.contents(Mass.ZERO).standardUncertainty()),
                                shown(scale)))));
    }

    /** What the scale shows now. */
    private static MassDifference shown(Weighing scale) {
        return scale.showsAfter(MassDifference.ZERO);
    }

    private Optional<CheckedCylinder> source() {
        return connected
                .filter(FirstFillings::isSource)
                .or(() -> cylinders.stream().filter(FirstFillings::isSource).findFirst());
    }

    private static boolean isSource(CheckedCylinder each) {
        return each.cylinder().role() == Role.SOURCE
                && each.cylinder().weighing().isPresent();
    }

    /** What is to be weighed in, or what is missing or in the way of it, the heaviest first. */
    List<Finding> findings(TransferDesk desk) {
        List<Finding> findings = new ArrayList<>();
        if (visit.system().fullCharge().isEmpty()) {
            findings.add(notGiven("system.fullCharge"));
        }
        if (source().isEmpty()) {
            findings.add(notGiven("cylinder"));
        }
        if (desk.ask(Direction.IN) instanceof Permit.Refused refused) {
            refused.findings().stream()
                    .filter(each -> each.code() instanceof DutyCode || each.code() instanceof CylinderCode)
                    .forEach(findings::add);
        }
        filling().ifPresent(each -> findings.addAll(weighed(each)));
        return findings;
    }

    private List<Finding> weighed(FirstFilling filling) {
        CheckedCylinder from = source().orElseThrow();
        Mass amount = filling.weighIn().value();
        List<Finding> findings = new ArrayList<>();
        findings.add(Finding.of(
                Severity.FORBIDS,
                VisitCode.FIRST_FILLING,
                Subject.system(visit.system().name()),
                Figure.of("amount", amount),
                Figure.of("doubt", Mass.ofKilograms(filling.weighIn().expandedUncertainty())),
                Figure.of("reading", filling.scaleAtEnd())));
        from.canGive()
                .filter(most -> most.kilograms() < amount.kilograms())
                .ifPresent(most -> findings.add(Finding.of(
                        Severity.FORBIDS,
                        VisitCode.SOURCE_TOO_SMALL,
                        new Subject(Subject.Kind.CYLINDER, from.cylinder().name()),
                        Figure.of("available", most),
                        Figure.of("amount", amount))));
        return findings;
    }

    private static Finding notGiven(String path) {
        return Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(path));
    }
}
