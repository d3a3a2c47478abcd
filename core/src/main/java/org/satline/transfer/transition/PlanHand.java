package org.satline.transfer.transition;

import org.jspecify.annotations.Nullable;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.transition.PlanParts.Behind;

/** Makes one move as the planner sees it. Not thread-safe. */
public final class PlanHand {
    private final PlanParts parts;
    private final PlanFlows flows;

    /**
     * A hand at one hook-up.
     *
     * @param first any state of it
     */
    public PlanHand(PlanState first) {
        parts = first.parts;
        flows = new PlanFlows(first);
    }

    /**
     * {@return the state after a move; null where it cannot be made or is forbidden}
     *
     * @param before the state before it; unchanged
     * @param move the move
     */
    public @Nullable PlanState after(PlanState before, PlanMove move) {
        if (!possible(before, move)) {
            return null;
        }
        PlanState state = before.copy();
        if (!joints(before, state, move)) {
            return null;
        }
        int target = move.target();
        switch (move.kind()) {
            case OPEN -> state.open(target, Opening.OPEN);
            case CRACK, OPEN_SHORT -> state.open(target, Opening.CRACKED);
            case CLOSE -> state.open(target, Opening.SHUT);
            case INVERT -> state.invert(target, true);
            case SET_UPRIGHT -> state.invert(target, false);
            case TURN_ROUND -> turn(state, target);
            case START -> state.run(target, true);
            case STOP -> state.run(target, false);
            case CAP -> state.cap(target, true);
            case UNCAP -> state.cap(target, false);
            default -> {}
        }
        if (!flows.settle(state, move.kind(), false)) {
            return null;
        }
        if (move.kind() == Act.Kind.OPEN_SHORT) {
            state.open(target, Opening.SHUT);
            if (!flows.settle(state, move.kind(), true)) {
                return null;
            }
        }
        return state;
    }

    private void turn(PlanState state, int hose) {
        state.turn(hose);
        int one = parts.endValve[2 * hose];
        int other = parts.endValve[2 * hose + 1];
        if (one >= 0) {
            Opening was = state.opening(one);
            state.open(one, state.opening(other));
            state.open(other, was);
        }
    }

    private boolean possible(PlanState state, PlanMove move) {
        int target = move.target();
        return switch (move.kind()) {
            case CONNECT_TIGHT, CONNECT_LOOSE -> state.at(target) < 0 && state.endAt(move.to()) == PlanParts.NONE;
            case TIGHTEN -> state.at(target) >= 0 && !state.tight(target);
            case LOOSEN -> state.at(target) >= 0 && state.tight(target);
            case TAKE_OFF -> state.at(target) >= 0;
            case OPEN, CRACK, OPEN_SHORT -> !state.isOpen(target) && isThere(state, target);
            case CLOSE -> state.isOpen(target) && isThere(state, target);
            case INVERT -> !state.inverted(target);
            case SET_UPRIGHT -> state.inverted(target);
            case TURN_ROUND -> state.at(2 * target) < 0 && state.at(2 * target + 1) < 0;
            case START -> !state.runs(target);
            case STOP -> state.runs(target);
            case CAP -> !state.capped(target) && state.endAt(target) == PlanParts.NONE;
            case UNCAP -> state.capped(target);
            default -> true;
        };
    }

    /** A hand valve is where the hose has it now. */
    private boolean isThere(PlanState state, int valve) {
        int end = parts.valveEnd[valve];
        return end < 0 || state.fitting(end) == EndFitting.OPEN_CLOSE_VALVE;
    }

    private boolean joints(PlanState before, PlanState state, PlanMove move) {
        int end = move.target();
        switch (move.kind()) {
            case CONNECT_TIGHT, CONNECT_LOOSE -> {
                boolean tight = move.kind() == Act.Kind.CONNECT_TIGHT;
                state.join(end, move.to(), tight);
                state.cap(move.to(), false);
                // where nothing may be vented the coupling's half millilitre is the lesser evil
                boolean shutByHand = parts.ventable
                        && state.fitting(end) == EndFitting.OPEN_CLOSE_VALVE
                        && !state.isOpen(parts.endValve[end])
                        && parts.behind[move.to()] != Behind.PUMP;
                state.couplingAir(end, shutByHand);
                return !tight || coreTurns(move.to());
            }
            case TIGHTEN -> {
                state.join(end, before.at(end), true);
                return coreTurns(before.at(end));
            }
            case LOOSEN, TAKE_OFF -> {
                int at = before.at(end);
                boolean wasTight = before.tight(end);
                if ((wasTight && !coreTurns(at)) || !partsDry(before, end, at, wasTight)) {
                    return false;
                }
                if (move.kind() == Act.Kind.TAKE_OFF) {
                    state.couplingAir(end, false);
                    state.part(end);
                } else {
                    state.couplingAir(
                            end,
                            parts.ventable && state.fitting(end) == EndFitting.OPEN_CLOSE_VALVE && !open(before, end));
                    state.join(end, at, false);
                }
                return true;
            }
            default -> {
                return true;
            }
        }
    }

    /** A bare core is opened or shut by the coupling: it spills a little, or draws air. */
    private boolean coreTurns(int connection) {
        if (parts.behind[connection] != Behind.PORT || parts.connectionValve[connection] >= 0) {
            return true;
        }
        return parts.ventable && parts.portLevel[parts.behindIndex[connection]] >= parts.airLevel;
    }

    private boolean partsDry(PlanState before, int end, int at, boolean wasTight) {
        int hose = parts.hoseVolume[end / 2];
        boolean open = open(before, end);
        boolean keeps = before.fitting(end) == EndFitting.OPEN_CLOSE_VALVE || !parts.ventable;
        if (open && keeps && before.holdsRefrigerant(hose)) {
            // what a hand valve can keep is not let go, nor any of a gas that is never vented
            return false;
        }
        if ((open && before.liquid(hose)) || (!open && wasTight && before.unknown(hose))) {
            return false;
        }
        int valve = parts.connectionValve[at];
        boolean passes = valve >= 0 ? before.isOpen(valve) : parts.behind[at] != Behind.PORT;
        if (!passes) {
            return true;
        }
        return switch (parts.behind[at]) {
            case PORT -> !parts.ports.get(parts.behindIndex[at]).liquid();
            case VOLUME -> !before.liquid(parts.behindIndex[at]);
            case CYLINDER -> !flows.liquidAt(before, at);
            case PUMP -> true;
        };
    }

    /** Whether a hose end lets through what is in the hose when it is not tight. */
    private boolean open(PlanState state, int end) {
        return switch (state.fitting(end)) {
            case PLAIN_FLARE -> true;
            case SELF_SEALING -> false;
            case OPEN_CLOSE_VALVE -> state.isOpen(parts.endValve[end]);
        };
    }
}
