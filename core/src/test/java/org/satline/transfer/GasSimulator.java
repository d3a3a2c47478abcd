package org.satline.transfer;

import java.util.List;

/**
 * Follows a purge move by move with nothing but "gas goes from high to low pressure", and knows nothing of how a plan is made. Two
 * vessels, one hose, the air around; each end of the hose is off, loose or tight.
 */
final class GasSimulator {
    private enum Joint {
        OFF,
        LOOSE,
        TIGHT
    }

    /** One end of the hose and the vessel that stands there. */
    private static final class End {
        /** In atmospheres; only the order against 1 matters. */
        private final double vesselPressure;

        private EndFitting fitting;
        private Joint joint = Joint.OFF;
        private boolean hoseValveOpen = true;
        private boolean vesselOpen;

        End(EndFitting fitting, VesselState state) {
            this.fitting = fitting;
            this.vesselPressure = switch (state) {
                case EVACUATED -> 0.0;
                case BELOW_ATMOSPHERE -> 0.5;
                case PRESSURISED -> 5.0;
            };
        }

        /** Whether gas passes the fitting as it sits now. */
        boolean passes() {
            return switch (fitting) {
                case OPEN_CLOSE_VALVE -> hoseValveOpen;
                case SELF_SEALING -> joint == Joint.TIGHT;
                case PLAIN_FLARE -> true;
            };
        }

        boolean hoseMeetsAir() {
            return joint != Joint.TIGHT && passes();
        }

        boolean hoseMeetsVessel() {
            return joint != Joint.OFF && vesselOpen && passes();
        }
    }

    private final End system;
    private final End cylinder;
    private boolean airInHose = true;
    private boolean airReachedAVessel;
    private boolean gasPassedASealedEnd;

    GasSimulator(Hose hose, VesselState system, VesselState cylinder) {
        this.system = new End(hose.systemEnd(), system);
        this.cylinder = new End(hose.cylinderEnd(), cylinder);
    }

    void play(List<PurgeAction> actions) {
        for (PurgeAction action : actions) {
            move(action);
            settle();
        }
    }

    private void move(PurgeAction action) {
        if (action.kind() == PurgeAction.Kind.TURN_HOSE) {
            EndFitting wasAtSystem = system.fitting;
            system.fitting = cylinder.fitting;
            cylinder.fitting = wasAtSystem;
            boolean valveAtSystem = system.hoseValveOpen;
            system.hoseValveOpen = cylinder.hoseValveOpen;
            cylinder.hoseValveOpen = valveAtSystem;
            system.joint = Joint.OFF;
            cylinder.joint = Joint.OFF;
        }
        if (action.side().isEmpty()) {
            return;
        }
        End end = action.side().get() == HoseSide.SYSTEM ? system : cylinder;
        switch (action.kind()) {
            case CLOSE_VESSEL_VALVE, CLOSE_AFTER_PURGE -> end.vesselOpen = false;
            case CRACK_VESSEL_VALVE -> end.vesselOpen = true;
            case CLOSE_HOSE_VALVE -> end.hoseValveOpen = false;
            case OPEN_HOSE_VALVE -> end.hoseValveOpen = true;
            case CONNECT_TIGHT, TIGHTEN -> end.joint = Joint.TIGHT;
            case CONNECT_LOOSE -> end.joint = Joint.LOOSE;
            case TURN_HOSE, LET_SWEEP -> throw new AssertionError(action);
        }
    }

    private void settle() {
        boolean sweptBySystem = flow(system, cylinder);
        boolean sweptByCylinder = flow(cylinder, system);
        if (!sweptBySystem && !sweptByCylinder && (system.hoseMeetsAir() || cylinder.hoseMeetsAir())) {
            airInHose = true;
        }
    }

    /** What the vessel at one end does through the hose; true if it sweeps the hose out at the other end. */
    private boolean flow(End from, End to) {
        if (from.vesselOpen && from.joint != Joint.TIGHT && from.vesselPressure < 1) {
            airReachedAVessel = true; // an open vessel below the atmosphere behind a loose or missing joint
        }
        if (!from.hoseMeetsVessel()) {
            return false;
        }
        if (from.vesselPressure < 1 && (airInHose || to.hoseMeetsAir())) {
            airReachedAVessel = true;
        }
        if (from.vesselPressure > 1 && to.hoseMeetsAir()) {
            gasPassedASealedEnd |= to.fitting == EndFitting.SELF_SEALING;
            airInHose = false;
            return true;
        }
        if (airInHose && to.hoseMeetsVessel() && from.vesselPressure > to.vesselPressure) {
            airReachedAVessel = true; // the plug of air is pushed into the other vessel
        }
        return false;
    }

    boolean airInHose() {
        return airInHose;
    }

    boolean airReachedAVessel() {
        return airReachedAVessel;
    }

    boolean gasPassedASealedEnd() {
        return gasPassedASealedEnd;
    }

    boolean everythingIsShut() {
        return !system.vesselOpen
                && !cylinder.vesselOpen
                && system.joint == Joint.TIGHT
                && cylinder.joint == Joint.TIGHT;
    }
}
