package org.satline.tables;

import java.util.Locale;
import org.satline.saturation.SaturationProperty;

/**
 * Constants of the file format, version 2. All numbers big-endian.
 *
 * <pre>
 * head     4 bytes 'S' 'L' 'T' 'B'; version (2 bytes); length of the rest in bytes (4 bytes); CRC-32C of the rest (4 bytes)
 * texts    designation, data version, source: length in bytes (2 bytes), UTF-8
 * parts    count (1 byte); each: designation (text), mass fraction (8-byte double)
 * state    reference state: kind (1 byte: 0 IIR, 1 normal boiling point, 2 coldest liquid), temperature in K (double)
 * lines    bubble, dew: lowest and highest T (K), lowest and highest p (Pa), kind of end (1 byte), T and p of the end
 * columns  count (1 byte); each: property (1 byte, order of SaturationProperty), the property whose column it shares (1 byte; itself if
 *          none); unless shared: low, split, high, end (doubles), body pieces (2 bytes), top pieces (2 bytes), body, top
 * pieces   each: exponent q (2 bytes, signed), then every coefficient as a variable-length whole number n: the coefficient is n * 2^q
 * </pre>
 *
 * <p>A whole number n is written as {@code (n << 1) ^ (n >> 63)}, seven bits to a byte, lowest first, bit 7 set in all bytes but the last.
 */
final class TableFormat {
    static final int MAGIC = ('S' << 24) | ('L' << 16) | ('T' << 8) | 'B';
    static final int VERSION = 2;
    static final int HEAD_BYTES = 14;
    /** Coefficients are multiples of the largest one's power of two over 2^this: 1e-12 of the value. */
    static final int PRECISION_BITS = 41;

    private static final SaturationProperty[] PROPERTIES = SaturationProperty.values();

    private TableFormat() {}

    static SaturationProperty property(int code) {
        return PROPERTIES[code];
    }

    static int properties() {
        return PROPERTIES.length;
    }

    static int checksum(byte[] file) {
        return Castagnoli.checksum(file, HEAD_BYTES);
    }

    /** File name of a refrigerant: R-410A is r410a. */
    static String fileName(String designation) {
        StringBuilder name = new StringBuilder();
        String lower = designation.toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i++) {
            char c = lower.charAt(i);
            if ((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9')) {
                name.append(c);
            }
        }
        return name.append(".saturation").toString(); // a plus sign would cost a cold virtual machine milliseconds
    }
}
