package org.satline.charge.margin;

import java.util.Optional;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * Refuses readings that no running system can show, whatever is wrong with it. Heat flows from warm to cold; pressure falls along the flow.
 */
final class Plausibility {
    private static final double ALLOWANCE_K = Margins.ALLOWANCE_K;
    private static final double BEYOND = Margins.BEYOND;
    private static final double CURVE_K = Margins.CURVE_K;

    private final SaturationCurve curve;
    private final SystemReadings readings;
    private final Optional<Coil> evaporating;
    private final Optional<Coil> condensing;

    /** Saturation at a pressure that was read, with the standard uncertainties that the gauge brings, K. */
    private record Coil(double bubbleK, double dewK, double bubbleDoubtK, double dewDoubtK, String field) {}

    private Plausibility(SaturationCurve curve, SystemReadings readings) {
        this.curve = curve;
        this.readings = readings;
        this.evaporating = coil(Place.SUCTION_PRESSURE);
        this.condensing = coil(Place.LIQUID_PRESSURE);
    }

    /** Superheat and subcooling of readings that a running system can show. */
    static Margins checked(
            SaturationCurve curve,
            SystemReadings readings,
            MeteringDevice metering,
            Optional<TemperatureDifference> target) {
        pressures(readings);
        wetBulb(readings);
        Plausibility plausibility = new Plausibility(curve, readings);
        plausibility.coils();
        plausibility.lines();
        Margins margins = Margins.of(curve, readings);
        plausibility.margins(margins);
        plausibility.target(metering.judgedBy(), target);
        return margins;
    }

    private Optional<Coil> coil(Place place) {
        return readings.pressure(place).map(read -> {
            double pa = read.value().pascals();
            return new Coil(
                    curve.bubbleTemperatureK(pa),
                    curve.dewTemperatureK(pa),
                    read.standardUncertainty() * Margins.bubbleSlope(curve, pa),
                    read.standardUncertainty() * Margins.dewSlope(curve, pa),
                    place.path());
        });
    }

    private static void pressures(SystemReadings readings) {
        Optional<Reading<Pressure>> suction = readings.pressure(Place.SUCTION_PRESSURE);
        Optional<Reading<Pressure>> liquid = readings.pressure(Place.LIQUID_PRESSURE);
        if (suction.isPresent()
                && liquid.isPresent()
                && !(suction.get().value().pascals() < liquid.get().value().pascals())) {
            throw new ImplausibleReadingException(
                    "suction pressure " + suction.get().value() + " is not below liquid pressure "
                            + liquid.get().value() + "; the compressor does not run, or the gauges are swapped",
                    Place.SUCTION_PRESSURE.path(),
                    Place.LIQUID_PRESSURE.path());
        }
    }

    private static void wetBulb(SystemReadings readings) {
        readings.temperature(Place.RETURN_WET_BULB)
                .ifPresent(wet -> readings.temperature(Place.RETURN_DRY_BULB).ifPresent(dry -> {
                    double excess = wet.value().kelvins() - dry.value().kelvins();
                    if (!(excess <= BEYOND * wet.budget().minus(dry.budget()).combined() + 0.05)) {
                        throw new ImplausibleReadingException(
                                "return wet bulb " + wet.value() + " is above dry bulb " + dry.value()
                                        + "; check the wick and which sensor is which",
                                Place.RETURN_WET_BULB.path(),
                                Place.RETURN_DRY_BULB.path());
                    }
                }));
    }

    /** Neither coil can stand on the wrong side of its air. */
    private void coils() {
        condensing.ifPresent(coil -> air(Place.OUTDOOR_AIR).ifPresent(air -> {
            if (isColder(coil.dewK(), air, coil.dewDoubtK())) {
                throw new ImplausibleReadingException(
                        "condensing temperature " + Temperature.ofKelvins(coil.dewK())
                                + " is below the air entering the condenser, " + air.value()
                                + "; no condenser rejects heat to warmer air: check the gauge, the probe and which refrigerant is in the system",
                        coil.field(),
                        Place.OUTDOOR_AIR.path());
            }
        }));
        evaporating.ifPresent(coil -> air(Place.RETURN_DRY_BULB).ifPresent(air -> {
            double doubtK = doubtK(coil.bubbleDoubtK(), air);
            if (!(coil.bubbleK() <= air.value().kelvins() + doubtK)) {
                throw new ImplausibleReadingException(
                        "evaporating temperature " + Temperature.ofKelvins(coil.bubbleK())
                                + " is above the return air, " + air.value()
                                + "; no evaporator cools with a warmer coil: check the gauge, the probe and which refrigerant is in the system",
                        coil.field(),
                        Place.RETURN_DRY_BULB.path());
            }
        }));
    }

    private void lines() {
        air(Place.LIQUID_LINE).ifPresent(line -> {
            air(Place.OUTDOOR_AIR).ifPresent(air -> {
                if (isColder(line.value().kelvins(), air, line.standardUncertainty())) {
                    throw new ImplausibleReadingException(
                            "liquid line " + line.value() + " is colder than the air entering the condenser, "
                                    + air.value()
                                    + "; no condenser cools below its air: check which clamp is on which line, and the probe in the air",
                            Place.LIQUID_LINE.path(),
                            Place.OUTDOOR_AIR.path());
                }
            });
            evaporating.ifPresent(coil -> {
                double doubtK = doubtK(coil.bubbleDoubtK(), line);
                if (!(line.value().kelvins() >= coil.bubbleK() - doubtK)) {
                    throw new ImplausibleReadingException(
                            "liquid line " + line.value() + " is colder than the evaporating temperature "
                                    + Temperature.ofKelvins(coil.bubbleK())
                                    + "; nothing ahead of the metering device is: check which clamp is on which line, and its unit",
                            Place.LIQUID_LINE.path(),
                            coil.field());
                }
            });
        });
        air(Place.DISCHARGE_LINE)
                .ifPresent(line -> condensing.ifPresent(coil -> {
                    double doubtK = doubtK(coil.bubbleDoubtK(), line);
                    if (!(line.value().kelvins() >= coil.bubbleK() - doubtK)) {
                        throw new ImplausibleReadingException(
                                "discharge line " + line.value() + " is colder than the condensing temperature "
                                        + Temperature.ofKelvins(coil.bubbleK())
                                        + "; a compressor does not cool its gas: check which clamp is on which line, and the gauge",
                                Place.DISCHARGE_LINE.path(),
                                coil.field());
                    }
                }));
        air(Place.SUCTION_LINE).ifPresent(this::suctionLine);
    }

    /** An evaporator warms its vapour to its air at most; beyond that only the air along the line can. */
    private void suctionLine(Reading<Temperature> line) {
        Optional<Reading<Temperature>> returned = air(Place.RETURN_DRY_BULB);
        Optional<Reading<Temperature>> outdoor = air(Place.OUTDOOR_AIR);
        if (returned.isEmpty() || outdoor.isEmpty()) {
            return;
        }
        Reading<Temperature> warmer =
                returned.get().value().kelvins() > outdoor.get().value().kelvins() ? returned.get() : outdoor.get();
        if (!(line.value().kelvins() <= warmer.value().kelvins() + doubtK(line.standardUncertainty(), warmer))) {
            throw new ImplausibleReadingException(
                    "suction line " + line.value() + " is warmer than return air, "
                            + returned.get().value() + ", and outdoor air, "
                            + outdoor.get().value()
                            + "; nothing warms it that far: check which clamp is on which line, and its unit",
                    Place.SUCTION_LINE.path(),
                    Place.RETURN_DRY_BULB.path());
        }
    }

    private void margins(Margins margins) {
        margins.superheat().ifPresent(m -> {
            double doubtK = ALLOWANCE_K + BEYOND * m.standardUncertaintyK();
            if (!(m.value().kelvins() >= -doubtK)) {
                throw new ImplausibleReadingException(
                        "suction line is " + m.value().negated() + " colder than the dew point at its pressure, "
                                + m.saturation() + ", more than the " + TemperatureDifference.ofKelvins(doubtK)
                                + " of doubt allow; check the clamp, the gauge and which refrigerant is in the system",
                        Place.SUCTION_LINE.path(),
                        Place.SUCTION_PRESSURE.path());
            }
        });
        margins.subcooling().ifPresent(m -> {
            Pressure pressure =
                    readings.pressure(Place.LIQUID_PRESSURE).orElseThrow().value();
            // no liquid is that warm; a mixture with vapour is, up to the dew point: the system is short of refrigerant
            double doubtK =
                    CURVE_K + curve.glide(pressure).kelvins() + m.budget().expanded();
            if (!(m.value().kelvins() >= -doubtK)) {
                throw new ImplausibleReadingException(
                        "liquid line is " + m.value().negated() + " warmer than the bubble point at its pressure, "
                                + m.saturation() + ", more than the " + TemperatureDifference.ofKelvins(doubtK)
                                + " of doubt allow; check the clamp, the gauge, whether hot gas reaches the liquid port, "
                                + "and which refrigerant is in the system",
                        Place.LIQUID_LINE.path(),
                        Place.LIQUID_PRESSURE.path());
            }
        });
    }

    /** A condenser cools its liquid to its air at most, an evaporator warms its vapour to its air at most. */
    private void target(Criterion judged, Optional<TemperatureDifference> target) {
        boolean subcooled = judged == Criterion.SUBCOOLING;
        Optional<Coil> coil = subcooled ? condensing : evaporating;
        Place place = subcooled ? Place.OUTDOOR_AIR : Place.RETURN_DRY_BULB;
        if (target.isEmpty() || coil.isEmpty()) {
            return;
        }
        air(place).ifPresent(air -> {
            double most = subcooled
                    ? coil.get().bubbleK() - air.value().kelvins()
                    : air.value().kelvins() - coil.get().dewK();
            double doubtK =
                    doubtK(subcooled ? coil.get().bubbleDoubtK() : coil.get().dewDoubtK(), air);
            if (!(target.get().kelvins() <= most + doubtK)) {
                throw new ImplausibleReadingException(
                        "target " + judged.label() + " " + target.get()
                                + " is more than saturation and air allow here, "
                                + TemperatureDifference.ofKelvins(most)
                                + "; read the plate again, and mind degC and degF",
                        subcooled ? "system.targetSubcooling" : "system.targetSuperheat",
                        coil.get().field(),
                        place.path());
            }
        });
    }

    private Optional<Reading<Temperature>> air(Place place) {
        return readings.temperature(place);
    }

    private static double doubtK(double standardUncertaintyK, Reading<Temperature> other) {
        return ALLOWANCE_K + BEYOND * Math.hypot(standardUncertaintyK, other.standardUncertainty());
    }

    private static boolean isColder(double kelvins, Reading<Temperature> air, double standardUncertaintyK) {
        return !(kelvins >= air.value().kelvins() - doubtK(standardUncertaintyK, air));
    }
}
