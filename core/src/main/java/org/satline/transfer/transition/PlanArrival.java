package org.satline.transfer.transition;

import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.VolumeState;

/** How things stand as the search begins, in the planner's numbers. Stateless. */
final class PlanArrival {
    private PlanArrival() {}

    static PlanState of(PlanParts parts, HookUpState state) {
        PlanState made = PlanState.blank(parts);
        for (int end = 0; end < parts.ends.size(); end++) {
            int at = end;
            state.joint(parts.ends.get(end))
                    .ifPresent(joint -> made.join(at, parts.connections.indexOf(joint.at()), joint.tight()));
        }
        for (int i = 0; i < parts.valves.size(); i++) {
            made.open(i, state.valve(parts.valves.get(i)));
        }
        for (int i = 0; i < parts.volumes.size(); i++) {
            String name = parts.volumes.get(i);
            VolumeState volume = state.volume(name);
            double full = volume.refrigerant().kilograms()
                    / parts.hookUp
                            .gas()
                            .properties()
                            .liquidDensity(volume.temperature().kelvins())
                    / parts.litres[i]
                    * 1000;
            // what fills more than three quarters has no room worth counting on
            byte content = switch (volume.content()) {
                case AIR -> PlanState.AIR;
                case NOTHING -> PlanState.NOTHING;
                // denser than vapour can be at that temperature: a part of it condenses
                case VAPOUR -> condenses(parts, name, volume) ? PlanState.PARTLY : PlanState.VAPOUR;
                case LIQUID -> full > 0.75 ? PlanState.LIQUID : PlanState.PARTLY;
            };
            boolean cold = volume.temperature().compareTo(parts.hookUp.ambient()) < 0;
            made.set(i, content, parts.level(volume.pressure().pascals()), code(volume.origin()));
            made.flag(i, PlanState.COLD, cold && content == PlanState.LIQUID);
            made.flag(i, PlanState.SHUT_IN, state.liquidShutIn().contains(name));
        }
        for (int i = 0; i < parts.cylinders.size(); i++) {
            String name = parts.cylinders.get(i).name();
            VolumeState held = state.volume(name);
            made.cylinder(i, held.content(), parts.level(held.pressure().pascals()), code(held.origin()));
            made.invert(i, state.inverted().contains(name));
        }
        for (int i = 0; i < parts.hoses.size(); i++) {
            if (state.turned().contains(parts.hoses.get(i).name())) {
                made.turn(i);
            }
        }
        for (int i = 0; i < parts.connections.size(); i++) {
            made.cap(i, state.capped().contains(parts.connections.get(i)));
        }
        made.run(0, state.running().contains(HookUp.PUMP));
        made.run(1, state.running().contains(HookUp.MACHINE));
        return made;
    }

    private static boolean condenses(PlanParts parts, String name, VolumeState volume) {
        return parts.law.isLiquid(
                volume.refrigerant().kilograms(),
                parts.hookUp.size(name),
                volume.temperature().kelvins());
    }

    private static int code(GasOrigin origin) {
        return switch (origin) {
            case NONE -> PlanState.GAS_NONE;
            case SOURCE -> PlanState.GAS_SOURCE;
            case SYSTEM -> PlanState.GAS_SYSTEM;
            case RECOVERED -> PlanState.GAS_RECOVERED;
            case UNKNOWN -> PlanState.GAS_UNKNOWN;
        };
    }
}
