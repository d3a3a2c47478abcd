package org.satline.program.verdicts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.satline.charge.ChargeCase;
import org.satline.charge.ChargeJudge;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Gate;
import org.satline.charge.Judgement;
import org.satline.charge.OperatingConditions;
import org.satline.charge.belief.Symptom;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.MeteringDevice;
import org.satline.equilibrium.ConvergenceException;
import org.satline.explanation.Figure;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.StandardUncertainty;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.ThermometerClass;
import org.satline.program.verdicts.VerdictQuery.Cell;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.quantity.UnitSystem;
import org.satline.saturation.SaturationCurve;
import org.satline.wording.Language;
import org.satline.wording.Wording;

/**
 * Judges many rows of readings, each on its own: a bad row gets the level {@code refused} and a note, the others go on. Immutable,
 * thread-safe if the supplier of curves is.
 *
 * <p>Each reading has its own error of the stated size. Where a row states no uncertainty, the permitted errors of the California Energy
 * Code, Reference Appendix RA3.2 (gauges 2013, thermometers 2008) are taken, and the note says so.
 */
public final class BulkVerdicts {
    private static final Wording WORDING = Wording.of(Language.ENGLISH, UnitSystem.SI);

    private final Function<String, SaturationCurve> curves;
    private final ChargeJudge judge;

    /**
     * Prepares.
     *
     * @param curves finds the saturation curve of a designation; throws IllegalArgumentException for an unknown one; called once per row,
     *     so that it pays to remember curves
     * @param judge risks and expectations
     */
    public BulkVerdicts(Function<String, SaturationCurve> curves, ChargeJudge judge) {
        this.curves = Objects.requireNonNull(curves, "curves");
        this.judge = Objects.requireNonNull(judge, "judge");
    }

    /**
     * Answers one row.
     *
     * @param query the row
     * @return the answer; level {@code refused} with the reason in the note if the row is broken or physically impossible
     */
    public VerdictAnswer answer(VerdictQuery query) {
        Objects.requireNonNull(query, "query");
        try {
            return answered(query);
        } catch (IllegalArgumentException | ConvergenceException refused) {
            return VerdictAnswer.refused(query.id(), String.valueOf(refused.getMessage()));
        }
    }

    private VerdictAnswer answered(VerdictQuery query) {
        MeteringDevice metering = MeteringDevice.ofLabel(query.metering());
        SaturationCurve curve = curves.apply(query.refrigerant());
        Criterion criterion = metering.judgedBy();
        boolean orifice = criterion == Criterion.SUPERHEAT;
        ChargeQuestion question = new ChargeQuestion(
                metering,
                difference(orifice ? query.get(Cell.TARGET_SUPERHEAT) : query.get(Cell.TARGET_SUBCOOLING)),
                difference(query.get(Cell.TOLERANCE)));
        OperatingConditions conditions = query.outdoorMinimumMet()
                .map(met -> OperatingConditions.unknown().withOutdoorMinimumMet(met))
                .orElseGet(OperatingConditions::unknown);
        Judgement found = expecting(
                        orifice ? Symptom.SUBCOOLING : Symptom.SUPERHEAT,
                        orifice ? query.get(Cell.TARGET_SUBCOOLING) : query.get(Cell.TARGET_SUPERHEAT))
                .judge(new ChargeCase(curve, readings(query), question, conditions));
        return VerdictAnswer.of(query.id(), criterion, found, note(query, found, curve));
    }

    /** A target for the quantity that is not judged tells what it should be in a sound system. */
    private ChargeJudge expecting(Symptom symptom, OptionalDouble kelvins) {
        return kelvins.isEmpty() ? judge : judge.expecting(symptom, kelvins.getAsDouble(), 1);
    }

    private static SystemReadings readings(VerdictQuery query) {
        SystemReadings.Builder builder = SystemReadings.builder();
        pressure(query, query.get(Cell.SUCTION_PRESSURE), "suction gauge", DigitalGauge.ra32SuctionLine())
                .ifPresent(reading -> builder.put(Place.SUCTION_PRESSURE, reading));
        pressure(query, query.get(Cell.LIQUID_PRESSURE), "liquid gauge", DigitalGauge.ra32LiquidLine())
                .ifPresent(reading -> builder.put(Place.LIQUID_PRESSURE, reading));
        temperature(query, query.get(Cell.SUCTION_LINE), Place.SUCTION_LINE, "suction-line thermometer", builder);
        temperature(query, query.get(Cell.LIQUID_LINE), Place.LIQUID_LINE, "liquid-line thermometer", builder);
        temperature(
                query, query.get(Cell.RETURN_WET_BULB), Place.RETURN_WET_BULB, "return wet-bulb thermometer", builder);
        temperature(
                query, query.get(Cell.RETURN_DRY_BULB), Place.RETURN_DRY_BULB, "return dry-bulb thermometer", builder);
        temperature(
                query, query.get(Cell.SUPPLY_DRY_BULB), Place.SUPPLY_DRY_BULB, "supply dry-bulb thermometer", builder);
        temperature(query, query.get(Cell.CONDENSER_AIR), Place.OUTDOOR_AIR, "condenser-air thermometer", builder);
        temperature(query, query.get(Cell.DISCHARGE_LINE), Place.DISCHARGE_LINE, "discharge-line thermometer", builder);
        return builder.build();
    }

    private static Optional<Reading<Pressure>> pressure(
            VerdictQuery query, OptionalDouble pascals, String origin, DigitalGauge assumed) {
        return pascals.stream()
                .mapToObj(pa -> Reading.of(
                        Pressure.ofPascals(pa),
                        query.get(Cell.PRESSURE_UNCERTAINTY)
                                .orElseGet(() ->
                                        StandardUncertainty.ofLimits(assumed.permittedError(GaugePressure.ofPascals(0))
                                                .pascals())),
                        origin))
                .findFirst();
    }

    private static void temperature(
            VerdictQuery query, OptionalDouble kelvins, Place place, String origin, SystemReadings.Builder into) {
        kelvins.ifPresent(k -> {
            Temperature value = Temperature.ofKelvins(k);
            into.put(
                    place,
                    Reading.of(
                            value,
                            query.get(Cell.TEMPERATURE_UNCERTAINTY)
                                    .orElseGet(() ->
                                            StandardUncertainty.ofLimits(ThermometerClass.named("california-ra3.2")
                                                    .permittedErrorK(value))),
                            origin));
        });
    }

    private static Optional<TemperatureDifference> difference(OptionalDouble kelvins) {
        return kelvins.stream().mapToObj(TemperatureDifference::ofKelvins).findFirst();
    }

    /** What is found, the condition in the way with its figures, and what to do about another fault. */
    private static String note(VerdictQuery query, Judgement found, SaturationCurve curve) {
        List<String> parts = new ArrayList<>();
        found.evidence().findings().forEach(finding -> parts.add(WORDING.of(finding)));
        found.evidence().gates().stream()
                .filter(gate -> gate.state() == Gate.State.NOT_MET && !(found instanceof Judgement.Decided))
                .forEach(gate ->
                        parts.add(WORDING.message(gate.textKey(), gate.figures().toArray(Figure[]::new))));
        if (found instanceof Judgement.OtherFault other) {
            parts.add(WORDING.message("charge.faultAdvice." + other.fault().word()));
        }
        if (query.get(Cell.PRESSURE_UNCERTAINTY).isEmpty()
                || query.get(Cell.TEMPERATURE_UNCERTAINTY).isEmpty()) {
            parts.add("uncertainty not stated: permitted errors of RA3.2 taken");
        }
        curve.warnings().forEach(warning -> parts.add(WORDING.of(warning)));
        return String.join("; ", parts);
    }
}
