package org.satline.equation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;

/** Reads pair parameters and departure functions from their files. */
final class PairReader {
    static final String PUBLISHED = "mixing/pairs.csv";
    static final String ADJUSTED = "mixing/adjusted-pairs.csv";
    static final String DEVIATIONS = "mixing/adjusted-pair-deviations.csv";
    static final String DEPARTURES = "mixing/departures.csv";
    static final String SOURCES = "mixing/sources.csv";

    /** Parameters of the reducing functions lie near 1; far from it stands a slip. */
    private static final double LEAST_PARAMETER = 0.1;

    private static final double LARGEST_PARAMETER = 10;
    private static final double LARGEST_FACTOR = 10;

    private static final String[] PARAMETERS = {"first", "second", "betaT", "gammaT", "betaV", "gammaV", "F"};
    private static final String[] OWN = columns(PARAMETERS, "departure", "status", "source", "remark");

    private final EquationFiles files;

    PairReader(EquationFiles files) {
        this.files = files;
    }

    private static String[] columns(String[] first, String... more) {
        return Stream.concat(Stream.of(first), Stream.of(more)).toArray(String[]::new);
    }

    /** Pairs of a model by {@link PairInteraction#key}. */
    Map<String, PairInteraction> pairs(InteractionModel model) {
        Map<String, PairInteraction> pairs = published();
        if (model == InteractionModel.ADJUSTED_OVER_PUBLISHED) {
            pairs.putAll(adjusted());
        }
        return Map.copyOf(pairs);
    }

    private Map<String, PairInteraction> published() {
        Map<String, String> citations = citations();
        Map<String, PairInteraction> pairs = new HashMap<>();
        for (Row row :
                files.table(PUBLISHED, columns(OWN, "xi_K", "zeta_m3_per_mol")).rows()) {
            boolean printedOtherwise = !row.isEmpty("xi_K");
            if (printedOtherwise == row.isEmpty("zeta_m3_per_mol")) {
                throw row.fault("xi_K and zeta_m3_per_mol stand together or not at all");
            }
            if (printedOtherwise) {
                row.number("xi_K");
                row.number("zeta_m3_per_mol");
            }
            put(pairs, row, fitted(row, known(row, citations)));
        }
        return pairs;
    }

    /** Pairs of a caller's own, by {@link PairInteraction#key}; each row cites its source itself. */
    static Map<String, PairInteraction> own(String name, byte[] utf8) {
        Map<String, PairInteraction> pairs = new HashMap<>();
        for (Row row : CsvResource.parse(name, utf8, OWN).rows()) {
            put(pairs, row, fitted(row, row.text("source")));
        }
        return pairs;
    }

    private static PairInteraction fitted(Row row, String source) {
        Optional<String> departure = row.isEmpty("departure") ? Optional.empty() : Optional.of(row.text("departure"));
        return pair(row, departure, status(row), source, row.cell("remark"));
    }

    private static PairStatus status(Row row) {
        return switch (row.text("status")) {
            case "fitted" -> PairStatus.FITTED;
            case "estimated" -> PairStatus.ESTIMATED;
            default -> throw row.fault("status \"" + row.cell("status") + "\" is not known; fitted or estimated");
        };
    }

    private Map<String, PairInteraction> adjusted() {
        Map<String, PairInteraction> pairs = new HashMap<>();
        for (Row row : files.table(
                        ADJUSTED,
                        columns(
                                PARAMETERS,
                                "replaces",
                                "recommendation",
                                "in_default_model",
                                "fitted_to",
                                "checked_on",
                                "remark"))
                .rows()) {
            row.text("recommendation");
            String source = "adjusted in this project; stands in for a " + row.text("replaces") + " pair";
            PairInteraction pair = pair(
                    row,
                    Optional.empty(),
                    PairStatus.ADJUSTED,
                    source,
                    "fitted to: " + row.text("fitted_to") + "; checked on: " + row.text("checked_on")
                            + (row.isEmpty("remark") ? "" : "; " + row.cell("remark")));
            switch (row.text("in_default_model")) {
                case "yes" -> put(pairs, row, pair);
                case "no" -> {} // a record of what was tried
                default -> throw row.fault("in_default_model is neither yes nor no");
            }
        }
        return pairs;
    }

    private static PairInteraction pair(
            Row row, Optional<String> departure, PairStatus status, String source, String evidence) {
        double factor = row.number("F");
        if (!(Math.abs(factor) <= LARGEST_FACTOR)) {
            throw row.fault("F is " + row.cell("F") + ", expected -" + LARGEST_FACTOR + " to " + LARGEST_FACTOR);
        }
        if (factor != 0 && departure.isEmpty()) {
            throw row.fault("F is " + row.cell("F") + ", but no departure function is named");
        }
        if (row.text("first").equals(row.text("second"))) {
            throw row.fault("names " + row.text("first") + " twice; a pair has two substances");
        }
        return new PairInteraction(
                row.text("first"),
                row.text("second"),
                parameter(row, "betaT"),
                parameter(row, "gammaT"),
                parameter(row, "betaV"),
                parameter(row, "gammaV"),
                factor,
                departure,
                status,
                source,
                evidence);
    }

    private static double parameter(Row row, String column) {
        double value = row.number(column);
        if (!(value >= LEAST_PARAMETER && value <= LARGEST_PARAMETER)) {
            throw row.fault(
                    column + " is " + row.cell(column) + ", expected " + LEAST_PARAMETER + " to " + LARGEST_PARAMETER);
        }
        return value;
    }

    private static void put(Map<String, PairInteraction> pairs, Row row, PairInteraction pair) {
        if (pairs.put(PairInteraction.key(pair.first(), pair.second()), pair) != null) {
            throw row.fault("pair " + pair.first() + " + " + pair.second() + " stands twice; leave one out");
        }
    }

    /** Citation by key. */
    private Map<String, String> citations() {
        Map<String, String> citations = new HashMap<>();
        for (Row row : files.table(SOURCES, "key", "authors", "title", "publication", "doi", "note")
                .rows()) {
            String who = row.isEmpty("authors") ? row.text("title") : row.text("authors");
            String where = row.isEmpty("publication") ? "" : ", " + row.text("publication");
            String doi = row.isEmpty("doi") ? "" : ", doi:" + row.text("doi");
            if (citations.put(row.text("key"), who + where + doi) != null) {
                throw row.fault("source " + row.text("key") + " stands twice; leave one out");
            }
        }
        return citations;
    }

    private static String known(Row row, Map<String, String> citations) {
        String citation = citations.get(row.text("source"));
        if (citation == null) {
            throw row.fault("source \"" + row.text("source") + "\" does not stand in " + SOURCES);
        }
        return citation;
    }

    /** Departure functions by name. */
    Map<String, ResidualTerms[]> departures() {
        Map<String, String> citations = citations();
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        String last = "";
        for (Row row : files.table(DEPARTURES, new String[] {"function", "source", "form", "n"}, TermRows.COLUMNS)
                .rows()) {
            known(row, citations);
            String function = row.text("function");
            if (!function.equals(last) && rows.containsKey(function)) {
                throw row.fault("function " + function + " stands twice; put its rows together");
            }
            rows.computeIfAbsent(function, name -> new ArrayList<>()).add(row);
            last = function;
        }
        Map<String, ResidualTerms[]> departures = new HashMap<>();
        rows.forEach((name, terms) -> departures.put(name, TermRows.read(terms)));
        return Map.copyOf(departures);
    }
}
