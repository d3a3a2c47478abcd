package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.satline.cylinder.CylinderContents;
import org.satline.cylinder.FillAssessor;
import org.satline.cylinder.FillQuestion;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Refusal.Reason;
import org.satline.duty.Holder.Provenance;
import org.satline.quantity.Atmosphere;
import org.satline.saturation.SaturationCurve;

/** Reasons not to charge a system from a cylinder, by its stamps, by what it holds and how it stands. */
final class SourceDoubts {
    /** What makes a cylinder unfit to hold its refrigerant at all, and not only to be filled with more of it. */
    private static final Set<Reason> UNFIT =
            Set.of(Reason.STAMPS_CONTRADICTORY, Reason.PRESSURE_TOO_LOW, Reason.CYLINDER_NOT_LISTED);

    private static final String PRACTICE = "common practice, no source";

    private SourceDoubts() {}

    static List<Refusal> of(CylinderOnSite cylinder, SaturationCurve systemCurve, Atmosphere site) {
        SaturationCurve holding = Flows.curve(cylinder.holding(), systemCurve);
        List<Refusal> found = new ArrayList<>(CylinderDoubts.of(cylinder, holding, site));
        if (cylinder.holding().isPresent()) {
            found.addAll(unfit(cylinder, holding));
            nothingToGive(cylinder, holding).ifPresent(found::add);
        }
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

    /** Stamps that are merely not given are no reason here: nothing is filled in. */
    private static List<Refusal> unfit(CylinderOnSite cylinder, SaturationCurve holding) {
        FillQuestion question = FillQuestion.of(cylinder.stamps(), new CylinderContents.Known(holding))
                .under(cylinder.jurisdiction())
                .warmestAt(cylinder.warmest())
                .acceptingPartialStamps();
        return FillAssessor.standard().assess(question).refusals().stream()
                .filter(refusal -> UNFIT.contains(refusal.reason()))
                .toList();
    }

    private static Optional<Refusal> nothingToGive(CylinderOnSite cylinder, SaturationCurve holding) {
        if (cylinder.insideKg()
                .filter(inside -> Math.abs(inside) <= cylinder.weighingUncertaintyKg())
                .isPresent()) {
            return Optional.of(new Refusal(
                    Reason.NOTHING_TO_GIVE,
                    "by its weight it is empty: there is nothing to give; take another source cylinder",
                    "arithmetic: contents = gross - tare"));
        }
        if (holding.refrigerant().isBlend()
                && cylinder.weighedContents().isPresent()
                && WeightDoubts.isVapourOnly(cylinder, holding)) {
            return Optional.of(new Refusal(
                    Reason.NOTHING_TO_GIVE,
                    "by its weight no liquid is left in it: a blend is charged as liquid, and what is left of it has shifted in composition; take"
                            + " another source cylinder",
                    PRACTICE));
        }
        return Optional.empty();
    }
}
