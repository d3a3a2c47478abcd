package org.satline.transfer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.explanation.Step;
import org.satline.quantity.Density;
import org.satline.quantity.Mass;
import org.satline.refrigerant.SafetyGroup;
import org.satline.safety.Caution;
import org.satline.transfer.PurgeAction.Kind;

/** Finds out from which side a hose can be purged. Stateless, thread-safe. */
public final class PurgePlanner {
    /** Hose volumes let out until the air is gone; common practice, no source. */
    private static final double SWEEPS = 3;

    private static final String PRACTICE = "common practice, no source";

    private PurgePlanner() {}

    /** What the transfer is for: the hose is swept with the gas that will go through it, where that is possible. */
    public enum Purpose {
        /** Out of the system into a recovery cylinder. */
        RECOVERY,
        /** From a source cylinder into the system. */
        CHARGING
    }

    /**
     * Plans the purge. The valves of both vessels are shut to begin with, and the hose is full of air.
     *
     * @param hose the hose as it hangs now
     * @param purpose what the transfer is for
     * @param system the pressure at the system's port
     * @param cylinder the pressure in the cylinder
     * @param group the safety group of the refrigerant
     * @param vapourDensity the density of the vapour that sweeps the hose
     * @return the plan, or why there is none
     */
    public static PurgePlan plan(
            Hose hose,
            Purpose purpose,
            VesselState system,
            VesselState cylinder,
            SafetyGroup group,
            Density vapourDensity) {
        HoseSide preferred = purpose == Purpose.RECOVERY ? HoseSide.SYSTEM : HoseSide.CYLINDER;
        List<String> reasons = new ArrayList<>();
        for (boolean turned : new boolean[] {false, true}) {
            Hose hanging = turned ? hose.turned() : hose;
            for (HoseSide from : List.of(preferred, preferred.other())) {
                VesselState source = from == HoseSide.SYSTEM ? system : cylinder;
                String obstacle = obstacle(hanging, from, source);
                if (obstacle.isEmpty()) {
                    return purge(hanging, from, turned, group, vapourDensity);
                }
                reasons.add((turned ? "hose turned, " : "hose as it hangs, ") + "purged from the " + from + ": "
                        + obstacle);
            }
        }
        return new PurgePlan.Impossible(
                reasons,
                "evacuate the hose with a vacuum pump through the manifold, both vessel valves shut, before they are opened; or take a hose "
                        + "with an open-close valve or a plain flare at the end that must be left loose",
                List.of(new Caution(
                        "never loosen a joint whose vessel is below the atmosphere and open: air and moisture go in",
                        PRACTICE)));
    }

    private static String obstacle(Hose hose, HoseSide from, VesselState source) {
        if (!source.canPush()) {
            return "the " + from + (source == VesselState.EVACUATED ? " is evacuated" : " is below the atmosphere")
                    + " and would pull air in through the loose joint";
        }
        if (!hose.end(from.other()).passesWhenLoose()) {
            return "nothing can be purged out through the self-sealing end at the " + from.other();
        }
        return "";
    }

    private static PurgePlan purge(Hose hose, HoseSide from, boolean turned, SafetyGroup group, Density vapourDensity) {
        double litres = hose.volume().litres();
        double density = vapourDensity.kilogramsPerCubicMetre();
        double released = SWEEPS * litres / 1000 * density;
        Step step = new Step(
                "refrigerant released by the purge",
                "m = n V rho_v",
                String.format(Locale.ROOT, "%.0f x %.4f L x %.3f kg/m3", SWEEPS, litres, density),
                String.format(Locale.ROOT, "about %.1f g", released * 1000),
                "n = 3 hose volumes at the pressure of the source: common practice, no source");
        return new PurgePlan.Purge(
                from, turned, Mass.ofKilograms(released), actions(hose, from, turned), cautions(group), List.of(step));
    }

    private static List<PurgeAction> actions(Hose hose, HoseSide from, boolean turned) {
        HoseSide loose = from.other();
        List<PurgeAction> actions = new ArrayList<>();
        actions.add(PurgeAction.at(Kind.CLOSE_VESSEL_VALVE, from));
        actions.add(PurgeAction.at(Kind.CLOSE_VESSEL_VALVE, loose));
        if (turned) {
            actions.add(PurgeAction.of(Kind.TURN_HOSE));
        }
        for (HoseSide side : List.of(from, loose)) {
            if (hose.end(side) == EndFitting.OPEN_CLOSE_VALVE) {
                actions.add(PurgeAction.at(Kind.CLOSE_HOSE_VALVE, side));
            }
        }
        actions.add(PurgeAction.at(Kind.CONNECT_TIGHT, from));
        actions.add(PurgeAction.at(Kind.CONNECT_LOOSE, loose));
        for (HoseSide side : List.of(loose, from)) {
            if (hose.end(side) == EndFitting.OPEN_CLOSE_VALVE) {
                actions.add(PurgeAction.at(Kind.OPEN_HOSE_VALVE, side));
            }
        }
        actions.add(PurgeAction.at(Kind.CRACK_VESSEL_VALVE, from));
        actions.add(PurgeAction.of(Kind.LET_SWEEP));
        actions.add(PurgeAction.at(Kind.TIGHTEN, loose));
        actions.add(PurgeAction.at(Kind.CLOSE_AFTER_PURGE, from));
        return actions;
    }

    private static List<Caution> cautions(SafetyGroup group) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(new Caution(
                "purge with vapour, in the open air or well ventilated, with gloves and goggles: liquid freezes skin and eyes",
                PRACTICE));
        cautions.add(new Caution(
                "only the de minimis release of purging a hose is excused, as part of a good-faith recovery; keep it short",
                "40 CFR 82.154(a)"));
        if (group != SafetyGroup.A1 && group != SafetyGroup.B1) {
            cautions.add(new Caution(
                    "the gas that leaves is flammable (" + group
                            + "): no flame, spark or switch within reach, ventilate first, keep a gas detector running; where it cannot be "
                            + "let out safely, evacuate the hose instead",
                    PRACTICE));
        }
        if (group.name().startsWith("B")) {
            cautions.add(new Caution(
                    "the gas that leaves is toxic (" + group
                            + "): evacuate the hose instead, or wear breathing protection",
                    PRACTICE));
        }
        return cautions;
    }
}
