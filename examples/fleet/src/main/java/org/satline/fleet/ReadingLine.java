package org.satline.fleet;

import java.util.Optional;

/**
 * One line of a file of readings: unit, model, time in seconds since 1970, then the channels in order, divided by
 * commas.
 */
public final class ReadingLine {
    /** First line of a file, which a reader skips. */
    public static final String HEAD = head();

    private static final int FIELDS = 3 + Channel.COUNT;

    private ReadingLine() {}

    /** What a line turned out to be. */
    public sealed interface Read {}

    /**
     * A reading.
     *
     * @param reading the reading
     */
    public record Good(UnitReading reading) implements Read {}

    /**
     * No reading.
     *
     * @param rejected the line with its reason
     */
    public record Bad(RejectedReading rejected) implements Read {}

    /**
     * Reads a line.
     *
     * @param line the line
     * @param lastSecond latest time that a reading may have, s since 1970
     * @return the reading, or why it is none
     */
    public static Read read(String line, long lastSecond) {
        String[] fields = line.split(",", -1);
        if (fields.length != FIELDS) {
            return bad(RejectReason.FIELD_COUNT, line);
        }
        Optional<UnitModel> model = UnitModel.ofLabel(fields[1]);
        if (model.isEmpty()) {
            return bad(RejectReason.UNKNOWN_MODEL, line);
        }
        try {
            long second = Long.parseLong(fields[2]);
            float[] values = new float[Channel.COUNT];
            for (Channel channel : Channel.all()) {
                values[channel.index()] = Float.parseFloat(fields[3 + channel.index()]);
                if (!channel.canShow(values[channel.index()])) {
                    return bad(RejectReason.OUT_OF_RANGE, line);
                }
            }
            return second > lastSecond
                    ? bad(RejectReason.CLOCK_AHEAD, line)
                    : new Good(new UnitReading(Long.parseLong(fields[0]), model.get(), second, values));
        } catch (NumberFormatException e) {
            return bad(RejectReason.NOT_A_NUMBER, line);
        }
    }

    /**
     * Writes a reading.
     *
     * @param reading the reading
     * @return its line
     */
    public static String of(UnitReading reading) {
        StringBuilder line = new StringBuilder(120);
        line.append(reading.unit).append(',').append(reading.model.label()).append(',');
        line.append(reading.second);
        for (float value : reading.values) {
            line.append(',').append(value);
        }
        return line.toString();
    }

    private static Read bad(RejectReason reason, String line) {
        return new Bad(new RejectedReading(reason, line));
    }

    private static String head() {
        StringBuilder head = new StringBuilder("unit,model,second");
        for (Channel channel : Channel.all()) {
            head.append(',').append(channel.name().toLowerCase(java.util.Locale.ROOT));
        }
        return head.toString();
    }
}
