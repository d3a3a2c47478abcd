package org.satline.charge;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.satline.measurement.SettlingTest;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** The conditions before a verdict, each checked as far as it was read. Limits: California Energy Code, RA3.2 (2008). */
final class Gates {
    /** Superheat below which a line counts as wet even with perfect instruments, K; common practice, no source. */
    private static final double WET_K = 0.5;

    private Gates() {}

    static List<Gate> check(
            SaturationCurve curve, SystemReadings readings, OperatingConditions conditions, Margins margins) {
        return List.of(
                settled(conditions),
                runningTime(conditions),
                outdoorAir(readings, conditions),
                Airflows.check(readings, conditions),
                nameplate(curve, conditions),
                drySuction(margins));
    }

    private static Gate settled(OperatingConditions conditions) {
        return conditions
                .settled()
                .map(outcome -> outcome instanceof SettlingTest.Settled
                        ? Gate.open(Gate.Kind.SETTLED, outcome.text())
                        : Gate.closed(Gate.Kind.SETTLED, outcome.text(), "let the system run on and read again"))
                .orElseGet(() -> Gate.notChecked(
                        Gate.Kind.SETTLED,
                        "no series of readings",
                        "read every half minute until the values stand still"));
    }

    private static Gate runningTime(OperatingConditions conditions) {
        Duration least = Duration.ofMinutes(Math.round(PublishedLimits.low("running time")));
        return conditions
                .running()
                .map(ran -> ran.compareTo(least) >= 0
                        ? Gate.open(Gate.Kind.RUNNING_TIME, "in cooling for " + ran.toMinutes() + " min")
                        : Gate.closed(
                                Gate.Kind.RUNNING_TIME,
                                "in cooling for " + ran.toMinutes() + " min, " + least.toMinutes() + " min are needed",
                                "wait another " + least.minus(ran).toMinutes() + " min or more"))
                .orElseGet(() -> Gate.notChecked(
                        Gate.Kind.RUNNING_TIME,
                        "running time not stated",
                        "let it cool for " + least.toMinutes() + " min before reading"));
    }

    private static Gate outdoorAir(SystemReadings readings, OperatingConditions conditions) {
        if (conditions.outdoorMinimumMet().isPresent()
                && !conditions.outdoorMinimumMet().get()) {
            return Gate.closed(
                    Gate.Kind.OUTDOOR_AIR,
                    "outdoor air is below the minimum of this method",
                    "weigh the charge in, or come back in warmer weather");
        }
        double leastF = PublishedLimits.low("outdoor air");
        return readings.condenserAir()
                .map(air -> {
                    String found = String.format(
                            Locale.ROOT,
                            "air entering the condenser %.1f degC (%.1f degF), at least %.0f degF needed",
                            air.value().celsius(),
                            air.value().fahrenheit(),
                            leastF);
                    // a reading printed on the limit meets it, whatever the last digit of a unit conversion does
                    return air.value().fahrenheit() >= leastF - 0.005
                            ? Gate.open(Gate.Kind.OUTDOOR_AIR, found)
                            : Gate.closed(
                                    Gate.Kind.OUTDOOR_AIR,
                                    found,
                                    "weigh the charge in, or come back in warmer weather");
                })
                .orElseGet(() -> conditions.outdoorMinimumMet().isPresent()
                        ? Gate.open(Gate.Kind.OUTDOOR_AIR, "outdoor minimum stated as met")
                        : Gate.notChecked(
                                Gate.Kind.OUTDOOR_AIR,
                                "condenser air not read",
                                "read the air entering the condenser"));
    }

    private static Gate nameplate(SaturationCurve curve, OperatingConditions conditions) {
        if (conditions.standing().isEmpty()) {
            return Gate.notChecked(
                    Gate.Kind.NAMEPLATE,
                    "standing pressure not read",
                    "with the compressor off and all at one temperature, compare the pressure with saturation");
        }
        OperatingConditions.Standing standing = conditions.standing().get();
        double temperatureK = standing.temperature().value().kelvins();
        double highPa = curve.bubblePressurePa(temperatureK);
        double lowPa = curve.dewPressurePa(temperatureK);
        double slopePaPerK = 1 / Margins.bubbleSlope(curve, highPa);
        double doubtPa = standing.pressure()
                .budget()
                .minus(standing.temperature().budget().scaled(slopePaPerK))
                .expanded();
        double pa = standing.pressure().value().pascals();
        String found = String.format(
                Locale.ROOT,
                "standing pressure %.0f kPa at %.1f degC; %s saturates at [%.0f, %.0f] kPa, doubt +/- %.0f kPa",
                pa / 1000,
                Temperature.ofKelvins(temperatureK).celsius(),
                curve.refrigerant().designation(),
                lowPa / 1000,
                highPa / 1000,
                doubtPa / 1000);
        if (!(pa <= highPa + doubtPa)) {
            return Gate.closed(
                    Gate.Kind.NAMEPLATE,
                    found,
                    "air or another foreign gas, or another refrigerant than on the plate: identify it before anything moves; "
                            + "do not mix it with clean refrigerant");
        }
        if (!(pa >= lowPa - doubtPa)) {
            return Gate.closed(
                    Gate.Kind.NAMEPLATE,
                    found,
                    "another refrigerant than on the plate, or no liquid left: identify it and look for the leak");
        }
        return Gate.open(Gate.Kind.NAMEPLATE, found);
    }

    private static Gate drySuction(Margins margins) {
        return margins.superheat()
                .map(superheat -> {
                    String found = "superheat " + superheat.reported();
                    return superheat.value().kelvins()
                                    > Math.max(WET_K, superheat.budget().expanded())
                            ? Gate.open(Gate.Kind.DRY_SUCTION, found)
                            : Gate.closed(
                                    Gate.Kind.DRY_SUCTION,
                                    found + " cannot be told from a wet suction line",
                                    "liquid may reach the compressor: add nothing; check airflow and metering device");
                })
                .orElseGet(() -> Gate.notChecked(
                        Gate.Kind.DRY_SUCTION,
                        "superheat not read",
                        "read suction pressure and suction-line temperature"));
    }
}
