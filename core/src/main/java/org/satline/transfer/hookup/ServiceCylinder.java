package org.satline.transfer.hookup;

import java.util.List;
import org.satline.quantity.Parts;
import org.satline.quantity.Volume;

/**
 * A cylinder of the hook-up; what it holds is its {@link VolumeState}. Immutable, thread-safe.
 *
 * @param name its name, such as {@code recovery-cylinder}
 * @param use what it is for
 * @param valves one valve or two
 * @param waterCapacity its inner volume
 */
public record ServiceCylinder(String name, Use use, Valves valves, Volume waterCapacity) {
    /** What a cylinder is for. */
    public enum Use {
        /** Takes recovered refrigerant. */
        RECEIVER,
        /** Refillable, gives new or reclaimed refrigerant. */
        SOURCE,
        /** Never filled, gives new refrigerant. */
        DISPOSABLE
    }

    /** The valves of a cylinder. */
    public enum Valves {
        /** One valve: vapour upright, liquid inverted. */
        ONE,
        /** One valve with a dip tube: liquid upright. */
        ONE_WITH_DIP_TUBE,
        /** A vapour valve and a liquid valve with a dip tube; never inverted. */
        VAPOUR_AND_LIQUID
    }

    /** {@inheritDoc} */
    public ServiceCylinder {
        Parts.required("name use valves waterCapacity", name, use, valves, waterCapacity);
    }

    /**
     * Returns the connections, each with a valve of the same name.
     *
     * @return such as {@code recovery-cylinder.vapour}
     */
    public List<String> connections() {
        return valves == Valves.VAPOUR_AND_LIQUID
                ? List.of(name + ".vapour", name + ".liquid")
                : List.of(name + ".valve");
    }

    /**
     * Tells whether liquid stands at a valve of a cylinder with liquid.
     *
     * @param connection one of {@link #connections}
     * @param inverted whether it is upside down
     * @return true where liquid would leave
     */
    public boolean liquidAt(String connection, boolean inverted) {
        boolean tube = valves == Valves.ONE_WITH_DIP_TUBE || connection.endsWith(".liquid");
        return tube != inverted;
    }
}
