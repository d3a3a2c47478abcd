package org.satline.fleet;

import org.apache.flink.api.common.accumulators.LongCounter;
import org.apache.flink.api.common.functions.OpenContext;
import org.apache.flink.api.common.state.ValueState;
import org.apache.flink.api.common.state.ValueStateDescriptor;
import org.apache.flink.streaming.api.functions.KeyedProcessFunction;
import org.apache.flink.util.Collector;

/**
 * The step of the job that remembers each unit. Expiry is by event time: what was last heard of too long ago is
 * forgotten, in a replay as in life.
 */
final class WatchStep extends KeyedProcessFunction<Long, SettledWindow, Alarm> {
    private static final long serialVersionUID = 1L;

    private static final long DAY_MS = 86_400_000L;

    private final LeakRule rule;
    private final int expiryDays;
    private transient ChargeWatch watch;
    private transient ValueState<UnitState> memory;
    private transient LongCounter windows;
    private transient LongCounter alarms;

    WatchStep(LeakRule rule, int expiryDays) {
        this.rule = rule;
        this.expiryDays = expiryDays;
    }

    @Override
    public void open(OpenContext context) {
        watch = new ChargeWatch(rule);
        memory = getRuntimeContext().getState(new ValueStateDescriptor<>("unit", UnitState.class));
        windows = new LongCounter();
        alarms = new LongCounter();
        getRuntimeContext().addAccumulator(Progress.WINDOWS, windows);
        getRuntimeContext().addAccumulator(Progress.ALARMS, alarms);
    }

    @Override
    public void processElement(SettledWindow window, Context context, Collector<Alarm> out) throws Exception {
        UnitState state = memory.value();
        // the clock of the stream may not have passed the expiry yet although this very window does
        if (state != null && window.start * 1000 >= expires(state)) {
            forget(state, context, out);
            state = null;
        }
        if (state == null) {
            state = new UnitState();
            state.latest = window.start;
            context.timerService().registerEventTimeTimer(expires(state));
        }
        windows.add(1L);
        watch.accept(state, window, alarm -> send(alarm, out), day -> context.output(FleetJob.DAYS, day));
        memory.update(state);
    }

    @Override
    public void onTimer(long time, OnTimerContext context, Collector<Alarm> out) throws Exception {
        UnitState state = memory.value();
        if (state == null) {
            return;
        }
        if (expires(state) <= time) {
            forget(state, context, out);
        } else {
            context.timerService().registerEventTimeTimer(expires(state));
        }
    }

    private long expires(UnitState state) {
        return state.latest * 1000 + expiryDays * DAY_MS;
    }

    private void forget(UnitState state, Context context, Collector<Alarm> out) {
        watch.finish(
                state,
                context.getCurrentKey(),
                state.model,
                alarm -> send(alarm, out),
                day -> context.output(FleetJob.DAYS, day));
        memory.clear();
    }

    private void send(Alarm alarm, Collector<Alarm> out) {
        alarms.add(1L);
        out.collect(alarm);
    }
}
