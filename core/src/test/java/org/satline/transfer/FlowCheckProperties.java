package org.satline.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.measurement.Reading;
import org.satline.quantity.Pressure;

class FlowCheckProperties {
    @Property
    void flowIsAntisymmetric(
            @ForAll PointKind a,
            @ForAll PointKind b,
            @ForAll @DoubleRange(min = 0, max = 4e6) double p,
            @ForAll @DoubleRange(min = 0, max = 4e6) double q,
            @ForAll @DoubleRange(min = 0, max = 1e5) double uncertainty) {
        ConnectionPoint first = point(a, p, uncertainty);
        ConnectionPoint second = point(b, q, uncertainty);
        Flow there = FlowCheck.between(first, second);
        Flow back = FlowCheck.between(second, first);
        if (there instanceof Flow.OneWay one && back instanceof Flow.OneWay other) {
            assertThat(other.from()).isEqualTo(one.from());
            assertThat(other.to()).isEqualTo(one.to());
            assertThat(other.driving()).isEqualTo(one.driving());
            assertThat(other.warnings()).isEqualTo(one.warnings());
            assertThat(one.from().pressure().value())
                    .isGreaterThan(one.to().pressure().value());
        } else {
            assertThat(there).isInstanceOf(Flow.TooCloseToCall.class);
            assertThat(((Flow.TooCloseToCall) back).difference())
                    .isEqualTo(((Flow.TooCloseToCall) there).difference().negated());
        }
    }

    private static ConnectionPoint point(PointKind kind, double pascals, double uncertainty) {
        return ConnectionPoint.byVacuumGauge(
                kind, Reading.ofExpanded(Pressure.ofPascals(pascals), uncertainty, "vacuum gauge"));
    }
}
