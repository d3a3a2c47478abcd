package org.satline.transfer;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.PressureDifference;
import org.satline.transfer.PointKind.Owner;
import org.satline.transfer.hookup.Medium;

/** Says which way refrigerant would flow between connected points, and what is wrong with it. Stateless, thread-safe. */
public final class FlowCheck {
    /** Below this absolute pressure a vessel counts as evacuated: half an atmosphere, far below any refrigerant's pressure at rest. */
    private static final double EVACUATED_BELOW_PA = 50_000;

    private FlowCheck() {}

    /**
     * Looks at one pair of points. The answer is the same whichever of them is named first.
     *
     * @param first one point
     * @param second the other
     * @return the direction, or that it is too close to call
     */
    public static Flow between(ConnectionPoint first, ConnectionPoint second) {
        double difference =
                first.pressure().value().pascals() - second.pressure().value().pascals();
        // independent readings, JCGM 100, 5.1.2
        double expanded = Math.hypot(
                first.pressure().expandedUncertainty(), second.pressure().expandedUncertainty());
        List<Step> steps = new ArrayList<>(first.steps());
        steps.addAll(second.steps());
        steps.add(new Step(
                "drivingPressure",
                "p_1 - p_2",
                List.of(
                        Figure.of("p_1", first.pressure().value()),
                        Figure.of("p_2", second.pressure().value()),
                        Figure.of("U", PressureDifference.ofPascals(expanded))),
                Figure.of("driving", PressureDifference.ofPascals(difference)),
                "JCGM 100, 5.1.2, k = 2"));
        if (!(Math.abs(difference) > expanded)) {
            return new Flow.TooCloseToCall(
                    first,
                    second,
                    PressureDifference.ofPascals(difference),
                    PressureDifference.ofPascals(expanded),
                    steps);
        }
        ConnectionPoint from = difference > 0 ? first : second;
        ConnectionPoint to = difference > 0 ? second : first;
        Set<TransferCode> warnings = warnings(from, to);
        return new Flow.OneWay(
                from,
                to,
                medium(from),
                PressureDifference.ofPascals(Math.abs(difference)),
                PressureDifference.ofPascals(expanded),
                List.copyOf(warnings),
                steps);
    }

    /**
     * What a recovery machine carries from a port to a cylinder, whichever of them stands higher.
     *
     * @param port the port at its inlet
     * @param cylinder the valve at its outlet
     * @return the direction; the driving difference is below zero where it works against pressure
     */
    static Flow.OneWay pumped(ConnectionPoint port, ConnectionPoint cylinder) {
        Flow natural = between(port, cylinder);
        double difference =
                port.pressure().value().pascals() - cylinder.pressure().value().pascals();
        double expanded = Math.hypot(
                port.pressure().expandedUncertainty(), cylinder.pressure().expandedUncertainty());
        return new Flow.OneWay(
                port,
                cylinder,
                medium(port),
                PressureDifference.ofPascals(difference),
                PressureDifference.ofPascals(expanded),
                List.of(),
                natural.steps());
    }

    /**
     * Looks at every pair of points.
     *
     * @param points the points
     * @return one answer a pair, in the order of the points
     */
    public static List<Flow> betweenAll(List<ConnectionPoint> points) {
        List<Flow> flows = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            for (int j = i + 1; j < points.size(); j++) {
                flows.add(between(points.get(i), points.get(j)));
            }
        }
        return List.copyOf(flows);
    }

    /**
     * Looks at every open port of the system against one cylinder.
     *
     * @param ports the ports
     * @param cylinder a valve of the cylinder
     * @return one answer a port, in their order
     */
    public static List<Flow> ports(List<ConnectionPoint> ports, ConnectionPoint cylinder) {
        return ports.stream().map(port -> between(port, cylinder)).toList();
    }

    private static Medium medium(ConnectionPoint from) {
        // an evacuated cylinder has no liquid to give, whatever the valve
        boolean empty = from.kind().isCylinder() && from.pressure().value().pascals() < EVACUATED_BELOW_PA;
        return empty && from.kind().leaving() == Medium.LIQUID
                ? Medium.VAPOUR
                : from.kind().leaving();
    }

    private static Set<TransferCode> warnings(ConnectionPoint from, ConnectionPoint to) {
        Set<TransferCode> found = EnumSet.noneOf(TransferCode.class);
        Owner source = from.kind().owner();
        Owner sink = to.kind().owner();
        if (source == Owner.ATMOSPHERE) {
            found.add(TransferCode.VACUUM_AIR);
        }
        if (sink == Owner.ATMOSPHERE) {
            found.add(TransferCode.RELEASE);
        }
        if (source == Owner.VACUUM_PUMP) {
            found.add(TransferCode.OUT_OF_PUMP);
        }
        if (sink == Owner.VACUUM_PUMP
                && from.pressure().value().pascals() > EVACUATED_BELOW_PA
                && source != Owner.ATMOSPHERE) {
            found.add(TransferCode.PRESSURE_INTO_PUMP);
        }
        if (source == Owner.RECOVERY_CYLINDER && sink == Owner.SYSTEM) {
            found.add(TransferCode.BACKFLOW);
        }
        if (sink == Owner.SOURCE_CYLINDER && source != Owner.ATMOSPHERE) {
            found.add(TransferCode.BACKFLOW);
        }
        if (from.kind().isCylinder() && to.kind().isCylinder()) {
            found.add(TransferCode.CYLINDER_TO_CYLINDER);
        }
        if (source == Owner.SYSTEM && sink == Owner.SYSTEM) {
            found.add(TransferCode.ACROSS_SYSTEM);
        }
        if (medium(from) == Medium.LIQUID && to.kind() == PointKind.LOW_SIDE_PORT) {
            found.add(TransferCode.LIQUID_TO_SUCTION);
        }
        if (to.kind().isCylinder()
                && to.pressure().value().pascals() < EVACUATED_BELOW_PA
                && source != Owner.ATMOSPHERE) {
            found.add(TransferCode.FAST_INTO_VACUUM);
        }
        return found;
    }
}
