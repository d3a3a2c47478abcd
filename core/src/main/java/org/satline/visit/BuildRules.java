package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.charge.Judgement;
import org.satline.charge.SystemFeature;
import org.satline.charge.SystemFeature.Judged;
import org.satline.charge.SystemFeature.Method;
import org.satline.charge.SystemFeature.UsualSuperheat;
import org.satline.charge.margin.Criterion;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;

/**
 * Whether superheat and subcooling tell the charge of this system at all, and by what it is judged where they do not.
 *
 * @param visit what was found on site
 */
record BuildRules(Visit visit) {
    /** Whether no level may be told from the readings. */
    boolean bars() {
        return isHeating()
                || visit.system().build().evacuated()
                || barred().findAny().isPresent();
    }

    /** Recovering and weighing in has to be prepared; every other method reads something again. */
    ActionKind kind() {
        return !isHeating() && barred().anyMatch(each -> method(each) == Method.WEIGH_IN)
                ? ActionKind.PREPARE
                : ActionKind.READ_AGAIN;
    }

    /** The judgement with its level taken away where the system bars it, else as it is; what is to be heeded either way. */
    Judgement applied(Judgement judgement) {
        if (!bars()) {
            return judgement;
        }
        Judgement.Evidence e = judgement.evidence();
        return new Judgement.Undecided(
                Optional.empty(),
                Optional.empty(),
                new Judgement.Evidence(
                        e.margins(), e.deviation(), e.gates(), e.weighed(), findings(), e.steps(), e.data()));
    }

    /** What each feature asks for, and what is usual for its application. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        if (isHeating()) {
            findings.add(Finding.of(
                    Severity.FORBIDS,
                    VisitCode.HEATING_MODE,
                    Subject.system(visit.system().name())));
        }
        for (SystemFeature feature : visit.system().build().features()) {
            findings.add(finding(feature));
            feature.usualSuperheat().map(usual -> usual(feature, usual)).ifPresent(findings::add);
        }
        if (barred().anyMatch(each -> method(each) == Method.MAKERS_TEST_MODE)) {
            findings.addAll(asked());
        }
        return findings;
    }

    private boolean isHeating() {
        return visit.system().mode() == SystemMode.HEATING;
    }

    private Method method(SystemFeature feature) {
        return feature.judged(visit.system().metering()).method();
    }

    private Stream<SystemFeature> barred() {
        return visit.system().build().features().stream().filter(each -> switch (method(each)) {
            case WITH_CARE -> false;
            case MAKERS_TEST_MODE -> !isInTestMode();
            case SIGHT_GLASS, MAKERS_METHOD, WEIGH_IN -> true;
        });
    }

    /** The test mode without the maker's target for it tells nothing. */
    private boolean isInTestMode() {
        return visit.system().build().makersTestMode().orElse(false) && hasMakersTarget();
    }

    private boolean hasMakersTarget() {
        return (visit.system().metering().judgedBy() == Criterion.SUPERHEAT
                        ? visit.system().targetSuperheat()
                        : visit.system().targetSubcooling())
                .isPresent();
    }

    private List<Finding> asked() {
        List<Finding> asked = new ArrayList<>();
        if (!visit.system().build().makersTestMode().orElse(false)) {
            asked.add(Finding.of(
                    Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading("system.makersTestMode")));
        }
        if (!hasMakersTarget()) {
            String target = visit.system().metering().judgedBy() == Criterion.SUPERHEAT
                    ? "system.targetSuperheat"
                    : "system.targetSubcooling";
            asked.add(Finding.of(Severity.MUST_BE_SUPPLIED, CommonCode.NOT_GIVEN, Subject.reading(target)));
        }
        return asked;
    }

    private Finding finding(SystemFeature feature) {
        Judged judged = feature.judged(visit.system().metering());
        VisitCode code = switch (judged.method()) {
            case WITH_CARE -> VisitCode.JUDGED_WITH_CARE;
            case MAKERS_TEST_MODE -> VisitCode.JUDGED_IN_TEST_MODE;
            case SIGHT_GLASS -> VisitCode.CHARGE_BY_SIGHT_GLASS;
            case MAKERS_METHOD -> VisitCode.CHARGE_BY_MAKERS_METHOD;
            case WEIGH_IN -> VisitCode.CHARGE_BY_WEIGHT;
        };
        boolean bars = barred().anyMatch(each -> each == feature);
        return Finding.of(
                        bars ? Severity.FORBIDS : Severity.CAUTION,
                        code,
                        Subject.system(visit.system().name()),
                        Figure.of("feature", feature.word()))
                .citing(judged.source());
    }

    private Finding usual(SystemFeature feature, UsualSuperheat usual) {
        return Finding.of(
                        Severity.CAUTION,
                        VisitCode.USUAL_SUPERHEAT,
                        Subject.system(visit.system().name()),
                        Figure.of("feature", feature.word()),
                        Figure.of("low", usual.low()),
                        Figure.of("high", usual.high()))
                .citing(usual.source());
    }
}
