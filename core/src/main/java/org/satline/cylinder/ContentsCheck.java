package org.satline.cylinder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.satline.cylinder.ContentsFinding.Candidate;
import org.satline.cylinder.ContentsFinding.Outcome;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * Holds the pressure of a cylinder at rest against the saturation pressure of what its label says. A blend fits anywhere between dew and
 * bubble pressure, since the liquid level decides where. Stateless, thread-safe.
 */
final class ContentsCheck {
    /** Limit of non-condensable gas in the vapour, mole fraction; AHRI 700-2006 addendum 1. */
    static final double NON_CONDENSABLES_LIMIT = 0.015;

    private static final String PURITY = "AHRI Standard 700-2006, addendum 1";
    private static final String DALTON_SOURCE = "Dalton's law, ideal gas; limit 0.015: " + PURITY;

    private ContentsCheck() {}

    /** The band of saturation pressures of one refrigerant at the reading's temperature, and where the reading lies against it. */
    private record Band(SaturationCurve curve, double low, double high, double above, double expanded) {
        boolean fits() {
            return Math.abs(above) <= expanded;
        }

        Candidate candidate() {
            return new Candidate(curve.refrigerant().designation(), PressureDifference.ofPascals(above), deviations());
        }

        double deviations() {
            return above == 0 ? 0 : Math.abs(above) / Math.max(expanded / 2, Double.MIN_NORMAL);
        }
    }

    /**
     * Checks the contents.
     *
     * @param label the saturation curve of what the label says
     * @param others those of other refrigerants that it might be; the label itself may be among them
     * @param reading what was measured
     * @return what follows from it
     * @throws org.satline.quantity.OutOfValidityException if the temperature is outside the saturation line of the label
     */
    static ContentsFinding check(SaturationCurve label, List<SaturationCurve> others, ContentsReading reading) {
        Band own = band(label, reading);
        List<Step> steps = List.of(step(own, reading));
        if (!reading.settled()) {
            return found(Outcome.NOT_SETTLED, own, List.of(), steps, caution(own, CylinderCode.NOT_AT_REST));
        }
        List<Band> fitting = others.stream()
                .filter(curve -> !curve.refrigerant().equals(label.refrigerant()))
                .filter(curve -> covers(curve, reading.temperature().value().kelvins()))
                .map(curve -> band(curve, reading))
                .filter(Band::fits)
                .sorted(Comparator.comparingDouble(Band::deviations))
                .toList();
        if (own.fits()) {
            return consistent(own, fitting, reading, steps);
        }
        if (own.above() < 0 && isAllVapour(label, reading)) {
            return liquidGone(own, steps);
        }
        if (!fitting.isEmpty()) {
            return another(own, fitting, steps);
        }
        if (own.above() > 0) {
            return nonCondensables(own, reading, steps);
        }
        return reading.overallDensity().isEmpty()
                ? liquidGone(own, steps)
                : found(Outcome.NOT_SETTLED, own, List.of(), steps, caution(own, CylinderCode.COLDER_THAN_READ));
    }

    private static Finding caution(Band own, CylinderCode code, Figure... figures) {
        String gas = own.curve().refrigerant().designation();
        return Finding.of(Severity.CAUTION, code, new Subject(Subject.Kind.REFRIGERANT, gas), figures);
    }

    private static ContentsFinding found(
            Outcome outcome, Band own, List<Band> fitting, List<Step> steps, Finding... cautions) {
        return new ContentsFinding(
                outcome, fitting.stream().map(Band::candidate).toList(), 0, 0, resolves(own), List.of(cautions), steps);
    }

    private static boolean covers(SaturationCurve curve, double t) {
        return t >= curve.minTemperatureK() && t <= curve.maxTemperatureK();
    }

    private static Band band(SaturationCurve curve, ContentsReading reading) {
        double t = reading.temperature().value().kelvins();
        double bubble = curve.bubblePressurePa(t);
        double dew = curve.dewPressurePa(t);
        double low = Math.min(dew, bubble);
        double high = Math.max(dew, bubble);
        double p = reading.pressure().value().pascals();
        double above = p > high ? p - high : p < low ? p - low : 0;
        double near = Math.min(t + 0.5, curve.maxTemperatureK());
        double slope = (curve.bubblePressurePa(near) - curve.bubblePressurePa(near - 1)) / 1;
        // independent, JCGM 100, 5.1.2
        double expanded = Math.hypot(
                reading.pressure().expandedUncertainty(),
                slope * reading.temperature().expandedUncertainty());
        return new Band(curve, low, high, above, expanded);
    }

    private static Step step(Band own, ContentsReading reading) {
        return new Step(
                "offSaturation",
                "p_dew(T) - U <= p <= p_bubble(T) + U",
                List.of(
                        Figure.of("T", reading.temperature().value()),
                        Figure.of("p", reading.pressure().value()),
                        Figure.of("p_dew", Pressure.ofPascals(own.low())),
                        Figure.of("p_bubble", Pressure.ofPascals(own.high())),
                        Figure.of("U", PressureDifference.ofPascals(own.expanded()))),
                Figure.of("off", PressureDifference.ofPascals(own.above())),
                own.curve().source() + "; JCGM 100, 5.1.2, k = 2");
    }

    /** Whether 1.5 % of non-condensables would raise the pressure by more than the uncertainty and the width of the band. */
    private static boolean resolves(Band own) {
        double rise = own.high() / (1 - NON_CONDENSABLES_LIMIT) - own.high();
        return rise > own.expanded() + (own.high() - own.low());
    }

    private static ContentsFinding consistent(Band own, List<Band> fitting, ContentsReading reading, List<Step> steps) {
        List<Finding> cautions = new ArrayList<>();
        if (!resolves(own)) {
            double rise = own.high() / (1 - NON_CONDENSABLES_LIMIT) - own.high();
            cautions.add(caution(
                            own,
                            CylinderCode.AIR_NOT_RESOLVED,
                            Figure.of("limit", 100 * NON_CONDENSABLES_LIMIT, "%"),
                            Figure.of("rise", PressureDifference.ofPascals(rise)))
                    .citing(PURITY));
        }
        if (!fitting.isEmpty()) {
            cautions.add(caution(own, CylinderCode.FITS_OTHERS, names(fitting)));
        }
        if (reading.overallDensity().isEmpty()) {
            cautions.add(caution(own, CylinderCode.WEIGH_TOO));
        }
        return found(Outcome.CONSISTENT, own, fitting, steps, cautions.toArray(new Finding[0]));
    }

    private static ContentsFinding another(Band own, List<Band> fitting, List<Step> steps) {
        List<Finding> cautions = new ArrayList<>(List.of(caution(own, CylinderCode.ANOTHER_LIKELIER, names(fitting))));
        if (own.above() > 0) {
            cautions.add(caution(own, CylinderCode.AIR_POSSIBLE).citing(PURITY));
        }
        return found(Outcome.ANOTHER_MORE_LIKELY, own, fitting, steps, cautions.toArray(new Finding[0]));
    }

    private static ContentsFinding nonCondensables(Band own, ContentsReading reading, List<Step> steps) {
        double p = reading.pressure().value().pascals();
        // Dalton: what is above the saturation pressure is the partial pressure of the gas that does not condense
        double fraction = own.above() / p;
        double uncertainty = own.expanded() / p;
        boolean resolved = resolves(own);
        List<Step> all = new ArrayList<>(steps);
        all.add(new Step(
                "nonCondensables",
                "y = (p - p_bubble) / p",
                List.of(
                        Figure.of("p", reading.pressure().value()),
                        Figure.of("p_bubble", Pressure.ofPascals(own.high())),
                        Figure.of("U", uncertainty, "1")),
                Figure.of("y", fraction, "1"),
                DALTON_SOURCE));
        List<Finding> cautions = new ArrayList<>();
        cautions.add(caution(own, CylinderCode.AIR_SUSPECTED, Figure.of("share", 100 * fraction, "%"))
                .citing(PURITY + "; 40 CFR 82.154(a)"));
        if (!resolved) {
            cautions.add(caution(
                            own,
                            CylinderCode.AIR_NOT_RESOLVED,
                            Figure.of("limit", 100 * NON_CONDENSABLES_LIMIT, "%"),
                            Figure.of("rise", PressureDifference.ofPascals(own.expanded())))
                    .citing(PURITY));
        }
        return new ContentsFinding(
                Outcome.NON_CONDENSABLES_SUSPECTED, List.of(), fraction, uncertainty, resolved, cautions, all);
    }

    /** Whether what was weighed in is too light to keep liquid at this temperature. */
    private static boolean isAllVapour(SaturationCurve label, ContentsReading reading) {
        return reading.overallDensity()
                .filter(density -> density.kilogramsPerCubicMetre()
                        <= label.dewVapourDensity(reading.temperature().value().kelvins()))
                .isPresent();
    }

    private static ContentsFinding liquidGone(Band own, List<Step> steps) {
        return found(Outcome.LIQUID_GONE, own, List.of(), steps, caution(own, CylinderCode.LIQUID_GONE));
    }

    private static Figure names(List<Band> bands) {
        return Figure.of(
                "others",
                bands.stream()
                        .map(band -> band.curve().refrigerant().designation())
                        .collect(Collectors.joining(", ")));
    }
}
