package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.apache.flink.api.common.serialization.SerializerConfigImpl;
import org.apache.flink.api.common.typeinfo.TypeInformation;
import org.apache.flink.api.common.typeutils.TypeSerializer;
import org.apache.flink.api.common.typeutils.TypeSerializerSchemaCompatibility;
import org.apache.flink.api.common.typeutils.TypeSerializerSnapshot;
import org.apache.flink.api.java.typeutils.runtime.PojoSerializer;
import org.apache.flink.core.memory.DataInputDeserializer;
import org.apache.flink.core.memory.DataOutputSerializer;
import org.junit.jupiter.api.Test;

/**
 * What an earlier version wrote into a savepoint is read by this one: the engine's snapshot of the serializer, then one
 * state.
 */
class StateFormTest {
    /** Written before {@code model} and {@code rateTold} were added. */
    @Test
    void stateOfVersionOneIsMigrated() throws IOException {
        Read<UnitState> read = read(UnitState.class, "unit-state-1.bin");
        assertThat(read.compatibility().isCompatibleAfterMigration()).isTrue();
        // as the program that wrote the file printed them
        assertThat(read.state().evidence).isEqualTo(3.955105716358881);
        assertThat(read.state().intercept).isEqualTo(-9.431179433853519E-4);
        assertThat(read.state().baselineDays).isEqualTo(21);
        assertThat(read.state().climbN).isEqualTo(2);
        assertThat(read.state().standing).isEqualTo(1 << Cause.LEAK.index());
        assertThat(read.state().rateTold).isFalse();
    }

    @Test
    void windowOfVersionOneIsRead() throws IOException {
        Read<WindowReadings> read = read(WindowReadings.class, "window-readings-1.bin");
        assertThat(read.compatibility().isIncompatible()).isFalse();
        assertThat(read.state().count()).isEqualTo(14);
        assertThat(read.state().has(3)).isFalse();
        assertThat(read.state().value(0, Channel.SUCTION_KPA)).isEqualTo(989.756f);
    }

    /** Neither falls back to the general serializer, whose forms cannot evolve. */
    @Test
    void everyTypeOfStateAndResultHasASerializerThatCanEvolve() {
        for (Class<?> type : new Class<?>[] {
            UnitState.class,
            WindowReadings.class,
            SettledWindow.class,
            Alarm.class,
            UnitDay.class,
            RejectedReading.class
        }) {
            assertThat(serializer(type)).isInstanceOf(PojoSerializer.class);
        }
    }

    /** Sums only: the size does not grow with what was seen. */
    @Test
    void stateOfAUnitIsBounded() throws IOException {
        UnitState state = new UnitState();
        ChargeWatch watch = new ChargeWatch(LeakRule.usual());
        int begin = size(UnitState.class, state);
        for (SettledWindow window : new LeakStudy.Series(StudyTable.plan(31, 1), 5).windows) {
            watch.accept(state, window, alarm -> {}, day -> {});
        }
        assertThat(size(UnitState.class, state)).isEqualTo(begin).isLessThan(400);
        assertThat(size(WindowReadings.class, new WindowReadings())).isLessThan(600);
    }

    @Test
    void aReadingArrivesAsItWasSent() throws IOException {
        UnitReading reading =
                new UnitReading(9, UnitModel.SHOP, 1_790_000_000L, ExampleReadings.steady(UnitModel.SHOP));
        TypeSerializer<UnitReading> serializer = serializer(UnitReading.class);
        assertThat(serializer).isInstanceOf(UnitReadingType.Serializer.class);
        DataOutputSerializer out = new DataOutputSerializer(100);
        serializer.serialize(reading, out);
        assertThat(out.length()).isEqualTo(serializer.getLength());
        DataOutputSerializer again = new DataOutputSerializer(100);
        serializer.copy(new DataInputDeserializer(out.getCopyOfBuffer()), again);
        assertThat(ReadingLine.of(serializer.deserialize(new DataInputDeserializer(again.getCopyOfBuffer()))))
                .isEqualTo(ReadingLine.of(reading));
    }

    private record Read<T>(TypeSerializerSchemaCompatibility<T> compatibility, T state) {}

    private static <T> Read<T> read(Class<T> type, String resource) throws IOException {
        try (InputStream stream = Objects.requireNonNull(StateFormTest.class.getResourceAsStream(resource))) {
            DataInputDeserializer in = new DataInputDeserializer(stream.readAllBytes());
            TypeSerializerSnapshot<T> before =
                    TypeSerializerSnapshot.readVersionedSnapshot(in, StateFormTest.class.getClassLoader());
            return new Read<>(
                    serializer(type).snapshotConfiguration().resolveSchemaCompatibility(before),
                    before.restoreSerializer().deserialize(in));
        }
    }

    private static <T> int size(Class<T> type, T state) throws IOException {
        DataOutputSerializer out = new DataOutputSerializer(1000);
        serializer(type).serialize(state, out);
        return out.length();
    }

    private static <T> TypeSerializer<T> serializer(Class<T> type) {
        return TypeInformation.of(type).createSerializer(new SerializerConfigImpl());
    }
}
