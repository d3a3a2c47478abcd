package org.satline.cylinder;

import java.util.Optional;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillQuestion;
import org.satline.filling.Jurisdiction;
import org.satline.filling.Provenance;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;

/**
 * A cylinder of a visit, as stated and as read. Immutable, thread-safe.
 *
 * @param name in words
 * @param field its path in the visit file, such as {@code cylinder} or {@code cylinders[1]}
 * @param role what it is there for
 * @param valve the valve to which the hose leads
 * @param inverted whether it stands on its head, so that its valves change parts
 * @param stamps its stamps
 * @param label what it is said to hold; nothing where it is said to be empty
 * @param provenance where its contents come from, where stated
 * @param owner the owner, where stated
 * @param temperature its temperature
 * @param pressure its pressure, absolute, where a gauge shows it
 * @param atRest whether both were read at rest, valves shut and of one temperature throughout
 * @param weighing how it is weighed, where it stands on a scale
 * @param warmest the warmest temperature that it may see, in [-50, 70] degC
 * @param jurisdiction the set of fill rules
 * @param hoseContents what the hoses hold that will end in it
 */
public record Cylinder(
        String name,
        String field,
        Role role,
        Valve valve,
        boolean inverted,
        CylinderStamps stamps,
        Optional<Refrigerant> label,
        Optional<Provenance> provenance,
        Optional<String> owner,
        Reading<Temperature> temperature,
        Optional<Reading<Pressure>> pressure,
        boolean atRest,
        Optional<Weighing> weighing,
        Temperature warmest,
        Jurisdiction jurisdiction,
        Mass hoseContents) {
    /** {@inheritDoc} */
    public Cylinder {
        Parts.required("name field role valve stamps label", name, field, role, valve, stamps, label);
        Parts.required("provenance owner temperature pressure", provenance, owner, temperature, pressure);
        Parts.required("weighing warmest jurisdiction hoseContents", weighing, warmest, jurisdiction, hoseContents);
        FillQuestion.checkWarmest(path(field, "warmest"), warmest);
    }

    private static String path(String field, String part) {
        return field + "." + part;
    }

    /**
     * The path of a field of this cylinder in the visit file.
     *
     * @param part the field within the cylinder, such as {@code retestDue}
     * @return such as {@code cylinder.retestDue}
     */
    public String path(String part) {
        return path(field, part);
    }

    /**
     * The valve at which what leaves it stands: the hose's, or the other one where it is inverted.
     *
     * @return vapour or liquid, as far as both are inside
     */
    public Valve reaches() {
        return inverted == (valve == Valve.VAPOUR) ? Valve.LIQUID : Valve.VAPOUR;
    }

    /**
     * Mass inside now by the scale.
     *
     * @return gross less tare, below zero where it weighs less than its tare; nothing without a scale
     */
    public Optional<Reading<MassDifference>> contents() {
        return weighing.map(found -> found.contents(stamps.tare()));
    }

    Subject subject() {
        return Subject.cylinder(name);
    }

    /** That a field must be supplied. */
    Finding notGiven(String part) {
        return Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(path(part)));
    }
}
