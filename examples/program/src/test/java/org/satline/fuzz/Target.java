package org.satline.fuzz;

import java.nio.charset.StandardCharsets;
import org.satline.quantity.PlainText;
import org.satline.resource.ResourceFormatException;

/** What a fuzzer and the replay of its finds have in common: what a reader may answer to any bytes at all. */
public final class Target {
    /** Two quotes of 60 characters, the words around them, and the longest list of what is allowed. */
    private static final int LONGEST_MESSAGE = 1500;

    private Target() {}

    /** Something that reads. */
    public interface Reader {
        void read() throws Exception;
    }

    /** Text of the bytes, whatever they are. */
    public static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** Runs a reader: it answers, or refuses with one of the documented exceptions, in a message fit to be shown. */
    public static void refusesAtMost(Reader reader) {
        try {
            reader.read();
        } catch (IllegalArgumentException | ResourceFormatException | java.io.IOException e) {
            String message = String.valueOf(e.getMessage());
            if (message.length() > LONGEST_MESSAGE) {
                throw new AssertionError("message of " + message.length() + " characters", e);
            }
            if (message.codePoints().anyMatch(PlainText::isHidden)) {
                throw new AssertionError("message with hidden characters", e);
            }
        } catch (Exception e) {
            throw new AssertionError("other than the documented exceptions: " + e, e);
        }
    }

    /** Fails the run. */
    public static void require(boolean condition, String what) {
        if (!condition) {
            throw new AssertionError(what);
        }
    }
}
