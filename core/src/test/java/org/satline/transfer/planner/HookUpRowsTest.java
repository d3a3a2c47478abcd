package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.SafetyGroup;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.SystemPort;
import org.satline.transfer.simulator.HookUpFixture;
import org.satline.transfer.simulator.HookUpSimulator;

/** For each case of the practice: whether there is a plan, and its first act in the phase that it is about. Common practice, no source. */
class HookUpRowsTest {
    private static final PlanTask TO_RECOVERY = PlanTask.of(PlanTask.Kind.CONNECT_AND_PURGE, RECOVERY);
    private static final PlanTask TO_SOURCE = PlanTask.of(PlanTask.Kind.CONNECT_AND_PURGE, SOURCE);
    private static final PlanTask OUT = PlanTask.of(PlanTask.Kind.STEP_OUT, RECOVERY);
    private static final PlanTask IN = PlanTask.of(PlanTask.Kind.STEP_IN, SOURCE);
    private static final PlanTask END = PlanTask.of(PlanTask.Kind.END_OF_JOB, "");
    private static final PlanTask OVER = PlanTask.of(PlanTask.Kind.CHANGE_OVER, SOURCE);

    /** What was done before, on which hook-up, what is asked then, and the first act or the reason. */
    private static Arguments row(
            String name, List<PlanTask> before, Consumer<HookUpFixture> then, PlanTask asked, Object first) {
        return Arguments.of(name, (Consumer<HookUpFixture>) fixture -> {}, before, then, asked, first);
    }

    private static Arguments row(
            String name,
            List<PlanTask> before,
            Consumer<HookUpFixture> site,
            Consumer<HookUpFixture> then,
            PlanTask asked,
            Object first) {
        return Arguments.of(name, site, before, then, asked, first);
    }

    private static Arguments row(String name, Consumer<HookUpFixture> site, PlanTask asked, Object first) {
        return Arguments.of(name, site, List.of(), (Consumer<HookUpFixture>) fixture -> {}, asked, first);
    }

    private static void seals(HookUpFixture fixture) {
        fixture.centreSystemEnd = EndFitting.SELF_SEALING;
        fixture.centreCylinderEnd = EndFitting.SELF_SEALING;
    }

    private static void stems(HookUpFixture fixture) {
        fixture.lowFitting = SystemPort.Fitting.STEM;
        fixture.liquidFitting = SystemPort.Fitting.STEM;
    }

    private static void rest(HookUpFixture fixture) {
        fixture.running = false;
        fixture.lowBars = HookUpFixture.GAS.bubblePressurePa(303.15) / 1e5;
        fixture.liquidBars = fixture.lowBars;
    }

    private static void machine(HookUpFixture fixture) {
        fixture.recoveryCelsius = 50;
        fixture.outletHose = true;
    }

    /** Each case of the practice in its order, some in more than one form. */
    static Stream<Arguments> rows() {
        return Stream.concat(onTheWay(), atWork());
    }

    private static Stream<Arguments> onTheWay() {
        return Stream.of(
                row(
                        "first hook-up, self-sealing end at the high port",
                        f -> f.highPortEnd = EndFitting.SELF_SEALING,
                        TO_RECOVERY,
                        "connectTight low-hose.cylinder"),
                row(
                        "first hook-up, self-sealing end at the high port, no pump",
                        f -> {
                            f.highPortEnd = EndFitting.SELF_SEALING;
                            f.pump = false;
                        },
                        TO_RECOVERY,
                        PlanReason.NO_SWEEP_PATH),
                row(
                        "hand valve at the cylinder with contents",
                        f -> {},
                        TO_RECOVERY,
                        "PURGE connectTight centre-hose.system"),
                row(
                        "hand valve at the evacuated cylinder",
                        f -> f.recoveryKilograms = 0,
                        TO_RECOVERY,
                        "PURGE connectTight centre-hose.system"),
                row(
                        "plain end at the cylinder",
                        f -> f.centreCylinderEnd = EndFitting.PLAIN_FLARE,
                        TO_RECOVERY,
                        "PURGE connectTight centre-hose.system"),
                row(
                        "self-sealing end at the cylinder with contents",
                        f -> f.centreCylinderEnd = EndFitting.SELF_SEALING,
                        TO_RECOVERY,
                        "PURGE turnRound centre-hose"),
                row(
                        "self-sealing end at the evacuated cylinder",
                        f -> {
                            f.centreCylinderEnd = EndFitting.SELF_SEALING;
                            f.recoveryKilograms = 0;
                        },
                        TO_RECOVERY,
                        "PURGE turnRound centre-hose"),
                row(
                        "self-sealing at both ends, air, with a pump",
                        HookUpRowsTest::seals,
                        TO_RECOVERY,
                        "PURGE connectTight centre-hose.system"),
                row(
                        "low side below the atmosphere, stems, a source sweeps",
                        f -> {
                            f.lowBars = 0.7;
                            f.pump = false;
                            stems(f);
                        },
                        TO_SOURCE,
                        "HOOK_UP connectTight low-hose.cylinder"),
                row(
                        "low side below the atmosphere, stems, neither pump nor source",
                        f -> {
                            f.lowBars = 0.7;
                            f.pump = false;
                            stems(f);
                            f.known.put(SOURCE, f.hookUp().evacuated());
                        },
                        TO_RECOVERY,
                        PlanReason.LOW_SIDE_BELOW_ATMOSPHERE),
                row(
                        "toxic, stems and ends that shut",
                        f -> {
                            f.group = SafetyGroup.B2L;
                            f.lowPortEnd = EndFitting.OPEN_CLOSE_VALVE;
                            stems(f);
                        },
                        TO_RECOVERY,
                        "HOOK_UP connectTight low-hose.cylinder"),
                row("class 2L", f -> f.group = SafetyGroup.A2L, TO_RECOVERY, "HOOK_UP connectTight low-hose.cylinder"),
                row(
                        "cylinder above the liquid line, recovery machine",
                        HookUpRowsTest::machine,
                        TO_RECOVERY,
                        "PURGE start pump"),
                row(
                        "recovery machine of unknown content, no pump",
                        f -> {
                            machine(f);
                            f.pump = false;
                        },
                        TO_RECOVERY,
                        PlanReason.UNKNOWN_CONTENTS),
                row(
                        "machine at rest, evacuated cylinder",
                        f -> {
                            rest(f);
                            f.recoveryKilograms = 0;
                        },
                        TO_RECOVERY,
                        "HOOK_UP connectTight low-hose.cylinder"),
                row(
                        "machine at rest, recovery machine",
                        f -> {
                            rest(f);
                            machine(f);
                        },
                        TO_RECOVERY,
                        "PURGE start pump"),
                row(
                        "push-pull is no step",
                        f -> {},
                        PlanTask.of(PlanTask.Kind.STEP_IN, RECOVERY),
                        PlanReason.CYLINDER_NOT_SUITED));
    }

    private static Stream<Arguments> atWork() {
        return Stream.of(
                row(
                        "recovery machine, one step",
                        List.of(TO_RECOVERY),
                        HookUpRowsTest::machine,
                        f -> {},
                        OUT,
                        "STEP open high-valve"),
                row(
                        "recovery machine, end of job",
                        List.of(TO_RECOVERY, OUT),
                        HookUpRowsTest::machine,
                        f -> {},
                        END,
                        "LEAVE open recovery-cylinder.vapour"),
                row("first hook-up", f -> {}, TO_RECOVERY, "connectTight low-hose.cylinder"),
                row("hand valve at the cylinder", f -> {}, TO_SOURCE, "connectTight low-hose.cylinder"),
                row(
                        "self-sealing at both ends, air",
                        f -> {
                            seals(f);
                            f.pump = false;
                        },
                        TO_RECOVERY,
                        PlanReason.BOTH_ENDS_SELF_SEALING),
                row(
                        "self-sealing at both ends, charged",
                        f -> {
                            seals(f);
                            f.known.put(
                                    "centre-hose",
                                    f.hookUp().vapour("centre-hose", Pressure.ofBars(9), GasOrigin.SYSTEM));
                        },
                        TO_RECOVERY,
                        "connectTight low-hose.cylinder"),
                row(
                        "low side below the atmosphere, bare core",
                        f -> f.lowBars = 0.7,
                        TO_RECOVERY,
                        PlanReason.LOW_SIDE_BELOW_ATMOSPHERE),
                row(
                        "low side below the atmosphere, stem",
                        f -> {
                            f.lowBars = 0.7;
                            stems(f);
                        },
                        TO_RECOVERY,
                        "connectTight low-hose.cylinder"),
                row("toxic, bare core", f -> f.group = SafetyGroup.B2L, TO_RECOVERY, PlanReason.TOXIC_NEEDS_MACHINE),
                row(
                        "class 3, bare core",
                        f -> f.group = SafetyGroup.A3,
                        TO_RECOVERY,
                        PlanReason.FLAMMABLE_NEEDS_EVACUATION),
                row(
                        "cylinder at or above the liquid line",
                        f -> f.recoveryCelsius = 50,
                        TO_RECOVERY,
                        PlanReason.PRESSURE_NOT_BELOW),
                row(
                        "machine at rest",
                        f -> {
                            rest(f);
                            f.recoveryCelsius = 30;
                        },
                        TO_RECOVERY,
                        PlanReason.AT_REST),
                row("machine at rest, nothing is put in", HookUpRowsTest::rest, TO_SOURCE, PlanReason.AT_REST),
                row("one step out", List.of(TO_RECOVERY), f -> {}, OUT, "open high-valve"),
                row(
                        "one step out is done, the next",
                        List.of(TO_RECOVERY, OUT),
                        f -> {},
                        OUT,
                        "openShort recovery-cylinder.vapour"),
                row("change to a source", List.of(TO_RECOVERY, OUT), f -> {}, OVER, "close high-valve"),
                row("adding", List.of(TO_SOURCE), f -> {}, IN, "invert source-cylinder"),
                row("adding is done", List.of(TO_SOURCE, IN), f -> {}, END, "close source-cylinder.valve"),
                row("end of job", List.of(TO_RECOVERY, OUT), f -> {}, END, "close high-hose.system"),
                row("one service port only", f -> f.onlyLowPort = true, TO_RECOVERY, PlanReason.PRESSURE_NOT_BELOW),
                row(
                        "source no warmer than the evaporating temperature",
                        f -> f.lowBars = 17.5,
                        TO_SOURCE,
                        PlanReason.SOURCE_NOT_ABOVE),
                row(
                        "cylinder evacuated, low port alone",
                        f -> {
                            f.onlyLowPort = true;
                            f.recoveryKilograms = 0;
                        },
                        TO_RECOVERY,
                        "connectTight low-hose.cylinder"),
                row("R-744, liquid", f -> f.carbonDioxide = true, TO_RECOVERY, PlanReason.CARBON_DIOXIDE_LIQUID),
                row(
                        "R-744, supercritical",
                        f -> {
                            f.carbonDioxide = true;
                            f.liquidBars = 90;
                        },
                        TO_RECOVERY,
                        PlanReason.TRANSCRITICAL),
                row(
                        "hose of unknown content, no pump",
                        f -> {
                            f.pump = false;
                            f.known.put(
                                    "centre-hose",
                                    f.hookUp().vapour("centre-hose", Pressure.ofBars(4), GasOrigin.UNKNOWN));
                        },
                        TO_RECOVERY,
                        PlanReason.UNKNOWN_CONTENTS));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rows")
    void eachCaseHasItsPlanOrNone(
            String name,
            Consumer<HookUpFixture> site,
            List<PlanTask> before,
            Consumer<HookUpFixture> then,
            PlanTask asked,
            Object first) {
        HookUpFixture fixture = new HookUpFixture();
        fixture.highPortEnd = EndFitting.OPEN_CLOSE_VALVE;
        site.accept(fixture);
        HookUpState state = fixture.start();
        for (PlanTask task : before) {
            HookUp hookUp = fixture.hookUp();
            List<HookUpSimulator.Outcome> played = new HookUpSimulator(hookUp)
                    .play(state, ((HookUpPlan.Planned) HookUpPlanner.plan(hookUp, state, task)).acts());
            state = played.get(played.size() - 1).state();
        }
        then.accept(fixture);
        HookUpPlan plan = HookUpPlanner.plan(fixture.hookUp(), state, asked);
        if (first instanceof PlanReason reason) {
            assertThat(plan)
                    .isInstanceOfSatisfying(
                            HookUpPlan.NoPlan.class,
                            none -> assertThat(none.reason()).isEqualTo(reason));
        } else {
            assertThat(plan).isInstanceOf(HookUpPlan.Planned.class);
            String[] expected = first.toString().split(" ", 2);
            List<HookUpPlan.Phase> phases = ((HookUpPlan.Planned) plan).phases();
            boolean named = expected[0].equals(expected[0].toUpperCase(Locale.ROOT));
            HookUpPlan.Phase phase = phases.stream()
                    .filter(each -> !named || each.kind().name().equals(expected[0]))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no phase " + expected[0] + " in " + phases));
            Act act = phase.acts().get(0);
            assertThat(act.kind().code() + " " + act.target()).isEqualTo(named ? expected[1] : first);
            assertThat(HookUpSimulator.violations(
                            new HookUpSimulator(fixture.hookUp()).play(state, ((HookUpPlan.Planned) plan).acts())))
                    .isEmpty();
        }
    }
}
