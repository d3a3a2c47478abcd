package org.satline.transfer.simulator;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;

/** How little of what does not belong there counts. */
class HookUpBenchTest {
    private static HookUpBench bench() {
        HookUpFixture fixture = new HookUpFixture();
        HookUp hookUp = fixture.hookUp();
        HookUpState start = fixture.start();
        return new HookUpBench(new Layout(hookUp), hookUp.law(), start);
    }

    /** Less than ten micrograms is the round-off of the settling and no gas; our choice, no source. */
    @ParameterizedTest
    @CsvSource({"1e-9, false", "1e-8, false", "2e-8, true", "1e-6, true"})
    void recoveredGasThatComesIntoTheSystemCountsFromTenMicrograms(double kilograms, boolean counts) {
        HookUpBench bench = bench();
        bench.move(HookUpFixture.RECOVERY, HookUpFixture.LOW_PORT, kilograms, 0, false);
        assertThat(bench.violations.stream().anyMatch(each -> each.invariant() == Invariant.FOREIGN_GAS_INTO_SYSTEM))
                .isEqualTo(counts);
    }

    @ParameterizedTest
    @CsvSource({"1e-9, false", "1e-8, false", "2e-8, true", "1e-6, true"})
    void soDoesAir(double kilograms, boolean counts) {
        HookUpBench bench = bench();
        bench.move(HookUp.AIR, HookUpFixture.LOW_PORT, 0, kilograms, false);
        assertThat(bench.violations.stream().anyMatch(each -> each.invariant() == Invariant.AIR_INTO_SYSTEM))
                .isEqualTo(counts);
        HookUpBench other = bench();
        other.move(HookUp.AIR, HookUpFixture.SOURCE, 0, kilograms, false);
        assertThat(other.violations.stream().anyMatch(each -> each.invariant() == Invariant.AIR_INTO_CYLINDER))
                .isEqualTo(counts);
    }
}
