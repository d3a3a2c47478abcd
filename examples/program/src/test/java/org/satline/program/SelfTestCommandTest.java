package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class SelfTestCommandTest {
    private static final Pattern SUM = Pattern.compile("(\\d+) of (\\d+) check values repeat; (\\d+) equations");

    @Test
    void everyFileIsWholeAndEveryPrintedValueRepeats() {
        ProgramRun run = ProgramRun.of("selftest", "--each");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        Matcher sum = SUM.matcher(run.out());
        assertThat(sum.find()).isTrue();
        assertThat(sum.group(1)).isEqualTo(sum.group(2));
        assertThat(run.out().lines().filter(line -> line.contains(", repeats [")))
                .hasSize(Integer.parseInt(sum.group(2)));
    }
}
