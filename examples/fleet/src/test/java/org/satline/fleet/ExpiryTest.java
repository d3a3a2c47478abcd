package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.util.CloseableIterator;
import org.junit.jupiter.api.Test;

/** A unit that is silent for longer than the expiry is forgotten: its standing alarm is raised anew. */
class ExpiryTest {
    @Test
    void whatIsForgottenIsRaisedAnew() throws Exception {
        assertThat(raised(5)).isEqualTo(2);
        assertThat(raised(50)).isEqualTo(1);
    }

    @SuppressWarnings("try") // the engine's own close may be interrupted
    private static int raised(int expiryDays) throws Exception {
        List<SettledWindow> windows = new ArrayList<>();
        for (int day : new int[] {1, 2, 3, 4, 24, 25, 26, 27}) {
            windows.add(broken(7, day));
        }
        StreamExecutionEnvironment env = StreamExecutionEnvironment.createLocalEnvironment(1);
        env.getConfig().setAutoWatermarkInterval(0);
        int raised = 0;
        try (CloseableIterator<Alarm> alarms = env.fromData(windows)
                .assignTimestampsAndWatermarks(
                        WatermarkStrategy.<SettledWindow>forGenerator(context -> new EachWatermark())
                                .withTimestampAssigner((window, before) -> window.start * 1000))
                .keyBy(window -> window.unit)
                .process(new WatchStep(LeakRule.usual(), expiryDays))
                .executeAndCollect()) {
            while (alarms.hasNext()) {
                Alarm alarm = alarms.next();
                raised += alarm.cause == Cause.SENSOR && alarm.news == Alarm.News.RAISED ? 1 : 0;
            }
        }
        return raised;
    }

    private static SettledWindow broken(long unit, int day) {
        SettledWindow window = new SettledWindow();
        window.unit = unit;
        window.start = day * 86_400L;
        window.outcome = Outcome.IMPLAUSIBLE;
        window.cause = Cause.SENSOR;
        window.causeProbability = 1;
        return window;
    }
}
