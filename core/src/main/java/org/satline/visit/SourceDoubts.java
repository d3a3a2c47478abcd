package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Refusal.Reason;
import org.satline.quantity.Atmosphere;
import org.satline.saturation.SaturationCurve;
import org.satline.transfer.Holder.Provenance;

/** Reasons not to charge a system from a cylinder, by what it holds and how it stands. */
final class SourceDoubts {
    private SourceDoubts() {}

    static List<Refusal> of(
            CylinderOnSite cylinder, Optional<VesselReport> vessel, SaturationCurve systemCurve, Atmosphere site) {
        List<Refusal> found =
                new ArrayList<>(CylinderDoubts.of(cylinder, Flows.curve(cylinder.holding(), systemCurve), site));
        vessel.filter(each -> each.now().liquidVolumeFraction() >= 1)
                .ifPresent(full -> found.add(new Refusal(
                        Reason.CONTENTS_DOUBTFUL,
                        "by its weight liquid fills it to the brim at "
                                + full.now().temperature()
                                + ": keep people away, let it cool, and weigh it again before anything else",
                        "closed vessel: mass, volume and temperature")));
        Optional<Provenance> provenance = cylinder.provenance();
        boolean used = provenance.equals(Optional.of(Provenance.RECOVERED))
                || provenance.equals(Optional.of(Provenance.MIXED_RECOVERED));
        if (used && cylinder.stamps().refillable().equals(Optional.of(false))) {
            found.add(new Refusal(
                    Reason.NOT_REFILLABLE,
                    "it is said to hold recovered refrigerant, yet it is non-refillable: it was refilled against the law and may burst; use none of it",
                    "49 CFR 178.65(i)"));
        }
        return List.copyOf(found);
    }
}
