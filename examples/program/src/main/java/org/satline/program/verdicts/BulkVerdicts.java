package org.satline.program.verdicts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import org.satline.charge.ChargeDiagnosis;
import org.satline.charge.ChargeQuestion;
import org.satline.charge.Criterion;
import org.satline.charge.Diagnosis;
import org.satline.charge.MeteringDevice;
import org.satline.charge.OperatingConditions;
import org.satline.charge.Symptom;
import org.satline.measurement.SystemReadings;
import org.satline.equilibrium.ConvergenceException;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.PressureReading;
import org.satline.measurement.StandardUncertainty;
import org.satline.measurement.TemperatureReading;
import org.satline.measurement.ThermometerClass;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;

/**
 * Diagnoses many rows of readings, each on its own: a bad row gets the level {@code refused} and a note, the others go on. Immutable,
 * thread-safe if the supplier of curves is.
 *
 * <p>Each reading has its own error of the stated size. Where a row states no uncertainty, the permitted errors of the California Energy Code,
 * Reference Appendix RA3.2 (gauges 2013, thermometers 2008) are taken, and the note says so.
 */
public final class BulkVerdicts {
    private final Function<String, SaturationCurve> curves;
    private final ChargeDiagnosis diagnosis;

    /**
     * Prepares.
     *
     * @param curves finds the saturation curve of a designation; throws IllegalArgumentException for an unknown one; called once per row, so that
     *     it pays to remember curves
     * @param diagnosis rule and expectations
     */
    public BulkVerdicts(Function<String, SaturationCurve> curves, ChargeDiagnosis diagnosis) {
        this.curves = Objects.requireNonNull(curves, "curves");
        this.diagnosis = Objects.requireNonNull(diagnosis, "diagnosis");
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
                difference(orifice ? query.targetSuperheatK() : query.targetSubcoolingK()),
                difference(query.toleranceK()));
        OperatingConditions conditions = query.outdoorMinimumMet()
                .map(met -> OperatingConditions.unknown().withOutdoorMinimumMet(met))
                .orElseGet(OperatingConditions::unknown);
        Diagnosis found = expecting(
                        orifice ? Symptom.SUBCOOLING : Symptom.SUPERHEAT,
                        orifice ? query.targetSubcoolingK() : query.targetSuperheatK())
                .of(curve, readings(query), question, conditions);
        return VerdictAnswer.of(query.id(), criterion, found, note(query, found, curve));
    }

    /** A target for the quantity that is not judged tells what it should be in a sound system. */
    private ChargeDiagnosis expecting(Symptom symptom, OptionalDouble kelvins) {
        return kelvins.isEmpty()
                ? diagnosis
                : new ChargeDiagnosis(
                        diagnosis.rule(), diagnosis.expectations().with(symptom, kelvins.getAsDouble(), 1));
    }

    private static SystemReadings readings(VerdictQuery query) {
        SystemReadings.Builder builder = SystemReadings.builder();
        pressure(
                query,
                query.suctionPressurePa(),
                "suction gauge",
                DigitalGauge.ra32SuctionLine(),
                builder::suctionPressure);
        pressure(
                query,
                query.liquidPressurePa(),
                "liquid gauge",
                DigitalGauge.ra32LiquidLine(),
                builder::liquidPressure);
        temperature(query, query.suctionLineK(), "suction-line thermometer", builder::suctionLine);
        temperature(query, query.liquidLineK(), "liquid-line thermometer", builder::liquidLine);
        temperature(query, query.returnWetBulbK(), "return wet-bulb thermometer", builder::returnWetBulb);
        temperature(query, query.returnDryBulbK(), "return dry-bulb thermometer", builder::returnDryBulb);
        temperature(query, query.supplyDryBulbK(), "supply dry-bulb thermometer", builder::supplyDryBulb);
        temperature(query, query.condenserAirK(), "condenser-air thermometer", builder::condenserAir);
        temperature(query, query.dischargeLineK(), "discharge-line thermometer", builder::dischargeLine);
        return builder.build();
    }

    private static void pressure(
            VerdictQuery query,
            OptionalDouble pascals,
            String origin,
            DigitalGauge assumed,
            Consumer<PressureReading> into) {
        pascals.ifPresent(pa -> into.accept(PressureReading.of(
                Pressure.ofPascals(pa),
                query.pressureStandardUncertaintyPa()
                        .orElseGet(() -> StandardUncertainty.ofLimits(assumed.permittedError(GaugePressure.ofPascals(0))
                                .pascals())),
                origin)));
    }

    private static void temperature(
            VerdictQuery query, OptionalDouble kelvins, String origin, Consumer<TemperatureReading> into) {
        kelvins.ifPresent(k -> {
            Temperature value = Temperature.ofKelvins(k);
            into.accept(TemperatureReading.of(
                    value,
                    query.temperatureStandardUncertaintyK()
                            .orElseGet(() -> StandardUncertainty.ofLimits(
                                    ThermometerClass.named("california-ra3.2").permittedErrorK(value))),
                    origin));
        });
    }

    private static Optional<TemperatureDifference> difference(OptionalDouble kelvins) {
        return kelvins.stream().mapToObj(TemperatureDifference::ofKelvins).findFirst();
    }

    private static String note(VerdictQuery query, Diagnosis found, SaturationCurve curve) {
        List<String> parts = new ArrayList<>(found.evidence().reasons());
        if (!(found instanceof Diagnosis.Decided)) {
            parts.add(found.evidence().advice());
        }
        if (query.pressureStandardUncertaintyPa().isEmpty()
                || query.temperatureStandardUncertaintyK().isEmpty()) {
            parts.add("uncertainty not stated: permitted errors of RA3.2 taken");
        }
        parts.addAll(curve.warnings());
        return String.join("; ", parts);
    }
}
