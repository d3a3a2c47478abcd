package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;

/** Reasons to think that a cylinder holds something else than it is said to hold. */
final class ContentsDoubt {
    /** Above this a cylinder said to hold nothing is not evacuated: half a standard atmosphere; common practice, no source. */
    private static final double EVACUATED_BELOW_PA =
            Atmosphere.standard().pressure().pascals() / 2;
    /** Up to this it may be air that came in; above it another gas is in it. */
    private static final double AIR_UP_TO_PA = 3 * EVACUATED_BELOW_PA;

    private static final String EVACUATION =
            "40 CFR 82 subpart B, appendix A; half an atmosphere: common practice, no source";
    private static final String VESSEL = "closed vessel: mass, volume and temperature; JCGM 100, 5.1.2, k = 2";

    private final Cylinder cylinder;
    private final CylinderFacts facts;
    private final List<Finding> found = new ArrayList<>();

    private ContentsDoubt(Cylinder cylinder, CylinderFacts facts) {
        this.cylinder = cylinder;
        this.facts = facts;
    }

    static List<Finding> of(Cylinder cylinder, CylinderFacts facts, Optional<ContentsFinding> byPressure) {
        ContentsDoubt doubt = new ContentsDoubt(cylinder, facts);
        if (facts.holds().isEmpty()) {
            doubt.saidToBeEmpty();
        } else {
            byPressure.ifPresent(doubt::againstLabel);
            doubt.tooLightForItsPressure();
        }
        return doubt.found;
    }

    /** The general code that reports know, and the one that tells why. */
    private void wrong(CylinderCode why, String basis, Figure... figures) {
        found.add(Finding.of(Severity.FORBIDS, CylinderCode.WRONG_CONTENTS, cylinder.subject())
                .citing(basis));
        found.add(Finding.of(Severity.FORBIDS, why, cylinder.subject(), figures).citing(basis));
    }

    private void saidToBeEmpty() {
        Optional<Pressure> read = cylinder.pressure().map(Reading::value);
        boolean heavy = facts.isHeavierThanEmpty();
        boolean pressed = read.filter(each -> each.pascals() > AIR_UP_TO_PA).isPresent();
        if (heavy || pressed) {
            found.add(cylinder.notGiven("holding"));
            List<Figure> figures = new ArrayList<>(List.of(facts.contentsFigure()));
            read.ifPresent(each -> figures.add(Figure.of("read", each)));
            wrong(CylinderCode.NOT_EMPTY, Finding.PRACTICE, figures.toArray(new Figure[0]));
        } else if (read.isEmpty()) {
            found.add(cylinder.notGiven("pressure"));
        } else if (read.get().pascals() > EVACUATED_BELOW_PA) {
            wrong(CylinderCode.AIR_IN_EMPTY, EVACUATION, Figure.of("read", read.get()));
        }
    }

    private void againstLabel(ContentsFinding finding) {
        if (!finding.isDoubtful()) {
            found.addAll(finding.cautions().stream()
                    .filter(each -> each.code() == CylinderCode.AIR_NOT_RESOLVED)
                    .toList());
            return;
        }
        if (!cylinder.atRest()) {
            found.add(Finding.of(Severity.FORBIDS, CylinderCode.NOT_AT_REST, cylinder.subject()));
            return;
        }
        double kelvins = cylinder.temperature().value().kelvins();
        wrong(
                CylinderCode.PRESSURE_MISFITS_LABEL,
                Finding.PRACTICE,
                Figure.of("read", cylinder.pressure().orElseThrow().value()),
                Figure.of("gas", facts.gas()),
                Figure.of("temperature", cylinder.temperature().value()),
                Figure.of("saturation", Pressure.ofPascals(facts.curve().bubblePressurePa(kelvins))));
        found.addAll(finding.cautions());
    }

    /**
     * Vapour too light to be saturated has a pressure that follows from mass, volume and temperature. A gauge that reads more than that,
     * by more than the expanded uncertainties of gauge, scale and thermometer and the scatter of stamped tares together, contradicts it.
     */
    private void tooLightForItsPressure() {
        if (cylinder.pressure().isEmpty() || !facts.isVapourAlone()) {
            return;
        }
        Reading<Pressure> read = cylinder.pressure().get();
        try {
            Reading<Pressure> byWeight = facts.byWeight();
            double scatterPa = facts.pressureOfMorePa(
                    Weighing.TARE_SCATTER * cylinder.stamps().tare().kilograms());
            double expanded =
                    Math.hypot(Math.hypot(read.expandedUncertainty(), byWeight.expandedUncertainty()), scatterPa);
            PressureDifference more = read.value().minus(byWeight.value());
            if (more.pascals() > expanded) {
                wrong(
                        CylinderCode.WEIGHT_MISFITS_PRESSURE,
                        VESSEL,
                        facts.contentsFigure(),
                        Figure.of("byWeight", byWeight.value()),
                        Figure.of("temperature", cylinder.temperature().value()),
                        Figure.of("read", read.value()),
                        Figure.of("more", more),
                        Figure.of("doubt", PressureDifference.ofPascals(expanded)));
            }
        } catch (OutOfValidityException e) {
            return; // colder than the equation reaches: nothing follows from the weight
        }
    }
}
