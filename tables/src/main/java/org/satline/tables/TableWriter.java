package org.satline.tables;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import org.satline.equilibrium.Range;
import org.satline.saturation.SaturationProperty;

/** Writes table files of {@link TableFormat}. One use, one thread. */
@SuppressWarnings("EnumOrdinal") // the format numbers properties and kinds in their declared order
final class TableWriter {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);

    static byte[] write(TableData data) {
        try {
            TableWriter writer = new TableWriter();
            writer.content(data);
            return withHead(writer.bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e); // memory does not fail
        }
    }

    private static byte[] withHead(byte[] content) {
        ByteBuffer file = ByteBuffer.allocate(TableFormat.HEAD_BYTES + content.length);
        file.putInt(TableFormat.MAGIC);
        file.putShort((short) TableFormat.VERSION);
        file.putInt(content.length);
        file.putInt(0);
        file.put(content);
        file.putInt(TableFormat.HEAD_BYTES - Integer.BYTES, TableFormat.checksum(file.array()));
        return file.array();
    }

    /** Rounds the coefficients of each piece to what the file can hold. */
    static double[] rounded(double[] coefficients, int length) {
        double[] rounded = new double[coefficients.length];
        for (int piece = 0; piece < coefficients.length; piece += length) {
            int q = exponent(coefficients, piece, length);
            for (int k = piece; k < piece + length; k++) {
                rounded[k] = Math.scalb(Math.rint(Math.scalb(coefficients[k], -q)), q);
            }
        }
        return rounded;
    }

    private static int exponent(double[] coefficients, int from, int length) {
        double largest = Double.MIN_NORMAL;
        for (int k = from; k < from + length; k++) {
            largest = Math.max(largest, Math.abs(coefficients[k]));
        }
        return Math.getExponent(largest) - TableFormat.PRECISION_BITS;
    }

    private void content(TableData data) throws IOException {
        text(data.designation());
        text(data.dataVersion());
        text(data.source());
        out.writeByte(data.parts().size());
        for (TableData.Part part : data.parts()) {
            text(part.designation());
            out.writeDouble(part.massFraction());
        }
        out.writeByte(data.reference().kind().ordinal());
        out.writeDouble(data.reference().temperatureK());
        line(data.bubble());
        line(data.dew());
        columns(data.columns());
    }

    private void line(LineFacts line) throws IOException {
        range(line.temperatures());
        range(line.pressures());
        out.writeByte(line.end().kind().ordinal());
        out.writeDouble(line.end().temperatureK());
        out.writeDouble(line.end().pressurePa());
    }

    private void range(Range range) throws IOException {
        out.writeDouble(range.low());
        out.writeDouble(range.high());
    }

    private void columns(Map<SaturationProperty, Column> columns) throws IOException {
        Map<SaturationProperty, Column> written = new EnumMap<>(SaturationProperty.class);
        out.writeByte(columns.size());
        for (SaturationProperty property : SaturationProperty.values()) {
            Column column = columns.get(property);
            SaturationProperty shared = written.keySet().stream()
                    .filter(earlier -> written.get(earlier) == column)
                    .findFirst()
                    .orElse(property);
            out.writeByte(property.ordinal());
            out.writeByte(shared.ordinal());
            if (shared == property && column != null) {
                column(property, column.data);
            }
            if (column != null) {
                written.put(property, column);
            }
        }
    }

    private void column(SaturationProperty property, ColumnData column) throws IOException {
        out.writeDouble(column.low());
        out.writeDouble(column.split());
        out.writeDouble(column.high());
        out.writeDouble(column.end());
        out.writeShort(column.bodyPieces());
        out.writeShort(column.topPieces());
        pieces(column.body(), Column.bodyDegree(property) + 1);
        pieces(column.top(), Column.TOP_DEGREE + 1);
    }

    private void pieces(double[] coefficients, int length) throws IOException {
        for (int piece = 0; piece < coefficients.length; piece += length) {
            int q = exponent(coefficients, piece, length);
            out.writeShort(q);
            for (int k = piece; k < piece + length; k++) {
                whole((long) Math.scalb(coefficients[k], -q));
            }
        }
    }

    private void whole(long n) throws IOException {
        long rest = (n << 1) ^ (n >> 63);
        while ((rest & ~0x7FL) != 0) {
            out.writeByte((int) ((rest & 0x7F) | 0x80));
            rest >>>= 7;
        }
        out.writeByte((int) rest);
    }

    private void text(String text) throws IOException {
        byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
        out.writeShort(utf8.length);
        out.write(utf8);
    }
}
