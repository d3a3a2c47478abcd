package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandardOutputTest {
    private static OutputStream failing(String message) {
        return new OutputStream() {
            @Override
            public void write(int single) throws IOException {
                throw new IOException(message);
            }
        };
    }

    /** EPIPE and ENOSPC in the words of Linux, ERROR_NO_DATA in those of Windows; from memory. */
    @ParameterizedTest
    @CsvSource({"Broken pipe, false", "The pipe is being closed, false", "No space left on device, true"})
    void aReaderWhoHadEnoughIsNoError(String message, boolean incomplete) {
        StandardOutput output = StandardOutput.to(failing(message));
        try (PrintWriter out = new PrintWriter(output, true, StandardCharsets.UTF_8)) {
            out.println("line");
            out.println("another");
        }
        assertThat(output.isIncomplete()).isEqualTo(incomplete);
    }

    @Test
    void whatIsPrintedArrives() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        StandardOutput output = StandardOutput.to(bytes);
        try (PrintWriter out = new PrintWriter(output, true, StandardCharsets.UTF_8)) {
            out.print("25 \u00b0C");
        }
        assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo("25 \u00b0C");
        assertThat(output.isIncomplete()).isFalse();
    }
}
