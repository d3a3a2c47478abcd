package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.cylinder.ContentsFinding;
import org.satline.explanation.Step;
import org.satline.safety.Caution;
import org.satline.transfer.PurgePlan;
import org.satline.transfer.TransferRules;
import org.satline.transfer.TransferRules.Answer;

/**
 * What is to know about the cylinder that is hooked up, beside the room in it. Immutable, thread-safe.
 *
 * @param cylinder the cylinder
 * @param contents what pressure and temperature say about its contents; nothing without a gauge on it
 * @param vessel its pressure and level over temperature; nothing where it is empty or not weighed
 * @param purges how to free each hose of air
 * @param rules what the rules say about the transfer, the forbidding ones first
 */
public record HookUpReport(
        CylinderOnSite cylinder,
        Optional<ContentsFinding> contents,
        Optional<VesselReport> vessel,
        List<HosePurge> purges,
        List<TransferRules.Finding> rules) {
    /**
     * How to free one hose of air.
     *
     * @param hose the hose
     * @param plan the plan, or why there is none
     */
    public record HosePurge(HoseOnSite hose, PurgePlan plan) {
        /**
         * Checks that no part is missing.
         *
         * @param hose the hose
         * @param plan the plan
         */
        public HosePurge {
            Objects.requireNonNull(hose, "hose");
            Objects.requireNonNull(plan, "plan");
        }
    }

    /**
     * Checks that no part is missing.
     *
     * @param cylinder the cylinder
     * @param contents what pressure and temperature say about its contents
     * @param vessel its pressure and level over temperature
     * @param purges how to free each hose of air
     * @param rules what the rules say about the transfer
     */
    public HookUpReport {
        Objects.requireNonNull(cylinder, "cylinder");
        Objects.requireNonNull(contents, "contents");
        Objects.requireNonNull(vessel, "vessel");
        purges = List.copyOf(purges);
        rules = List.copyOf(rules);
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
        vessel.ifPresent(found -> {
            all.addAll(found.now().cautions());
            found.warmer().forEach(each -> all.addAll(each.cautions()));
        });
        contents.map(ContentsFinding::cautions).ifPresent(all::addAll);
        purges.forEach(purge -> all.addAll(purge.plan().cautions()));
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
