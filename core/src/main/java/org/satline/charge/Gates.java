package org.satline.charge;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.satline.charge.margin.Margins;
import org.satline.explanation.Figure;
import org.satline.measurement.Place;
import org.satline.measurement.SettlingTest;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/** The conditions before a verdict, each checked as far as it was read. Limits: California Energy Code, RA3.2 (2008). */
final class Gates {
    /** Superheat below which a line counts as wet even with perfect instruments, K; common practice, no source. */
    static final double WET_K = 0.5;

    private Gates() {}

    static List<Gate> check(ChargeCase it, Margins margins) {
        return List.of(
                settled(it.conditions()),
                runningTime(it.conditions()),
                outdoorAir(it.readings(), it.conditions()),
                Airflows.check(it.readings(), it.conditions()),
                nameplate(it.curve(), it.conditions()),
                drySuction(margins));
    }

    private static Gate settled(OperatingConditions conditions) {
        // who saw it move is believed before a series that happened to stand still
        boolean moved = conditions.watchedSettled().equals(Optional.of(false));
        if (conditions.settled().isPresent() && !moved) {
            return settled(conditions.settled().get());
        }
        return conditions
                .watchedSettled()
                .map(stood -> Gate.of(Gate.Kind.SETTLED, stood))
                .orElseGet(() -> Gate.notRead(Gate.Kind.SETTLED, "conditions.settled"));
    }

    private static Gate settled(SettlingTest.Outcome outcome) {
        boolean met = outcome instanceof SettlingTest.Settled;
        if (outcome instanceof SettlingTest.Contradicted it) {
            return Gate.of(
                    Gate.Kind.SETTLED,
                    met,
                    Figure.of("difference", TemperatureDifference.ofKelvins(it.difference())),
                    Figure.of("limit", TemperatureDifference.ofKelvins(it.limit())));
        }
        if (outcome instanceof SettlingTest.TooShort it) {
            return Gate.of(Gate.Kind.SETTLED, met, Figure.of("window", it.windowSeconds() / 60, "min"));
        }
        double slope = outcome instanceof SettlingTest.Settled it
                ? it.slopePerMinute()
                : ((SettlingTest.Moving) outcome).slopePerMinute();
        double spread =
                outcome instanceof SettlingTest.Settled it ? it.spread() : ((SettlingTest.Moving) outcome).spread();
        return Gate.of(
                Gate.Kind.SETTLED,
                met,
                Figure.of("slope", slope, "K/min"),
                Figure.of("spread", TemperatureDifference.ofKelvins(spread)));
    }

    private static Gate runningTime(OperatingConditions conditions) {
        Duration least = Duration.ofMinutes(Math.round(PublishedLimits.low("running time")));
        return conditions
                .running()
                .map(ran -> Gate.of(
                        Gate.Kind.RUNNING_TIME,
                        ran.compareTo(least) >= 0,
                        Figure.of("running", (double) ran.toMinutes(), "min"),
                        Figure.of("least", (double) least.toMinutes(), "min")))
                .orElseGet(() -> Gate.notRead(Gate.Kind.RUNNING_TIME, "conditions.running"));
    }

    private static Gate outdoorAir(SystemReadings readings, OperatingConditions conditions) {
        Figure least = Figure.of("least", Temperature.ofFahrenheit(PublishedLimits.low("outdoor air")));
        if (conditions.outdoorMinimumMet().isPresent()
                && !conditions.outdoorMinimumMet().get()) {
            return Gate.of(Gate.Kind.OUTDOOR_AIR, false);
        }
        return readings.temperature(Place.OUTDOOR_AIR)
                .map(air -> Gate.of(
                        Gate.Kind.OUTDOOR_AIR,
                        // a reading printed on the limit meets it, whatever the last digit of a unit conversion does
                        air.value().fahrenheit() >= PublishedLimits.low("outdoor air") - 0.005,
                        Figure.of("outdoorAir", air.value()),
                        least))
                .orElseGet(() -> conditions.outdoorMinimumMet().isPresent()
                        ? Gate.of(Gate.Kind.OUTDOOR_AIR, true)
                        : Gate.notRead(Gate.Kind.OUTDOOR_AIR, Place.OUTDOOR_AIR.path()));
    }

    private static Gate nameplate(SaturationCurve curve, OperatingConditions conditions) {
        if (conditions.standing().isEmpty()) {
            return Gate.notRead(Gate.Kind.NAMEPLATE, "conditions.standingPressure", "conditions.standingTemperature");
        }
        OperatingConditions.Standing standing = conditions.standing().get();
        double temperatureK = standing.temperature().value().kelvins();
        double highPa = curve.bubblePressurePa(temperatureK);
        double lowPa = curve.dewPressurePa(temperatureK);
        double slopePaPerK = 1 / Margins.bubbleSlope(curve, highPa);
        UncertaintyBudget doubt = standing.pressure()
                .budget()
                .minus(standing.temperature().budget().scaled(slopePaPerK));
        double pa = standing.pressure().value().pascals();
        return Gate.of(
                Gate.Kind.NAMEPLATE,
                pa <= highPa + doubt.expanded() && pa >= lowPa - doubt.expanded(),
                Figure.of("standing", standing.pressure().value()),
                Figure.of("temperature", standing.temperature().value()),
                Figure.of("low", Pressure.ofPascals(lowPa)),
                Figure.of("high", Pressure.ofPascals(highPa)),
                Figure.of("doubt", PressureDifference.ofPascals(doubt.expanded())));
    }

    private static Gate drySuction(Margins margins) {
        return margins.superheat()
                .map(superheat -> Gate.of(
                        Gate.Kind.DRY_SUCTION,
                        superheat.value().kelvins()
                                > Math.max(WET_K, superheat.budget().expanded()),
                        Figure.of("superheat", superheat.value()),
                        Figure.of(
                                "doubt",
                                TemperatureDifference.ofKelvins(
                                        superheat.budget().expanded()))))
                .orElseGet(() ->
                        Gate.notRead(Gate.Kind.DRY_SUCTION, Place.SUCTION_PRESSURE.path(), Place.SUCTION_LINE.path()));
    }
}
