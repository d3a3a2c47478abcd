package org.satline.transfer;

import java.util.Optional;
import org.satline.quantity.Parts;

/**
 * One move of the hand in a purge. Immutable, thread-safe.
 *
 * @param kind what to do
 * @param side at which end; nothing for a move that concerns the whole hose
 */
public record PurgeAction(Kind kind, Optional<HoseSide> side) {
    /** What to do. */
    public enum Kind {
        /** Take the hose off and put it on the other way round. */
        TURN_HOSE("turn the hose round: both ends change places"),
        /** Close the valve of the vessel at this end. */
        CLOSE_VESSEL_VALVE("close the %s valve"),
        /** Close the small valve at this end of the hose. */
        CLOSE_HOSE_VALVE("close the hose's own valve at the %s end"),
        /** Screw this end home. */
        CONNECT_TIGHT("connect the %s end and screw it home"),
        /** Screw this end on by a turn only. */
        CONNECT_LOOSE("connect the %s end by one turn only, so that gas can leave"),
        /** Open the small valve at this end of the hose. */
        OPEN_HOSE_VALVE("open the hose's own valve at the %s end"),
        /** Open the valve of the vessel at this end by a crack. */
        CRACK_VESSEL_VALVE("open the %s valve by a crack: gas sweeps the air out at the other end"),
        /** Let the gas sweep the hose. */
        LET_SWEEP("let gas leave for a second or two, no longer"),
        /** Screw the loose end home while gas still leaves. */
        TIGHTEN("screw the %s end home while gas still leaves"),
        /** Close the cracked valve again. */
        CLOSE_AFTER_PURGE("close the %s valve; the hose is full of refrigerant and free of air");

        private final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    /** {@inheritDoc} */
    public PurgeAction {
        Parts.required("kind side", kind, side);
    }

    static PurgeAction at(Kind kind, HoseSide side) {
        return new PurgeAction(kind, Optional.of(side));
    }

    static PurgeAction of(Kind kind) {
        return new PurgeAction(kind, Optional.empty());
    }

    /**
     * Returns the move in words.
     *
     * @return an instruction
     */
    public String instruction() {
        return side.map(at -> kind.words.replace("%s", at.toString())).orElse(kind.words);
    }
}
