package org.satline.fleet;

import org.apache.flink.api.common.eventtime.Watermark;
import org.apache.flink.api.common.eventtime.WatermarkGenerator;
import org.apache.flink.api.common.eventtime.WatermarkOutput;

/** Event time goes on with each window. */
final class EachWatermark implements WatermarkGenerator<SettledWindow> {
    @Override
    public void onEvent(SettledWindow window, long time, WatermarkOutput output) {
        output.emitWatermark(new Watermark(time - 1));
    }

    @Override
    public void onPeriodicEmit(WatermarkOutput output) {}
}
