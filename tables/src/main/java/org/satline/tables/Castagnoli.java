package org.satline.tables;

/**
 * CRC-32C, the checksum of the Castagnoli polynomial (RFC 3720, appendix B.4). The class of the platform came to Android only with API
 * level 34, and browsers lack it.
 */
final class Castagnoli {
    /** The polynomial, bits reversed. */
    private static final int POLYNOMIAL = 0x82F63B78;

    private static final int[] TABLE = table();

    private Castagnoli() {}

    private static int[] table() {
        int[] table = new int[256];
        for (int i = 0; i < table.length; i++) {
            int c = i;
            for (int bit = 0; bit < Byte.SIZE; bit++) {
                c = (c & 1) == 0 ? c >>> 1 : (c >>> 1) ^ POLYNOMIAL;
            }
            table[i] = c;
        }
        return table;
    }

    static int checksum(byte[] bytes, int from) {
        int[] table = TABLE;
        int c = -1;
        for (int i = from; i < bytes.length; i++) {
            c = (c >>> 8) ^ table[(c ^ bytes[i]) & 0xFF];
        }
        return ~c;
    }
}
