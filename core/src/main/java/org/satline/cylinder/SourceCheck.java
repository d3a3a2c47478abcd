package org.satline.cylinder;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.filling.FillingCode;
import org.satline.filling.Provenance;
import org.satline.refrigerant.Refrigerant;

/** Reasons not to draw from a cylinder, by what it holds and how it was filled. */
final class SourceCheck {
    private static final String RETEST =
            "49 CFR 180.205(c): a cylinder filled before its due date may stay in service until it is emptied (from memory)";

    private final Cylinder cylinder;
    private final CylinderFacts facts;
    private final Optional<LocalDate> day;
    private final List<Finding> found = new ArrayList<>();

    private SourceCheck(Cylinder cylinder, CylinderFacts facts, Optional<LocalDate> day) {
        this.cylinder = cylinder;
        this.facts = facts;
        this.day = day;
    }

    static List<Finding> of(
            Cylinder cylinder,
            CylinderFacts facts,
            Refrigerant system,
            Optional<VesselStates> vessel,
            Optional<LocalDate> day) {
        SourceCheck check = new SourceCheck(cylinder, facts, day);
        check.gives(system, vessel);
        return check.found;
    }

    private void forbid(FindingCode code, Figure... figures) {
        found.add(Finding.of(Severity.FORBIDS, code, cylinder.subject(), figures));
    }

    private void gives(Refrigerant system, Optional<VesselStates> vessel) {
        Optional<Provenance> provenance = cylinder.provenance();
        String inSystem = system.designation();
        if (!cylinder.label().map(Refrigerant::designation).orElse(inSystem).equals(inSystem)
                || provenance.equals(Optional.of(Provenance.MIXED_RECOVERED))) {
            forbid(FillingCode.MIXING, Figure.of("from", facts.gas()), Figure.of("to", inSystem));
        }
        if (provenance.filter(Provenance::isUsed).isPresent()
                && cylinder.stamps().refillable().equals(Optional.of(false))) {
            found.add(Finding.of(Severity.FORBIDS, CylinderCode.RECOVERED_IN_NON_REFILLABLE, cylinder.subject())
                    .citing("49 CFR 178.65(i)"));
        }
        boolean blend = facts.holds().filter(Refrigerant::isBlend).isPresent();
        double scaleKg = facts.scaleMarginKg();
        boolean noLiquid = facts.isVapourAlone()
                || vessel.filter(states -> states.now().liquidVolumeFraction().isPresent()
                                && states.liquid().kilograms() <= scaleKg)
                        .isPresent();
        if (facts.isWeighedEmpty() || (blend && facts.weight().isPresent() && noLiquid)) {
            forbid(CylinderCode.NOTHING_TO_GIVE, facts.contentsFigure());
        }
        if (!cylinder.stamps().refillable().equals(Optional.of(false))) {
            sourceRetest();
        }
    }

    /** Of a cylinder that is only drawn from; one that may not be refilled is never retested. */
    private void sourceRetest() {
        Optional<LocalDate> due = cylinder.stamps().retestDue();
        if (due.isEmpty() || day.isEmpty()) {
            found.add(Finding.of(Severity.CAUTION, FillingCode.RETEST_NOT_CHECKED, cylinder.subject())
                    .citing(RETEST));
        } else if (day.get().isAfter(due.get())) {
            found.add(Finding.of(
                            Severity.CAUTION,
                            FillingCode.RETEST_PAST,
                            cylinder.subject(),
                            Figure.of("due", due.get().toString()),
                            Figure.of("day", day.get().toString()))
                    .citing(RETEST));
        }
    }
}
