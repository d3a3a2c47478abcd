package org.satline.fleet;

import org.apache.flink.streaming.api.windowing.triggers.Trigger;
import org.apache.flink.streaming.api.windowing.triggers.TriggerResult;
import org.apache.flink.streaming.api.windowing.windows.TimeWindow;

/**
 * Closes a window of event time at its end. The engine sets a timer for that end by itself, to forget the window, since no lateness is
 * allowed after it; the usual trigger sets the same timer once more with every reading.
 */
final class AtEndOfWindow extends Trigger<Object, TimeWindow> {
    private static final long serialVersionUID = 1L;

    @Override
    public TriggerResult onElement(Object reading, long timestamp, TimeWindow window, TriggerContext context) {
        return TriggerResult.CONTINUE;
    }

    @Override
    public TriggerResult onEventTime(long time, TimeWindow window, TriggerContext context) {
        return time == window.maxTimestamp() ? TriggerResult.FIRE : TriggerResult.CONTINUE;
    }

    @Override
    public TriggerResult onProcessingTime(long time, TimeWindow window, TriggerContext context) {
        return TriggerResult.CONTINUE;
    }

    @Override
    public void clear(TimeWindow window, TriggerContext context) {
        // it keeps nothing
    }
}
