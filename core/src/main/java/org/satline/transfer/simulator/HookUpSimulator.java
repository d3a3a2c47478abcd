package org.satline.transfer.simulator;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.satline.quantity.Parts;
import org.satline.quantity.Temperature;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasLaw;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPractice;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Joint;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.ServiceCylinder;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpBench.Cell;
import org.satline.transfer.simulator.OpenPaths.Group;

/**
 * Plays acts on a hook-up and says what they do: masses, pressures, and which invariants they break. Knows nothing of how a plan is made.
 *
 * <p>What is simplified. The ports keep their pressure whatever is taken or given, a cylinder keeps its temperature. An act takes one to
 * two seconds: hoses and chambers even out at once; between two ends of an open path goes what one opening passes, or what the act names,
 * in a wait no more than that. What comes drives out what was there as a plug; a sweep passes three volumes at the pressure of the gas that
 * sweeps, because the loose joint is the narrowest place. Vapour is as dense as saturated vapour at its pressure. Liquid let down to a
 * running suction or the air leaves vapour; let down to a cylinder it leaves a part liquid until a wait. The half millilitre of air in a
 * coupling that is joined without a sweep is accepted. At a joint left loose air wanders in with the second act, at an end that is off at
 * once. The pressure of a volume shut in full of liquid is not followed. Solid R-744 is not followed. Immutable, thread-safe.
 */
public final class HookUpSimulator {
    private final HookUp hookUp;
    private final GasLaw law;
    private final Layout parts;

    /**
     * Prepares a hook-up.
     *
     * @param hookUp its parts
     */
    public HookUpSimulator(HookUp hookUp) {
        Parts.required("hookUp", hookUp);
        this.hookUp = hookUp;
        this.law = hookUp.law();
        this.parts = new Layout(hookUp);
    }

    /**
     * What one act led to.
     *
     * @param act the act
     * @param state the state after it
     * @param effects what it did
     */
    public record Outcome(Act act, HookUpState state, Effects effects) {
        /** {@inheritDoc} */
        public Outcome {
            Parts.required("act state effects", act, state, effects);
        }
    }

    /**
     * Plays a plan.
     *
     * @param start the state before it
     * @param plan its acts, in order
     * @return one outcome for each act
     * @throws IllegalArgumentException if an act cannot be done as things stand
     */
    public List<Outcome> play(HookUpState start, List<Act> plan) {
        List<Outcome> outcomes = new ArrayList<>();
        HookUpState state = start;
        for (Act act : plan) {
            Outcome outcome = apply(state, act);
            outcomes.add(outcome);
            state = outcome.state();
        }
        return outcomes;
    }

    /**
     * Returns what a plan breaks, liquid left shut in at its end included.
     *
     * @param outcomes what its acts led to
     * @return the violations, in order
     */
    public static List<Violation> violations(List<Outcome> outcomes) {
        List<Violation> all = new ArrayList<>();
        outcomes.forEach(outcome -> all.addAll(outcome.effects().violations()));
        if (!outcomes.isEmpty()) {
            outcomes.get(outcomes.size() - 1).state().liquidShutIn().stream()
                    .map(place -> new Violation(Invariant.LIQUID_SHUT_IN, place))
                    .filter(violation -> !all.contains(violation))
                    .forEach(all::add);
        }
        return all;
    }

    /**
     * Tells whether an act can be done as things stand, whatever it leads to.
     *
     * @param state how things stand
     * @param act the act
     * @return false where a part is missing, taken, or already so joined
     */
    public boolean isPossible(HookUpState state, Act act) {
        return refusal(state, act).isEmpty();
    }

    /**
     * Plays one act.
     *
     * @param state the state before it
     * @param act the act
     * @return the state after it and what it did
     * @throws IllegalArgumentException if it cannot be done as things stand
     */
    public Outcome apply(HookUpState state, Act act) {
        refusal(state, act).ifPresent(reason -> {
            throw new IllegalArgumentException("\"" + act.kind().code() + "\" of " + act.target() + ": " + reason
                    + "; known are the hose ends " + hookUp.hoseEnds() + ", the connections " + hookUp.connections()
                    + " and the valves " + hookUp.valves());
        });
        HookUpBench bench = new HookUpBench(parts, law, state);
        HookUpState turned = HandMove.made(parts, state, act);
        joints(bench, state, turned, act);
        if (act.kind() == Act.Kind.OPEN_SHORT) {
            Map<String, Opening> meanwhile = new HashMap<>(turned.valves());
            meanwhile.put(act.target(), Opening.CRACKED);
            new FlowSettler(bench, new OpenPaths(parts, turned, meanwhile), turned, act).settle();
        }
        OpenPaths paths = new OpenPaths(parts, turned, turned.valves());
        new FlowSettler(bench, paths, turned, act).settle();
        List<Group> shut =
                paths.groups().stream().filter(group -> group.ends().isEmpty()).toList();
        if (act.kind() == Act.Kind.WAIT) {
            shut.forEach(group -> warm(bench, group));
        }
        Set<String> full = liquidShutIn(bench, shut, state, act);
        HookUpState after = new HookUpState(
                turned.valves(),
                turned.joints(),
                turned.turned(),
                turned.inverted(),
                turned.capped(),
                turned.running(),
                bench.volumes(),
                full);
        return new Outcome(act, after, bench.effects(full));
    }

    private Optional<String> refusal(HookUpState state, Act act) {
        String target = act.target();
        Optional<Joint> joint = state.joint(target);
        return switch (act.kind()) {
            case CONNECT_TIGHT, CONNECT_LOOSE -> {
                String to = act.to().orElseThrow();
                boolean taken = state.joints().values().stream()
                        .anyMatch(other -> other.at().equals(to));
                yield no(!parts.hoseEnds.contains(target), "there is no such hose end")
                        .or(() -> no(!parts.connections.contains(to), "there is no connection to join it to"))
                        .or(() -> no(joint.isPresent(), "it is joined already; take it off first"))
                        .or(() -> no(taken, "the connection is taken; take the other hose off first"));
            }
            case TIGHTEN -> no(joint.filter(found -> !found.tight()).isEmpty(), "it is not loose");
            case LOOSEN -> no(joint.filter(Joint::tight).isEmpty(), "it is not tight");
            case TAKE_OFF -> no(joint.isEmpty(), "it is not joined");
            case CAP, UNCAP -> {
                boolean taken = state.joints().values().stream()
                        .anyMatch(other -> other.at().equals(target));
                boolean capped = state.capped().contains(target);
                yield no(
                        !parts.connections.contains(target) || taken || capped == (act.kind() == Act.Kind.CAP),
                        "there is no such free connection, or it is capped or open already");
            }
            case OPEN, CRACK, OPEN_SHORT, CLOSE ->
                no(!parts.valves.contains(target), "there is no such valve")
                        .or(() -> no(
                                parts.hoseEnds.contains(target)
                                        && parts.fitting(target, state) != EndFitting.OPEN_CLOSE_VALVE,
                                "the hand valve is at the other end of the hose"));
            case INVERT, SET_UPRIGHT ->
                no(
                        hookUp.cylinders().stream()
                                .noneMatch(cylinder -> cylinder.name().equals(target)
                                        && cylinder.valves() != ServiceCylinder.Valves.VAPOUR_AND_LIQUID),
                        "no such cylinder that may be turned over; one with two valves stays upright");
            case TURN_ROUND ->
                no(
                        hookUp.hoses().stream()
                                .noneMatch(hose -> hose.name().equals(target)
                                        && state.joint(hose.ends().get(0)).isEmpty()
                                        && state.joint(hose.ends().get(1)).isEmpty()),
                        "no such hose that is off at both ends");
            case START, STOP -> {
                boolean there = switch (target) {
                    case HookUp.PUMP -> hookUp.pump();
                    case HookUp.MACHINE -> hookUp.machine();
                    default -> false;
                };
                yield no(
                        !there || state.running().contains(target) == (act.kind() == Act.Kind.START),
                        "there is no such pump or machine, or it does so already");
            }
            case SELF_PURGE -> no(!state.running().contains(HookUp.MACHINE), "the recovery machine does not run");
            case ZERO_SCALE, READ_SCALE, WAIT -> Optional.empty();
        };
    }

    private static Optional<String> no(boolean refused, String reason) {
        return refused ? Optional.of(reason) : Optional.empty();
    }

    /** What happens at a coupling as it is joined or parted, before anything flows through it. */
    private void joints(HookUpBench bench, HookUpState before, HookUpState after, Act act) {
        String end = act.target();
        boolean wasTight = before.joint(end).map(Joint::tight).orElse(false);
        boolean isTight = after.joint(end).map(Joint::tight).orElse(false);
        boolean parting = act.kind() == Act.Kind.LOOSEN || act.kind() == Act.Kind.TAKE_OFF;
        if (wasTight == isTight && !parting) {
            return;
        }
        String at =
                (wasTight || parting ? before : after).joint(end).orElseThrow().at();
        Optional<SystemPort> bareCore = parts.port(at).filter(port -> !port.hasValve());
        if (bareCore.isPresent() && wasTight != isTight) {
            SystemPort port = bareCore.get();
            if (!hookUp.gas().mayBeVented()) {
                bench.breaks(Invariant.VENTED_FORBIDDEN_GROUP, at);
            }
            if (port.pressure().compareTo(hookUp.atmosphere().pressure()) < 0) {
                bench.breaks(Invariant.AIR_INTO_SYSTEM, at);
            } else {
                bench.spill(
                        at,
                        port.liquid(),
                        port.pressure().pascals(),
                        port.temperature().kelvins());
            }
        }
        if (parting) {
            liquidBehind(bench, before, end, at, wasTight);
        }
    }

    private void liquidBehind(HookUpBench bench, HookUpState before, String end, String at, boolean wasTight) {
        OpenPaths paths = new OpenPaths(parts, before, before.valves());
        String hose = parts.hose(end).orElseThrow().name();
        Cell inHose = bench.cell(hose);
        boolean liquid = inHose.liquid;
        if (paths.endPassesLoose(end)) {
            if (liquid) {
                bench.breaks(Invariant.JOINT_LOOSENED_ON_LIQUID, end);
            }
            // of these gases a hose comes off with its end shut or empty, however little it holds
            if (wasTight && inHose.holdsRefrigerant() && !hookUp.gas().mayBeVented()) {
                bench.breaks(Invariant.VENTED_FORBIDDEN_GROUP, end);
            }
        } else if (wasTight && inHose.holdsRefrigerant()) {
            bench.spill(hose, liquid, inHose.pascals, inHose.kelvins);
        }
        if (paths.passes(at, /* tight= */ false) && liquidAt(bench, before, at, paths.volume(at))) {
            bench.breaks(Invariant.JOINT_LOOSENED_ON_LIQUID, end);
        }
    }

    private boolean liquidAt(HookUpBench bench, HookUpState state, String connection, String volume) {
        Cell cell = bench.cells.get(volume);
        if (cell == null) {
            return parts.port(volume).map(SystemPort::liquid).orElse(false);
        }
        boolean stands = parts.cylinder(volume)
                .map(cylinder -> cylinder.liquidAt(connection, state.inverted().contains(volume)))
                .orElse(true);
        return cell.liquid && stands;
    }

    /** A shut volume takes the temperature around; the pressure of one full of liquid is not followed further. */
    private void warm(HookUpBench bench, Group group) {
        for (String node : group.nodes()) {
            Cell cell = bench.cells.get(node);
            if (cell != null) {
                cell.kelvins = law.ambientK();
                cell.liquid = law.isLiquid(cell.refrigerant, cell.size, cell.kelvins);
                cell.pascals = law.pressure(cell.refrigerant, cell.air, cell.size, cell.kelvins);
            }
        }
    }

    private Set<String> liquidShutIn(HookUpBench bench, List<Group> shut, HookUpState before, Act act) {
        double warm = Temperature.ofCelsius(HookUpPractice.LIQUID_FULL_CELSIUS.value())
                .kelvins();
        Set<String> full = new TreeSet<>();
        for (Group group : shut) {
            Set<String> names = new LinkedHashSet<>(group.nodes());
            names.retainAll(bench.cells.keySet());
            double held = names.stream()
                    .mapToDouble(name -> bench.cell(name).refrigerant)
                    .sum();
            double size =
                    names.stream().mapToDouble(name -> bench.cell(name).size).sum();
            if (held > law.liquidDensity(warm) * size) {
                full.addAll(names);
            }
        }
        boolean never = act.kind() == Act.Kind.WAIT || hookUp.gas().carbonDioxide();
        for (String name : full) {
            if (never || before.liquidShutIn().contains(name) || bench.cell(name).kelvins < law.ambientK()) {
                bench.breaks(Invariant.LIQUID_SHUT_IN, name);
            }
        }
        return full;
    }
}
