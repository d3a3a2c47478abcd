package org.satline.program.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads and writes a whole text, as UTF-8. */
public final class TextFile {
    private static final int LONGEST = 4_000_000;

    private TextFile() {}

    /**
     * Reads a file.
     *
     * @param file which one
     * @return its text
     * @throws BadInputException if it cannot be read, is no text in UTF-8, or is longer than any visit
     */
    public static String read(Path file) {
        if (Files.isDirectory(file)) {
            throw new BadInputException(file + ": is a folder; name a file");
        }
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] bytes = stream.readNBytes(LONGEST + 1);
            if (bytes.length > LONGEST) {
                throw new BadInputException(file + ": is longer than " + LONGEST + " bytes; name the file of a visit");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadInputException(file + ": is no text in UTF-8; save it as UTF-8");
        } catch (IOException e) {
            throw new BadInputException(file + ": cannot be read (" + WholeFile.reason(e) + ")");
        }
    }

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
