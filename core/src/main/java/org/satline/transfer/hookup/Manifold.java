package org.satline.transfer.hookup;

import java.util.ArrayList;
import java.util.List;
import org.satline.quantity.Parts;
import org.satline.quantity.Volume;

/**
 * A manifold: three chambers, joined by the valves {@code low-valve} and {@code high-valve}. The gauges read the low and the high chamber.
 * With four valves the connections {@code manifold.centre} and {@code manifold.vacuum} have valves of their own, {@code charging-valve} and
 * {@code vacuum-valve}. Immutable, thread-safe.
 *
 * @param valves 2 or 4
 * @param centreConnections 1 or 2; the second is {@code manifold.centre-2}
 * @param chamber the volume of one chamber
 */
public record Manifold(int valves, int centreConnections, Volume chamber) {
    /** Low chamber. */
    public static final String LOW_CHAMBER = "low-chamber";
    /** High chamber. */
    public static final String HIGH_CHAMBER = "high-chamber";
    /** Centre chamber. */
    public static final String CENTRE_CHAMBER = "centre-chamber";
    /** Valve between the low and the centre chamber. */
    public static final String LOW_VALVE = "low-valve";
    /** Valve between the high and the centre chamber. */
    public static final String HIGH_VALVE = "high-valve";
    /** Valve of the vacuum connection, on manifolds with four valves. */
    public static final String VACUUM_VALVE = "vacuum-valve";
    /** Valve of the centre connection, on manifolds with four valves. */
    public static final String CHARGING_VALVE = "charging-valve";
    /** Connection of the low hose. */
    public static final String LOW = "manifold.low";
    /** Connection of the high hose. */
    public static final String HIGH = "manifold.high";
    /** Connection of the centre or charging hose. */
    public static final String CENTRE = "manifold.centre";
    /** A second connection of the centre chamber. */
    public static final String CENTRE_2 = "manifold.centre-2";
    /** Connection of the vacuum hose, on manifolds with four valves. */
    public static final String VACUUM = "manifold.vacuum";

    /** {@inheritDoc} */
    public Manifold {
        Parts.required("chamber", chamber);
        boolean known = valves == 2 || valves == 4;
        if (!known || centreConnections < 1 || centreConnections > 2) {
            throw new IllegalArgumentException("a manifold with " + valves + " valves and " + centreConnections
                    + " centre connections is not known; give 2 or 4 valves and 1 or 2 connections");
        }
    }

    /**
     * Returns the connections.
     *
     * @return their names
     */
    public List<String> connections() {
        List<String> names = new ArrayList<>(List.of(LOW, HIGH, CENTRE));
        if (centreConnections == 2) {
            names.add(CENTRE_2);
        }
        if (valves == 4) {
            names.add(VACUUM);
        }
        return List.copyOf(names);
    }

    /**
     * Returns the valves.
     *
     * @return their names
     */
    public List<String> valveNames() {
        return valves == 4
                ? List.of(LOW_VALVE, HIGH_VALVE, VACUUM_VALVE, CHARGING_VALVE)
                : List.of(LOW_VALVE, HIGH_VALVE);
    }
}
