package org.satline.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The same library calls without an engine, for comparison: one thread, readings in memory in the order of time, no
 * order to restore, no checkpoint, no file. It shows what the engine costs, and is no way to watch a fleet.
 */
final class PlainLoop {
    private final ChargeWatch watch = new ChargeWatch(LeakRule.usual());
    private final Map<Long, WindowReadings> open = new HashMap<>();
    private final Map<Long, UnitState> units = new HashMap<>();
    private final List<String> lines = new ArrayList<>();

    /** Takes all readings of a fleet. */
    List<String> run(SimulatedFleet fleet) {
        for (long block = 0; block < fleet.blocks(); block++) {
            fleet.send(block, one -> {
                if (one instanceof ReadingLine.Good good) {
                    take(good.reading());
                }
            });
            open.values().forEach(this::close);
            open.clear();
        }
        return lines;
    }

    private void take(UnitReading reading) {
        open.computeIfAbsent(reading.unit, unit -> new WindowReadings()).add(reading);
    }

    private void close(WindowReadings window) {
        WindowJudge.judge(window)
                .ifPresent(said -> watch.accept(
                        units.computeIfAbsent(said.unit, unit -> new UnitState()),
                        said,
                        alarm -> lines.add(alarm.line()),
                        day -> lines.add(day.line())));
    }
}
