package org.satline.certificate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.satline.equation.KnownDifference;
import org.satline.equation.MissingEquationException;
import org.satline.equation.MixtureEvidence;
import org.satline.equation.PairInteraction;
import org.satline.equation.PairStatus;
import org.satline.equilibrium.FluidModel;
import org.satline.quantity.Temperature;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** Computed against published bubble and dew points at 101.325 kPa, with the standing of every pair. */
final class PublishedBoilingPoints {
    private static final Wording WORDS = Wording.of(Language.ENGLISH, UnitSystem.SI);

    private static final double ATMOSPHERE_PA = 101325;
    private static final double NOTABLE_K = 0.5;

    private PublishedBoilingPoints() {}

    static List<String> report() {
        List<String> rows = new ArrayList<>();
        int compared = 0;
        int notable = 0;
        for (Refrigerant blend : Catalogue.standard().blends()) {
            FluidModel model;
            try {
                model = FluidModel.of(blend);
            } catch (IllegalArgumentException e) {
                rows.add("| " + blend.designation() + " | | | | | | | | "
                        + (e instanceof MissingEquationException missing
                                ? "no equation of " + String.join(", ", missing.substances())
                                : "no fixed composition")
                        + " |");
                continue;
            }
            if (ATMOSPHERE_PA < model.bubblePressureRange().low()) {
                rows.add(String.format(
                        Locale.ROOT,
                        "| %s | | %s | | | %s | | | bubble point at 101.325 kPa is colder than %.2f K, where a component's equation begins |",
                        blend.designation(),
                        text(blend.published().bubblePoint()),
                        text(blend.published().dewPoint()),
                        model.minTemperatureK()));
                continue;
            }
            double bubble = model.bubbleAtPressure(ATMOSPHERE_PA).temperatureK() - 273.15;
            double dew = model.dewAtPressure(ATMOSPHERE_PA).temperatureK() - 273.15;
            OptionalDouble bubbleError = error(bubble, blend.published().bubblePoint());
            OptionalDouble dewError = error(dew, blend.published().dewPoint());
            double worst = Math.max(Math.abs(bubbleError.orElse(0)), Math.abs(dewError.orElse(0)));
            if (bubbleError.isPresent() || dewError.isPresent()) {
                compared++;
                notable += worst > NOTABLE_K ? 1 : 0;
            }
            rows.add(String.format(
                    Locale.ROOT,
                    "| %s%s | %.2f | %s | %s | %.2f | %s | %s | %s | %s |",
                    blend.designation(),
                    worst > NOTABLE_K ? " **!**" : "",
                    bubble,
                    text(blend.published().bubblePoint()),
                    signed(bubbleError),
                    dew,
                    text(blend.published().dewPoint()),
                    signed(dewError),
                    pairs(model),
                    cause(blend)));
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("## Blends at 101.325 kPa");
        lines.add("");
        lines.add(String.format(
                Locale.ROOT,
                "%d blends compared with the bubble and dew points of the catalogue's sources (mostly ASHRAE Handbook Fundamentals 2021, ch. 29, table 2,"
                        + " printed to 0.1 K); %d differ by more than 0.5 K (marked !). Temperatures in degC, differences computed less published in K.",
                compared,
                notable));
        lines.add("");
        lines.add("| blend | bubble | published | diff | dew | published | diff | pairs | cause of a difference |");
        lines.add("|---|---|---|---|---|---|---|---|---|");
        lines.addAll(rows);
        lines.addAll(causes());
        return lines;
    }

    private static String words(KnownDifference.Cause cause) {
        return WORDS.message("word." + cause.word());
    }

    private static String cause(Refrigerant blend) {
        return MixtureEvidence.of(blend)
                .knownDifference()
                .map(d -> words(d.cause()))
                .orElse("");
    }

    /** The evidence of each cause, and how often each occurs. */
    private static List<String> causes() {
        List<String> lines = new ArrayList<>();
        Map<KnownDifference.Cause, Integer> counts = new EnumMap<>(KnownDifference.Cause.class);
        List<String> evidence = new ArrayList<>();
        for (Refrigerant blend : Catalogue.standard().blends()) {
            if (blend.hasComposition() && SolvedStates.hasEquations(blend)) {
                MixtureEvidence.of(blend).knownDifference().ifPresent(d -> {
                    counts.merge(d.cause(), 1, Integer::sum);
                    evidence.add("- **" + blend.designation() + "** " + words(d.cause()) + ": " + d.evidence() + ".");
                });
            }
        }
        lines.add("");
        lines.add("### Why they differ");
        lines.add("");
        lines.add("How often each cause stands: "
                + counts.entrySet().stream()
                        .map(e -> words(e.getKey()) + " " + e.getValue())
                        .collect(Collectors.joining(", "))
                + ". Every result of these blends carries the difference as a warning, and its stated uncertainty counts it. What could be mended from"
                + " published figures is mended by the adjusted pairs of the default model; what stays rests on figures that contradict each other or on a"
                + " single printed point, and fitting to that point would check nothing.");
        lines.add("");
        lines.addAll(evidence);
        return lines;
    }

    private static OptionalDouble error(double computed, Optional<Temperature> published) {
        return published.isPresent()
                ? OptionalDouble.of(computed - published.get().celsius())
                : OptionalDouble.empty();
    }

    private static String text(Optional<Temperature> published) {
        return published
                .map(t -> String.format(Locale.ROOT, "%.1f", t.celsius()))
                .orElse("");
    }

    private static String signed(OptionalDouble error) {
        return error.isPresent() ? String.format(Locale.ROOT, "%+.2f", error.getAsDouble()) : "";
    }

    /** Pairs that are not fitted by name; the rest counted. */
    private static String pairs(FluidModel model) {
        List<PairInteraction> all = model.equation().mixture().pairs();
        long fitted = all.stream().filter(p -> p.status() == PairStatus.FITTED).count();
        String others = all.stream()
                .filter(p -> p.status() != PairStatus.FITTED)
                .map(p -> p.first() + "+" + p.second() + " " + p.status().word())
                .collect(Collectors.joining(", "));
        return fitted + " fitted" + (others.isEmpty() ? "" : "; " + others);
    }
}
