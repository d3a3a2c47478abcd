package org.satline.program.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {
    private static String told(int rows) {
        StringWriter told = new StringWriter();
        long[] now = {0};
        Progress progress = new Progress(new PrintWriter(told), () -> now[0]);
        progress.begin("read");
        for (int row = 0; row < rows; row++) {
            now[0] += 1_000_000; // a thousandth of a second each
            progress.row();
        }
        return told.toString();
    }

    @Test
    void whatIsDoneWithinTwoSecondsTellsNothing() {
        assertThat(told(1999)).isEmpty();
    }

    @Test
    void whatTakesLongerTellsEveryTwoSecondsHowFarItIs() {
        assertThat(told(10_240).lines()).hasSize(5).first().isEqualTo("satline: 2048 rows read after 2 s");
    }
}
