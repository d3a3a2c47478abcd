package org.satline.program.file;

import java.util.regex.Pattern;
import org.satline.program.page.Escape;

/** Text from outside made fit to stand in one line of a message: no line breaks, no control characters, not endless. */
public final class Shown {
    private static final int LONGEST_VALUE = 60;
    /** A path may be that long; no message of ours has longer words. */
    private static final Pattern ENDLESS_WORD = Pattern.compile("(\\S{" + LONGEST_VALUE + "})\\S{140,}+");

    private static final int LONGEST_MESSAGE = 2000;

    private Shown() {}

    /**
     * Returns a value in quotes, cut when it is long.
     *
     * @param value any text
     * @return the text in double quotes, at most about 60 characters of it
     */
    public static String quoted(String value) {
        String line = line(value);
        return '"' + (line.length() > LONGEST_VALUE ? line.substring(0, LONGEST_VALUE) + "..." : line) + '"';
    }

    /**
     * Returns a message of whatever origin as one line that can be read.
     *
     * @param text any text
     * @return the line, words of 200 characters and more cut to 60, the whole to 2000
     */
    public static String message(String text) {
        String line = ENDLESS_WORD.matcher(line(text)).replaceAll("$1...");
        return line.length() > LONGEST_MESSAGE ? line.substring(0, LONGEST_MESSAGE) + "..." : line;
    }

    /**
     * Returns a message as one line.
     *
     * @param text any text
     * @return the text with each run of line breaks and control characters replaced by a space, and no character that steers its direction
     */
    public static String line(String text) {
        return Escape.plain(text).strip();
    }
}
