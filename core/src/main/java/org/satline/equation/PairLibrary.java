package org.satline.equation;

import java.util.HashMap;
import java.util.Map;
import org.satline.resource.ResourceFormatException;

/** Pair parameters of one interaction model, and the departure functions that they name. Immutable. */
final class PairLibrary {
    private final Map<String, PairInteraction> pairs;
    private final Map<String, ResidualTerms[]> departures;

    /** Pairs of a caller's own stand before those of this jar. */
    PairLibrary(InteractionModel model, Map<String, PairInteraction> own) {
        PairReader reader = new PairReader(EquationFiles.ofJar());
        Map<String, PairInteraction> all = new HashMap<>(reader.pairs(model));
        all.putAll(own);
        pairs = Map.copyOf(all);
        departures = reader.departures();
        for (PairInteraction pair : pairs.values()) {
            pair.departureName().ifPresent(this::departure);
        }
    }

    /** The interaction with the first-named substance as i. */
    PairInteraction pair(String first, String second) {
        PairInteraction pair = pairs.get(PairInteraction.key(first, second));
        if (pair == null) {
            return PairInteraction.defaulted(first, second);
        }
        return pair.first().equals(first) ? pair : pair.swapped();
    }

    ResidualTerms[] departure(String name) {
        ResidualTerms[] terms = departures.get(name);
        if (terms == null) {
            throw new ResourceFormatException(
                    PairReader.DEPARTURES, 0, "departure function " + name + " is named by a pair but not defined");
        }
        return terms;
    }
}
