package org.satline.transfer;

import java.util.List;
import java.util.Optional;
import org.satline.duty.Holder;
import org.satline.explanation.Finding;
import org.satline.quantity.Parts;

/**
 * What a permit is asked for. Immutable, thread-safe.
 *
 * @param direction which way refrigerant is to go
 * @param ports the open ports of the system with their pressures
 * @param hosePort the port at which the hose hangs; nothing where a manifold reaches each open port
 * @param cylinder the valve of the cylinder with its pressure; nothing where no cylinder is connected
 * @param cylinderName the name of the cylinder, empty where there is none
 * @param system who owns what is in the system, and what it is
 * @param held who owns what is in the cylinder, what it is and where it comes from; nothing where no cylinder is connected
 * @param cylinderFindings what the check of the cylinder found
 * @param glides whether the refrigerant is a blend, of which only liquid keeps its composition
 * @param hose whether the hose is ready
 * @param machine whether a recovery machine stands between the system and the cylinder: out of the system it may go against pressure then
 */
public record PermitRequest(
        Direction direction,
        List<ConnectionPoint> ports,
        Optional<PointKind> hosePort,
        Optional<ConnectionPoint> cylinder,
        String cylinderName,
        Holder system,
        Optional<Holder> held,
        List<Finding> cylinderFindings,
        boolean glides,
        HoseState hose,
        boolean machine) {
    /** {@inheritDoc} */
    public PermitRequest {
        Parts.required("direction hosePort cylinder cylinderName", direction, hosePort, cylinder, cylinderName);
        Parts.required("system held hose", system, held, hose);
        ports = Parts.list("ports", ports);
        cylinderFindings = Parts.list("cylinderFindings", cylinderFindings);
    }

    /**
     * A request without a recovery machine: it flows from the higher pressure to the lower alone.
     *
     * @param direction which way refrigerant is to go
     * @param ports the open ports of the system with their pressures
     * @param hosePort the port at which the hose hangs
     * @param cylinder the valve of the cylinder with its pressure
     * @param cylinderName the name of the cylinder
     * @param system who owns what is in the system, and what it is
     * @param held who owns what is in the cylinder
     * @param cylinderFindings what the check of the cylinder found
     * @param glides whether the refrigerant is a blend
     * @param hose whether the hose is ready
     */
    public PermitRequest(
            Direction direction,
            List<ConnectionPoint> ports,
            Optional<PointKind> hosePort,
            Optional<ConnectionPoint> cylinder,
            String cylinderName,
            Holder system,
            Optional<Holder> held,
            List<Finding> cylinderFindings,
            boolean glides,
            HoseState hose) {
        this(
                direction,
                ports,
                hosePort,
                cylinder,
                cylinderName,
                system,
                held,
                cylinderFindings,
                glides,
                hose,
                /* machine= */ false);
    }

    /**
     * The same request with a recovery machine in the way.
     *
     * @return the request
     */
    public PermitRequest withMachine() {
        return new PermitRequest(
                direction,
                ports,
                hosePort,
                cylinder,
                cylinderName,
                system,
                held,
                cylinderFindings,
                glides,
                hose,
                /* machine= */ true);
    }
}
