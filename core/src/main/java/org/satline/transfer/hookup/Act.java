package org.satline.transfer.hookup;

import java.util.Optional;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;

/**
 * One move of the hand. Immutable, thread-safe.
 *
 * @param kind what is done
 * @param target what it is done to: a hose end, a connection, a valve, a hose, a cylinder, {@code pump}, {@code machine}, {@code scale}
 * @param to for a connection, to what the hose end goes; empty otherwise
 * @param amount for an opening or a wait, after how much it ends by the scale; empty: one opening, or until pressures meet
 */
public record Act(Kind kind, String target, Optional<String> to, Optional<Mass> amount) {
    /** What is done. */
    public enum Kind {
        /** Screws a hose end home. */
        CONNECT_TIGHT("connectTight"),
        /** Screws a hose end on by a turn only: gas passes, the core of a port stays shut. */
        CONNECT_LOOSE("connectLoose"),
        /** Screws a loose hose end home. */
        TIGHTEN("tighten"),
        /** Loosens a tight hose end by a turn. */
        LOOSEN("loosen"),
        /** Takes a hose end off. */
        TAKE_OFF("takeOff"),
        /** Caps a connection to which no hose is joined. */
        CAP("cap"),
        /** Takes the cap off a connection. */
        UNCAP("uncap"),
        /** Opens a valve wide. */
        OPEN("open"),
        /** Opens a valve by a crack, for one to two seconds as far as something is vented; it stays cracked. A stem: cracks it. */
        CRACK("crack"),
        /** Opens a valve in short openings and leaves it shut. */
        OPEN_SHORT("openShort"),
        /** Shuts a valve. A stem: back-seats it. */
        CLOSE("close"),
        /** Turns a cylinder upside down. */
        INVERT("invert"),
        /** Sets a cylinder upright. */
        SET_UPRIGHT("setUpright"),
        /** Turns a hose round that is off at both ends. */
        TURN_ROUND("turnRound"),
        /** Starts the vacuum pump or the recovery machine. */
        START("start"),
        /** Stops it. */
        STOP("stop"),
        /** Lets the recovery machine empty itself into its outlet. */
        SELF_PURGE("selfPurge"),
        /** Zeroes the scale. */
        ZERO_SCALE("zeroScale"),
        /** Reads the scale. */
        READ_SCALE("readScale"),
        /** Waits until what is open has evened out and hoses are as warm as the air. */
        WAIT("wait");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        /**
         * Returns the code word.
         *
         * @return stable, for files
         */
        public String code() {
            return code;
        }
    }

    /** {@inheritDoc} */
    public Act {
        Parts.required("kind target to amount", kind, target, to, amount);
        if (to.isPresent() != (kind == Kind.CONNECT_TIGHT || kind == Kind.CONNECT_LOOSE)) {
            throw new IllegalArgumentException(
                    "\"" + kind.code() + "\" of " + target + (to.isPresent() ? " has" : " lacks")
                            + " a second place; give one where a hose end is connected, and nowhere else");
        }
    }

    /**
     * An act with one place.
     *
     * @param kind what is done
     * @param target what it is done to
     * @return the act
     */
    public static Act of(Kind kind, String target) {
        return new Act(kind, target, Optional.empty(), Optional.empty());
    }

    /**
     * Connects a hose end.
     *
     * @param kind tight or loose
     * @param end the hose end
     * @param to the connection
     * @return the act
     */
    public static Act connect(Kind kind, String end, String to) {
        Parts.required("end to", end, to);
        return new Act(kind, end, Optional.of(to), Optional.empty());
    }

    /**
     * The same act, ended by the scale.
     *
     * @param most how much
     * @return the act
     */
    public Act until(Mass most) {
        return new Act(kind, target, to, Optional.of(most));
    }
}
