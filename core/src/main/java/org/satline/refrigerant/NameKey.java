package org.satline.refrigerant;

/** Brings names to a form in which spelling habits no longer differ. */
final class NameKey {
    /** Longer text cannot be a name; cutting it bounds the cost of comparing. */
    private static final int LONGEST = 60;

    /** Prefixes of the trade that name the family of a substance, longer ones first. */
    private static final String[] PREFIXES = {"HCFO", "HCFC", "HCC", "HFC", "HFO", "HFE", "CFC", "PFC", "FC", "HC", "R"
    };

    private NameKey() {}

    static String ofDesignation(String designation) {
        String letters = ofText(designation);
        if (letters.isEmpty()) {
            throw new IllegalArgumentException(
                    "designation \"" + designation + "\" is not of the form of ISO 817; correct it");
        }
        return letters;
    }

    /**
     * Key of what a person typed for a designation: without the prefix where a number is left. Empty if other characters than letters,
     * digits, blanks, hyphens and brackets stand in it: dropping a comma or a plus sign could turn it into another designation.
     */
    static String ofText(String text) {
        StringBuilder kept = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isLetterOrDigit(c)) {
                kept.append(upper(c));
            } else if (!isSeparator(c)) {
                return "";
            }
        }
        return withoutPrefix(kept.toString());
    }

    /** Same without refusing anything, for suggestions only. */
    static String ofAnyText(String text) {
        return withoutPrefix(ofChemicalName(text));
    }

    /** Whether letters, digits or marks of another script stand in a text: leaving them out would turn it into another name. */
    static boolean holdsForeignLetters(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c > '~' && !isSeparator(c)) {
                return true;
            }
        }
        return false;
    }

    private static String withoutPrefix(String letters) {
        for (String prefix : PREFIXES) {
            if (letters.startsWith(prefix) && looksLikeNumber(letters, prefix.length())) {
                return letters.substring(prefix.length());
            }
        }
        return looksLikeNumber(letters, 0) ? letters : "";
    }

    private static boolean looksLikeNumber(String letters, int from) {
        int first = from;
        if (first < letters.length() && (letters.charAt(first) == 'C' || letters.charAt(first) == 'E')) {
            first++; // cyclic compounds and ethers: R-C318, R-E170
        }
        return first < letters.length() && letters.charAt(first) >= '0' && letters.charAt(first) <= '9';
    }

    private static boolean isSeparator(char c) {
        return Character.isWhitespace(c)
                || Character.isSpaceChar(c)
                || Character.getType(c) == Character.DASH_PUNCTUATION
                || "_()[]\u2212".indexOf(c) >= 0;
    }

    private static boolean isLetterOrDigit(char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    }

    private static char upper(char c) {
        return c >= 'a' && c <= 'z' ? (char) (c - 'a' + 'A') : c;
    }

    /** Key of a chemical name or formula: letters and digits in capitals, commas and the like left out. */
    static String ofChemicalName(String text) {
        StringBuilder kept = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            if (isLetterOrDigit(text.charAt(i))) {
                kept.append(upper(text.charAt(i)));
            }
        }
        return kept.toString();
    }

    /** Whether at most a third of a chemical name would have to change: more, and one trade name is like any name of a substance. */
    static boolean alike(String first, String second) {
        return 3 * distance(first, second) <= Math.min(first.length(), second.length());
    }

    /** Whether a designation may be a slip of another one: two characters at most, and not all of them. */
    static boolean slipOf(String first, String second) {
        int distance = distance(first, second);
        return distance <= 2 && distance < Math.min(first.length(), second.length());
    }

    /** Edit distance in which exchanging two neighbours counts as one. */
    static int distance(String first, String second) {
        String a = first.substring(0, Math.min(LONGEST, first.length()));
        String b = second.substring(0, Math.min(LONGEST, second.length()));
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
