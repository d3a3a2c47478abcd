package org.satline.program.visit;

import java.util.List;
import org.satline.charge.ChargeEstimate;
import org.satline.charge.Diagnosis;
import org.satline.charge.FaultLikelihood;
import org.satline.charge.Gate;
import org.satline.program.page.Page;
import org.satline.program.page.Printed;
import org.satline.visit.NextStep;
import org.satline.visit.VisitReport;

/** The part of the page on the charge: conditions, level, other faults, amount, and what to do next. */
final class ChargeSection {
    private static final int MOST_FAULTS = 4;

    private final Page page;

    ChargeSection(Page page) {
        this.page = page;
    }

    void write(VisitReport report) {
        Diagnosis diagnosis = report.diagnosis();
        page.heading("Charge");
        page.row("level", diagnosis.label().replace('-', ' '));
        if (diagnosis instanceof Diagnosis.NotCharge notCharge) {
            page.row("", "look first for: " + notCharge.fault().label().replace('-', ' '));
        }
        diagnosis.evidence().reasons().forEach(reason -> page.row("", reason));
        report.work().estimate().ifPresent(this::amount);
        report.longerLine()
                .ifPresent(line -> page.row(
                        "longer lines",
                        "the line set needs " + Printed.both(line.mass())
                                + " beyond the charge on the plate; the maker's figure goes first"));
        diagnosis.evidence().gates().forEach(this::gate);
        faults(diagnosis.evidence().faults());
        page.heading("What to do next");
        for (NextStep step : report.nextSteps()) {
            page.item(step.text() + " [" + step.basis() + "]");
        }
    }

    private void amount(ChargeEstimate estimate) {
        page.row(
                "charge error",
                Printed.figure(
                        "about %+.0f %% of the full charge, give or take %.0f %% (k = 2) [%s]",
                        100 * estimate.fraction(),
                        200 * estimate.standardUncertainty(),
                        estimate.step().source()));
    }

    private void gate(Gate gate) {
        String label = switch (gate.state()) {
            case OPEN -> "checked";
            case CLOSED -> "NOT MET";
            case NOT_CHECKED -> "not checked";
        };
        page.row(label, gate.finding() + (gate.advice().isEmpty() ? "" : ": " + gate.advice()));
    }

    private void faults(List<FaultLikelihood> faults) {
        faults.stream().limit(MOST_FAULTS).forEach(fault -> {
            page.row(fault.equals(faults.get(0)) ? "what fits" : "", fault.toString());
        });
    }
}
