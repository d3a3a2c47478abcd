package org.satline.program.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a text that is whole already, as UTF-8. */
public final class TextFile {
    private TextFile() {}

    /**
     * Writes a file that appears whole or not at all.
     *
     * @param file where
     * @param text what
     * @throws BadInputException if it cannot be written
     */
    public static void write(Path file, String text) {
        try (WholeFile whole = WholeFile.startedFor(file)) {
            whole.stream().write(text.getBytes(StandardCharsets.UTF_8));
            whole.commit();
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be written (" + WholeFile.reason(e) + ")");
        }
    }

    /**
     * Checks that the output would not replace the input.
     *
     * @param in file that is read
     * @param out file that will be written
     * @throws BadInputException if both are the same file
     */
    public static void checkApart(Path in, Path out) {
        try {
            if (Files.exists(in) && Files.exists(out) && Files.isSameFile(in, out)) {
                throw new BadInputException(out + ": is the file that is read; name another one to write");
            }
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be looked up (" + WholeFile.reason(e) + ")");
        }
    }
}
