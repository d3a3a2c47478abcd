package org.satline.ledger;

import java.util.Map;

/** Reads the text of one line from left to right and takes nothing but what the ledger itself writes. For one line and one thread. */
final class LineScanner {
    private static final int MOST_DIGITS = 13;

    private final String text;
    private int at;

    LineScanner(String text) {
        this.text = text;
    }

    /** The next characters are these. */
    void literal(String expected) throws DamagedLineException {
        int common = Math.min(expected.length(), text.length() - at);
        if (!text.regionMatches(at, expected, 0, common)) {
            throw unexpected(expected);
        }
        at += common;
        if (common < expected.length()) {
            throw cutShort();
        }
    }

    /** A member of an object, {@code "name":}, and which of these words it holds. */
    <T> T word(String name, Map<String, T> words) throws DamagedLineException {
        member(name);
        literal("\"");
        boolean begins = false;
        for (Map.Entry<String, T> each : words.entrySet()) {
            String quoted = each.getKey() + "\"";
            if (text.startsWith(quoted, at)) {
                at += quoted.length();
                return each.getValue();
            }
            begins |= quoted.startsWith(text.substring(at));
        }
        if (begins) {
            throw cutShort();
        }
        throw unexpected("one of " + words.keySet());
    }

    /** A member that holds a text. */
    String text(String name) throws DamagedLineException {
        member(name);
        literal("\"");
        StringBuilder read = new StringBuilder();
        while (true) {
            char c = next();
            if (c == '"') {
                return read.toString();
            }
            if (c == '\\') {
                c = next();
                if (c != '"' && c != '\\') {
                    at--;
                    throw unexpected("\\\\ or \\\"");
                }
            }
            read.append(c);
            if (read.length() > LedgerText.LONGEST) {
                throw unexpected("the end of a text of at most " + LedgerText.LONGEST + " characters");
            }
        }
    }

    /** A member that holds a whole number, zero or more, without leading zeros. */
    long whole(String name) throws DamagedLineException {
        member(name);
        int start = at;
        while (at < text.length() && at - start < MOST_DIGITS && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        int digits = at - start;
        if (at == text.length()) {
            throw cutShort();
        }
        if (digits == 0 || (digits > 1 && text.charAt(start) == '0')) {
            at = start;
            throw unexpected("a whole number");
        }
        return Long.parseLong(text.substring(start, at));
    }

    /** A member that holds a SHA-256 digest in hexadecimal digits, small letters. */
    String digest(String name) throws DamagedLineException {
        member(name);
        literal("\"");
        int start = at;
        while (at - start < LedgerLine.DIGEST_DIGITS) {
            char c = next();
            if (!((c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'))) {
                at--;
                throw unexpected("a hexadecimal digit");
            }
        }
        String read = text.substring(start, at);
        literal("\"");
        return read;
    }

    /** Nothing follows. */
    void end() throws DamagedLineException {
        if (at < text.length()) {
            throw unexpected("the end of the line");
        }
    }

    private void member(String name) throws DamagedLineException {
        literal("\"" + name + "\":");
    }

    private char next() throws DamagedLineException {
        if (at == text.length()) {
            throw cutShort();
        }
        return text.charAt(at++);
    }

    private DamagedLineException cutShort() {
        return DamagedLineException.cutShort("ends in character " + (text.length() + 1) + " before it is whole");
    }

    private DamagedLineException unexpected(String expected) {
        return DamagedLineException.unreadable("has in character " + (at + 1) + " something other than " + expected
                + ", which the ledger writes there");
    }
}
