package org.satline.fleet;

import java.util.Arrays;

/**
 * The readings of one unit within one window, one for each minute: bounded however much a unit sends, and the same
 * whatever the order of arrival. A reading that comes twice counts once; of two that differ for one minute the larger
 * in the order of the channels stays. State of the engine: fields may be added, see the README.
 */
public class WindowReadings {
    /** Length of a window, min. */
    public static final int MINUTES = 15;

    /** Number of the unit. */
    public long unit;
    /** Its model. */
    public UnitModel model = UnitModel.HOME;
    /** Begin of the window, s since 1970. */
    public long start;
    /** Bit {@code i} tells that minute {@code i} was read. */
    public int read;
    /** Values by minute, then by {@link Channel}. */
    public float[] values = new float[MINUTES * Channel.COUNT];

    /** Makes an empty window; for the serializer too. */
    public WindowReadings() {}

    /**
     * Takes up a reading.
     *
     * @param reading of this unit and window
     */
    public void add(UnitReading reading) {
        unit = reading.unit;
        model = reading.model;
        start = reading.second - Math.floorMod(reading.second, MINUTES * 60L);
        put((int) (reading.second - start) / 60, reading.values, 0);
    }

    /**
     * Takes up another part of the same window.
     *
     * @param other of the same unit and window
     */
    public void addAll(WindowReadings other) {
        for (int minute = 0; minute < MINUTES; minute++) {
            if (other.has(minute)) {
                unit = other.unit;
                model = other.model;
                start = other.start;
                put(minute, other.values, minute * Channel.COUNT);
            }
        }
    }

    /**
     * Tells whether a minute was read.
     *
     * @param minute of the window
     * @return whether there is a reading
     */
    public boolean has(int minute) {
        return (read & 1 << minute) != 0;
    }

    /**
     * Counts the readings.
     *
     * @return how many minutes were read
     */
    public int count() {
        return Integer.bitCount(read);
    }

    /**
     * Returns a value.
     *
     * @param minute of the window
     * @param channel which
     * @return the value in the unit of the channel
     */
    public float value(int minute, Channel channel) {
        return values[minute * Channel.COUNT + channel.index()];
    }

    private void put(int minute, float[] from, int at) {
        int to = minute * Channel.COUNT;
        if (!has(minute) || Arrays.compare(from, at, at + Channel.COUNT, values, to, to + Channel.COUNT) > 0) {
            System.arraycopy(from, at, values, to, Channel.COUNT);
            read |= 1 << minute;
        }
    }
}
