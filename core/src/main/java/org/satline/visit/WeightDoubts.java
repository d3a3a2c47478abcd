package org.satline.visit;

import java.util.Optional;
import org.satline.cylinder.ClosedVessel;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Refusal.Reason;
import org.satline.cylinder.StampCheck;
import org.satline.equilibrium.FluidModel;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** Reasons to leave a cylinder alone that its weight gives: by itself, with the volume, and with the pressure. */
final class WeightDoubts {
    private static final String PRACTICE = "common practice, no source";
    private static final String VESSEL = "closed vessel: mass, volume and temperature";

    private final CylinderOnSite cylinder;
    private final SaturationCurve holding;
    private final double kelvins;

    private WeightDoubts(CylinderOnSite cylinder, SaturationCurve holding) {
        this.cylinder = cylinder;
        this.holding = holding;
        this.kelvins = cylinder.temperature().kelvins();
    }

    /** At most one reason: once the weight is known to be wrong, nothing further follows from it. */
    static Optional<Refusal> of(CylinderOnSite cylinder, SaturationCurve holding) {
        if (cylinder.scale().isEmpty()) {
            return Optional.of(new Refusal(
                    Reason.NOT_WEIGHED,
                    "put the cylinder on a scale first; without its weight nothing may go "
                            + (cylinder.receives() ? "in" : "out"),
                    PRACTICE));
        }
        Optional<Refusal> below = StampCheck.belowTare(
                cylinder.stamps(),
                cylinder.grossKg().map(Mass::ofKilograms).orElseThrow(),
                Mass.ofKilograms(cylinder.weighingUncertaintyKg()));
        if (below.isPresent()) {
            return below.map(
                    found -> new Refusal(found.reason(), "weigh the cylinder again: " + found.text(), found.basis()));
        }
        if (cylinder.holding().isEmpty()) {
            return Optional.empty();
        }
        WeightDoubts doubts = new WeightDoubts(cylinder, holding);
        return doubts.brimful().or(doubts::tooLightForItsPressure);
    }

    /** Whether by its weight liquid fills the cylinder, so that no pressure computed from that weight means anything. */
    static boolean isBrimful(CylinderOnSite cylinder, SaturationCurve holding) {
        // above the end of the line: what would have filled it with liquid before it got there
        double kelvins = Math.min(cylinder.temperature().kelvins(), holding.maxTemperatureK());
        return kelvins >= holding.minTemperatureK()
                && cylinder.insideKg()
                        .filter(inside -> inside
                                >= holding.bubbleLiquidDensity(kelvins)
                                        * cylinder.stamps().volume().cubicMetres())
                        .isPresent();
    }

    /** Whether by its weight, scale at its best, no liquid is left in it. */
    static boolean isVapourOnly(CylinderOnSite cylinder, SaturationCurve holding) {
        double kelvins = cylinder.temperature().kelvins();
        return covers(holding, kelvins)
                && cylinder.insideKg()
                        .filter(inside -> inside + cylinder.weighingUncertaintyKg()
                                < holding.dewVapourDensity(kelvins)
                                        * cylinder.stamps().volume().cubicMetres())
                        .isPresent();
    }

    private static boolean covers(SaturationCurve curve, double kelvins) {
        return kelvins >= curve.minTemperatureK() && kelvins <= curve.maxTemperatureK();
    }

    private Optional<Refusal> brimful() {
        if (!isBrimful(cylinder, holding)) {
            return Optional.empty();
        }
        String gauge = cylinder.pressure()
                .filter(read -> covers(holding, kelvins)
                        && read.pascals() <= holding.bubblePressurePa(kelvins) + pressureDoubtPa())
                .map(read -> "; the gauge, " + Figures.of(read)
                        + ", shows vapour above the liquid: the weight is impossible, or the gauge is wrong")
                .orElse("");
        return Optional.of(new Refusal(
                Reason.LIQUID_FULL,
                "keep people away, connect and move nothing: by its weight, " + Figures.of(insideMass())
                        + " in a cylinder of "
                        + Figures.of(cylinder.stamps().waterCapacity())
                        + " of water, liquid fills it to the brim at " + Figures.of(cylinder.temperature())
                        + ": it is about to burst, or weight, tare or water capacity is wrong" + gauge
                        + "; let it cool, then weigh it and read its stamps again",
                VESSEL));
    }

    private Mass insideMass() {
        return Mass.ofKilograms(Math.max(0, cylinder.insideKg().orElseThrow()));
    }

    private double pressureDoubtPa() {
        double slope = holding.bubblePressurePa(kelvins) - holding.bubblePressurePa(colder());
        return Math.hypot(cylinder.pressureUncertainty().pascals(), slope);
    }

    /** The temperature less its expanded uncertainty, as far as the saturation line goes. */
    private double colder() {
        return Math.max(kelvins - Math.abs(cylinder.temperatureUncertainty().kelvins()), holding.minTemperatureK());
    }

    /**
     * Vapour too light to be saturated has a pressure that follows from mass, volume and temperature. A gauge that reads more than that, by more than the
     * expanded uncertainties of gauge, scale and thermometer together (JCGM 100, 5.1.2, sensitivities by differences), contradicts the weight.
     */
    private Optional<Refusal> tooLightForItsPressure() {
        if (cylinder.pressure().isEmpty() || !isVapourOnly(cylinder, holding)) {
            return Optional.empty();
        }
        double inside = insideMass().kilograms();
        FluidModel model = FluidModel.of(holding.refrigerant());
        double byWeight = vapourPressurePa(model, inside, kelvins);
        double byScale = vapourPressurePa(model, inside + cylinder.weighingUncertaintyKg(), kelvins) - byWeight;
        double byThermometer = byWeight - vapourPressurePa(model, inside, colder());
        double expanded = Math.hypot(Math.hypot(cylinder.pressureUncertainty().pascals(), byScale), byThermometer);
        Pressure read = cylinder.pressure().get();
        if (!(read.pascals() - byWeight > expanded)) {
            return Optional.empty();
        }
        return Optional.of(new Refusal(
                Reason.CONTENTS_DOUBTFUL,
                Figures.figure(
                        "weight and pressure contradict each other: by its weight it holds %s, which is vapour alone and gives %s at %s, yet the gauge"
                                + " reads %s, more by %.1f psi (uncertainty %.1f psi); tare, scale, label or water capacity is wrong: weigh it and read its"
                                + " stamps again",
                        Figures.of(insideMass()),
                        Figures.of(Pressure.ofPascals(byWeight)),
                        Figures.of(cylinder.temperature()),
                        Figures.of(read),
                        Pressure.ofPascals(read.pascals() - byWeight).psia(),
                        Pressure.ofPascals(expanded).psia()),
                VESSEL + "; JCGM 100, 5.1.2, k = 2"));
    }

    private double vapourPressurePa(FluidModel model, double kilograms, double atKelvins) {
        if (!(kilograms > 0)) {
            return 0;
        }
        return ClosedVessel.of(model, cylinder.stamps().volume(), Mass.ofKilograms(kilograms))
                .at(Temperature.ofKelvins(atKelvins))
                .pressure()
                .pascals();
    }
}
