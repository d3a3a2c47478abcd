package org.satline.cylinder;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.equilibrium.FluidModel;
import org.satline.explanation.Figure;
import org.satline.filling.VesselPoint;
import org.satline.measurement.Reading;
import org.satline.quantity.Density;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** What follows from label, weight, pressure and temperature of a cylinder without judging it. */
final class CylinderFacts {
    private final Cylinder cylinder;
    private final Optional<Refrigerant> holds;
    private final SaturationCurve curve;
    private final double kelvins;
    private final Optional<MassDifference> belowTare;
    private final Optional<Reading<MassDifference>> weight;
    private final Optional<ClosedVessel> vessel;
    private @Nullable FluidModel model;

    CylinderFacts(Cylinder cylinder, SaturationCurve system) {
        this.cylinder = cylinder;
        this.kelvins = cylinder.temperature().value().kelvins();
        this.belowTare = readBelowTare();
        this.weight = belowTare.isPresent() ? Optional.empty() : cylinder.contents();
        boolean cameIn = cylinder.role() == Role.RECEIVER && isEmptyBefore() && !isWithinTare(weight);
        this.holds = cylinder.label().or(() -> cameIn ? Optional.of(system.refrigerant()) : Optional.empty());
        this.curve = holds.filter(held -> !held.equals(system.refrigerant()))
                .map(SaturationCurves::of)
                .orElse(system);
        this.vessel = holds.isPresent() && !contents().equals(Mass.ZERO) && !isBrimful()
                ? Optional.of(ClosedVessel.of(model(), cylinder.stamps().volume(), contents()))
                : Optional.empty();
    }

    /** Made once: that costs milliseconds. For the one thread of a check. */
    private FluidModel model() {
        FluidModel known = model;
        if (known == null) {
            known = FluidModel.of(curve.refrigerant());
            model = known;
        }
        return known;
    }

    /** What it is taken to hold; empty where it is empty or not known. */
    Optional<Refrigerant> holds() {
        return holds;
    }

    /** The curve of what it holds; that of the system where it holds nothing. */
    SaturationCurve curve() {
        return curve;
    }

    String gas() {
        return curve.refrigerant().designation();
    }

    private double toleranceKg() {
        return cylinder.weighing()
                .map(each -> each.toleranceKg(cylinder.stamps().tare()))
                .orElse(0.0);
    }

    private boolean isWithinTare(Optional<Reading<MassDifference>> inside) {
        return inside.filter(each -> Math.abs(each.value().kilograms()) <= toleranceKg())
                .isPresent();
    }

    private Optional<Reading<MassDifference>> before() {
        return cylinder.weighing()
                .map(each -> each.contentsBefore(cylinder.stamps().tare()));
    }

    private boolean isEmptyBefore() {
        return cylinder.weighing().filter(Weighing.SinceZero.class::isInstance).isPresent() && isWithinTare(before());
    }

    private Optional<MassDifference> readBelowTare() {
        Mass tare = cylinder.stamps().tare();
        return cylinder.weighing()
                .filter(each -> each.isBelowTare(tare))
                .map(each -> each.contents(tare).value());
    }

    /** Contents below zero by more than the scatter of stamped tares and the doubt of the scale; the weight then says nothing. */
    Optional<MassDifference> belowTare() {
        return belowTare;
    }

    /** Mass inside now by the scale, where it is not below the tare. */
    Optional<Reading<MassDifference>> weight() {
        return weight;
    }

    /** Whether by its weight it holds more than an empty cylinder with what its hoses hold. */
    boolean isHeavierThanEmpty() {
        return before().filter(each -> each.value().kilograms()
                        > toleranceKg() + cylinder.hoseContents().kilograms())
                .isPresent();
    }

    /** What nobody knows and is heavy is taken for the refrigerant of the system, as far as danger goes. */
    boolean mayHoldLiquid() {
        return holds.isPresent() || isHeavierThanEmpty();
    }

    boolean isWeighedEmpty() {
        return isWithinTare(weight);
    }

    /** Mass inside; zero without a usable weight, and where it weighs less than its tare. */
    Mass contents() {
        return Mass.ofKilograms(
                Math.max(0, weight.map(each -> each.value().kilograms()).orElse(0.0)));
    }

    Figure contentsFigure() {
        return Figure.of("contents", contents());
    }

    double scaleMarginKg() {
        return weight.map(each -> 2 * each.expandedUncertainty()).orElse(0.0);
    }

    private double volume() {
        return cylinder.stamps().volume().cubicMetres();
    }

    /** The temperature at which so many kilograms of what it holds fill it. */
    VesselPoint liquidFullOf(double kilograms) {
        return VesselPoint.liquidFull(curve, kilograms / volume());
    }

    /** Whether by its weight liquid fills it now, or did so before it grew warmer than its saturation line. */
    boolean isBrimful() {
        return holds.isPresent()
                && weight.isPresent()
                && liquidFullOf(contents().kilograms())
                        .isBy(cylinder.temperature().value());
    }

    boolean isOnLine() {
        return kelvins >= curve.minTemperatureK() && kelvins <= curve.maxTemperatureK();
    }

    /** Whether by its weight, scale at its best, no liquid is left in it. */
    boolean isVapourAlone() {
        return isOnLine()
                && weight.filter(each -> each.value().kilograms() + each.expandedUncertainty()
                                < curve.dewVapourDensity(kelvins) * volume())
                        .isPresent();
    }

    /** The cylinder with its contents; empty where it holds nothing by weight, and where liquid fills it. */
    Optional<ClosedVessel> vessel() {
        return vessel;
    }

    /** The pressure inside as read. */
    Optional<Reading<Pressure>> inside() {
        return cylinder.pressure().or(this::byState);
    }

    /** The pressure inside without a gauge: of vapour alone by weight, else of saturation, else of the weight in its volume. */
    Optional<Reading<Pressure>> byState() {
        if (holds.isEmpty()) {
            return Optional.empty();
        }
        if (isOnLine() && !isVapourAlone()) {
            double bubble = curve.bubblePressurePa(kelvins);
            double slope = (bubble - curve.bubblePressurePa(colder())) / Math.max(kelvins - colder(), 1e-9);
            return Optional.of(reading(
                    bubble, kelvins > colder() ? slope * cylinder.temperature().standardUncertainty() : 0));
        }
        try {
            return Optional.of(byWeight());
        } catch (OutOfValidityException e) {
            return Optional.empty(); // beyond the pressures of the equation, or beside the critical point
        }
    }

    private static Reading<Pressure> reading(double pascals, double standardUncertainty) {
        return Reading.of(Pressure.ofPascals(pascals), standardUncertainty, "cylinder");
    }

    /** The temperature less its expanded uncertainty, as far as the saturation line goes. */
    private double colder() {
        return Math.max(kelvins - cylinder.temperature().expandedUncertainty(), curve.minTemperatureK());
    }

    /** The pressure of the weighed contents in their volume (JCGM 100, 5.1.2, sensitivities by differences). */
    Reading<Pressure> byWeight() {
        double inside = contents().kilograms();
        double scale = weight.map(Reading::standardUncertainty).orElse(0.0);
        double pascals = pressurePa(inside, kelvins);
        double byScale = scale > 0 ? pressurePa(inside + scale, kelvins) - pascals : 0;
        double byThermometer = (pascals - pressurePa(inside, colder())) / 2;
        return reading(pascals, Math.hypot(byScale, byThermometer));
    }

    /** By how much so many kilograms more raise the pressure of the weighed contents, Pa. */
    double pressureOfMorePa(double kilograms) {
        double inside = contents().kilograms();
        return pressurePa(inside + kilograms, kelvins) - pressurePa(inside, kelvins);
    }

    private double pressurePa(double kilograms, double atKelvins) {
        if (!(kilograms > 0)) {
            return 0;
        }
        return ClosedVessel.of(model(), cylinder.stamps().volume(), Mass.ofKilograms(kilograms))
                .at(Temperature.ofKelvins(atKelvins))
                .pressure()
                .pascals();
    }

    /** What its pressure says about what it holds; empty where it says nothing, and where an impossible weight makes it worthless. */
    Optional<ContentsFinding> byPressure() {
        if (holds.isEmpty() || !isOnLine() || isBrimful()) {
            return Optional.empty();
        }
        Optional<Density> density = contents().equals(Mass.ZERO)
                ? Optional.empty()
                : Optional.of(Density.ofKilogramsPerCubicMetre(contents().kilograms() / volume()));
        return cylinder.pressure()
                .map(read -> ContentsCheck.check(
                        curve,
                        TradeRefrigerants.CURVES,
                        new ContentsReading(aboveZero(read), cylinder.temperature(), cylinder.atRest(), density)));
    }

    /** A gauge that shows a perfect vacuum says as much as one that shows a pascal. */
    private static Reading<Pressure> aboveZero(Reading<Pressure> read) {
        return new Reading<>(Pressure.ofPascals(Math.max(1, read.value().pascals())), read.budget(), read.shown());
    }

    /** How much the pressure may exceed that of saturation by the doubt of gauge and thermometer, Pa. */
    double pressureDoubtPa(Reading<Pressure> read) {
        double slope = curve.bubblePressurePa(kelvins) - curve.bubblePressurePa(colder());
        return Math.hypot(read.expandedUncertainty(), slope);
    }
}
