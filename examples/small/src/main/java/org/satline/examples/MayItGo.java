package org.satline.examples;

import java.util.List;
import java.util.Optional;
import org.satline.duty.Holder;
import org.satline.filling.Provenance;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.UnitSystem;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.transfer.ConnectionPoint;
import org.satline.transfer.Direction;
import org.satline.transfer.HoseState;
import org.satline.transfer.Permit;
import org.satline.transfer.PermitOffice;
import org.satline.transfer.PermitRequest;
import org.satline.transfer.PointKind;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/** May refrigerant go from here to there, and if not, why not? */
public final class MayItGo {
    private MayItGo() {}

    /**
     * Asks whether R-134a may go out of the liquid port of a running system into a recovery cylinder, and out of that cylinder into the
     * system.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Wording words = Wording.of(Language.ENGLISH, UnitSystem.US);
        for (Direction direction : Direction.values()) {
            Permit permit = PermitOffice.standard().ask(request(direction));
            if (permit instanceof Permit.Granted granted) {
                System.out.println(direction + ": granted, driven by "
                        + words.numbers().print(granted.flow().driving()));
            } else if (permit instanceof Permit.Refused refused) {
                System.out.println(direction + ": refused, " + refused.first().code());
            }
            permit.findings().forEach(finding -> System.out.println("  " + words.of(finding)));
        }
    }

    private static PermitRequest request(Direction direction) {
        Optional<Refrigerant> r134a = Optional.of(Catalogue.standard().find("R-134a"));
        return new PermitRequest(
                direction,
                List.of(point(PointKind.HIGH_SIDE_LIQUID_PORT, 135), point(PointKind.LOW_SIDE_PORT, 30)),
                Optional.empty(), // a manifold reaches both
                Optional.of(point(PointKind.RECOVERY_CYLINDER_VAPOUR_VALVE, 75)),
                "grey one",
                new Holder(Holder.Kind.SYSTEM, "the school", r134a, Provenance.RECOVERED),
                Optional.of(new Holder(Holder.Kind.RECOVERY_CYLINDER, "the school", r134a, Provenance.MIXED_RECOVERED)),
                List.of(), // what CylinderCheck found of the cylinder
                false,
                HoseState.READY);
    }

    private static ConnectionPoint point(PointKind kind, double psig) {
        Reading<GaugePressure> gauge = Reading.ofExpanded(GaugePressure.ofPsig(psig), 7_000, "gauge");
        return ConnectionPoint.byGauge(kind, gauge, Atmosphere.standard());
    }
}
