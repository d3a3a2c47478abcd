package org.satline.cylinder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.satline.cylinder.ContentsFinding.Candidate;
import org.satline.explanation.Step;
import org.satline.quantity.PressureDifference;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;

/**
 * Holds the pressure of a cylinder at rest against the saturation pressure of what its label says. A blend fits anywhere between dew and
 * bubble pressure, since the liquid level decides where. Stateless, thread-safe.
 */
public final class ContentsCheck {
    /** Limit of non-condensable gas in the vapour, mole fraction; AHRI 700-2006 addendum 1. */
    public static final double NON_CONDENSABLES_LIMIT = 0.015;

    private static final String PURITY = "AHRI Standard 700-2006, addendum 1";
    private static final String PRACTICE = "common practice, no source";

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
    public static ContentsFinding check(SaturationCurve label, List<SaturationCurve> others, ContentsReading reading) {
        Band own = band(label, reading);
        List<Step> steps = List.of(step(own, reading));
        if (!reading.settled()) {
            return new ContentsFinding.NotSettled(
                    "the cylinder has not settled",
                    List.of(new Caution(
                            "let the cylinder stand, valves shut and out of the sun, until its top and bottom have the temperature of the air, "
                                    + "then read again",
                            PRACTICE)),
                    steps);
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
            return liquidGone(steps);
        }
        if (!fitting.isEmpty()) {
            return another(own, fitting, steps);
        }
        return own.above() > 0 ? nonCondensables(own, reading, steps) : belowSaturation(reading, steps);
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
                "pressure against saturation of " + own.curve().refrigerant().designation(),
                "p_dew(T) - U <= p <= p_bubble(T) + U",
                String.format(
                        Locale.ROOT,
                        "at %s: %.1f kPa to %.1f kPa, U = %.1f kPa; read %.1f kPa",
                        Figures.temperature(reading.temperature().value().kelvins()),
                        own.low() / 1000,
                        own.high() / 1000,
                        own.expanded() / 1000,
                        reading.pressure().value().kilopascals()),
                own.fits() ? "fits" : String.format(Locale.ROOT, "off by %+.1f kPa", own.above() / 1000),
                own.curve().source() + "; JCGM 100, 5.1.2, k = 2");
    }

    /** Whether 1.5 % of non-condensables would raise the pressure by more than the uncertainty and the width of the band. */
    private static boolean resolves(Band own) {
        double rise = own.high() / (1 - NON_CONDENSABLES_LIMIT) - own.high();
        return rise > own.expanded() + (own.high() - own.low());
    }

    private static ContentsFinding consistent(Band own, List<Band> fitting, ContentsReading reading, List<Step> steps) {
        List<Caution> cautions = new ArrayList<>();
        boolean resolved = resolves(own);
        if (!resolved) {
            cautions.add(new Caution(
                    "non-condensables of 1.5 % would raise the pressure by "
                            + Figures.pressure(own.high() / (1 - NON_CONDENSABLES_LIMIT) - own.high())
                            + ", less than these instruments resolve: the limit is neither met nor broken by this check",
                    PURITY + "; Dalton's law"));
        }
        if (!fitting.isEmpty()) {
            cautions.add(new Caution(
                    "this pressure fits " + names(fitting)
                            + " as well; the pressure alone does not prove the label, use an identifier",
                    PRACTICE));
        }
        if (reading.overallDensity().isEmpty()) {
            cautions.add(new Caution("a fill test by pressure cannot find overfill; weigh the cylinder", PRACTICE));
        }
        return new ContentsFinding.Consistent(
                fitting.stream().map(Band::candidate).toList(), resolved, cautions, steps);
    }

    private static ContentsFinding another(Band own, List<Band> fitting, List<Step> steps) {
        List<Caution> cautions = new ArrayList<>();
        cautions.add(new Caution(
                "the label says " + own.curve().refrigerant().designation() + ", the pressure fits " + names(fitting)
                        + "; use none of it and mix nothing into it until an identifier has told what it is",
                PRACTICE));
        if (own.above() > 0) {
            cautions.add(new Caution(
                    "non-condensable gas in " + own.curve().refrigerant().designation()
                            + " would raise the pressure too",
                    PURITY));
        }
        return new ContentsFinding.AnotherMoreLikely(
                fitting.stream().map(Band::candidate).toList(), cautions, steps);
    }

    private static ContentsFinding nonCondensables(Band own, ContentsReading reading, List<Step> steps) {
        double p = reading.pressure().value().pascals();
        // Dalton: what is above the saturation pressure is the partial pressure of the gas that does not condense
        double fraction = own.above() / p;
        double uncertainty = own.expanded() / p;
        boolean resolved = resolves(own);
        List<Step> all = new ArrayList<>(steps);
        all.add(new Step(
                "mole fraction of non-condensable gas in the vapour",
                "y = (p - p_bubble) / p",
                String.format(Locale.ROOT, "(%.1f kPa - %.1f kPa) / %.1f kPa", p / 1000, own.high() / 1000, p / 1000),
                String.format(Locale.ROOT, "%.4f, expanded uncertainty %.4f", fraction, uncertainty),
                "Dalton's law, ideal gas; limit 0.015: " + PURITY));
        List<Caution> cautions = new ArrayList<>();
        cautions.add(new Caution(
                "non-condensable gas is suspected: do not charge from this cylinder, and never vent it; a reclaimer removes the air",
                PURITY + "; 40 CFR 82.154(a)"));
        if (!resolved) {
            cautions.add(new Caution("these instruments cannot resolve the limit of 1.5 % itself", PURITY));
        }
        return new ContentsFinding.NonCondensablesSuspected(fraction, uncertainty, resolved, cautions, all);
    }

    /** Whether what was weighed in is too light to keep liquid at this temperature. */
    private static boolean isAllVapour(SaturationCurve label, ContentsReading reading) {
        return reading.overallDensity()
                .filter(density -> density.kilogramsPerCubicMetre()
                        <= label.dewVapourDensity(reading.temperature().value().kelvins()))
                .isPresent();
    }

    private static ContentsFinding liquidGone(List<Step> steps) {
        return new ContentsFinding.LiquidGone(
                List.of(new Caution(
                        "no liquid is left: the pressure says nothing about what the vapour is; the cylinder is not empty, and what is left of "
                                + "a blend has shifted in composition",
                        PRACTICE)),
                steps);
    }

    private static ContentsFinding belowSaturation(ContentsReading reading, List<Step> steps) {
        if (reading.overallDensity().isEmpty()) {
            return liquidGone(steps);
        }
        return new ContentsFinding.NotSettled(
                "by weight there is liquid inside, and the pressure is below that of any candidate: it has not settled, or the liquid is colder "
                        + "than the thermometer says",
                List.of(new Caution("wait and read again, with the thermometer at the height of the liquid", PRACTICE)),
                steps);
    }

    private static String names(List<Band> bands) {
        return bands.stream()
                .map(band -> band.curve().refrigerant().designation())
                .collect(Collectors.joining(", "));
    }
}
