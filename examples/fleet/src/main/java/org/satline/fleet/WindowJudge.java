package org.satline.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.charge.belief.ChargeEstimate;
import org.satline.charge.margin.Margins;
import org.satline.fleet.ModelKnowledge.Expected;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SettlingTest;
import org.satline.measurement.SystemReadings;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.saturation.BulkAnswers;
import org.satline.saturation.ElementStatus;
import org.satline.saturation.SaturationCurve;

/**
 * From the readings of a window to what it says: superheat and subcooling in bulk, the settling test, the estimate of
 * the charge, the verdict. Stateless.
 */
public final class WindowJudge {
    private static final double ZERO_CELSIUS_K = Temperature.ofCelsius(0).kelvins();

    /** Ten of the fifteen minutes stand still, as the library's own test asks of superheat and subcooling. */
    private static final SettlingTest SETTLING = new SettlingTest(540, 0.06, 0.3, 8);
    /** A compressor that runs keeps the pressures apart at least by this ratio; common practice, no source. */
    private static final double LEAST_RATIO = 1.3;
    /**
     * How far a coil may stand from what the model does; a leak lowers the condensing temperature, other faults raise
     * it; our choice, K.
     */
    private static final double COLDER_CONDENSING = 6,
            HOTTER_CONDENSING = 1.2,
            COLDER_EVAPORATING = 2,
            HOTTER_EVAPORATING = 1.2;
    /** Standard uncertainties of the sensors, Pa and K; our choice, of the order of installed sensors. */
    static final double PRESSURE_PA = 8000, TEMPERATURE_K = 0.3;

    private WindowJudge() {}

    /**
     * Judges a window.
     *
     * @param window its readings
     * @return what it says; nothing where the unit did not run or did not stand still
     */
    public static Optional<SettledWindow> judge(WindowReadings window) {
        if (window.count() < SETTLING.fewestReadings()) {
            return Optional.empty();
        }
        float[] means = means(window);
        if (!runs(means)) {
            return Optional.empty();
        }
        SaturationCurve curve = ModelKnowledge.of(window.model).curve();
        Optional<double[][]> margins = margins(curve, window);
        if (margins.isEmpty()) {
            return Optional.of(implausible(window));
        }
        if (!stands(window, margins.get()[0]) || !stands(window, margins.get()[1])) {
            return Optional.empty();
        }
        SystemReadings readings = readings(means);
        SettledWindow said = evidence(window.unit, window.model, window.start, means, readings);
        said.readings = window.count();
        WindowVerdict.give(said, readings, means);
        return Optional.of(said);
    }

    /**
     * Everything but the verdict, from means of a window that stood still.
     *
     * @param unit number of the unit
     * @param model its model
     * @param start begin of the window, s since 1970
     * @param means of the channels
     * @return superheat, subcooling and the estimate of the charge
     */
    static SettledWindow evidence(long unit, UnitModel model, long start, float[] means) {
        return evidence(unit, model, start, means, readings(means));
    }

    private static SettledWindow evidence(
            long unit, UnitModel model, long start, float[] means, SystemReadings readings) {
        ModelKnowledge knowledge = ModelKnowledge.of(model);
        Margins margins = Margins.of(knowledge.curve(), readings);
        double outdoorC = of(means, Channel.OUTDOOR_C);
        Expected rated = knowledge.expected(outdoorC, of(means, Channel.RETURN_WET_BULB_C));
        SettledWindow said = new SettledWindow();
        said.unit = unit;
        said.model = model;
        said.start = start;
        said.outdoorC = outdoorC;
        said.superheatK = margins.superheat().orElseThrow().value().kelvins();
        said.subcoolingK = margins.subcooling().orElseThrow().value().kelvins();
        said.chargeError = ChargeEstimate.of(
                        margins.superheat().orElseThrow(),
                        rated.superheatK(),
                        margins.subcooling().orElseThrow(),
                        rated.subcoolingK(),
                        knowledge.constants())
                .fraction();
        double condensing = margins.subcooling().orElseThrow().saturation().kelvins() - rated.condensingK();
        double evaporating = margins.superheat().orElseThrow().saturation().kelvins() - rated.evaporatingK();
        said.alike = condensing > -COLDER_CONDENSING
                && condensing < HOTTER_CONDENSING
                && evaporating > -COLDER_EVAPORATING
                && evaporating < HOTTER_EVAPORATING;
        return said;
    }

    /** Superheat and subcooling of each reading, in bulk; nothing where one has none. */
    private static Optional<double[][]> margins(SaturationCurve curve, WindowReadings window) {
        int n = window.count();
        BulkAnswers superheats = curve.superheats(
                column(window, Channel.SUCTION_KPA, 1000, 0),
                column(window, Channel.SUCTION_LINE_C, 1, ZERO_CELSIUS_K));
        BulkAnswers subcoolings = curve.subcoolings(
                column(window, Channel.LIQUID_KPA, 1000, 0), column(window, Channel.LIQUID_LINE_C, 1, ZERO_CELSIUS_K));
        boolean all = superheats.count(ElementStatus.ANSWERED) == n && subcoolings.count(ElementStatus.ANSWERED) == n;
        return all
                ? Optional.of(new double[][] {superheats.values(Double.NaN), subcoolings.values(Double.NaN)})
                : Optional.empty();
    }

    private static double[] column(WindowReadings window, Channel channel, double factor, double plus) {
        double[] column = new double[window.count()];
        int i = 0;
        for (int minute = 0; minute < WindowReadings.MINUTES; minute++) {
            if (window.has(minute)) {
                column[i++] = factor * window.value(minute, channel) + plus;
            }
        }
        return column;
    }

    private static boolean stands(WindowReadings window, double[] kelvins) {
        List<SettlingTest.Sample> series = new ArrayList<>(kelvins.length);
        for (int minute = 0; minute < WindowReadings.MINUTES; minute++) {
            if (window.has(minute)) {
                series.add(new SettlingTest.Sample(60.0 * minute, kelvins[series.size()]));
            }
        }
        return SETTLING.apply(series) instanceof SettlingTest.Settled;
    }

    private static boolean runs(float[] means) {
        return of(means, Channel.LIQUID_KPA) > LEAST_RATIO * of(means, Channel.SUCTION_KPA);
    }

    private static SettledWindow implausible(WindowReadings window) {
        SettledWindow said = new SettledWindow();
        said.unit = window.unit;
        said.model = window.model;
        said.start = window.start;
        said.readings = window.count();
        said.outcome = Outcome.IMPLAUSIBLE;
        said.cause = Cause.SENSOR;
        said.probability = 1;
        said.causeProbability = 1;
        return said;
    }

    /** Means of the channels, summed in the order of time. */
    private static float[] means(WindowReadings window) {
        double[] sums = new double[Channel.COUNT];
        for (int minute = 0; minute < WindowReadings.MINUTES; minute++) {
            for (int c = 0; window.has(minute) && c < Channel.COUNT; c++) {
                sums[c] += window.values[minute * Channel.COUNT + c];
            }
        }
        float[] means = new float[Channel.COUNT];
        for (int c = 0; c < Channel.COUNT; c++) {
            means[c] = (float) (sums[c] / window.count());
        }
        return means;
    }

    private static SystemReadings readings(float[] means) {
        return SystemReadings.builder()
                .suction(pressure(means, Channel.SUCTION_KPA), line(means, Channel.SUCTION_LINE_C))
                .liquid(pressure(means, Channel.LIQUID_KPA), line(means, Channel.LIQUID_LINE_C))
                .put(Place.DISCHARGE_LINE, line(means, Channel.DISCHARGE_LINE_C))
                .put(Place.RETURN_DRY_BULB, line(means, Channel.RETURN_DRY_BULB_C))
                .put(Place.RETURN_WET_BULB, line(means, Channel.RETURN_WET_BULB_C))
                .put(Place.SUPPLY_DRY_BULB, line(means, Channel.SUPPLY_DRY_BULB_C))
                .put(Place.OUTDOOR_AIR, line(means, Channel.OUTDOOR_C))
                .build();
    }

    private static Reading<Pressure> pressure(float[] means, Channel channel) {
        double pascals = 1000 * of(means, channel);
        return Reading.of(Pressure.ofPascals(pascals), PRESSURE_PA, channel.name());
    }

    private static Reading<Temperature> line(float[] means, Channel channel) {
        return Reading.of(Temperature.ofCelsius(of(means, channel)), TEMPERATURE_K, channel.name());
    }

    static double of(float[] means, Channel channel) {
        return means[channel.index()];
    }
}
