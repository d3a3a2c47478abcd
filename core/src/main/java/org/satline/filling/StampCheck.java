package org.satline.filling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.filling.CylinderSpecification.Kind;
import org.satline.filling.FillQuestion.Purpose;
import org.satline.quantity.GaugePressure;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;
import org.satline.saturation.SaturationCurve;

/** Looks for reasons, in the stamps alone and against the refrigerant, why a cylinder must not receive it. */
final class StampCheck {
    /** Tare over water capacity of welded cylinders of the trade; a mix-up of kg and lb shifts it by 2.2. */
    private static final double WELDED_LOW = 0.30;

    private static final double WELDED_HIGH = 1.00;
    /** The same for any receptacle, seamless steel and aluminium of high pressure included. */
    private static final double ANY_LOW = 0.15;

    private static final double ANY_HIGH = 4.0;
    private static final String REFILL = "49 CFR 178.65(i)";
    /** No cylinder is retested less often: 12 years in 49 CFR 180.209, 15 years for some in ADR 4.1.4.1 P200 (both from memory). */
    private static final int LONGEST_PERIOD_YEARS = 15;

    private static final String RETEST = "49 CFR 180.205(c) (from memory)";
    private static final String FLAMMABLE = "49 CFR 173.301; AHRI Guideline N (from memory)";
    private static final String MARKS = "49 CFR 178.35(f)";

    private final FillQuestion question;
    private final CylinderStamps stamps;
    private final List<Finding> found = new ArrayList<>();

    private StampCheck(FillQuestion question) {
        this.question = question;
        this.stamps = question.stamps();
    }

    /** Every reason why this cylinder must not receive this refrigerant, pressures aside, and what must be supplied to tell. */
    static List<Finding> of(FillQuestion question) {
        StampCheck check = new StampCheck(question);
        check.ratio();
        check.pressures();
        check.mark();
        check.retest();
        if (question.contents().isEmpty()) {
            check.forbid(FillingCode.CONTENTS_UNKNOWN, Finding.PRACTICE);
        }
        question.contents().forEach(check::flammable);
        check.mixed();
        return List.copyOf(check.found);
    }

    /** All but the groups without flame propagation (ISO 817, ASHRAE 34: digit 1); no assigned group is taken as flammable. */
    static boolean mayBurn(SaturationCurve curve) {
        return curve.refrigerant().safetyGroup().map(SafetyGroup::isFlammable).orElse(true);
    }

    private void forbid(FillingCode code, String basis, Figure... figures) {
        add(Severity.FORBIDS, code, basis, figures);
    }

    private void add(Severity severity, FillingCode code, String basis, Figure... figures) {
        found.add(Finding.of(severity, code, Subject.cylinder(question.name()), figures)
                .citing(basis));
    }

    /** A missing stamp is asked for, or cautioned where a number is asked for only. */
    private void missing(Stamp stamp, String basis) {
        if (question.purpose() == Purpose.FILL) {
            found.add(FillAssessor.notGiven(question, stamp.field()).citing(basis));
        } else {
            add(Severity.CAUTION, FillingCode.STAMP_NOT_TESTED, basis, Figure.of("stamp", stamp.field()));
        }
    }

    private void ratio() {
        boolean welded = stamps.specification()
                .filter(CylinderSpecification::isWeldedLowPressure)
                .isPresent();
        double low = welded ? WELDED_LOW : ANY_LOW;
        double high = welded ? WELDED_HIGH : ANY_HIGH;
        double ratio = stamps.tare().kilograms() / stamps.waterCapacity().kilograms();
        if (!(ratio >= low && ratio <= high)) {
            forbid(
                    FillingCode.TARE_MISFITS_CAPACITY,
                    Finding.PRACTICE,
                    Figure.of("tare", stamps.tare()),
                    Figure.of("waterCapacity", stamps.waterCapacity()),
                    Figure.of("ratio", ratio, "1"),
                    Figure.of("low", low, "1"),
                    Figure.of("high", high, "1"));
        }
    }

    private void pressures() {
        Optional<GaugePressure> marked = stamps.specification().flatMap(CylinderSpecification::markedPressure);
        Optional<GaugePressure> separate = stamps.separateServicePressure();
        // 1 psi: a mark in whole psi and the same pressure read in kPa or bar; a mark in whole bar is as coarse as half
        // of one
        boolean canadian = stamps.specification()
                .filter(mark -> mark.text().toUpperCase(Locale.ROOT).contains("TC"))
                .isPresent();
        double apart = canadian
                ? GaugePressure.ofBars(0.5).pascals()
                : GaugePressure.ofPsig(1).pascals();
        if (marked.isPresent()
                && separate.isPresent()
                && Math.abs(marked.get().pascals() - separate.get().pascals()) > apart) {
            forbid(
                    FillingCode.SERVICE_PRESSURE_MISFITS_MARK,
                    MARKS,
                    Figure.of("stated", separate.get()),
                    markFigure(),
                    Figure.of("marked", marked.get()));
        }
        Optional<GaugePressure> service = stamps.servicePressure();
        Optional<GaugePressure> test = stamps.testPressure();
        if (service.isPresent() && test.isPresent() && test.get().compareTo(service.get()) < 0) {
            forbid(
                    FillingCode.TEST_BELOW_SERVICE,
                    MARKS,
                    Figure.of("test", test.get()),
                    Figure.of("service", service.get()));
        }
    }

    private Figure markFigure() {
        return Figure.of(
                "mark", stamps.specification().map(CylinderSpecification::text).orElse(""));
    }

    private void mark() {
        Optional<CylinderSpecification> mark = stamps.specification();
        mark.filter(CylinderSpecification::isImpossible)
                .ifPresent(wrong -> forbid(
                        FillingCode.MARK_IMPOSSIBLE,
                        "49 CFR 178.36 to 178.68 (bounds of the service pressure; from memory)",
                        markFigure(),
                        Figure.of("marked", wrong.markedPressure().orElseThrow()),
                        Figure.of("least", wrong.leastPressure().orElseThrow()),
                        Figure.of("most", wrong.largestPressure().orElseThrow())));
        if (mark.filter(other -> other.kind() == Kind.NOT_FOR_REFRIGERANT).isPresent()) {
            forbid(FillingCode.NOT_FOR_REFRIGERANT, MARKS, markFigure());
            return;
        }
        if (stamps.isRefillingContradictory()) {
            forbid(FillingCode.REFILLABLE_AGAINST_MARK, REFILL, markFigure());
        }
        if (stamps.refillable().equals(Optional.of(false))) {
            forbid(FillingCode.NOT_REFILLABLE, REFILL + ", 173.301(c)");
        } else if (stamps.refillable().isEmpty()) {
            missing(Stamp.REFILLABLE, REFILL);
        }
    }

    private void retest() {
        Optional<LocalDate> due = stamps.retestDue();
        Optional<LocalDate> day = question.fillDate();
        if (due.isPresent() && day.isPresent()) {
            if (day.get().isAfter(due.get())) {
                forbid(
                        FillingCode.RETEST_PAST,
                        RETEST,
                        Figure.of("due", due.get().toString()),
                        Figure.of("day", day.get().toString()));
            } else if (due.get().isAfter(day.get().plusYears(LONGEST_PERIOD_YEARS))) {
                missing(Stamp.RETEST_DUE, RETEST);
            }
            return;
        }
        if (due.isEmpty()) {
            missing(Stamp.RETEST_DUE, RETEST);
        } else if (question.purpose() == Purpose.FILL) {
            found.add(Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading("date"))
                    .citing(RETEST));
        } else {
            add(Severity.CAUTION, FillingCode.RETEST_NOT_CHECKED, RETEST);
        }
    }

    private void flammable(SaturationCurve curve) {
        if (!mayBurn(curve) || stamps.flammableMark().orElse(false)) {
            return;
        }
        if (stamps.flammableMark().isEmpty()) {
            missing(Stamp.FLAMMABLE_MARK, FLAMMABLE);
            return;
        }
        Refrigerant gas = curve.refrigerant();
        forbid(
                FillingCode.FLAMMABLE,
                FLAMMABLE,
                Figure.of("gas", gas.designation()),
                Figure.of("group", gas.safetyGroup().map(SafetyGroup::name).orElse("-")));
    }

    private void mixed() {
        Optional<Refrigerant> inside = question.alreadyInside();
        question.contents().stream()
                .map(SaturationCurve::refrigerant)
                .filter(coming -> inside.isPresent()
                        && !coming.designation().equals(inside.get().designation()))
                .findFirst()
                .ifPresent(coming -> forbid(
                        FillingCode.MIXING,
                        Finding.PRACTICE,
                        Figure.of("from", coming.designation()),
                        Figure.of("to", inside.orElseThrow().designation())));
    }
}
