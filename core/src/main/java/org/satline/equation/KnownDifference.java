package org.satline.equation;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.explanation.Coded;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.OnDemand;

/**
 * A blend whose computed bubble or dew point at 101.325 kPa is farther than 0.5 K from the published one, and why.
 *
 * @param bubbleK bubble point, computed less published, K; empty where none is published
 * @param dewK dew point, computed less published, K; empty where none is published
 * @param cause what carries the difference, as far as published figures tell
 * @param evidence the figures that say so
 */
public record KnownDifference(OptionalDouble bubbleK, OptionalDouble dewK, Cause cause, String evidence) {
    /** What may carry a difference. */
    public enum Cause implements Coded {
        /** A pair that stands at the default rule. */
        DEFAULTED_PAIR,
        /** A pair of undocumented origin. */
        ESTIMATED_PAIR,
        /** A pair adjusted in this project that does not meet this point. */
        ADJUSTED_PAIR,
        /** A published fit that does not meet this point. */
        FITTED_PAIR,
        /** Printed figures contradict each other. */
        CONFLICTING_TABLES,
        /** Blends of the same substances that the model meets contradict the printed point. */
        NEIGHBOURS_DISAGREE,
        /** The tolerance of the composition moves the point by as much. */
        COMPOSITION,
        /** Printed to a whole kelvin. */
        ROUNDED;

        private static Cause of(Row row) {
            for (Cause cause : values()) {
                if (cause.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(row.text("cause"))) {
                    return cause;
                }
            }
            throw row.fault("cause \"" + row.cell("cause") + "\" is not known; use one that the head names");
        }
    }

    /** Read when first asked for. */
    private static final OnDemand<Map<String, KnownDifference>> BY_BLEND = new OnDemand<>() {
        @Override
        protected Map<String, KnownDifference> read() {
            Map<String, KnownDifference> all = new HashMap<>();
            for (Row row : CsvResource.read(
                            KnownDifference.class,
                            "blend-differences.csv",
                            "blend",
                            "bubble_K",
                            "dew_K",
                            "cause",
                            "evidence")
                    .rows()) {
                KnownDifference difference = new KnownDifference(
                        row.optionalNumber("bubble_K"),
                        row.optionalNumber("dew_K"),
                        Cause.of(row),
                        row.text("evidence"));
                if (all.put(row.text("blend"), difference) != null) {
                    throw row.fault(row.text("blend") + " stands twice; leave one out");
                }
            }
            return Map.copyOf(all);
        }
    };

    /** {@inheritDoc} */
    public KnownDifference {
        Parts.required("bubbleK dewK cause evidence", bubbleK, dewK, cause, evidence);
    }

    static Optional<KnownDifference> of(String designation) {
        return Optional.ofNullable(BY_BLEND.get().get(designation));
    }

    Finding warning(String designation) {
        Figure why = Figure.of("cause", cause.word());
        Subject subject = new Subject(Subject.Kind.REFRIGERANT, designation);
        return bubbleK.isPresent() && dewK.isPresent()
                ? Finding.of(
                        Severity.CAUTION,
                        ModelCode.SATURATION_POINTS_DIFFER,
                        subject,
                        Figure.of("bubble", TemperatureDifference.ofKelvins(bubbleK.getAsDouble())),
                        Figure.of("dew", TemperatureDifference.ofKelvins(dewK.getAsDouble())),
                        why)
                : Finding.of(
                        Severity.CAUTION,
                        ModelCode.BOILING_POINT_DIFFERS,
                        subject,
                        Figure.of("difference", TemperatureDifference.ofKelvins(bubbleK.orElse(dewK.orElse(0)))),
                        why);
    }
}
