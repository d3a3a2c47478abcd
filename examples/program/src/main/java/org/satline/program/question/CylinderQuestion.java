package org.satline.program.question;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.satline.explanation.CommonCode;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Step;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillAssessor;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRule.Basis;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.quantity.Mass;
import org.satline.quantity.Quantity;
import org.satline.wording.Wording;

/** How much a cylinder may hold, and the most it may weigh. Stateless, thread-safe. */
public final class CylinderQuestion {
    private CylinderQuestion() {}

    /**
     * Answers.
     *
     * @param question the cylinder
     * @param wording words and units
     * @return the largest contents and gross weight; not given where it must not be filled
     */
    public static Reply of(FillQuestion question, Wording wording) {
        FillAssessment assessment = FillAssessor.standard().assess(question);
        Optional<MassLimit> limit =
                assessment.answers().limits(EnumSet.allOf(Basis.class)).stream().findFirst();
        List<String> notes = new ArrayList<>();
        assessment.answers().cautions().forEach(each -> notes.add(said(each, wording)));
        notes.add(wording.message("reply.cylinder.bare"));
        Map<String, String> words = new LinkedHashMap<>();
        if (assessment instanceof FillAssessment.Refused || limit.isEmpty()) {
            words.put("law", "forbids");
            List<String> lines = new ArrayList<>(List.of(wording.message("reply.cylinder.forbidden")));
            assessment.objections().forEach(each -> lines.add("  " + said(each, wording)));
            return new Reply(false, lines, Map.of(), words, List.of(), notes);
        }
        MassLimit governing = limit.get();
        boolean tested = assessment instanceof FillAssessment.Allowed;
        words.put("law", tested ? "tested" : "not-tested");
        words.put("rule", governing.rule().name());
        Mass most = governing.maximumContents();
        Mass gross = most.plus(question.stamps().tare());
        Map<String, Quantity<?>> numbers = new LinkedHashMap<>();
        numbers.put("largestContents", most);
        numbers.put("largestGross", gross);
        List<String> lines = new ArrayList<>();
        lines.add(wording.message("reply.cylinder.hold", Figure.of("most", most)));
        lines.add(wording.message("reply.cylinder.weigh", Figure.of("most", gross)));
        if (!tested) {
            lines.add(wording.message("reply.cylinder.untested"));
            assessment.objections().forEach(each -> lines.add("  " + said(each, wording)));
        }
        lines.add(wording.message(
                "reply.cylinder.governed",
                Figure.of("rule", governing.rule().name()),
                Figure.of("inequality", governing.rule().inequality())));
        List<Step> steps = governing.steps();
        return new Reply(true, lines, numbers, words, steps, notes);
    }

    /** {@code cylinder.retestDue} is given by {@code --retest-due}. */
    private static String option(String path) {
        StringBuilder option = new StringBuilder("--");
        path.substring(path.lastIndexOf('.') + 1)
                .chars()
                .forEach(c ->
                        option.append(Character.isUpperCase(c) ? "-" : "").append((char) Character.toLowerCase(c)));
        return option.toString();
    }

    private static String said(Finding finding, Wording wording) {
        String text = finding.code() == CommonCode.NOT_GIVEN
                ? wording.message(
                        "reply.notGiven",
                        Figure.of("option", option(finding.subject().name())))
                : wording.of(finding);
        return text + (finding.basis().isEmpty() ? "" : " [" + finding.basis() + "]");
    }
}
