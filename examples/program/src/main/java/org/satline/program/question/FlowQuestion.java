package org.satline.program.question;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.measurement.Reading;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Quantity;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.Flow;
import org.satline.transfer.FlowCheck;
import org.satline.transfer.PointKind;
import org.satline.wording.Wording;

/** Which of two pressures flows into which. Stateless, thread-safe. */
public final class FlowQuestion {
    private FlowQuestion() {}

    /**
     * One of the two.
     *
     * @param pressure as read
     * @param point what it is, where that is said
     */
    public record End(GaugePressure pressure, Optional<PointKind> point) {
        /** {@inheritDoc} */
        public End {
            Parts.required("pressure point", pressure, point);
        }
    }

    /**
     * A point by its word.
     *
     * @param word such as low-side-port
     * @return the point
     * @throws BadInputException if there is none of that word
     */
    public static PointKind point(String word) {
        return Stream.of(PointKind.values())
                .filter(each -> fileWord(each).equals(word))
                .findFirst()
                .orElseThrow(() -> new BadInputException(Shown.quoted(word) + " is no point; allowed: "
                        + Stream.of(PointKind.values())
                                .map(FlowQuestion::fileWord)
                                .collect(Collectors.joining(", "))));
    }

    private static String fileWord(PointKind kind) {
        StringBuilder word = new StringBuilder();
        kind.name().chars().forEach(c -> word.append(c == '_' ? '-' : (char) Character.toLowerCase(c)));
        return word.toString();
    }

    /**
     * Answers.
     *
     * @param first one of them
     * @param second the other
     * @param error limit of error of each gauge
     * @param air in which the gauges were read
     * @param wording words and units
     * @return the way, or that it is too close to call
     */
    public static Reply of(End first, End second, PressureDifference error, Atmosphere air, Wording wording) {
        if (!(error.pascals() >= 0)) {
            throw new BadInputException(
                    "--gauge-error: " + error + " is below zero; allowed 0 or more, such as 3.5psi");
        }
        boolean named = first.point().isPresent() && second.point().isPresent();
        Flow flow = FlowCheck.between(point(first, "first", error, air), point(second, "second", error, air));
        Map<String, Quantity<?>> numbers = new LinkedHashMap<>();
        Map<String, String> words = new LinkedHashMap<>();
        List<String> notes = new ArrayList<>();
        String line;
        if (flow instanceof Flow.OneWay way) {
            boolean forward = way.from().pressure().value().equals(Pressure.ofGauge(first.pressure(), air));
            words.put("way", forward ? "first-into-second" : "second-into-first");
            numbers.put("driving", way.driving());
            numbers.put("expandedUncertainty", way.expandedUncertainty());
            line = wording.message(
                    forward ? "reply.flow.forward" : "reply.flow.back",
                    Figure.of("driving", way.driving()),
                    Figure.of("doubt", way.expandedUncertainty()));
            if (named) {
                words.put("medium", way.medium().word());
                line += ", " + wording.message("reply.flow.as", Figure.of("medium", wording.name(way.medium())));
                way.warnings()
                        .forEach(each ->
                                notes.add(wording.of(Finding.of(Severity.CAUTION, each, Subject.system("system")))));
            }
        } else {
            Flow.TooCloseToCall close = (Flow.TooCloseToCall) flow;
            words.put("way", "too-close-to-call");
            numbers.put("driving", close.difference());
            numbers.put("expandedUncertainty", close.expandedUncertainty());
            line = wording.message(
                    "reply.flow.close",
                    Figure.of("driving", close.difference().abs()),
                    Figure.of("doubt", close.expandedUncertainty()));
        }
        if (!named) {
            notes.add(wording.message("reply.flow.unnamed"));
        }
        notes.add(wording.message("reply.flow.gauges", Figure.of("error", error)));
        notes.add(Asked.told(air, wording));
        return new Reply(
                true, List.of(line), numbers, words, named ? flow.steps() : withoutPoints(flow.steps()), notes);
    }

    /** What nobody named has no name in the derivation. */
    private static List<Step> withoutPoints(List<Step> steps) {
        return steps.stream()
                .map(step -> new Step(
                        step.key(),
                        step.formula(),
                        step.given().stream()
                                .filter(figure -> !figure.name().equals("point"))
                                .toList(),
                        step.result(),
                        step.source()))
                .toList();
    }

    private static ConnectionPoint point(End end, String name, PressureDifference error, Atmosphere air) {
        // a flat distribution between the limits, JCGM 100, 4.3.7
        Reading<GaugePressure> read =
                Reading.of(end.pressure(), error.pascals() / Math.sqrt(3), "gauge on the " + name);
        return ConnectionPoint.byGauge(end.point().orElse(PointKind.HIGH_SIDE_VAPOUR_PORT), read, air);
    }
}
