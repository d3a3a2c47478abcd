package org.satline.refrigerant;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Brings names to a form in which spelling habits no longer differ. */
final class NameKey {
    /** Prefixes of the trade that name the family of a substance, longest first. */
    private static final String[] PREFIXES = {"HCFO", "HCFC", "HCC", "HFC", "HFO", "HFE", "CFC", "PFC", "FC", "HC", "R"
    };

    private NameKey() {}

    static String ofDesignation(String designation) {
        String letters = letters(designation);
        return letters.startsWith("R") ? letters.substring(1) : letters;
    }

    /** Key of what a person typed: the prefix goes only where a designation is left. */
    static String ofText(String text) {
        String letters = letters(text);
        for (String prefix : PREFIXES) {
            if (letters.startsWith(prefix) && looksLikeNumber(letters.substring(prefix.length()))) {
                return letters.substring(prefix.length());
            }
        }
        return letters;
    }

    private static boolean looksLikeNumber(String rest) {
        if (rest.isEmpty()) {
            return false;
        }
        int first = rest.charAt(0) == 'C' || rest.charAt(0) == 'E' ? 1 : 0;
        return rest.length() > first && rest.charAt(first) >= '0' && rest.charAt(first) <= '9';
    }

    /** Letters and digits in capitals. */
    static String letters(String text) {
        StringBuilder kept = new StringBuilder();
        String upper = text.toUpperCase(Locale.ROOT);
        for (int i = 0; i < upper.length(); i++) {
            char c = upper.charAt(i);
            if ((c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9')) {
                kept.append(c);
            }
        }
        return kept.toString();
    }

    /** Formulas and short names that people use in place of a designation. */
    static @Nullable String formulaAlias(String letters) {
        return switch (letters) {
            case "CO2" -> "R-744";
            case "NH3" -> "R-717";
            case "H2O" -> "R-718";
            case "N2" -> "R-728";
            case "SO2" -> "R-764";
            case "DME", "DIMETHYLETHER" -> "R-E170";
            case "NBUTANE" -> "R-600";
            case "NPENTANE" -> "R-601";
            case "PROPYLENE" -> "R-1270";
            case "ETHYLENE" -> "R-1150";
            default -> null;
        };
    }

    /** Edit distance in which exchanging two neighbours counts as one. */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                int best = Math.min(d[i - 1][j - 1] + same, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    best = Math.min(best, d[i - 2][j - 2] + 1);
                }
                d[i][j] = best;
            }
        }
        return d[a.length()][b.length()];
    }
}
