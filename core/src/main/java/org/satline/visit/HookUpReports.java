package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.duty.Holder;
import org.satline.duty.Holder.Kind;
import org.satline.duty.Holder.Provenance;
import org.satline.duty.TransferRules;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;

/** Works out what is to know about the cylinder that is hooked up: what it holds, how it warms, whose it is, and its hoses. */
final class HookUpReports {
    private static final String NOT_STATED = "an owner not stated";

    private HookUpReports() {}

    static HookUpReport of(VisitInput input, CylinderOnSite cylinder, SaturationCurve systemCurve) {
        return new HookUpReport(cylinder, HosePurges.of(input, cylinder, systemCurve), rules(input.system(), cylinder));
    }

    private static List<TransferRules.Finding> rules(ServicedSystem system, CylinderOnSite cylinder) {
        Optional<Refrigerant> inSystem = Optional.of(system.refrigerant());
        String owner = system.owner().orElse(NOT_STATED + " (system)");
        String cylinderOwner = cylinder.owner().orElse(NOT_STATED + " (cylinder)");
        if (cylinder.receives()) {
            return TransferRules.standard()
                    .check(
                            new Holder(Kind.SYSTEM, owner, inSystem, Provenance.RECOVERED),
                            new Holder(
                                    Kind.RECOVERY_CYLINDER,
                                    cylinderOwner,
                                    cylinder.holding(),
                                    cylinder.provenance().orElse(Provenance.RECOVERED)));
        }
        Provenance provenance = cylinder.provenance().orElse(Provenance.NEW);
        boolean used = provenance == Provenance.RECOVERED || provenance == Provenance.MIXED_RECOVERED;
        return TransferRules.standard()
                .check(
                        new Holder(
                                used ? Kind.RECOVERY_CYLINDER : Kind.SOURCE_CYLINDER,
                                cylinderOwner,
                                cylinder.holding(),
                                provenance),
                        new Holder(Kind.SYSTEM, owner, inSystem, Provenance.RECOVERED));
    }
}
