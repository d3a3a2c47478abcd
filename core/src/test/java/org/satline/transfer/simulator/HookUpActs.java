package org.satline.transfer.simulator;

import java.util.ArrayList;
import java.util.List;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.ServiceCylinder;

/** Every act that a hand could try on a hook-up. */
public final class HookUpActs {
    private HookUpActs() {}

    public static List<Act> possible(HookUpSimulator simulator, HookUp hookUp, HookUpState state) {
        List<Act> acts = new ArrayList<>();
        for (String end : hookUp.hoseEnds()) {
            for (Kind kind : List.of(Kind.TIGHTEN, Kind.LOOSEN, Kind.TAKE_OFF)) {
                acts.add(Act.of(kind, end));
            }
            for (String to : hookUp.connections()) {
                acts.add(Act.connect(Kind.CONNECT_TIGHT, end, to));
                acts.add(Act.connect(Kind.CONNECT_LOOSE, end, to));
            }
        }
        for (String valve : hookUp.valves()) {
            for (Kind kind : List.of(Kind.OPEN, Kind.CRACK, Kind.OPEN_SHORT, Kind.CLOSE)) {
                acts.add(Act.of(kind, valve));
            }
        }
        for (String connection : hookUp.connections()) {
            acts.add(Act.of(Kind.CAP, connection));
            acts.add(Act.of(Kind.UNCAP, connection));
        }
        hookUp.hoses().forEach(hose -> acts.add(Act.of(Kind.TURN_ROUND, hose.name())));
        for (ServiceCylinder cylinder : hookUp.cylinders()) {
            acts.add(Act.of(Kind.INVERT, cylinder.name()));
            acts.add(Act.of(Kind.SET_UPRIGHT, cylinder.name()));
        }
        for (String part : List.of(HookUp.PUMP, HookUp.MACHINE)) {
            acts.add(Act.of(Kind.START, part));
            acts.add(Act.of(Kind.STOP, part));
        }
        acts.add(Act.of(Kind.SELF_PURGE, HookUp.MACHINE));
        acts.add(Act.of(Kind.WAIT, "system"));
        acts.add(Act.of(Kind.READ_SCALE, "scale"));
        acts.removeIf(act -> !simulator.isPossible(state, act));
        return acts;
    }
}
