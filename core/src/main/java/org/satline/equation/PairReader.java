package org.satline.equation;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.resource.ResourceFormatException;

/** Reads pair parameters and departure functions from their resources. */
final class PairReader {
    private static final String PUBLISHED = "mixing/pairs.json";
    private static final String ADJUSTED = "mixing/adjusted-pairs.json";
    private static final String DEPARTURES = "mixing/departures.json";

    private PairReader() {}

    record PairSource(
            @Nullable String authors,
            String title,
            String publication,
            @Nullable String doi,
            @Nullable String note) {
        String citation() {
            return (authors == null ? title : authors) + ", " + publication + (doi == null ? "" : ", doi:" + doi);
        }
    }

    record PublishedPair(
            String first,
            String second,
            double betaT,
            double gammaT,
            double betaV,
            double gammaV,
            @JsonProperty("F") double departureFactor,
            @Nullable String departure,
            String status,
            String source,
            @Nullable String remark,
            @Nullable JsonNode publishedForm) {}

    record PublishedFile(
            JsonNode defaultRule,
            @JsonProperty("mixtureGasConstant_J_per_molK") double gasConstant,
            Map<String, PairSource> sources,
            List<PublishedPair> pairs) {}

    record AdjustedPair(
            String first,
            String second,
            double betaT,
            double gammaT,
            double betaV,
            double gammaV,
            @JsonProperty("F") double departureFactor,
            String status,
            String replaces,
            String recommendation,
            boolean inDefaultModel,
            String fittedTo,
            String checkedOn,
            JsonNode rms,
            @Nullable String remark) {}

    record AdjustedFile(String use, JsonNode meaning, List<AdjustedPair> pairs) {}

    record DepartureRow(String name, List<PureEquationReader.ResidualRow> terms, String source) {}

    record DepartureFile(List<DepartureRow> functions) {}

    /** Pairs of a model by {@link PairInteraction#key}. */
    static Map<String, PairInteraction> pairs(InteractionModel model) {
        Map<String, PairInteraction> pairs = new HashMap<>();
        PublishedFile published = PureEquationReader.readJson(PUBLISHED, PublishedFile.class);
        for (PublishedPair row : published.pairs()) {
            PairSource source = published.sources().get(row.source());
            PairInteraction pair = new PairInteraction(
                    row.first(),
                    row.second(),
                    row.betaT(),
                    row.gammaT(),
                    row.betaV(),
                    row.gammaV(),
                    row.departureFactor(),
                    Optional.ofNullable(row.departure()),
                    row.status().equals("fitted") ? PairStatus.FITTED : PairStatus.ESTIMATED,
                    source == null ? row.source() : source.citation(),
                    PairInteraction.text(row.remark()));
            if (pairs.put(PairInteraction.key(row.first(), row.second()), pair) != null) {
                throw new ResourceFormatException(
                        PUBLISHED, 0, "pair " + row.first() + " + " + row.second() + " twice");
            }
        }
        if (model == InteractionModel.ADJUSTED_OVER_PUBLISHED) {
            layAdjustedOver(pairs);
        }
        return Map.copyOf(pairs);
    }

    private static void layAdjustedOver(Map<String, PairInteraction> pairs) {
        for (AdjustedPair row :
                PureEquationReader.readJson(ADJUSTED, AdjustedFile.class).pairs()) {
            if (row.inDefaultModel()) {
                PairInteraction pair = new PairInteraction(
                        row.first(),
                        row.second(),
                        row.betaT(),
                        row.gammaT(),
                        row.betaV(),
                        row.gammaV(),
                        row.departureFactor(),
                        Optional.empty(),
                        PairStatus.ADJUSTED,
                        "adjusted in this project; stands in for a " + row.replaces() + " pair",
                        "fitted to: " + row.fittedTo() + "; checked on: " + row.checkedOn()
                                + (row.remark() == null ? "" : "; " + row.remark()));
                pairs.put(PairInteraction.key(row.first(), row.second()), pair);
            }
        }
    }

    static Map<String, ResidualTerms[]> departures() {
        Map<String, ResidualTerms[]> departures = new HashMap<>();
        for (DepartureRow row :
                PureEquationReader.readJson(DEPARTURES, DepartureFile.class).functions()) {
            departures.put(row.name(), PureEquationReader.terms(DEPARTURES + " " + row.name(), row.terms()));
        }
        return Map.copyOf(departures);
    }
}
