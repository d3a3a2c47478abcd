package org.satline.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.ContentsCheck;
import org.satline.cylinder.ContentsFinding;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Refusal.Reason;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Reasons not to fill a cylinder that its label, weight, pressure and temperature give only together. */
final class CylinderDoubts {
    private static final String PRACTICE = "common practice, no source";
    /** Above this a cylinder said to hold nothing is not evacuated: half a standard atmosphere; common practice, no source. */
    private static final double EVACUATED_BELOW_PA =
            Atmosphere.standard().pressure().pascals() / 2;
    /** A pressure above this multiple of the service pressure is beyond what 49 CFR 173.301a(c) allows at 131 degF. */
    private static final double SERVICE_FACTOR = 1.25;

    private CylinderDoubts() {}

    static List<Refusal> of(CylinderOnSite cylinder, SaturationCurve holding, Atmosphere site) {
        List<Refusal> found = new ArrayList<>();
        tooWarm(cylinder, holding, site, found);
        if (cylinder.holding().isEmpty()) {
            saidToHoldNothing(cylinder, found);
        } else {
            cylinder.pressure().ifPresent(pressure -> againstLabel(cylinder, holding, pressure, found));
        }
        WeightDoubts.of(cylinder, holding).ifPresent(found::add);
        return List.copyOf(found);
    }

    private static void tooWarm(
            CylinderOnSite cylinder, SaturationCurve holding, Atmosphere site, List<Refusal> found) {
        double kelvins = cylinder.temperature().kelvins();
        if (kelvins > cylinder.warmest().kelvins() + 0.05) {
            found.add(new Refusal(
                    Reason.TOO_WARM,
                    "the cylinder is at " + Figures.of(cylinder.temperature()) + ", warmer than the "
                            + Figures.of(cylinder.warmest())
                            + " for which its limit is computed; move away, let it cool, and name a warmer limit if it can get that warm again",
                    PRACTICE));
        }
        Optional<GaugePressure> service = cylinder.stamps().servicePressure();
        Optional<Pressure> inside = cylinder.pressure();
        if (cylinder.holding().isPresent()) {
            inside = cylinder.pressureInside(holding);
            aboveCritical(cylinder, holding).ifPresent(found::add);
        }
        if (service.isPresent() && inside.isPresent()) {
            double gauge = inside.get().gauge(site).pascals();
            if (gauge > SERVICE_FACTOR * service.get().pascals()) {
                found.add(new Refusal(
                        Reason.TOO_WARM,
                        "the pressure inside, " + Figures.of(inside.get().gauge(site))
                                + ", is above 5/4 of the service pressure " + Figures.of(service.get())
                                + "; keep away, let it cool, and have the cylinder examined",
                        "49 CFR 173.301a(c)"));
            }
        }
    }

    /** Above the end of its line neither pressure nor level tells what is inside, so it is neither filled nor charged from. */
    private static Optional<Refusal> aboveCritical(CylinderOnSite cylinder, SaturationCurve holding) {
        if (cylinder.temperature().kelvins() <= holding.maxTemperatureK()) {
            return Optional.empty();
        }
        return Optional.of(new Refusal(
                Reason.TOO_WARM,
                "the cylinder is at " + Figures.of(cylinder.temperature()) + ", warmer than the "
                        + Figures.of(Temperature.ofKelvins(holding.maxTemperatureK())) + " where the liquid of "
                        + holding.refrigerant().designation()
                        + " ends: its pressure tells nothing of its contents; let it cool in the shade, then read again",
                PRACTICE));
    }

    private static void saidToHoldNothing(CylinderOnSite cylinder, List<Refusal> found) {
        cylinder.insideBeforeKg().ifPresent(inside -> {
            double doubt = cylinder.scale().orElseThrow().expandedUncertainty().kilograms()
                    + cylinder.hoseContents().kilograms();
            if (inside > doubt) {
                found.add(new Refusal(
                        Reason.CONTENTS_DOUBTFUL,
                        "the cylinder is said to hold nothing, yet it weighs " + Figures.of(Mass.ofKilograms(inside))
                                + " more than its tare; find out what is in it",
                        "arithmetic: contents = gross - tare"));
            }
        });
        cylinder.pressure()
                .filter(p -> p.pascals() > EVACUATED_BELOW_PA)
                .ifPresent(
                        p -> found.add(
                                new Refusal(
                                        Reason.CONTENTS_DOUBTFUL,
                                        "the cylinder is said to hold nothing, yet its pressure is " + Figures.of(p)
                                                + " absolute: air or another gas is in it; evacuate it first",
                                        "40 CFR 82 subpart B, appendix A (evacuation before the transfer); the mark of half an atmosphere: common practice, no source")));
    }

    private static void againstLabel(
            CylinderOnSite cylinder, SaturationCurve holding, Pressure pressure, List<Refusal> found) {
        double kelvins = cylinder.temperature().kelvins();
        if (!(pressure.pascals() > 0) || kelvins < holding.minTemperatureK() || kelvins > holding.maxTemperatureK()) {
            return;
        }
        ContentsFinding finding = ContentsCheck.check(holding, List.of(), cylinder.contentsReading(pressure));
        if (finding instanceof ContentsFinding.Consistent || finding instanceof ContentsFinding.LiquidGone) {
            return;
        }
        String misfit = "the pressure " + Figures.of(pressure) + " does not fit "
                + holding.refrigerant().designation() + " at "
                + Figures.of(cylinder.temperature()) + ", which saturates at "
                + Figures.of(Pressure.ofPascals(holding.bubblePressurePa(kelvins)));
        found.add(
                cylinder.atRest()
                        ? new Refusal(
                                Reason.CONTENTS_DOUBTFUL,
                                misfit + ": " + finding.cautions().get(0).text(),
                                finding.cautions().get(0).basis())
                        : new Refusal(
                                Reason.NOT_AT_REST,
                                misfit
                                        + ", but the cylinder was not at rest, so nothing can be said about its contents: let it stand, valves shut and out"
                                        + " of the sun, then read again",
                                PRACTICE));
    }
}
