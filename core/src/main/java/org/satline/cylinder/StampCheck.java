package org.satline.cylinder;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.satline.cylinder.Refusal.Reason;
import org.satline.measurement.Reading;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;
import org.satline.safety.Caution;
import org.satline.saturation.SaturationCurve;

/** Looks for reasons, in the stamps alone and against the refrigerant, why a cylinder must not receive it. */
public final class StampCheck {
    /** Tare over water capacity of welded cylinders of the trade; a mix-up of kg and lb shifts it by 2.2. */
    private static final double WELDED_LOW = 0.30;

    private static final double WELDED_HIGH = 1.00;
    /** The same for any receptacle, seamless steel and aluminium of high pressure included. */
    private static final double ANY_LOW = 0.15;

    private static final double ANY_HIGH = 4.0;
    private static final String TRADE_SIZES =
            "common practice, no source (tare and water capacity of cylinders of the trade)";
    private static final String PRACTICE = "common practice, no source";

    private StampCheck() {}

    /**
     * Lists every reason why this cylinder must not receive this refrigerant, pressures aside.
     *
     * @param question the cylinder, the refrigerant and the day
     * @return the reasons, empty where there is none
     */
    public static List<Refusal> refusals(FillQuestion question) {
        List<Refusal> found = new ArrayList<>();
        CylinderStamps stamps = question.stamps();
        ratio(stamps).ifPresent(found::add);
        contradictoryPressures(stamps, found);
        if (stamps.isRefillingContradictory()) {
            found.add(new Refusal(
                    Reason.STAMPS_CONTRADICTORY,
                    "the cylinder is said to be refillable, its mark "
                            + stamps.specification().orElseThrow()
                            + " says that it is not; read the collar again, and believe the mark",
                    "49 CFR 178.65(i)"));
        }
        if (stamps.refillable().filter(refillable -> !refillable).isPresent()) {
            found.add(new Refusal(
                    Reason.NOT_REFILLABLE,
                    "the cylinder is non-refillable; refilling it is forbidden, take a refillable recovery cylinder",
                    "49 CFR 178.65(i), 173.301(c)"));
        } else if (stamps.refillable().isEmpty() && !question.partialStampsAccepted()) {
            found.add(missing(
                    "whether the cylinder may be refilled is not known; read the specification mark, such as DOT-4BA400",
                    "49 CFR 178.65(i)"));
        }
        retest(question, found);
        if (question.contents() instanceof CylinderContents.Unknown) {
            found.add(new Refusal(
                    Reason.CONTENTS_UNKNOWN,
                    "the refrigerant is unknown and no candidates are named; identify it, or name every refrigerant it may be",
                    PRACTICE));
        }
        flammable(question, found);
        mixed(question).ifPresent(found::add);
        return List.copyOf(found);
    }

    /**
     * Lists what a caller who accepts partial stamps leaves untested.
     *
     * @param question the cylinder, the refrigerant and the day
     * @return a caution for each, the loudest first; empty where all was given or partial stamps are refused anyway
     */
    static List<Caution> untested(FillQuestion question) {
        Set<FillDatum> missing = missing(question);
        List<Caution> found = new ArrayList<>();
        if (missing.contains(FillDatum.FLAMMABLE_MARK)) {
            for (SaturationCurve curve : question.contents().candidateCurves()) {
                Optional<SafetyGroup> group = curve.refrigerant().safetyGroup();
                if (mayBurn(curve)) {
                    found.add(new Caution(
                            "NOT TESTED: the mark for flammable gas; "
                                    + curve.refrigerant().designation() + " ("
                                    + group.map(SafetyGroup::name).orElse("no assigned safety group")
                                    + ") may only go into a cylinder that bears it",
                            "49 CFR 173.301; AHRI Guideline N (from memory)"));
                }
            }
        }
        if (missing.contains(FillDatum.REFILLABLE)) {
            found.add(new Caution(
                    "NOT TESTED: whether the cylinder may be refilled; a non-refillable one must not be",
                    "49 CFR 178.65(i)"));
        }
        if (missing.contains(FillDatum.RETEST_DUE) || missing.contains(FillDatum.FILL_DATE)) {
            found.add(new Caution(
                    "NOT TESTED: the retest date against the day of filling", "49 CFR 180.205(c) (from memory)"));
        }
        return List.copyOf(found);
    }

    /** What partial stamps leave out that a test aside from the rules needs; nothing where partial stamps are refused anyway. */
    static Set<FillDatum> missing(FillQuestion question) {
        Set<FillDatum> missing = EnumSet.noneOf(FillDatum.class);
        if (!question.partialStampsAccepted()) {
            return missing;
        }
        CylinderStamps stamps = question.stamps();
        if (stamps.flammableMark().isEmpty()
                && question.contents().candidateCurves().stream().anyMatch(StampCheck::mayBurn)) {
            missing.add(FillDatum.FLAMMABLE_MARK);
        }
        if (stamps.refillable().isEmpty()) {
            missing.add(FillDatum.REFILLABLE);
        }
        if (stamps.retestDue().isEmpty()) {
            missing.add(FillDatum.RETEST_DUE);
        }
        if (question.fillDate().isEmpty()) {
            missing.add(FillDatum.FILL_DATE);
        }
        return missing;
    }

    private static boolean mayBurn(SaturationCurve curve) {
        Optional<SafetyGroup> group = curve.refrigerant().safetyGroup();
        return group.isEmpty() || Flammability.isFlammable(group.get());
    }

    /**
     * Checks a gross weight against the tare.
     *
     * @param stamps the stamps of the cylinder
     * @param gross the gross weight by the scale
     * @return a reason where the cylinder would weigh less than nothing inside
     */
    public static Optional<Refusal> belowTare(CylinderStamps stamps, Reading<Mass> gross) {
        if (gross.value().kilograms() >= stamps.tare().kilograms() - gross.expandedUncertainty()) {
            return Optional.empty();
        }
        return Optional.of(new Refusal(
                Reason.STAMPS_CONTRADICTORY,
                "gross weight " + Figures.mass(gross.value().kilograms()) + " is below the tare "
                        + Figures.mass(stamps.tare().kilograms())
                        + "; check the unit of both, the zero of the scale and that the whole cylinder stands on it",
                "arithmetic: gross = tare + contents"));
    }

    private static Refusal missing(String text, String basis) {
        return new Refusal(Reason.STAMP_MISSING, text, basis);
    }

    private static Optional<Refusal> ratio(CylinderStamps stamps) {
        boolean welded = stamps.specification()
                .filter(CylinderSpecification::isWeldedLowPressure)
                .isPresent();
        double low = welded ? WELDED_LOW : ANY_LOW;
        double high = welded ? WELDED_HIGH : ANY_HIGH;
        double ratio = stamps.tare().kilograms() / stamps.waterCapacity().kilograms();
        if (ratio >= low && ratio <= high) {
            return Optional.empty();
        }
        return Optional.of(new Refusal(
                Reason.STAMPS_CONTRADICTORY,
                String.format(
                        Locale.ROOT,
                        "water capacity %s makes no sense for a tare of %s: tare over water capacity is %.2f, outside [%.2f, %.2f]; "
                                + "check whether one of them is in lb and the other in kg",
                        Figures.mass(stamps.waterCapacity().kilograms()),
                        Figures.mass(stamps.tare().kilograms()),
                        ratio,
                        low,
                        high),
                TRADE_SIZES));
    }

    private static void contradictoryPressures(CylinderStamps stamps, List<Refusal> found) {
        Optional<GaugePressure> marked = stamps.specification().flatMap(CylinderSpecification::markedPressure);
        Optional<GaugePressure> separate = stamps.separateServicePressure();
        // 1 psi: a mark in whole psi and the same pressure read in kPa or bar
        if (marked.isPresent()
                && separate.isPresent()
                && Math.abs(marked.get().psig() - separate.get().psig()) > 1) {
            found.add(new Refusal(
                    Reason.STAMPS_CONTRADICTORY,
                    String.format(
                            Locale.ROOT,
                            "service pressure is given as %.0f psig, the mark %s says %.0f psig; read the collar again",
                            separate.get().psig(),
                            stamps.specification().get(),
                            marked.get().psig()),
                    "49 CFR 178.35(f)"));
        }
        if (stamps.servicePressure().isPresent()
                && stamps.testPressure().isPresent()
                && stamps.testPressure().get().pascals()
                        < stamps.servicePressure().get().pascals()) {
            found.add(new Refusal(
                    Reason.STAMPS_CONTRADICTORY,
                    "test pressure " + Figures.gauge(stamps.testPressure().get().pascals())
                            + " is below the service pressure "
                            + Figures.gauge(stamps.servicePressure().get().pascals()) + "; read the collar again",
                    "arithmetic: a cylinder is tested above its service pressure"));
        }
    }

    private static void retest(FillQuestion question, List<Refusal> found) {
        Optional<LocalDate> due = question.stamps().retestDue();
        if (due.isPresent() && question.fillDate().isPresent()) {
            if (question.fillDate().get().isAfter(due.get())) {
                found.add(new Refusal(
                        Reason.RETEST_PAST,
                        "the retest was due on " + due.get() + " and the fill is on "
                                + question.fillDate().get()
                                + "; have the cylinder retested, its contents may be used up",
                        "49 CFR 180.205(c) (from memory); ADR 4.1.6.10 (from memory)"));
            }
        } else if (!question.partialStampsAccepted()) {
            found.add(missing(
                    due.isEmpty()
                            ? "the retest date is not given; read the last test date on the collar and add its interval"
                            : "the day of filling is not given, so the retest date " + due.get()
                                    + " could not be checked",
                    "49 CFR 180.205(c) (from memory)"));
        }
    }

    private static void flammable(FillQuestion question, List<Refusal> found) {
        if (question.stamps().flammableMark().orElse(false)) {
            return;
        }
        for (SaturationCurve curve : question.contents().candidateCurves()) {
            Refrigerant refrigerant = curve.refrigerant();
            Optional<SafetyGroup> group = refrigerant.safetyGroup();
            if (group.isPresent() && !Flammability.isFlammable(group.get())) {
                continue;
            }
            String kind = group.map(known -> "of safety group " + known)
                    .orElse("of no assigned safety group, taken as flammable");
            if (question.stamps().flammableMark().isPresent()) {
                found.add(new Refusal(
                        Reason.NOT_MARKED_FLAMMABLE,
                        refrigerant.designation() + " is " + kind
                                + " and the cylinder is not marked for flammable gas; take one that is (left-hand thread, red band)",
                        "49 CFR 173.301; AHRI Guideline N (from memory)"));
            } else if (!question.partialStampsAccepted()) {
                found.add(missing(
                        refrigerant.designation() + " is " + kind
                                + " and it is not known whether the cylinder is marked for flammable gas; look for the red band",
                        "49 CFR 173.301; AHRI Guideline N (from memory)"));
            }
        }
    }

    private static Optional<Refusal> mixed(FillQuestion question) {
        if (question.alreadyInside().isEmpty()) {
            return Optional.empty();
        }
        String inside = question.alreadyInside().get().designation();
        boolean same = question.contents().candidateCurves().stream()
                .allMatch(curve -> curve.refrigerant().designation().equals(inside));
        return same
                ? Optional.empty()
                : Optional.of(new Refusal(
                        Reason.MIXED_CONTENTS,
                        "the cylinder holds " + inside
                                + " already; one refrigerant in a cylinder, a mixture cannot be reclaimed",
                        PRACTICE));
    }
}
