package org.satline.quantity;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which spelling stands for which unit, and which spellings are refused with an advice. Immutable to its users.
 *
 * <p>The index is made when the first text is read: a program that only computes never pays for it, which counts on a cold virtual machine.
 */
final class UnitSpellings {
    private final List<Unit> units;
    private final List<Refusal> refusals;
    /** Made at most a few times by threads that race; all of them make the same. */
    private volatile @Nullable Index index;

    private record Refusal(String advice, List<String> spellings) {}

    private record Index(Map<String, Unit> units, Map<String, String> refused) {}

    private UnitSpellings(List<Unit> units, List<Refusal> refusals) {
        this.units = units;
        this.refusals = refusals;
    }

    static UnitSpellings of(List<Unit> units) {
        return new UnitSpellings(List.copyOf(units), List.of());
    }

    UnitSpellings refusing(String advice, List<String> spellings) {
        List<Refusal> more = new ArrayList<>(refusals);
        more.add(new Refusal(advice, spellings));
        return new UnitSpellings(units, List.copyOf(more));
    }

    Optional<Unit> unit(String spelling) {
        return Optional.ofNullable(index().units.get(key(spelling)));
    }

    Optional<String> adviceAgainst(String spelling) {
        return Optional.ofNullable(index().refused.get(key(spelling)));
    }

    private Index index() {
        Index made = index;
        if (made == null) {
            made = new Index(bySpelling(), adviceBySpelling());
            index = made;
        }
        return made;
    }

    private Map<String, Unit> bySpelling() {
        Map<String, Unit> bySpelling = new HashMap<>();
        for (Unit unit : units) {
            bySpelling.put(key(unit.symbol()), unit);
            for (String spelling : unit.spellings()) {
                Unit earlier = bySpelling.put(key(spelling), unit);
                if (earlier != null && !earlier.equals(unit)) {
                    throw new IllegalStateException("spelling " + spelling + " stands for two units");
                }
            }
        }
        return Map.copyOf(bySpelling);
    }

    private Map<String, String> adviceBySpelling() {
        Map<String, String> advice = new HashMap<>();
        for (Refusal refusal : refusals) {
            refusal.spellings.forEach(spelling -> advice.put(key(spelling), refusal.advice));
        }
        return Map.copyOf(advice);
    }

    /**
     * Letter case is ignored but for a leading m, where it would mix up milli and mega. Spaces count: {@code m m} is not
     * {@code mm}.
     */
    private static String key(String spelling) {
        String bare = ReadingPatterns.SPACES
                .matcher(spelling)
                .replaceAll(" ")
                .replace("^", "")
                .replace('\u00B2', '2')
                .replace('\u00B3', '3')
                .replace('\u00BA', '\u00B0');
        String lower = bare.toLowerCase(Locale.ROOT);
        return bare.startsWith("M") ? "M" + lower.substring(1) : lower;
    }
}
