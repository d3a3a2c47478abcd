package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillQuestion;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.Samples;
import org.satline.filling.Stamp;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.refrigerant.DataVersion;

class RoomProperties {
    private static final CylinderStamps STAMPS = Samples.recovery().with(Stamp.TARE, Mass.ofKilograms(12));
    private static final FillQuestion QUESTION = FillQuestion.of(STAMPS, Samples.curve("R-410A"));
    private static final FillAssessment.Allowed ALLOWED = new FillAssessment.Allowed(
            new MassLimit(QUESTION.jurisdiction().rules().get(0), Mass.ofKilograms(15), List.of(), List.of()),
            new FillAssessment.Answers(QUESTION, List.of(), List.of(), DataVersion.current()));

    @Property(tries = 300)
    void roomAndContentsTogetherNeverPassTheLimit(
            @ForAll @DoubleRange(min = 10, max = 60) double gross,
            @ForAll @DoubleRange(min = -10, max = 30) double since,
            @ForAll @DoubleRange(min = 0, max = 0.5) double uncertainty,
            @ForAll @DoubleRange(min = 0, max = 1) double hose,
            @ForAll boolean zeroed) {
        Reading<Mass> before = Reading.ofExpanded(Mass.ofKilograms(gross), uncertainty, "scale");
        Weighing weighing = zeroed
                ? new Weighing.SinceZero(
                        before, Reading.ofExpanded(MassDifference.ofKilograms(since), uncertainty, "scale"))
                : new Weighing.Gross(before);
        Assume.that(!weighing.isBelowTare(STAMPS.tare()));
        Room room = RoomFinder.find(ALLOWED, weighing, Mass.ofKilograms(hose));
        if (room instanceof Room.Left left) {
            assertThat(left.room().kilograms()).isPositive();
            assertThat(left.contents().kilograms() + left.room().kilograms()).isLessThanOrEqualTo(15);
            MassDifference shown = weighing.showsAfter(MassDifference.ZERO);
            assertThat(left.neverPass()).isGreaterThan(shown);
        } else {
            assertThat(room.contents().kilograms()).isGreaterThan(15 - hose - 4 * uncertainty);
        }
    }
}
