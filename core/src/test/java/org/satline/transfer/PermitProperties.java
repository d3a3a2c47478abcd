package org.satline.transfer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.satline.duty.Holder;
import org.satline.filling.Provenance;
import org.satline.measurement.Reading;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.transfer.hookup.Act.Kind;
import org.satline.transfer.hookup.Manifold;
import org.satline.transfer.simulator.HookUpFixture;

/** A permit to take out is granted where the simulated hook-up fills the cylinder, and refused where it empties it. */
class PermitProperties {
    private static final double DOUBT_PA = 20_000;

    @Property(tries = 40)
    void thePermitGoesTheWayThatTheHookUpFlows(
            @ForAll boolean atLiquidPort,
            @ForAll @DoubleRange(min = 18, max = 30) double liquidBars,
            @ForAll @DoubleRange(min = 4, max = 16) double lowBars,
            @ForAll @DoubleRange(min = -10, max = 50) double cylinderCelsius) {
        HookUpFixture fixture = new HookUpFixture();
        fixture.liquidBars = liquidBars;
        fixture.liquidCelsius = 25;
        fixture.lowBars = lowBars;
        fixture.recoveryCelsius = cylinderCelsius;
        double cylinder = HookUpFixture.GAS.bubblePressurePa(
                Temperature.ofCelsius(cylinderCelsius).kelvins());
        double port = 1e5 * (atLiquidPort ? liquidBars : lowBars);
        // far beyond the doubt of both gauges
        Assume.that(Math.abs(port - cylinder) > 4 * DOUBT_PA);
        HookUpFixture.Play play = fixture.readyToRecover();
        double before = play.volume(HookUpFixture.RECOVERY).refrigerant().kilograms();
        play.act(Kind.OPEN, atLiquidPort ? Manifold.HIGH_VALVE : Manifold.LOW_VALVE)
                .act(Kind.OPEN, HookUpFixture.RECOVERY_VAPOUR);
        double after = play.volume(HookUpFixture.RECOVERY).refrigerant().kilograms();
        assertThat(isGranted(atLiquidPort, port, cylinder)).isEqualTo(after > before);
    }

    private static boolean isGranted(boolean atLiquidPort, double port, double cylinder) {
        Holder system = holder(Holder.Kind.SYSTEM);
        return PermitOffice.standard()
                        .ask(new PermitRequest(
                                Direction.OUT,
                                List.of(point(
                                        atLiquidPort ? PointKind.HIGH_SIDE_LIQUID_PORT : PointKind.LOW_SIDE_PORT,
                                        port)),
                                Optional.empty(),
                                Optional.of(point(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, cylinder)),
                                HookUpFixture.RECOVERY,
                                system,
                                Optional.of(holder(Holder.Kind.RECOVERY_CYLINDER)),
                                List.of(),
                                false,
                                HoseState.READY))
                instanceof Permit.Granted;
    }

    private static ConnectionPoint point(PointKind kind, double pascals) {
        return new ConnectionPoint(kind, Reading.ofExpanded(Pressure.ofPascals(pascals), DOUBT_PA, "gauge"), List.of());
    }

    private static Holder holder(Holder.Kind kind) {
        return new Holder(kind, "club", Optional.of(Catalogue.standard().find("R-32")), Provenance.RECOVERED);
    }
}
