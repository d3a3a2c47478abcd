package org.satline.fleet;

import org.apache.flink.api.common.functions.AggregateFunction;
import org.apache.flink.streaming.api.functions.windowing.ProcessWindowFunction;
import org.apache.flink.streaming.api.windowing.windows.TimeWindow;
import org.apache.flink.util.Collector;

/** The step of the job that gathers readings by unit and window of event time. */
final class WindowStep {
    private WindowStep() {}

    /** Gathers; order and repetition do not matter. */
    static final class Gather implements AggregateFunction<UnitReading, WindowReadings, WindowReadings> {
        private static final long serialVersionUID = 1L;

        @Override
        public WindowReadings createAccumulator() {
            return new WindowReadings();
        }

        @Override
        public WindowReadings add(UnitReading reading, WindowReadings window) {
            window.add(reading);
            return window;
        }

        @Override
        public WindowReadings getResult(WindowReadings window) {
            return window;
        }

        @Override
        public WindowReadings merge(WindowReadings one, WindowReadings other) {
            one.addAll(other);
            return one;
        }
    }

    /** Asks the library. */
    static final class Judge extends ProcessWindowFunction<WindowReadings, SettledWindow, Long, TimeWindow> {
        private static final long serialVersionUID = 1L;

        @Override
        public void process(
                Long unit, Context context, Iterable<WindowReadings> windows, Collector<SettledWindow> out) {
            for (WindowReadings window : windows) {
                WindowJudge.judge(window).ifPresent(out::collect);
            }
        }
    }
}
