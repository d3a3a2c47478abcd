package org.satline.fleet;

import java.io.IOException;
import org.apache.flink.api.common.serialization.SerializerConfig;
import org.apache.flink.api.common.typeutils.SimpleTypeSerializerSnapshot;
import org.apache.flink.api.common.typeutils.TypeSerializer;
import org.apache.flink.api.common.typeutils.TypeSerializerSnapshot;
import org.apache.flink.api.common.typeutils.base.TypeSerializerSingleton;
import org.apache.flink.api.java.typeutils.GenericTypeInfo;
import org.apache.flink.core.memory.DataInputView;
import org.apache.flink.core.memory.DataOutputView;

/**
 * How readings travel from step to step: every reading does, so the general form costs more than what is done with
 * them. Never kept as state.
 */
final class UnitReadingType extends GenericTypeInfo<UnitReading> {
    private static final long serialVersionUID = 1L;

    UnitReadingType() {
        super(UnitReading.class);
    }

    @Override
    public TypeSerializer<UnitReading> createSerializer(SerializerConfig config) {
        return new Serializer();
    }

    /** Unit, model, second, then the values. */
    static final class Serializer extends TypeSerializerSingleton<UnitReading> {
        private static final long serialVersionUID = 1L;

        private static final UnitModel[] MODELS = UnitModel.values();
        private static final int BYTES = 8 + 1 + 8 + 4 * Channel.COUNT;

        @Override
        public boolean isImmutableType() {
            return false;
        }

        @Override
        public UnitReading createInstance() {
            return new UnitReading();
        }

        @Override
        public UnitReading copy(UnitReading from) {
            return new UnitReading(from.unit, from.model, from.second, from.values.clone());
        }

        @Override
        public UnitReading copy(UnitReading from, UnitReading reuse) {
            return copy(from);
        }

        @Override
        public int getLength() {
            return BYTES;
        }

        @Override
        @SuppressWarnings("EnumOrdinal") // lives no longer than the records between two steps of one version
        public void serialize(UnitReading reading, DataOutputView to) throws IOException {
            to.writeLong(reading.unit);
            to.writeByte(reading.model.ordinal());
            to.writeLong(reading.second);
            for (float value : reading.values) {
                to.writeInt(Float.floatToRawIntBits(value));
            }
        }

        @Override
        public UnitReading deserialize(DataInputView from) throws IOException {
            long unit = from.readLong();
            UnitModel model = MODELS[from.readByte()];
            long second = from.readLong();
            float[] values = new float[Channel.COUNT];
            for (int i = 0; i < values.length; i++) {
                values[i] = Float.intBitsToFloat(from.readInt());
            }
            return new UnitReading(unit, model, second, values);
        }

        @Override
        public UnitReading deserialize(UnitReading reuse, DataInputView from) throws IOException {
            return deserialize(from);
        }

        @Override
        public void copy(DataInputView from, DataOutputView to) throws IOException {
            to.write(from, BYTES);
        }

        @Override
        public TypeSerializerSnapshot<UnitReading> snapshotConfiguration() {
            return new Snapshot();
        }
    }

    /** Form of the serializer beside records that an unaligned checkpoint caught on their way. */
    public static final class Snapshot extends SimpleTypeSerializerSnapshot<UnitReading> {
        /** For the engine. */
        public Snapshot() {
            super(Serializer::new);
        }
    }
}
