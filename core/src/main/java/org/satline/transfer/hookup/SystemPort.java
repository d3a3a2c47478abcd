package org.satline.transfer.hookup;

import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;

/**
 * A service port of the system. Immutable, thread-safe.
 *
 * @param role where it is
 * @param fitting what shuts it
 * @param pressure its pressure, absolute, as long as the system runs as it does
 * @param temperature temperature of what stands there
 * @param liquid whether liquid stands there; the worse where it is not known
 */
public record SystemPort(Role role, Fitting fitting, Pressure pressure, Temperature temperature, boolean liquid) {
    /** Where on the system. */
    public enum Role {
        /** Suction side. */
        LOW_SIDE("low-side"),
        /** Liquid line at condensing pressure. */
        LIQUID_LINE("liquid-line"),
        /** Discharge line, hot vapour. */
        DISCHARGE("discharge");

        private final String code;

        Role(String code) {
            this.code = code;
        }

        /**
         * Returns the name of the port in acts and states.
         *
         * @return the code word
         */
        public String code() {
            return code;
        }
    }

    /** What shuts a port. */
    public enum Fitting {
        /** A spring core, opened by the last turns of a hose end and shut by the first when it comes off. */
        VALVE_CORE("valve-core"),
        /** A shut-off on the core port, opened and shut by hand. */
        CORE_TOOL("core-tool"),
        /** A back-seating stem valve: back-seated the port is shut, cracked it is open. */
        STEM("stem");

        private final String code;

        Fitting(String code) {
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
    public SystemPort {
        Parts.required("role fitting pressure temperature", role, fitting, pressure, temperature);
    }

    /**
     * Returns the name of the port in acts and states: connection, valve (core tool or stem) and volume.
     *
     * @return the code word of its role
     */
    public String name() {
        return role.code();
    }

    /**
     * Tells whether a hand shuts it.
     *
     * @return true for a core tool and a stem valve
     */
    public boolean hasValve() {
        return fitting != Fitting.VALVE_CORE;
    }
}
