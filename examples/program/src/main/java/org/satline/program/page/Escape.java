package org.satline.program.page;

import java.util.regex.Pattern;
import org.satline.quantity.PlainText;

/**
 * Makes text fit to be seen: the only place where characters are neutralised. Control characters and ends of lines become a space, since
 * layout alone breaks lines. Characters that turn the direction of text around are left out, and so are those that no document may hold
 * (Unicode Standard Annex 9, section 2; XML 1.0, W3C Recommendation, 5th ed., section 2.2).
 */
public final class Escape {
    /** Also the wide forms, which some spreadsheets take for the same. */
    private static final String FORMULA_STARTS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20\u2212";

    private static final int LONGEST_NUMBER = 60;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d++(?:\\.\\d*+)?|\\.\\d++)([eE][+-]?\\d{1,4})?");

    private Escape() {}

    /**
     * Returns text for one line of a page, a message or a cell.
     *
     * @param text any text
     * @return the text with each run of control characters and ends of lines as one space, without characters that steer direction or
     *     belong in no document
     */
    public static String plain(String text) {
        if (text.codePoints().allMatch(c -> !isControl(c) && isShown(c))) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        boolean gap = false;
        for (int c : text.codePoints().toArray()) {
            if (isControl(c)) {
                gap = true;
            } else if (isShown(c)) {
                plain.append(gap ? " " : "").appendCodePoint(c);
                gap = false;
            }
        }
        return plain.append(gap ? " " : "").toString();
    }

    /**
     * Tells whether a spreadsheet would run a cell as a formula when it opens the file: it begins with an equals, plus or minus sign or an
     * at sign, and is no number.
     *
     * @param text any text
     * @return true if {@link #cell} puts an apostrophe before it
     */
    public static boolean isFormula(String text) {
        String plain = plain(text).strip();
        return !plain.isEmpty()
                && FORMULA_STARTS.indexOf(plain.charAt(0)) >= 0
                && !(plain.length() <= LONGEST_NUMBER && NUMBER.matcher(plain).matches());
    }

    /**
     * Returns text for a cell of a CSV file.
     *
     * @param text any text
     * @return plain text; with an apostrophe before it where a spreadsheet would run it
     */
    public static String cell(String text) {
        return isFormula(text) ? "'" + plain(text) : plain(text);
    }

    /**
     * Returns text for HTML, between tags or in a quoted attribute.
     *
     * @param text any text
     * @return plain text with everything that HTML would read as markup written as a character
     */
    public static String html(String text) {
        return plain(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /**
     * Returns text for Markdown.
     *
     * @param text any text
     * @return plain text; what Markdown would take for emphasis, code, a link or a tag is meant as it stands
     */
    public static String markdown(String text) {
        return plain(text)
                .replaceAll("([\\\\`*<\\[\\]])", "\\\\$1")
                .replaceAll("(?<![A-Za-z0-9])_|_(?![A-Za-z0-9])", "\\\\_");
    }

    /**
     * Returns text for a cell of a Markdown table.
     *
     * @param text any text
     * @return text for Markdown that ends no cell
     */
    public static String markdownCell(String text) {
        return markdown(text).replace("|", "\\|");
    }

    private static boolean isControl(int c) {
        return c < 0x20 || (c >= 0x7F && c <= 0x9F) || c == 0x2028 || c == 0x2029;
    }

    private static boolean isShown(int c) {
        return !PlainText.isHidden(c);
    }
}
