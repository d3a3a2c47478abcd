package org.satline.transfer.hookup;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.satline.quantity.Parts;

/**
 * How everything of a hook-up stands at one moment. Immutable, thread-safe.
 *
 * @param valves each valve; all of {@link HookUp#valves()}
 * @param joints how each joined hose end is joined; an end that is missing is off
 * @param turned hoses that are turned round
 * @param inverted cylinders that are upside down
 * @param capped connections that are capped
 * @param running {@code pump} and {@code machine} where they run
 * @param volumes what each volume holds; all of {@link HookUp#volumes()}
 * @param liquidShutIn volumes shut in full of liquid by the last act, which the next one must open
 */
public record HookUpState(
        Map<String, Opening> valves,
        Map<String, Joint> joints,
        Set<String> turned,
        Set<String> inverted,
        Set<String> capped,
        Set<String> running,
        Map<String, VolumeState> volumes,
        Set<String> liquidShutIn) {
    /** {@inheritDoc} */
    public HookUpState {
        Parts.required("valves joints turned inverted capped", valves, joints, turned, inverted, capped);
        Parts.required("running volumes liquidShutIn", running, volumes, liquidShutIn);
        valves = Map.copyOf(valves);
        joints = Map.copyOf(joints);
        turned = Set.copyOf(turned);
        inverted = Set.copyOf(inverted);
        capped = Set.copyOf(capped);
        running = Set.copyOf(running);
        volumes = Map.copyOf(volumes);
        liquidShutIn = Set.copyOf(liquidShutIn);
    }

    /**
     * Returns how far a valve is open.
     *
     * @param valve its name
     * @return its opening
     * @throws IllegalArgumentException if there is no such valve
     */
    public Opening valve(String valve) {
        return found("valve", valve, valves);
    }

    /**
     * Returns what a volume holds.
     *
     * @param volume its name
     * @return its content
     * @throws IllegalArgumentException if there is no such volume
     */
    public VolumeState volume(String volume) {
        return found("volume", volume, volumes);
    }

    /**
     * Returns how a hose end is joined.
     *
     * @param end its name
     * @return the joint; empty where it is off
     */
    public Optional<Joint> joint(String end) {
        return Optional.ofNullable(joints.get(end));
    }

    /**
     * The same with one valve changed; nothing flows, as for a state found on arrival.
     *
     * @param valve its name
     * @param opening how far it is open
     * @return the state
     */
    public HookUpState withValve(String valve, Opening opening) {
        Map<String, Opening> changed = new HashMap<>(valves);
        changed.put(valve, opening);
        return new HookUpState(changed, joints, turned, inverted, capped, running, volumes, liquidShutIn);
    }

    /**
     * The same with one hose end joined; nothing flows, as for a state found on arrival.
     *
     * @param end the hose end
     * @param joint how it is joined
     * @return the state; a cap of the connection is off
     */
    public HookUpState withJoint(String end, Joint joint) {
        Map<String, Joint> changed = new HashMap<>(joints);
        changed.put(end, joint);
        Set<String> caps = new HashSet<>(capped);
        caps.remove(joint.at());
        return new HookUpState(valves, changed, turned, inverted, caps, running, volumes, liquidShutIn);
    }

    /**
     * The same with one volume changed.
     *
     * @param name its name
     * @param volume what it holds
     * @return the state
     */
    public HookUpState withVolume(String name, VolumeState volume) {
        Parts.required("name volume", name, volume);
        Map<String, VolumeState> changed = new HashMap<>(volumes);
        changed.put(name, volume);
        return new HookUpState(valves, joints, turned, inverted, capped, running, changed, liquidShutIn);
    }

    private static <T> T found(String what, String name, Map<String, T> all) {
        T value = all.get(name);
        if (value == null) {
            throw new IllegalArgumentException(
                    what + " \"" + name + "\" is not part of this hook-up; known are " + all.keySet());
        }
        return value;
    }
}
