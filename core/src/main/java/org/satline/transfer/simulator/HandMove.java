package org.satline.transfer.simulator;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.ServiceHose;

/** What the hand does, before anything flows. Stateless. */
final class HandMove {
    private HandMove() {}

    /** The state after the move. */
    static HookUpState made(Layout parts, HookUpState state, Act act) {
        String target = act.target();
        return switch (act.kind()) {
            case CONNECT_TIGHT, CONNECT_LOOSE ->
                state.withJoint(target, new Joint(act.to().orElseThrow(), act.kind() == Act.Kind.CONNECT_TIGHT));
            case TIGHTEN, LOOSEN ->
                state.withJoint(
                        target, new Joint(state.joint(target).orElseThrow().at(), act.kind() == Act.Kind.TIGHTEN));
            case TAKE_OFF -> {
                Map<String, Joint> joints = new HashMap<>(state.joints());
                joints.remove(target);
                yield with(state, state.valves(), joints, state.turned());
            }
            case CAP, UNCAP ->
                with(
                        state,
                        state.inverted(),
                        changed(state.capped(), target, act.kind() == Act.Kind.CAP),
                        state.running());
            case OPEN -> state.withValve(target, Opening.OPEN);
            case CRACK -> state.withValve(target, Opening.CRACKED);
            case OPEN_SHORT, CLOSE -> state.withValve(target, Opening.SHUT);
            case INVERT, SET_UPRIGHT ->
                with(
                        state,
                        changed(state.inverted(), target, act.kind() == Act.Kind.INVERT),
                        state.capped(),
                        state.running());
            case TURN_ROUND -> {
                Map<String, Opening> openings = new HashMap<>(state.valves());
                ServiceHose hose = parts.hose(target).orElseThrow();
                String one = hose.ends().get(0);
                String other = hose.ends().get(1);
                if (parts.valves.contains(one)) {
                    openings.put(one, state.valve(other));
                    openings.put(other, state.valve(one));
                }
                boolean back = state.turned().contains(target);
                yield with(state, openings, state.joints(), changed(state.turned(), target, !back));
            }
            case START, STOP ->
                with(
                        state,
                        state.inverted(),
                        state.capped(),
                        changed(state.running(), target, act.kind() == Act.Kind.START));
            case SELF_PURGE, ZERO_SCALE, READ_SCALE, WAIT -> state;
        };
    }

    private static Set<String> changed(Set<String> names, String name, boolean in) {
        Set<String> changed = new HashSet<>(names);
        if (in) {
            changed.add(name);
        } else {
            changed.remove(name);
        }
        return changed;
    }

    private static HookUpState with(
            HookUpState state, Map<String, Opening> valves, Map<String, Joint> joints, Set<String> turned) {
        return new HookUpState(
                valves,
                joints,
                turned,
                state.inverted(),
                state.capped(),
                state.running(),
                state.volumes(),
                state.liquidShutIn());
    }

    private static HookUpState with(HookUpState state, Set<String> inverted, Set<String> capped, Set<String> running) {
        return new HookUpState(
                state.valves(),
                state.joints(),
                state.turned(),
                inverted,
                capped,
                running,
                state.volumes(),
                state.liquidShutIn());
    }
}
