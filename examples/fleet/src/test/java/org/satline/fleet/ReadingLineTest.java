package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingLineTest {
    private static final String LINE = "17,roof,1790000000,980.5,12.25,2615.0,37.5,74.0,25.5,18.5,15.0,30.0";
    private static final long LAST = 1_800_000_000L;

    @Test
    void whatIsWrittenIsRead() {
        assertThat(ReadingLine.read(LINE, LAST))
                .isInstanceOfSatisfying(
                        ReadingLine.Good.class,
                        good -> assertThat(ReadingLine.of(good.reading())).isEqualTo(LINE));
    }

    @ParameterizedTest
    @CsvSource({
        "'17,', '', FIELD_COUNT",
        "',30.0', ',30.0,7', FIELD_COUNT",
        "roof, shed, UNKNOWN_MODEL",
        "37.5, --, NOT_A_NUMBER",
        "'17,', 'x,', NOT_A_NUMBER",
        "37.5, NaN, OUT_OF_RANGE",
        "37.5, 850, OUT_OF_RANGE",
        "1790000000, 3043440480, CLOCK_AHEAD"
    })
    void aBrokenLineSaysWhy(String part, String broken, RejectReason reason) {
        assertThat(ReadingLine.read(LINE.replaceFirst(part, broken), LAST))
                .isInstanceOfSatisfying(
                        ReadingLine.Bad.class,
                        bad -> assertThat(bad.rejected().reason).isEqualTo(reason));
    }

    @Test
    void aRejectedTextStaysOneShortField() {
        RejectedReading rejected = new RejectedReading(RejectReason.FIELD_COUNT, "a,b\n" + "x".repeat(5000));
        assertThat(rejected.line().split(",", -1)).hasSize(2);
        assertThat(rejected.text).hasSize(RejectedReading.LONGEST).doesNotContain("\n");
    }
}
