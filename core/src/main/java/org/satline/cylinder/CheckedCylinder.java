package org.satline.cylinder;

import java.util.List;
import java.util.Optional;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.filling.FillAssessment;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Refrigerant;

/**
 * A cylinder and all that follows from its stamps, label, weight, pressure and temperature, worked out once by {@link CylinderCheck}.
 * Immutable, thread-safe.
 *
 * @param cylinder the cylinder
 * @param contents mass inside now by the scale; nothing without a scale
 * @param holds what it is taken to hold: its label, or what came in since the scale was zeroed; nothing where it is empty or not known
 * @param inside its pressure: read, else of vapour alone by weight, else of saturation; nothing where none of these tells it
 * @param byPressure what its pressure says about its label; nothing where it cannot say anything
 * @param vessel its states as a closed vessel; nothing where it is not weighed, is empty, or its weight is impossible
 * @param fill how much it may hold of the system's refrigerant (a receiver) or of its own (a source), with every rule's answer
 * @param room what it may still take; nothing unless it is a weighed receiver that may be filled
 * @param findings what was found, dangers first, then what forbids to use it in its role, what must be supplied, cautions
 */
public record CheckedCylinder(
        Cylinder cylinder,
        Optional<Reading<MassDifference>> contents,
        Optional<Refrigerant> holds,
        Optional<Reading<Pressure>> inside,
        Optional<ContentsFinding> byPressure,
        Optional<VesselStates> vessel,
        FillAssessment fill,
        Optional<Room> room,
        List<Finding> findings) {
    /** {@inheritDoc} */
    public CheckedCylinder {
        Parts.required("cylinder contents holds inside", cylinder, contents, holds, inside);
        Parts.required("byPressure vessel fill room", byPressure, vessel, fill, room);
        findings = Parts.list("findings", findings);
    }

    /**
     * Whether it can hurt someone as it stands.
     *
     * @return true where a finding is a danger
     */
    public boolean isDangerous() {
        return !of(Severity.DANGER_NOW).isEmpty();
    }

    /**
     * Whether nothing may go in or out of it, whatever is supplied: as in {@link #isDangerous}, or where a finding forbids it.
     *
     * @return true where it must be left alone
     */
    public boolean forbids() {
        return isDangerous() || !of(Severity.FORBIDS).isEmpty();
    }

    /**
     * Whether nothing that is known or missing of it stands against using it in its role.
     *
     * @return true where it is only cautioned, or nothing was found
     */
    public boolean isUsable() {
        return !forbids() && of(Severity.MUST_BE_SUPPLIED).isEmpty();
    }

    /**
     * What it can give before the scale's doubt begins: a blend as liquid alone, since its last vapour has another composition.
     *
     * @return the mass; nothing where it is not weighed
     */
    public Optional<Mass> canGive() {
        return contents.map(inside -> {
            double all = inside.value().kilograms();
            double first = holds.filter(Refrigerant::isBlend)
                    .flatMap(blend -> vessel)
                    .filter(states -> states.now().liquidVolumeFraction().isPresent())
                    .map(states -> states.liquid().kilograms())
                    .orElse(all);
            return Mass.ofKilograms(Math.max(0, Math.min(all, first) - inside.expandedUncertainty()));
        });
    }

    /**
     * The findings of one weight.
     *
     * @param severity the weight
     * @return findings in order
     */
    public List<Finding> of(Severity severity) {
        return findings.stream().filter(each -> each.severity() == severity).toList();
    }
}
