package org.satline.tables;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.satline.equilibrium.BoundaryEnd;
import org.satline.equilibrium.Range;
import org.satline.resource.ResourceFormatException;
import org.satline.saturation.SaturationProperty;

/** Reads a table file; refuses a damaged, truncated or newer one by name. One use, one thread. */
final class TableReader {
    private static final TableData.Reference.Kind[] REFERENCES = TableData.Reference.Kind.values();
    private static final BoundaryEnd.Kind[] ENDS = BoundaryEnd.Kind.values();

    private final String name;
    private final byte[] bytes;
    private int at;

    private TableReader(String name, byte[] bytes) {
        this.name = name;
        this.bytes = bytes;
    }

    /**
     * Reads a table.
     *
     * @param name file name, for messages
     * @param bytes whole file
     * @return its content
     * @throws ResourceFormatException if it is not a whole table of a known version
     */
    static TableData read(String name, byte[] bytes) {
        return read(name, bytes, false);
    }

    /**
     * Same; the checksum is passed over where the manifest of the jar has already vouched for the file, since it costs a cold virtual
     * machine milliseconds.
     */
    static TableData read(String name, byte[] bytes, boolean sealed) {
        TableReader reader = new TableReader(name, bytes);
        reader.checkHead(sealed);
        try {
            TableData data = reader.content();
            if (reader.at != bytes.length) {
                throw reader.fault("ends with " + (bytes.length - reader.at) + " bytes too many");
            }
            return data;
        } catch (IndexOutOfBoundsException | NegativeArraySizeException e) {
            ResourceFormatException fault = reader.fault("the content does not have the documented form");
            fault.initCause(e);
            throw fault;
        }
    }

    private void checkHead(boolean sealed) {
        if (bytes.length < TableFormat.HEAD_BYTES) {
            throw fault("only " + bytes.length + " bytes long, shorter than the head of a table");
        }
        if (integer() != TableFormat.MAGIC) {
            throw fault("is not a saturation table");
        }
        int version = twoBytes();
        if (version != TableFormat.VERSION) {
            throw fault("has format version " + version + ", this reader knows " + TableFormat.VERSION
                    + "; use the tables and the reader of one release");
        }
        int length = integer();
        if (length != bytes.length - TableFormat.HEAD_BYTES) {
            throw fault("is truncated or padded: " + (bytes.length - TableFormat.HEAD_BYTES)
                    + " bytes follow the head, which announces " + length);
        }
        int checksum = integer();
        if (!sealed && checksum != TableFormat.checksum(bytes)) {
            throw fault("the checksum does not match");
        }
    }

    private ResourceFormatException fault(String problem) {
        return new ResourceFormatException(
                name, 0, problem + "; get an undamaged table, or ask the equation engine, which needs none");
    }

    private TableData content() {
        String designation = text();
        String dataVersion = text();
        String source = text();
        List<TableData.Part> parts = new ArrayList<>();
        for (int i = oneByte(); i > 0; i--) {
            parts.add(new TableData.Part(text(), real()));
        }
        TableData.Reference reference = new TableData.Reference(REFERENCES[oneByte()], real());
        LineFacts bubble = line();
        LineFacts dew = line();
        return new TableData(designation, dataVersion, parts, source, reference, bubble, dew, columns());
    }

    private LineFacts line() {
        return new LineFacts(
                new Range(real(), real()), new Range(real(), real()), new BoundaryEnd(ENDS[oneByte()], real(), real()));
    }

    private Map<SaturationProperty, Column> columns() {
        Map<SaturationProperty, Column> columns = new EnumMap<>(SaturationProperty.class);
        for (int i = oneByte(); i > 0; i--) {
            SaturationProperty property = TableFormat.property(oneByte());
            SaturationProperty shared = TableFormat.property(oneByte());
            Column column = columns.get(shared);
            columns.put(
                    property, shared != property && column != null ? column : Column.of(property, column(property)));
        }
        if (columns.size() != TableFormat.properties()) {
            throw fault("lacks a column");
        }
        return columns;
    }

    private ColumnData column(SaturationProperty property) {
        double low = real();
        double split = real();
        double high = real();
        double end = real();
        int bodyPieces = twoBytes();
        int topPieces = twoBytes();
        double[] body = pieces(bodyPieces, Column.bodyDegree(property) + 1);
        double[] top = pieces(topPieces, Column.TOP_DEGREE + 1);
        return new ColumnData(low, split, high, end, bodyPieces, topPieces, body, top);
    }

    private double[] pieces(int count, int length) {
        double[] coefficients = new double[count * length];
        for (int i = 0; i < coefficients.length; ) {
            double unit = Math.scalb(1.0, (short) twoBytes());
            for (int k = 0; k < length; k++) {
                coefficients[i++] = whole() * unit;
            }
        }
        return coefficients;
    }

    private long whole() {
        long zigzag = 0;
        int shift = 0;
        byte next;
        do {
            next = bytes[at++];
            zigzag |= (long) (next & 0x7F) << shift;
            shift += 7;
        } while (next < 0);
        return (zigzag >>> 1) ^ -(zigzag & 1);
    }

    private int oneByte() {
        return bytes[at++] & 0xFF;
    }

    private int twoBytes() {
        return (oneByte() << 8) | oneByte();
    }

    private int integer() {
        return (twoBytes() << 16) | twoBytes();
    }

    private double real() {
        long high = integer();
        return Double.longBitsToDouble((high << 32) | (integer() & 0xFFFFFFFFL));
    }

    private String text() {
        int length = twoBytes();
        String text = new String(bytes, at, length, StandardCharsets.UTF_8);
        at += length;
        return text;
    }
}
