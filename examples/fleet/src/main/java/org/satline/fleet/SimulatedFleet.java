package org.satline.fleet;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * The readings of a simulated fleet, in blocks: one burst of fifteen readings, a minute apart, of some units. Readings
 * come out of order by up to eight minutes, a few come twice, a few a day late, a few broken. A block depends on its
 * number alone. Immutable.
 *
 * @param plan what happens to the units
 * @param units number of units
 * @param days number of days
 * @param bursts bursts a day, evenly over it; 96 is a reading a minute
 * @param late whether a few readings arrive a day late; which of them are in time for their window is up to the
 *     pace of parallel readers
 * @param pauseMillis pause before each block, to slow a run down; ms
 */
public record SimulatedFleet(FleetPlan plan, long units, int days, int bursts, boolean late, int pauseMillis)
        implements Serializable {
    private static final int UNITS_A_BLOCK = 100;
    private static final int MOST_DELAY_MIN = 8;
    private static final int DAY = 86_400;
    private static final int MOST_BURSTS = 96;
    private static final int DISORDER = 60;

    /** Refuses fleets without units or days. */
    public SimulatedFleet {
        if (!(units > 0 && days > 0 && bursts > 0 && bursts <= MOST_BURSTS && pauseMillis >= 0)) {
            throw new IllegalArgumentException(units + " units, " + days + " days, " + bursts
                    + " bursts a day: units and days must be above 0, bursts in [1, 96]");
        }
    }

    /**
     * Counts the blocks.
     *
     * @return how many there are
     */
    public long blocks() {
        return (long) days * bursts * blocksABurst();
    }

    /**
     * Counts the readings of an undisturbed fleet.
     *
     * @return how many there are
     */
    public long readings() {
        return units * days * bursts * WindowReadings.MINUTES;
    }

    /**
     * Returns the end.
     *
     * @return end of the last day, s since 1970
     */
    public long lastSecond() {
        return (long) (plan.firstDay() + days) * DAY;
    }

    private long blocksABurst() {
        return (units + UNITS_A_BLOCK - 1) / UNITS_A_BLOCK;
    }

    void pause() throws InterruptedException {
        if (pauseMillis > 0) {
            Thread.sleep(pauseMillis);
        }
    }

    /**
     * Sends a block.
     *
     * @param block its number
     * @param to receives readings and what is broken, in the order of arrival
     */
    public void send(long block, Consumer<ReadingLine.Read> to) {
        long burst = block / blocksABurst();
        long firstUnit = block % blocksABurst() * UNITS_A_BLOCK;
        long start =
                plan.firstDay() * (long) DAY + burst / bursts * DAY + burst % bursts * (MOST_BURSTS / bursts) * 900;
        int count = (int) Math.min(UNITS_A_BLOCK, units - firstUnit);
        List<List<ReadingLine.Read>> byArrival = new ArrayList<>();
        for (int minute = 0; minute < WindowReadings.MINUTES + MOST_DELAY_MIN; minute++) {
            byArrival.add(new ArrayList<>());
        }
        for (int i = 0; i < count; i++) {
            SimulatedUnit unit = new SimulatedUnit(plan, firstUnit + i);
            for (int minute = 0; minute < WindowReadings.MINUTES; minute++) {
                put(unit, firstUnit + i, start + 60L * minute, minute, byArrival);
            }
            late(unit, firstUnit + i, start, byArrival.get(0));
        }
        byArrival.forEach(arrivals -> arrivals.forEach(to));
    }

    private void put(SimulatedUnit unit, long number, long second, int minute, List<List<ReadingLine.Read>> byArrival) {
        long chance = Draw.bits(plan.seed(), number, second, DISORDER);
        int delay = (chance & 7) == 0 ? (int) (chance >>> 8 & 7) + 1 : 0;
        UnitReading reading = new UnitReading(number, unit.model(), second, unit.values(second, 1));
        List<ReadingLine.Read> arrivals = byArrival.get(minute + delay);
        boolean broken = (chance >>> 16 & 1023) == 0;
        arrivals.add(broken ? broken(reading, (int) (chance >>> 32 & 7)) : new ReadingLine.Good(reading));
        if ((chance >>> 40 & 31) == 0 && !broken) {
            arrivals.add(new ReadingLine.Good(reading));
        }
    }

    /** A reading that lay a day in some gateway. */
    private void late(SimulatedUnit unit, long number, long start, List<ReadingLine.Read> arrivals) {
        long then = start - DAY + 420;
        if (late
                && then >= plan.firstDay() * (long) DAY
                && (Draw.bits(plan.seed(), number, start, DISORDER + 1) & 511) == 0) {
            arrivals.add(new ReadingLine.Good(new UnitReading(number, unit.model(), then, unit.values(then, 1))));
        }
    }

    private ReadingLine.Read broken(UnitReading reading, int kind) {
        String line = ReadingLine.of(reading);
        String bad = switch (kind) {
            case 0 -> line.substring(0, line.lastIndexOf(','));
            case 1 -> line + ",7";
            case 2 -> line.substring(0, line.lastIndexOf(',')) + ",--";
            case 3 -> line.substring(0, line.lastIndexOf(',')) + ",NaN";
            case 4 -> line.substring(0, line.lastIndexOf(',')) + ",850";
            case 5 -> line.replace(reading.model.label(), "shed");
            case 6 -> line.replace("," + reading.second + ",", "," + (reading.second + 40L * 365 * DAY) + ",");
            default -> "";
        };
        return ReadingLine.read(bad, lastSecond());
    }
}
