package org.satline.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Which spelling stands for which unit, and which spellings are refused with an advice. Immutable. */
final class UnitSpellings {
    /** White space, with the no-break and thin spaces that typesetting puts between number and unit. */
    static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2009\\u202F]+");

    private final Map<String, Unit> units;
    private final Map<String, String> refused;

    private UnitSpellings(Map<String, Unit> units, Map<String, String> refused) {
        this.units = Map.copyOf(units);
        this.refused = Map.copyOf(refused);
    }

    static UnitSpellings of(List<Unit> units) {
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
        return new UnitSpellings(bySpelling, Map.of());
    }

    UnitSpellings refusing(String advice, List<String> spellings) {
        Map<String, String> more = new HashMap<>(refused);
        spellings.forEach(spelling -> more.put(key(spelling), advice));
        return new UnitSpellings(units, more);
    }

    Optional<Unit> unit(String spelling) {
        return Optional.ofNullable(units.get(key(spelling)));
    }

    Optional<String> adviceAgainst(String spelling) {
        return Optional.ofNullable(refused.get(key(spelling)));
    }

    /**
     * Letter case is ignored but for a leading m, where it would mix up milli and mega. Spaces count: {@code m m} is not
     * {@code mm}.
     */
    private static String key(String spelling) {
        String bare = SPACES.matcher(spelling)
                .replaceAll(" ")
                .replace("^", "")
                .replace('\u00B2', '2')
                .replace('\u00B3', '3')
                .replace('\u00BA', '\u00B0');
        String lower = bare.toLowerCase(Locale.ROOT);
        return bare.startsWith("M") ? "M" + lower.substring(1) : lower;
    }
}
