package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Hook-ups drawn by a seed whose plans once broke an invariant, each by what it is about; their number is that of the seed. Whatever is
 * planned holds in the simulator, and what began has its end. {@link AllHookUps} draws others.
 */
class RandomHookUpsTest {
    @ParameterizedTest(name = "{1} ({0})")
    @CsvSource({
        "423, direct hose of liquid colder than the pressure in the cylinder",
        "605, direct hose and air colder than the suction",
        "472, at rest into a cylinder of vapour",
        "1031, at rest; direct hose and a cylinder of vapour",
        "416, at rest; pushed by a source",
        "145, at rest; pushed through the low hose",
        "835, direct hose emptied by a wait",
        "378, outlet hose of clean gas at a mixed cylinder",
        "70, cylinder of unknown gas",
        "1258, cylinder of unknown gas and a plain end",
        "74, air in the cylinder while it takes",
        "1290, source colder than the hose",
        "967, source that holds vapour alone",
        "825, hand valves at both ends and a warm liquid port",
        "1288, suction warmer than the air at a bare core",
        "503, liquid of a cold system",
        "377, vapour that condenses as it is found",
        "383, hot gas that condenses as it is found"
    })
    void whateverIsPlannedHolds(long seed, String about) {
        PlanTrial before = new PlanTrial();
        before.story(RandomHookUps.of(seed));
        assertThat(before.faults).as(about).isEmpty();
        PlanTrial hanging = new PlanTrial();
        hanging.hanging(RandomHookUps.hooked(seed));
        assertThat(hanging.faults).as(about).isEmpty();
    }
}
