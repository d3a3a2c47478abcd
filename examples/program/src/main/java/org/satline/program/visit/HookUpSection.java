package org.satline.program.visit;

import java.util.List;
import java.util.stream.Collectors;
import org.satline.cylinder.ContentsFinding;
import org.satline.cylinder.ContentsFinding.Candidate;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.VesselCondition;
import org.satline.filling.VesselPoint;
import org.satline.program.page.Page;
import org.satline.program.page.Printed;
import org.satline.transfer.PurgeAction;
import org.satline.transfer.PurgePlan;
import org.satline.transfer.TransferRules;
import org.satline.visit.HookUpReport;
import org.satline.visit.HookUpReport.HosePurge;
import org.satline.visit.VesselReport;
import org.satline.visit.VisitReport;

/** The part of the page on the cylinder that is hooked up: what it holds, how it warms, its hoses, and the rules of the transfer. */
final class HookUpSection {
    private static final int MOST_CANDIDATES = 5;

    private final Page page;
    private final VisitReport visit;

    HookUpSection(Page page, VisitReport visit) {
        this.page = page;
        this.visit = visit;
    }

    void write(HookUpReport report) {
        report.contents().ifPresent(finding -> {
            page.heading("What is in the cylinder");
            page.row("by pressure", contents(finding));
        });
        if (report.contents().isEmpty() && !report.refusals().isEmpty()) {
            page.heading("What is in the cylinder");
        }
        for (Refusal refusal : report.refusals()) {
            page.row("DO NOT CONNECT", refusal.text() + " [" + refusal.basis() + "]");
        }
        report.vessel().ifPresent(this::vessel);
        report.purges().forEach(this::purge);
        if (!report.rules().isEmpty()) {
            page.heading("Rules of this transfer");
            for (TransferRules.Finding rule : report.rules()) {
                page.item((rule.answer() == TransferRules.Answer.FORBIDDEN ? "FORBIDDEN: " : "on condition: ")
                        + rule.text() + " [" + rule.citation() + "]");
            }
        }
    }

    private static String contents(ContentsFinding finding) {
        if (finding instanceof ContentsFinding.Consistent fits) {
            return "consistent with the label"
                    + (fits.alsoFitting().isEmpty() ? "" : "; fits as well: " + names(fits.alsoFitting()))
                    + "; 1.5 % of non-condensable gas "
                    + (fits.nonCondensablesResolvable() ? "would have shown" : "would not show on this gauge");
        }
        if (finding instanceof ContentsFinding.NonCondensablesSuspected gas) {
            return Printed.figure(
                    "NON-CONDENSABLE GAS suspected: %.1f %% +/- %.1f %% of the vapour by mole (limit 1.5 %%, AHRI 700%s)",
                    100 * gas.moleFraction(),
                    100 * gas.expandedUncertainty(),
                    gas.limitResolvable() ? "" : "; these instruments cannot resolve that limit");
        }
        if (finding instanceof ContentsFinding.AnotherMoreLikely other) {
            return "DOES NOT FIT THE LABEL; more likely: " + names(other.candidates());
        }
        if (finding instanceof ContentsFinding.LiquidGone) {
            return "no liquid left, vapour only; pressure says nothing about what it is";
        }
        return "nothing can be said: " + ((ContentsFinding.NotSettled) finding).reason();
    }

    private static String names(List<Candidate> candidates) {
        return candidates.stream()
                .limit(MOST_CANDIDATES)
                .map(Candidate::designation)
                .collect(Collectors.joining(", "));
    }

    private void vessel(VesselReport vessel) {
        page.heading("The cylinder as it warms, with " + Printed.both(vessel.contents()) + " in it");
        page.row("now", condition(vessel.now()));
        vessel.warmer().forEach(each -> page.row("", condition(each)));
        page.row("liquid-full", point(vessel.liquidFull()));
        vessel.servicePressure()
                .ifPresent(point -> page.row("service mark", "its pressure is reached " + point(point)));
    }

    private static String condition(VesselCondition condition) {
        return Printed.both(condition.temperature()) + ": " + Printed.both(condition.pressure())
                + Printed.figure(
                        ", liquid fills %.0f %%, %s of vapour%s",
                        100 * condition.liquidVolumeFraction(),
                        Printed.both(condition.vapourMass()),
                        condition.cautions().isEmpty() ? "" : "  <-- SEE CAUTIONS");
    }

    private static String point(VesselPoint point) {
        if (point instanceof VesselPoint.At at) {
            return "at " + Printed.both(at.temperature());
        }
        if (point instanceof VesselPoint.Always always) {
            return "ALREADY at " + Printed.both(always.coldest()) + " and above";
        }
        return "never: " + ((VesselPoint.Never) point).reason();
    }

    private void purge(HosePurge each) {
        page.heading("Purging the hose at the " + each.hose().port());
        if (visit.mustNotConnect()) {
            page.row("NOT NOW", "the cylinder must not be connected, for the reasons given; there is nothing to purge");
            return;
        }
        if (!visit.goesThrough(each.hose().port())) {
            page.row("NOT NOW", "by what to do next nothing is to go through this hose; there is nothing to purge");
            return;
        }
        if (each.plan() instanceof PurgePlan.Purge purge) {
            page.row(
                    "from",
                    "the " + purge.from() + "; the joint at the " + purge.looseJoint() + " stays loose"
                            + (purge.turned() ? "; TURN THE HOSE ROUND first" : ""));
            int number = 1;
            for (PurgeAction action : purge.actions()) {
                page.row(String.valueOf(number++), action.instruction());
            }
            page.row("released", Printed.figure("about %.1f g", purge.released().grams()));
        } else if (each.plan() instanceof PurgePlan.Impossible none) {
            page.row("IMPOSSIBLE", String.join("; ", none.reasons()));
            page.row("instead", none.instead());
        }
    }
}
