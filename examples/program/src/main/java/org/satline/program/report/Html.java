package org.satline.program.report;

/** Makes text safe to stand in HTML. */
final class Html {
    private Html() {}

    /** The text with everything that HTML would read as markup written as a character; characters that no document may hold are left out. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().filter(Html::isAllowed).forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    /** Characters of XML 1.0 (W3C Recommendation, 5th ed., section 2.2), less those that turn the direction of text around. */
    private static boolean isAllowed(int c) {
        boolean turns = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        boolean plain = (c >= 0x20 && c < 0x7F) || (c > 0x9F && c <= 0xD7FF);
        return !turns && (plain || c == '\n' || c == '\t' || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000);
    }
}
