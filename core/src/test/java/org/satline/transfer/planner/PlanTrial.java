package org.satline.transfer.planner;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.simulator.HookUpFixture;
import org.satline.transfer.simulator.HookUpSimulator;

/** Plans every task on a hook-up, plays each plan in the simulator and holds it to what the task asks. */
final class PlanTrial {
    /** Plans found and plans asked, by task. */
    final Map<String, int[]> share = new TreeMap<>();

    final Map<String, Integer> reasons = new TreeMap<>();
    final Map<String, String> faults = new TreeMap<>();
    final List<Double> millis = new ArrayList<>();
    /** Acts of the longest phase. */
    int longest;
    /** For each reason an example or more. */
    final List<NoPlanCase> refused = new ArrayList<>();

    /** A hook-up, how it stands at first, and how it is told from others. */
    record Site(HookUp hookUp, HookUpState start, String name) {}

    record NoPlanCase(Site site, HookUpState state, PlanTask task, HookUpPlan.NoPlan why) {}

    static PlanTrial of(HookUpCases.Case site) {
        PlanTrial trial = new PlanTrial();
        trial.story(new Site(site.hookUp(), site.start(), site.toString()));
        return trial;
    }

    /** Several trials in one. */
    static PlanTrial all(List<PlanTrial> each) {
        PlanTrial all = new PlanTrial();
        for (PlanTrial trial : each) {
            trial.share.forEach(all::count);
            trial.reasons.forEach((what, n) -> all.reasons.merge(what, n, Integer::sum));
            trial.faults.forEach(all.faults::putIfAbsent);
            all.millis.addAll(trial.millis);
            all.longest = Math.max(all.longest, trial.longest);
            all.refused.addAll(trial.refused);
        }
        return all;
    }

    private static PlanTask task(PlanTask.Kind kind, String cylinder) {
        return PlanTask.of(kind, cylinder);
    }

    void story(Site site) {
        HookUp hookUp = site.hookUp();
        HookUpState start = site.start();
        PlanTask connectOut = task(PlanTask.Kind.CONNECT_AND_PURGE, HookUpFixture.RECOVERY);
        PlanTask connectIn = task(PlanTask.Kind.CONNECT_AND_PURGE, HookUpFixture.SOURCE);
        PlanTask out = task(PlanTask.Kind.STEP_OUT, HookUpFixture.RECOVERY);
        PlanTask in = task(PlanTask.Kind.STEP_IN, HookUpFixture.SOURCE);
        PlanTask end = task(PlanTask.Kind.END_OF_JOB, "");
        Optional<HookUpState> ready = run(site, hookUp, start, connectOut, "connect to take out");
        Optional<HookUpState> stepped = ready.flatMap(at -> must(site, hookUp, at, out, "step out"));
        stepped.ifPresent(at -> must(site, hookUp, at, end, "end after a step out"));
        Optional<HookUpState> over = stepped.flatMap(at -> run(
                site, hookUp, at, task(PlanTask.Kind.CHANGE_OVER, HookUpFixture.SOURCE), "change over to the source"));
        Optional<HookUpState> given = over.flatMap(at -> must(site, hookUp, at, in, "step in"));
        Optional<HookUpState> back = given.flatMap(
                at -> run(site, hookUp, at, task(PlanTask.Kind.CHANGE_OVER, HookUpFixture.RECOVERY), "change back"));
        back.ifPresent(at -> must(site, hookUp, at, end, "end after a change back"));
        Optional<HookUpState> charged = run(site, hookUp, start, connectIn, "connect to put in")
                .flatMap(at -> must(site, hookUp, at, in, "step in"));
        charged.ifPresent(at -> must(site, hookUp, at, end, "end after a step in"));
        count("any", ready.isPresent() || charged.isPresent());
    }

    /** Every task on a hook-up that hangs already, as it is found on arrival: whatever is planned holds, and a step has its end. */
    void hanging(Site site) {
        for (String cylinder : List.of(HookUpFixture.RECOVERY, HookUpFixture.SOURCE)) {
            boolean out = cylinder.equals(HookUpFixture.RECOVERY);
            PlanTask step = task(out ? PlanTask.Kind.STEP_OUT : PlanTask.Kind.STEP_IN, cylinder);
            PlanTask over = task(PlanTask.Kind.CHANGE_OVER, cylinder);
            PlanTask end = task(PlanTask.Kind.END_OF_JOB, "");
            run(site, site.hookUp(), site.start(), step, "hanging, step " + (out ? "out" : "in"))
                    .ifPresent(at -> must(site, site.hookUp(), at, end, "hanging, end after a step"));
            run(site, site.hookUp(), site.start(), over, "hanging, change over")
                    .flatMap(at -> must(site, site.hookUp(), at, step, "hanging, step after a change over"))
                    .ifPresent(at -> must(site, site.hookUp(), at, end, "hanging, end after a change over"));
            run(site, site.hookUp(), site.start(), end, "hanging, end of job");
        }
    }

    private void count(String what, boolean found) {
        count(what, new int[] {found ? 1 : 0, 1});
    }

    private void count(String what, int[] more) {
        int[] counts = share.computeIfAbsent(what, key -> new int[2]);
        counts[0] += more[0];
        counts[1] += more[1];
    }

    /** A plan that must be there, because the one before began. */
    private Optional<HookUpState> must(Site site, HookUp hookUp, HookUpState state, PlanTask task, String what) {
        Optional<HookUpState> after = run(site, hookUp, state, task, what);
        if (after.isEmpty()) {
            faults.putIfAbsent(what + " has no end", site.name());
        }
        return after;
    }

    private Optional<HookUpState> run(Site site, HookUp hookUp, HookUpState start, PlanTask task, String what) {
        long before = System.nanoTime();
        HookUpPlan plan = HookUpPlanner.plan(hookUp, start, task);
        millis.add((System.nanoTime() - before) / 1e6);
        count(what, plan instanceof HookUpPlan.Planned);
        if (plan instanceof HookUpPlan.NoPlan none) {
            reasons.merge(what + ": " + none.reason() + ", " + none.parts(), 1, Integer::sum);
            refused.add(new NoPlanCase(site, start, task, none));
            return Optional.empty();
        }
        List<Act> acts = ((HookUpPlan.Planned) plan).acts();
        for (HookUpPlan.Phase phase : ((HookUpPlan.Planned) plan).phases()) {
            longest = Math.max(longest, phase.acts().size());
        }
        HookUpSimulator simulator = new HookUpSimulator(hookUp);
        List<HookUpSimulator.Outcome> outcomes = new ArrayList<>();
        HookUpState state = start;
        for (Act act : acts) {
            if (!simulator.isPossible(state, act)) {
                faults.putIfAbsent(what + ": impossible " + act.kind(), site.name() + " " + acts);
                return Optional.empty();
            }
            HookUpSimulator.Outcome outcome = simulator.apply(state, act);
            outcomes.add(outcome);
            state = outcome.state();
            if (!outcome.effects().violations().isEmpty()) {
                faults.putIfAbsent(
                        what + ": " + act.kind() + " " + outcome.effects().violations(),
                        site.name() + " act " + outcomes.size() + " of " + names(acts));
                return Optional.empty();
            }
        }
        if (!HookUpSimulator.violations(outcomes).isEmpty() || !isReached(hookUp, start, state, task)) {
            faults.putIfAbsent(what + ": not reached", site.name() + " " + names(acts));
            return Optional.empty();
        }
        return Optional.of(state);
    }

    static String names(List<Act> acts) {
        StringBuilder line = new StringBuilder();
        acts.forEach(act -> line.append(act.kind())
                .append(' ')
                .append(act.target())
                .append(act.to().map(to -> ">" + to).orElse(""))
                .append(", "));
        return line.toString();
    }

    /** What a task asks, read off the simulator's state alone. */
    static boolean isReached(HookUp hookUp, HookUpState start, HookUpState state, PlanTask task) {
        boolean still = state.liquidShutIn().isEmpty()
                && state.joints().values().stream().allMatch(Joint::tight)
                && state.running().isEmpty();
        return still
                && switch (task.kind()) {
                    case CONNECT_AND_PURGE, CHANGE_OVER -> joined(hookUp, state, task.cylinder());
                    case STEP_OUT -> gained(start, state, task.cylinder()) > 0 && shut(hookUp, state, task.cylinder());
                    case STEP_IN ->
                        gained(start, state, task.cylinder()) < 0
                                && (hookUp.manifold().isEmpty() || state.valve(Manifold.LOW_VALVE) == Opening.SHUT);
                    case END_OF_JOB ->
                        hookUp.ports().stream().allMatch(port -> state.capped().contains(port.name()))
                                && state.joints().values().stream()
                                        .noneMatch(joint -> hookUp.cylinder(joint.at())
                                                        .isPresent()
                                                || hookUp.port(joint.at()).isPresent())
                                && dry(hookUp, state);
                };
    }

    /** What comes off a manifold holds vapour only, with air or without; a hose alone keeps what its cylinder leaves it. */
    private static boolean dry(HookUp hookUp, HookUpState state) {
        return hookUp.manifold().isEmpty()
                || hookUp.volumes().keySet().stream()
                        .filter(name -> hookUp.cylinder(name).isEmpty())
                        .noneMatch(name -> hookUp.law()
                                .isLiquid(
                                        state.volume(name).refrigerant().kilograms(),
                                        hookUp.size(name),
                                        state.volume(name).temperature().kelvins()));
    }

    private static double gained(HookUpState start, HookUpState state, String cylinder) {
        return state.volume(cylinder).refrigerant().kilograms()
                - start.volume(cylinder).refrigerant().kilograms();
    }

    private static boolean shut(HookUp hookUp, HookUpState state, String cylinder) {
        return hookUp.cylinder(cylinder).orElseThrow().connections().stream()
                .allMatch(valve -> state.valve(valve) == Opening.SHUT);
    }

    private static boolean joined(HookUp hookUp, HookUpState state, String cylinder) {
        return state.joints().entrySet().stream()
                        .filter(joint -> hookUp.cylinder(joint.getValue().at())
                                .filter(each -> each.name().equals(cylinder))
                                .isPresent())
                        .anyMatch(joint -> state.volume(hookUp.hose(joint.getKey())
                                                .orElseThrow()
                                                .name())
                                        .content()
                                != VolumeContent.AIR)
                && shut(hookUp, state, cylinder);
    }

    /** What was found, for people. */
    String report() {
        StringBuilder text = new StringBuilder();
        share.forEach((what, n) -> text.append(
                String.format(Locale.ROOT, "%-28s %5d of %5d, %d %%%n", what, n[0], n[1], 100 * n[0] / n[1])));
        reasons.forEach((what, n) -> text.append(String.format(Locale.ROOT, "%5d %s%n", n, what)));
        List<Double> sorted = new ArrayList<>(millis);
        Collections.sort(sorted);
        text.append(String.format(
                Locale.ROOT,
                "%d plans: median %.1f ms, 95 %% %.1f ms, worst %.1f ms%n",
                sorted.size(),
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 95 / 100),
                sorted.get(sorted.size() - 1)));
        new HashMap<>(faults)
                .forEach((what, where) -> text.append("FAULT ")
                        .append(what)
                        .append("\n      ")
                        .append(where)
                        .append('\n'));
        return text.toString();
    }
}
