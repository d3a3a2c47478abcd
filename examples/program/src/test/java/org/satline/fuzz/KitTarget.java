package org.satline.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.satline.program.ask.Kit;
import org.satline.program.file.BadInputException;

/** Kit files from any bytes. */
public final class KitTarget {
    private static final Path FILE = file();

    private KitTarget() {}

    private static Path file() {
        try {
            return Files.createTempFile("kit", ".json");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        Files.write(FILE, bytes);
        try {
            Target.require(!Kit.read(FILE).digest().isEmpty(), "a kit without digest");
        } catch (BadInputException e) {
            Target.require(String.valueOf(e.getMessage()).length() < 1500, "a long message");
        }
    }
}
