package org.satline.program.ask;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.satline.json.JsonFields;
import org.satline.program.file.BadInputException;
import org.satline.program.file.TextFile;
import org.satline.visit.file.FieldValue;

/** Visit files on disk: read whole, written whole or not at all. Stateless. */
public final class VisitStore {
    private static final long LARGEST = 10_000_000;

    private VisitStore() {}

    /**
     * Reads the fields of a file.
     *
     * @param file a JSON file
     * @return its fields
     * @throws BadInputException if it cannot be used
     */
    public static FieldValue.Fields read(Path file) {
        try {
            return JsonFields.read(text(file, bytes(file)));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
    }

    /**
     * Writes fields.
     *
     * @param file where
     * @param fields what
     * @throws BadInputException if it cannot be written
     */
    public static void write(Path file, FieldValue.Fields fields) {
        TextFile.write(file, JsonFields.write(fields) + "\n");
    }

    static byte[] bytes(Path file) {
        try {
            if (!Files.isRegularFile(file)) {
                throw new BadInputException(file + ": no such file; name a JSON file");
            }
            if (Files.size(file) > LARGEST) {
                throw new BadInputException(
                        file + ": has " + Files.size(file) + " bytes, at most " + LARGEST + " are read");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new BadInputException(
                    file + ": cannot be read (" + e.getClass().getSimpleName() + ")");
        }
    }

    static String text(Path file, byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadInputException(file + ": is not UTF-8; save it as UTF-8");
        }
    }

    static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
