package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.ContentsFinding;
import org.satline.cylinder.Refusal;
import org.satline.duty.TransferRules;
import org.satline.duty.TransferRules.Answer;
import org.satline.explanation.Step;
import org.satline.quantity.Parts;
import org.satline.safety.Caution;
import org.satline.transfer.HoseSide;
import org.satline.transfer.Medium;
import org.satline.transfer.PurgePlan;

/**
 * What is to know about the cylinder that is hooked up, beside the room in it. Immutable, thread-safe.
 *
 * @param cylinder the cylinder
 * @param contents what pressure and temperature say about its contents; nothing without a gauge on it
 * @param vessel its pressure and level over temperature; nothing where it is empty or not weighed
 * @param purges how to free each hose of air, to be done only where {@link VisitReport#goesThrough} says that refrigerant is to go through it
 * @param rules what the rules say about the transfer, the forbidding ones first
 * @param refusals reasons not to connect a source cylinder at all, by its state; those of a recovery cylinder stand in {@link CylinderReport}
 */
public record HookUpReport(
        CylinderOnSite cylinder,
        Optional<ContentsFinding> contents,
        Optional<VesselReport> vessel,
        List<HosePurge> purges,
        List<TransferRules.Finding> rules,
        List<Refusal> refusals) {
    /**
     * How to free one hose of air.
     *
     * @param hose the hose
     * @param plan the plan, or why there is none
     */
    public record HosePurge(HoseOnSite hose, PurgePlan plan) {
        /** {@inheritDoc} */
        public HosePurge {
            Parts.required("hose plan", hose, plan);
        }

        /**
         * Returns what to know before it is tried.
         *
         * @return cautions of the plan, and one where liquid instead of vapour would sweep the hose
         */
        public List<Caution> cautions() {
            List<Caution> all = new ArrayList<>(plan.cautions());
            if (plan instanceof PurgePlan.Purge purge
                    && purge.from() == HoseSide.SYSTEM
                    && hose.port().leaving() == Medium.LIQUID) {
                all.add(new Caution(
                        "the hose hangs at the " + hose.port()
                                + ": what comes out of the loose joint may be liquid, and several times the amount given is then released;"
                                + " open the valve by the least crack, face and hands away from the joint, or purge from a vapour port",
                        "common practice, no source"));
            }
            return List.copyOf(all);
        }
    }

    /** {@inheritDoc} */
    public HookUpReport {
        Parts.required("cylinder contents vessel", cylinder, contents, vessel);
        purges = List.copyOf(purges);
        rules = List.copyOf(rules);
        refusals = List.copyOf(refusals);
    }

    /**
     * Returns the rules that forbid the transfer.
     *
     * @return findings; empty where none forbids it
     */
    public List<TransferRules.Finding> forbidding() {
        return rules.stream().filter(rule -> rule.answer() == Answer.FORBIDDEN).toList();
    }

    /**
     * Returns the cautions of all parts, those of the vessel first.
     *
     * @return cautions
     */
    public List<Caution> cautions() {
        List<Caution> all = new ArrayList<>();
        forbidding().forEach(rule -> all.add(new Caution("FORBIDDEN: " + rule.text(), rule.citation())));
        refusals.forEach(refusal -> all.add(new Caution("DO NOT CONNECT: " + refusal.text(), refusal.basis())));
        vessel.ifPresent(found -> {
            all.addAll(found.now().cautions());
            found.warmer().forEach(each -> all.addAll(each.cautions()));
        });
        contents.map(ContentsFinding::cautions).ifPresent(all::addAll);
        purges.forEach(purge -> all.addAll(purge.cautions()));
        return all.stream().distinct().toList();
    }

    /**
     * Returns the derivation of every figure.
     *
     * @return steps
     */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        vessel.map(VesselReport::steps).ifPresent(steps::addAll);
        contents.map(ContentsFinding::steps).ifPresent(steps::addAll);
        for (HosePurge purge : purges) {
            if (purge.plan() instanceof PurgePlan.Purge possible) {
                steps.addAll(possible.steps());
            }
        }
        return List.copyOf(steps);
    }
}
