package org.satline.charge.belief;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.Margins;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Temperature;
import org.satline.saturation.SaturationCurve;

/** All that the readings say, as clues with the errors that they share. */
final class Clues {
    /** Superheat at a valve and subcooling at an orifice count from here, K; common practice, no source. */
    static final double USUAL_OTHER_K = 6;
    /** A discharge clue farther off than this is a wet suction or a wrong probe; it is held there, K. */
    private static final double FARTHEST_DISCHARGE_K = 60;
    /** So is one at rest. */
    private static final double FARTHEST_REST_K = 15;

    private final Map<Symptom, Clued> clues = new EnumMap<>(Symptom.class);
    private final Map<Symptom, Weighed.Expected> sound = new EnumMap<>(Symptom.class);
    private final Map<Around, Clued> around = new EnumMap<>(Around.class);

    /** A value with the errors in it, K. */
    record Clued(double kelvins, UncertaintyBudget budget) {}

    private Clues() {}

    /**
     * Takes the clues.
     *
     */
    static Clues of(Weighed.Observed it) {
        Clues clues = new Clues();
        Criterion judged = it.metering().judgedBy();
        it.deviation().ifPresent(off -> {
            clues.around.put(Around.TARGET, new Clued(off.target().kelvins(), it.targetBudget()));
            clues.put(clue(judged), off.value().kelvins(), off.budget());
        });
        clues.air(it.readings(), Around.OUTDOOR, Place.OUTDOOR_AIR);
        clues.air(it.readings(), Around.WET_BULB, Place.RETURN_WET_BULB);
        clues.air(it.readings(), Around.DRY_BULB, Place.RETURN_DRY_BULB);
        Criterion other = judged == Criterion.SUPERHEAT ? Criterion.SUBCOOLING : Criterion.SUPERHEAT;
        it.margins().get(other).ifPresent(m -> clues.put(clue(other), m.value().kelvins() - USUAL_OTHER_K, m.budget()));
        clues.coils(it.curve(), it.readings());
        clues.discharge(it.curve(), it.readings());
        it.readings()
                .temperature(Place.RETURN_DRY_BULB)
                .ifPresent(returned -> it.readings()
                        .temperature(Place.SUPPLY_DRY_BULB)
                        .ifPresent(supply -> clues.put(
                                Symptom.EVAPORATOR_AIR_DROP,
                                returned.value().minus(supply.value()).kelvins(),
                                returned.budget().minus(supply.budget()))));
        it.rest()
                .ifPresent(rest -> clues.put(
                        Symptom.AT_REST,
                        Math.max(-FARTHEST_REST_K, Math.min(FARTHEST_REST_K, rest.excessK())),
                        rest.budget()));
        it.sound().forEach((symptom, known) -> clues.expect(it, symptom, known, judged));
        return clues;
    }

    /** The fault-free value in the terms of the clue. */
    private void expect(Weighed.Observed it, Symptom symptom, Weighed.Expected known, Criterion judged) {
        Optional<Clued> clued = get(symptom);
        if (clued.isEmpty()) {
            return;
        }
        double kelvins = known.kelvins();
        double inTerms = switch (symptom) {
            case SUPERHEAT, SUBCOOLING ->
                kelvins
                        - it.deviation()
                                .filter(off -> symptom == clue(judged))
                                .map(off -> off.target().kelvins())
                                .orElse(USUAL_OTHER_K);
            case EVAPORATING -> kelvins + around(Around.DRY_BULB).kelvins();
            case DISCHARGE ->
                clued.get().kelvins()
                        - it.readings()
                                .temperature(Place.DISCHARGE_LINE)
                                .map(line -> line.value().celsius())
                                .orElseThrow()
                        + kelvins;
            case CONDENSING, EVAPORATOR_AIR_DROP, AT_REST -> kelvins;
        };
        sound.put(symptom, new Weighed.Expected(inTerms, known.standardUncertaintyK()));
    }

    /** What the clue is while nothing is wrong, where that is known of the unit. */
    Optional<Weighed.Expected> sound(Symptom symptom) {
        return Optional.ofNullable(sound.get(symptom));
    }

    Optional<Clued> get(Symptom clue) {
        return Optional.ofNullable(clues.get(clue));
    }

    /** What it is, or what it usually is with the doubt of not having read it. */
    Clued around(Around what) {
        Clued read = around.get(what);
        return read != null
                ? read
                : new Clued(what.usual(), UncertaintyBudget.of("not read: " + what.name(), what.doubt()));
    }

    private void put(Symptom clue, double kelvins, UncertaintyBudget budget) {
        if (Double.isFinite(kelvins)) {
            clues.put(clue, new Clued(kelvins, budget));
        }
    }

    private void air(SystemReadings readings, Around what, Place place) {
        readings.temperature(place)
                .ifPresent(read -> around.put(what, new Clued(read.value().celsius(), read.budget())));
    }

    private static Symptom clue(Criterion criterion) {
        return criterion == Criterion.SUPERHEAT ? Symptom.SUPERHEAT : Symptom.SUBCOOLING;
    }

    private void coils(SaturationCurve curve, SystemReadings readings) {
        readings.pressure(Place.SUCTION_PRESSURE).ifPresent(p -> {
            double pa = p.value().pascals();
            put(
                    Symptom.EVAPORATING,
                    curve.dewTemperatureK(pa) - Temperature.ofCelsius(0).kelvins(),
                    p.budget().scaled(Margins.dewSlope(curve, pa)));
        });
        readings.pressure(Place.LIQUID_PRESSURE)
                .ifPresent(p -> readings.temperature(Place.OUTDOOR_AIR).ifPresent(air -> {
                    double pa = p.value().pascals();
                    put(
                            Symptom.CONDENSING,
                            curve.bubbleTemperatureK(pa) - air.value().kelvins(),
                            p.budget().scaled(Margins.bubbleSlope(curve, pa)).minus(air.budget()));
                }));
    }

    /**
     * Ideal gas with the heat capacity at the dew line: near enough for a clue whose spread over compressors is many
     * kelvins.
     */
    private void discharge(SaturationCurve curve, SystemReadings readings) {
        Optional<Reading<Temperature>> hot = readings.temperature(Place.DISCHARGE_LINE);
        Optional<Reading<Temperature>> suction = readings.temperature(Place.SUCTION_LINE);
        var low = readings.pressure(Place.SUCTION_PRESSURE);
        var high = readings.pressure(Place.LIQUID_PRESSURE);
        if (hot.isEmpty() || suction.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return;
        }
        double lowPa = low.get().value().pascals();
        double highPa = high.get().value().pascals();
        double te = curve.dewTemperatureK(lowPa);
        double tc = curve.bubbleTemperatureK(highPa);
        if (!(tc < curve.dewTemperatureRange().high()
                && te < curve.dewTemperatureRange().high())) {
            return;
        }
        double heat = curve.dewVapourIsobaricHeatCapacity(tc);
        double rise = curve.dewVapourEntropy(te)
                + curve.dewVapourIsobaricHeatCapacity(te)
                        * Math.log(suction.get().value().kelvins() / te)
                - curve.dewVapourEntropy(tc);
        double ideal = tc * Math.exp(rise / heat);
        double off = hot.get().value().kelvins() - ideal;
        UncertaintyBudget pressures = high.get()
                .budget()
                .scaled(Margins.bubbleSlope(curve, highPa))
                .minus(low.get().budget().scaled(Margins.dewSlope(curve, lowPa)));
        put(
                Symptom.DISCHARGE,
                Math.max(-FARTHEST_DISCHARGE_K, Math.min(FARTHEST_DISCHARGE_K, off)),
                hot.get().budget().minus(suction.get().budget()).minus(pressures));
    }
}
