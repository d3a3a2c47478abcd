package org.satline.transfer.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.satline.transfer.simulator.HookUpFixture.RECOVERY;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE;
import static org.satline.transfer.simulator.HookUpFixture.SOURCE_VALVE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.satline.transfer.hookup.Act;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.HookUpPlan;
import org.satline.transfer.hookup.HookUpPlan.NoPlan;
import org.satline.transfer.hookup.HookUpPlan.Planned;
import org.satline.transfer.hookup.PlanPart;
import org.satline.transfer.hookup.PlanReason;
import org.satline.transfer.hookup.PlanTask;
import org.satline.transfer.hookup.SystemPort;

/** A hose from port to cylinder, without a manifold. Common practice, no source. */
class DirectHosePlansTest {
    private static final PlanTask TO_RECOVERY = PlanTask.of(PlanTask.Kind.CONNECT_AND_PURGE, RECOVERY);
    private static final PlanTask TO_SOURCE = PlanTask.of(PlanTask.Kind.CONNECT_AND_PURGE, SOURCE);

    private static String name(Act act) {
        return act.kind().code() + " " + act.target()
                + act.to().map(to -> " " + to).orElse("");
    }

    @Test
    void aDirectHoseAtAVapourPortIsSweptAtTheCylinder() {
        HookUpCases.Case site = direct(EndFitting.PLAIN_FLARE, SystemPort.Fitting.VALVE_CORE);
        HookUpPlan plan = HookUpPlanner.plan(site.hookUp(), site.start(), TO_SOURCE);
        assertThat(plan).isInstanceOf(Planned.class);
        assertThat(((Planned) plan)
                        .acts().stream().map(DirectHosePlansTest::name).toList())
                .containsExactly(
                        "connectTight direct-hose.system low-side",
                        "connectLoose direct-hose.cylinder " + SOURCE_VALVE,
                        "open direct-hose.cylinder",
                        "tighten direct-hose.cylinder");
    }

    @Test
    void aDirectHoseAtALiquidPortHasItsHandValveThere() {
        HookUpCases.Case site = direct(EndFitting.PLAIN_FLARE, SystemPort.Fitting.VALVE_CORE);
        HookUpPlan plan = HookUpPlanner.plan(site.hookUp(), site.start(), TO_RECOVERY);
        assertThat(plan).isInstanceOf(Planned.class);
        assertThat(((Planned) plan).acts().get(0)).isEqualTo(Act.of(Act.Kind.TURN_ROUND, "direct-hose"));
    }

    @Test
    void aDirectHoseThatIsPlainAtBothEndsHasNoPlanOnTheBareCoreOfALiquidPort() {
        HookUpCases.Case site = direct(EndFitting.PLAIN_FLARE, EndFitting.PLAIN_FLARE, SystemPort.Fitting.VALVE_CORE);
        assertThat(HookUpPlanner.plan(site.hookUp(), site.start(), TO_RECOVERY))
                .isEqualTo(new NoPlan(PlanReason.PLAIN_END_ON_CORE, List.of(PlanPart.SHUT_OFF_AT_PORT)));
    }

    private static HookUpCases.Case direct(EndFitting system, SystemPort.Fitting fitting) {
        return direct(system, EndFitting.OPEN_CLOSE_VALVE, fitting);
    }

    private static HookUpCases.Case direct(EndFitting system, EndFitting cylinder, SystemPort.Fitting fitting) {
        return new HookUpCases.Case(
                HookUpCases.Kit.DIRECT,
                system,
                cylinder,
                EndFitting.PLAIN_FLARE,
                fitting,
                HookUpCases.Held.RECOVERED_COOL,
                true,
                HookUpCases.Gas.A1,
                false,
                false);
    }
}
