package org.satline.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.satline.program.file.BadInputException;
import org.satline.program.file.CsvRows;
import org.satline.program.fills.FillAnswers;
import org.satline.program.page.Escape;

/** CSV files of the program from any bytes: the file is refused, or each row is answered in cells that no spreadsheet runs. */
public final class RowsTarget {
    private static final FillAnswers ANSWERS = new FillAnswers();
    private static final Path FILE = file();

    private RowsTarget() {}

    private static Path file() {
        try {
            return Files.createTempFile("rows", ".csv");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static void fuzzerTestOneInput(byte[] bytes) throws IOException {
        Files.write(FILE, bytes);
        try (CsvRows rows = CsvRows.of(FILE, FillAnswers.INPUT, FillAnswers.OPTIONAL)) {
            rows.forEachRemaining(row -> ANSWERS.answer(row)
                    .cells()
                    .forEach(cell -> Target.require(!Escape.isFormula(Escape.cell(cell)), "a formula")));
        } catch (BadInputException e) {
            Target.require(String.valueOf(e.getMessage()).length() < 1500, "a long message");
        }
    }
}
