package org.satline.cylinder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.satline.filling.Samples.recovery;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillQuestion;
import org.satline.filling.FillRule;
import org.satline.filling.RuleOutcome.MassLimit;
import org.satline.filling.Samples;
import org.satline.filling.Stamp;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.refrigerant.DataVersion;

class RoomFinderTest {
    private static final Mass LIMIT = Mass.ofKilograms(15);
    private static final double U = 0.02; // kg, k = 2
    private static final Mass NO_HOSE = Mass.ofKilograms(0);
    private final CylinderStamps stamps = recovery().with(Stamp.TARE, Mass.ofKilograms(12));

    /** By hand: 20.5 - 12 = 8.5 kg inside; 15 - 8.5 - 0.1 - 2 x 0.02 = 6.36 kg; stop at 12 + 8.5 + 6.36 = 26.86 kg. */
    @Test
    void runningGrossWeight() {
        Room room = find(new Weighing.Gross(gross(20.5)), Mass.ofGrams(100));
        assertThat(room).isInstanceOfSatisfying(Room.Left.class, left -> {
            assertThat(left.contents().kilograms()).isCloseTo(8.5, within(1e-9)); // round-off
            assertThat(left.room().kilograms()).isCloseTo(6.36, within(1e-9));
            assertThat(left.neverPass().kilograms()).isCloseTo(26.86, within(1e-9));
        });
    }

    /** By hand: 8.5 kg before, 1 kg in since; two weighings, 2 x 0.02 x sqrt 2 = 0.0566; 15 - 9.5 - 0.0566 = 5.4434; stop at 6.4434 kg. */
    @Test
    void scaleZeroedAfterHookUp() {
        Room room = find(new Weighing.SinceZero(gross(20.5), since(1)), NO_HOSE);
        assertThat(room).isInstanceOfSatisfying(Room.Left.class, left -> {
            assertThat(left.room().kilograms()).isCloseTo(5.4434, within(5e-5)); // half of the last digit
            assertThat(left.neverPass().kilograms()).isCloseTo(6.4434, within(5e-5));
        });
    }

    @Test
    void withinTheMarginIsFull() {
        Room room = find(new Weighing.Gross(gross(26.97)), NO_HOSE);
        assertThat(room).isInstanceOf(Room.Full.class);
    }

    @Test
    void overTheLimitIsLoud() {
        Room room = find(new Weighing.Gross(gross(28)), NO_HOSE);
        assertThat(room).isInstanceOfSatisfying(Room.Overfilled.class, over -> {
            assertThat(over.excess().kilograms()).isCloseTo(1, within(1e-9)); // round-off
        });
    }

    @Test
    void belowTareIsAContradictionOnceTheScaleIsAllowedFor() {
        Weighing light = new Weighing.Gross(gross(11.8));
        assertThatThrownBy(() -> find(light, NO_HOSE)).hasMessageContaining("tare");
        Room empty = find(new Weighing.Gross(gross(11.99)), NO_HOSE);
        assertThat(empty).isInstanceOfSatisfying(Room.Left.class, left -> {
            assertThat(left.contents().kilograms()).isZero();
            assertThat(left.neverPass().kilograms()).isCloseTo(26.95, within(1e-9)); // 11.99 + 15 - 0.04
        });
    }

    /** A cylinder that has lost mass since: what it holds is below what it held, and the stop reading may lie below zero. */
    @Test
    void whatWentOutSinceIsNegative() {
        Room room = find(new Weighing.SinceZero(gross(20.5), since(-1)), NO_HOSE);
        assertThat(room).isInstanceOfSatisfying(Room.Left.class, left -> {
            assertThat(left.contents().kilograms()).isCloseTo(7.5, within(1e-9)); // 20.5 - 12 - 1, round-off
            assertThat(left.neverPass().kilograms()).isCloseTo(6.4434, within(5e-5)); // 15 - 8.5 - 0.0566
        });
        Room heavy = find(new Weighing.SinceZero(gross(28), since(-2)), NO_HOSE);
        assertThat(heavy)
                .isInstanceOfSatisfying(
                        Room.Left.class,
                        left -> assertThat(left.neverPass().kilograms()).isNegative());
    }

    /** In halves of halves of a kilogram, which a double holds exactly: no room at the limit less the margin, a little before it. */
    @Test
    void theExactEndsOfTheRoom() {
        double fullAt = 12 + 15 - 2 * 0.125; // tare, limit, twice the uncertainty
        double little = 1.0 / 1024;
        assertThat(find(new Weighing.Gross(exact(fullAt)), NO_HOSE)).isInstanceOf(Room.Full.class);
        assertThat(find(new Weighing.Gross(exact(fullAt - little)), NO_HOSE))
                .isInstanceOfSatisfying(
                        Room.Left.class, left -> assertThat(left.room()).isEqualTo(Mass.ofKilograms(little)));
        assertThat(find(new Weighing.Gross(exact(fullAt - little)), Mass.ofKilograms(little)))
                .isInstanceOf(Room.Full.class);
        assertThat(find(new Weighing.Gross(exact(fullAt - little), Mass.ofKilograms(0.25)), NO_HOSE))
                .isInstanceOfSatisfying(
                        Room.Left.class, left -> assertThat(left.room()).isEqualTo(Mass.ofKilograms(0.25 + little)));
        double overAt = 12 + 15 + 0.125; // beyond the doubt of the scale
        assertThat(find(new Weighing.Gross(exact(overAt)), NO_HOSE)).isInstanceOf(Room.Full.class);
        assertThat(find(new Weighing.Gross(exact(overAt + little)), NO_HOSE))
                .isInstanceOfSatisfying(
                        Room.Overfilled.class,
                        over -> assertThat(over.excess()).isEqualTo(Mass.ofKilograms(0.125 + little)));
    }

    /** 1 % of the tare and twice the uncertainty: 0.12 + 0.25 kg below it. */
    @Test
    void theExactEndOfALightCylinder() {
        double tolerance = 0.12 + 0.25;
        assertThat(find(new Weighing.Gross(exact(12 - tolerance + 1e-9)), NO_HOSE))
                .isInstanceOf(Room.Left.class);
        assertThatThrownBy(() -> find(new Weighing.Gross(exact(12 - tolerance - 1e-9)), NO_HOSE))
                .isInstanceOf(IllegalArgumentException.class);
        // what was inside before counts too, and not only what is there now
        assertThatThrownBy(() -> find(
                        new Weighing.SinceZero(
                                exact(11.5), Reading.ofExpanded(MassDifference.ofKilograms(1), 0.125, "scale")),
                        NO_HOSE))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static Reading<Mass> exact(double kilograms) {
        return Reading.ofExpanded(Mass.ofKilograms(kilograms), 0.125, "scale, gross");
    }

    private Room find(Weighing weighing, Mass hoseContents) {
        FillQuestion question = FillQuestion.of(stamps, Samples.curve("R-410A"));
        FillRule rule = question.jurisdiction().rules().get(0);
        MassLimit limit = new MassLimit(rule, LIMIT, List.of(), List.of());
        FillAssessment.Answers answers =
                new FillAssessment.Answers(question, List.of(), List.of(), DataVersion.current());
        return RoomFinder.find(new FillAssessment.Allowed(limit, answers), weighing, hoseContents);
    }

    private static Reading<Mass> gross(double kilograms) {
        return Reading.ofExpanded(Mass.ofKilograms(kilograms), U, "scale, gross");
    }

    private static Reading<MassDifference> since(double kilograms) {
        return Reading.ofExpanded(MassDifference.ofKilograms(kilograms), U, "scale, since zeroed");
    }
}
