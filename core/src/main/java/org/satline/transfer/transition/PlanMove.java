package org.satline.transfer.transition;

import org.satline.quantity.Parts;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.HookUp;

/**
 * An act by numbers.
 *
 * @param kind what is done
 * @param target a hose end, a valve, a hose, a connection or a cylinder, by kind
 * @param to the connection to which a hose end goes, or {@link PlanParts#NONE}
 */
public record PlanMove(Act.Kind kind, int target, int to) {
    /** {@inheritDoc} */
    public PlanMove {
        Parts.required("kind", kind);
    }

    /**
     * {@return the act by names}
     *
     * @param parts the parts
     */
    public Act act(PlanParts parts) {
        return switch (kind) {
            case CONNECT_TIGHT, CONNECT_LOOSE -> Act.connect(kind, parts.ends.get(target), parts.connections.get(to));
            case TIGHTEN, LOOSEN, TAKE_OFF -> Act.of(kind, parts.ends.get(target));
            case CAP, UNCAP -> Act.of(kind, parts.connections.get(target));
            case OPEN, CRACK, OPEN_SHORT, CLOSE -> Act.of(kind, parts.valves.get(target));
            case TURN_ROUND -> Act.of(kind, parts.hoses.get(target).name());
            case INVERT, SET_UPRIGHT -> Act.of(kind, parts.cylinders.get(target).name());
            case START, STOP -> Act.of(kind, target == 0 ? HookUp.PUMP : HookUp.MACHINE);
            case SELF_PURGE -> Act.of(kind, HookUp.MACHINE);
            case ZERO_SCALE, READ_SCALE -> Act.of(kind, "scale");
            case WAIT -> Act.of(kind, "system");
        };
    }
}
