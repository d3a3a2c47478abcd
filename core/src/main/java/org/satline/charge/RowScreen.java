package org.satline.charge;

import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.special.Erf;
import org.jspecify.annotations.Nullable;
import org.satline.charge.margin.ChargeLevel;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.DecisionRule;
import org.satline.charge.margin.MeteringDevice;
import org.satline.equilibrium.ConvergenceException;
import org.satline.measurement.Place;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.OutOfValidityException;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.resource.PrintedGrid;
import org.satline.saturation.SaturationLines;

/** One row on its way through the screen. Mutable, for one thread and one row. */
final class RowScreen {
    private static final Place[] PLACES = Place.values();
    /** Largest target that a charge question takes, K. */
    private static final double MOST_TARGET_K = 50;

    private final SaturationLines curve;
    private final DecisionRule rule;
    private final ScreenLimits limits;
    private final ChargeRow row;
    private @Nullable ScreenedSide suction;
    private @Nullable ScreenedSide liquid;
    private double targetK;
    /** Variance that the target takes over from the readings that it comes from, K2. */
    private double targetVariance;

    RowScreen(SaturationLines curve, DecisionRule rule, ScreenLimits limits, ChargeRow row) {
        this.curve = curve;
        this.rule = rule;
        this.limits = limits;
        this.row = row;
    }

    ScreenedCharge screened() {
        if (!row.isOf(curve)) {
            return none(ScreenReason.FOREIGN_REFRIGERANT);
        }
        for (Place place : PLACES) {
            if (row.isRead(place) && !isReading(place)) {
                return none(ScreenReason.NOT_A_READING, place);
            }
        }
        if (!isQuestion()) {
            return none(ScreenReason.NOT_A_READING);
        }
        Place first = ScreenedPlausibility.beforeTheCurve(row);
        if (first != null) {
            return none(ScreenReason.IMPLAUSIBLE, first);
        }
        try {
            ScreenedCharge outside = sides();
            return outside != null ? outside : judged();
        } catch (OutOfValidityException outside) {
            return none(ScreenReason.OUT_OF_RANGE);
        } catch (ConvergenceException notSolved) {
            return none(ScreenReason.NOT_CONVERGED);
        }
    }

    private boolean isReading(Place place) {
        double si = row.si(place);
        return si < Double.POSITIVE_INFINITY && (place.kind() == Place.Kind.DROP ? si >= 0 : si > 0);
    }

    private boolean isQuestion() {
        double target = row.targetK();
        double tolerance = row.toleranceK();
        return (Double.isNaN(target) || (target >= 0 && target <= MOST_TARGET_K))
                && (Double.isNaN(tolerance) || (tolerance > 0 && tolerance < Double.POSITIVE_INFINITY))
                && isUncertainty(row.pressureUncertaintyPa())
                && isUncertainty(row.temperatureUncertaintyK());
    }

    private static boolean isUncertainty(double value) {
        return Double.isNaN(value) || (value >= 0 && value < Double.POSITIVE_INFINITY);
    }

    private @Nullable ScreenedCharge sides() {
        if (row.isRead(Place.SUCTION_PRESSURE)) {
            if (!ScreenedSide.isOnCurve(curve, row, true)) {
                return none(ScreenReason.OUT_OF_RANGE, Place.SUCTION_PRESSURE);
            }
            suction = ScreenedSide.suction(curve, row);
        }
        if (row.isRead(Place.LIQUID_PRESSURE)) {
            if (!ScreenedSide.isOnCurve(curve, row, false)) {
                return none(ScreenReason.OUT_OF_RANGE, Place.LIQUID_PRESSURE);
            }
            liquid = ScreenedSide.liquid(curve, row);
        }
        return null;
    }

    private ScreenedCharge judged() {
        ScreenedPlausibility plausibility = new ScreenedPlausibility(row, suction, liquid);
        Place impossible = plausibility.impossible();
        if (impossible != null) {
            return none(ScreenReason.IMPLAUSIBLE, impossible);
        }
        if (plausibility.isTargetImpossible()) {
            return none(ScreenReason.IMPLAUSIBLE);
        }
        ScreenedCharge barred = condition();
        if (barred != null) {
            return barred;
        }
        ScreenedSide side = row.metering().judgedBy() == Criterion.SUPERHEAT ? suction : liquid;
        if (side == null || !side.hasMargin()) {
            return none(ScreenReason.NOT_READ, missing());
        }
        ScreenedCharge untargeted = target();
        if (untargeted != null) {
            return untargeted;
        }
        if (isModeUnknown()) {
            return none(ScreenReason.MODE_NOT_KNOWN, Place.OUTDOOR_AIR);
        }
        return level(side);
    }

    private Place missing() {
        boolean superheat = row.metering().judgedBy() == Criterion.SUPERHEAT;
        Place pressure = superheat ? Place.SUCTION_PRESSURE : Place.LIQUID_PRESSURE;
        return row.isRead(pressure) ? (superheat ? Place.SUCTION_LINE : Place.LIQUID_LINE) : pressure;
    }

    /** The conditions that a row can show: warm enough outdoors, and a suction line surely dry behind an expansion valve. */
    private @Nullable ScreenedCharge condition() {
        Optional<Boolean> met = row.outdoorMinimumMet();
        boolean cold = row.isRead(Place.OUTDOOR_AIR)
                && !(Temperature.ofKelvins(row.si(Place.OUTDOOR_AIR)).fahrenheit() >= limits.leastOutdoorF() - 0.005);
        if (cold || (met.isPresent() && !met.get())) {
            return none(ScreenReason.CONDITION_NOT_MET, Place.OUTDOOR_AIR);
        }
        boolean wet = suction != null
                && suction.marginK
                        <= Math.max(Gates.WET_K, UncertaintyBudget.USUAL_COVERAGE_FACTOR * suction.marginDoubtK);
        return wet && row.metering() == MeteringDevice.EXPANSION_VALVE
                ? none(ScreenReason.CONDITION_NOT_MET, Place.SUCTION_LINE)
                : null;
    }

    private @Nullable ScreenedCharge target() {
        if (!Double.isNaN(row.targetK())) {
            targetK = row.targetK();
            return null;
        }
        if (row.metering().judgedBy() == Criterion.SUBCOOLING) {
            return none(ScreenReason.NO_TARGET);
        }
        if (!row.isRead(Place.RETURN_WET_BULB) || !row.isRead(Place.OUTDOOR_AIR)) {
            return none(
                    ScreenReason.NOT_READ,
                    row.isRead(Place.RETURN_WET_BULB) ? Place.OUTDOOR_AIR : Place.RETURN_WET_BULB);
        }
        PrintedGrid.Lookup lookup = TargetSuperheatChart.at(
                Temperature.ofKelvins(row.si(Place.RETURN_WET_BULB)).fahrenheit(),
                Temperature.ofKelvins(row.si(Place.OUTDOOR_AIR)).fahrenheit());
        if (!(lookup instanceof PrintedGrid.Value found)) {
            return none(ScreenReason.NO_TARGET, Place.RETURN_WET_BULB);
        }
        targetK = TemperatureDifference.ofFahrenheitDegrees(found.value()).kelvins();
        double wet = found.rowSlope() * row.uncertainty(Place.RETURN_WET_BULB);
        double dry = found.columnSlope() * row.uncertainty(Place.OUTDOOR_AIR);
        targetVariance = wet * wet + dry * dry;
        return null;
    }

    /** Whether the system cools at all, where nothing outdoors was read. */
    private boolean isModeUnknown() {
        if (row.isRead(Place.OUTDOOR_AIR) || row.outdoorMinimumMet().isPresent()) {
            return false;
        }
        if (!row.isRead(Place.RETURN_DRY_BULB)) {
            return true;
        }
        return row.isRead(Place.LIQUID_LINE)
                && row.si(Place.RETURN_DRY_BULB) - row.si(Place.LIQUID_LINE)
                        > UncertaintyBudget.USUAL_COVERAGE_FACTOR
                                * Math.hypot(
                                        row.uncertainty(Place.RETURN_DRY_BULB), row.uncertainty(Place.LIQUID_LINE));
    }

    private ScreenedCharge level(ScreenedSide side) {
        Criterion criterion = row.metering().judgedBy();
        double toleranceK = Double.isNaN(row.toleranceK()) ? limits.toleranceK(criterion) : row.toleranceK();
        double deviationK = side.marginK - targetK;
        double u = Math.sqrt(side.marginDoubtK * side.marginDoubtK + targetVariance);
        double towardsMore = deviationK * criterion.directionWithCharge();
        double edge = toleranceK + 1e-9;
        ChargeLevel read =
                towardsMore > edge ? ChargeLevel.HIGH : towardsMore < -edge ? ChargeLevel.LOW : ChargeLevel.ON_TARGET;
        if (contradicts(read)) {
            return none(ScreenReason.CONTRADICTED);
        }
        double low = u > 0 ? below(-toleranceK, towardsMore, u) : read == ChargeLevel.LOW ? 1 : 0;
        double high = u > 0 ? 1 - below(toleranceK, towardsMore, u) : read == ChargeLevel.HIGH ? 1 : 0;
        double onTarget = Math.max(0, 1 - high - low);
        return new ScreenedCharge.Level(
                margin(suction),
                margin(liquid),
                targetK,
                deviationK,
                u,
                low,
                onTarget,
                high,
                decided(low, onTarget, high, read));
    }

    /** The level by the risks; inside the band as read and likeliest there, no step that these instruments resolve would better it. */
    private Optional<ChargeLevel> decided(double low, double onTarget, double high, ChargeLevel read) {
        if (onTarget >= rule.wanted(ChargeLevel.ON_TARGET)
                || (read == ChargeLevel.ON_TARGET && onTarget >= low && onTarget >= high)) {
            return Optional.of(ChargeLevel.ON_TARGET);
        }
        if (low >= rule.wanted(ChargeLevel.LOW)) {
            return Optional.of(ChargeLevel.LOW);
        }
        return high >= rule.wanted(ChargeLevel.HIGH) ? Optional.of(ChargeLevel.HIGH) : Optional.empty();
    }

    private boolean contradicts(ChargeLevel read) {
        if (row.metering() == MeteringDevice.EXPANSION_VALVE) {
            return suction != null
                    && (suction.marginK < limits.leastValveSuperheatK()
                            || (suction.marginK > limits.mostValveSuperheatK() && read != ChargeLevel.LOW));
        }
        return liquid != null
                && ((read == ChargeLevel.LOW && liquid.marginK > Contradiction.AMPLE.kelvins())
                        || (read == ChargeLevel.HIGH && liquid.marginK < Contradiction.SCANT.kelvins()));
    }

    /** Normal distribution function (JCGM 106:2012, 7). */
    private static double below(double edge, double mean, double u) {
        return 0.5 * Erf.erfc((mean - edge) / (u * Math.sqrt(2)));
    }

    private static OptionalDouble margin(@Nullable ScreenedSide side) {
        return side != null && side.hasMargin() ? OptionalDouble.of(side.marginK) : OptionalDouble.empty();
    }

    private ScreenedCharge none(ScreenReason reason) {
        return new ScreenedCharge.NoLevel(margin(suction), margin(liquid), reason, Optional.empty());
    }

    private ScreenedCharge none(ScreenReason reason, Place at) {
        return new ScreenedCharge.NoLevel(margin(suction), margin(liquid), reason, Optional.of(at));
    }
}
