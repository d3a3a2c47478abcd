package org.satline.fleet;

import org.apache.flink.api.common.typeinfo.TypeInfo;

/** One reading of one unit. Mutable and public as the serializer of the engine asks for; nothing else writes to it. */
@TypeInfo(UnitReadingFactory.class)
public class UnitReading {
    /** Number of the unit, which the fleet shares out over the machines. */
    public long unit;
    /** Its model. */
    public UnitModel model = UnitModel.HOME;
    /** Time of the reading, s since 1970-01-01T00:00Z. */
    public long second;
    /** Values in the order and units of {@link Channel}. */
    public float[] values = new float[0];

    /** For the serializer. */
    public UnitReading() {}

    /**
     * Makes a reading.
     *
     * @param unit number of the unit
     * @param model its model
     * @param second time, s since 1970
     * @param values one for each {@link Channel}; kept, not copied
     */
    public UnitReading(long unit, UnitModel model, long second, float[] values) {
        this.unit = unit;
        this.model = model;
        this.second = second;
        this.values = values;
    }
}
