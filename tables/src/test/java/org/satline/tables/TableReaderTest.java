package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.satline.resource.ResourceFormatException;

class TableReaderTest {
    private static final String NAME = "r134a.saturation";

    private static byte[] file() {
        return Objects.requireNonNull(TableProvider.bytes(NAME));
    }

    @Test
    void everyFlippedByteIsRefusedByName() {
        byte[] file = file();
        for (int i = 0; i < file.length; i++) {
            for (int flip : new int[] {1, 0x80, 0xFF}) {
                byte[] damaged = file.clone();
                damaged[i] ^= (byte) flip;
                assertThatThrownBy(() -> TableReader.read(NAME, damaged))
                        .isInstanceOf(ResourceFormatException.class)
                        .hasMessageStartingWith(NAME);
            }
        }
    }

    @Test
    void everyTruncationIsRefusedByName() {
        byte[] file = file();
        for (int length = 0; length < file.length; length += 7) {
            byte[] cut = Arrays.copyOf(file, length);
            assertThatThrownBy(() -> TableReader.read(NAME, cut))
                    .isInstanceOf(ResourceFormatException.class)
                    .hasMessageStartingWith(NAME);
        }
        assertThatThrownBy(() -> TableReader.read(NAME, Arrays.copyOf(file, file.length + 1)))
                .hasMessageContaining("truncated or padded");
    }

    @Test
    void newerFormatIsNamed() {
        byte[] file = file();
        ByteBuffer.wrap(file).putShort(4, (short) (TableFormat.VERSION + 1));
        assertThatThrownBy(() -> TableReader.read(NAME, file))
                .isInstanceOf(ResourceFormatException.class)
                .hasMessageContaining("format version " + (TableFormat.VERSION + 1));
    }

    @Test
    void wrongContentUnderARightChecksumIsRefused() {
        byte[] file = file();
        byte[] cut = Arrays.copyOf(file, file.length - 5);
        ByteBuffer head = ByteBuffer.wrap(cut);
        head.putInt(6, cut.length - TableFormat.HEAD_BYTES);
        head.putInt(10, TableFormat.checksum(cut));
        assertThatThrownBy(() -> TableReader.read(NAME, cut))
                .isInstanceOf(ResourceFormatException.class)
                .hasMessageContaining("documented form");
    }

    @Test
    void writingWhatWasReadGivesTheSameBytes() {
        assertThat(TableWriter.write(TableReader.read(NAME, file()))).isEqualTo(file());
    }
}
