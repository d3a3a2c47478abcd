package org.satline.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.teavm.classlib.java.util.TSplittableRandom;

/** The draws of the page are those of {@link SplittableRandom}: a class has one sheet, printed here or there. */
class PageDrawsTest {
    private static final int DRAWS = 2000;

    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 20261130, Long.MIN_VALUE, 0x123456789abcdefL})
    void sameSeedSameDraws(long seed) {
        SplittableRandom there = new SplittableRandom(seed);
        TSplittableRandom here = new TSplittableRandom(seed);
        for (int i = 1; i <= DRAWS; i++) {
            assertThat(here.nextDouble()).isEqualTo(there.nextDouble());
            assertThat(here.nextInt(i)).isEqualTo(there.nextInt(i));
            assertThat(here.nextInt(-i, 3 * i)).isEqualTo(there.nextInt(-i, 3 * i));
            // seldom drawn again below a small bound, half the time below this one
            assertThat(here.nextInt((1 << 30) + i)).isEqualTo(there.nextInt((1 << 30) + i));
            if (i % 50 == 0) {
                there = there.split();
                here = here.split();
            }
        }
    }
}
