package org.satline.program.question;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.charge.margin.Criterion;
import org.satline.charge.margin.LineMargin;
import org.satline.charge.margin.Margins;
import org.satline.explanation.Figure;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.Place;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.Thermometer;
import org.satline.measurement.ThermometerClass;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;
import org.satline.saturation.SaturationCurve;
import org.satline.wording.Wording;

/** Superheat or subcooling of one pressure and one line temperature. Stateless, thread-safe. */
public final class MarginQuestion {
    /** Limits of error where no instrument is named: a clamp without insulation reads this much off; common practice, no source. */
    private static final double PIPE_CONTACT_K = 0.5;

    private static final Thermometer CLAMP =
            new Thermometer("pipe clamp", ThermometerClass.named("thermocouple-k-class-1"), 0.1);

    private MarginQuestion() {}

    /**
     * Answers.
     *
     * @param criterion which of the two
     * @param curve of the refrigerant
     * @param gauge the pressure at the port
     * @param line temperature of the line at the port
     * @param air in which the gauge was read
     * @param wording words and units
     * @return the margin with its uncertainty
     * @throws org.satline.quantity.OutOfValidityException if the pressure is outside the saturation line
     */
    public static Reply of(
            Criterion criterion,
            SaturationCurve curve,
            GaugePressure gauge,
            Temperature line,
            Atmosphere air,
            Wording wording) {
        boolean superheat = criterion == Criterion.SUPERHEAT;
        DigitalGauge instrument = superheat ? DigitalGauge.ra32SuctionLine() : DigitalGauge.ra32LiquidLine();
        Place pressureAt = superheat ? Place.SUCTION_PRESSURE : Place.LIQUID_PRESSURE;
        Place lineAt = superheat ? Place.SUCTION_LINE : Place.LIQUID_LINE;
        SystemReadings readings = SystemReadings.builder()
                .put(pressureAt, instrument.read(gauge, air))
                .put(lineAt, CLAMP.readOnPipe(line, lineAt.field(), PIPE_CONTACT_K))
                .build();
        LineMargin margin = Margins.of(curve, readings).get(criterion).orElseThrow();
        TemperatureDifference expanded =
                TemperatureDifference.ofKelvins(margin.budget().expanded());
        Map<String, Quantity<?>> numbers = new LinkedHashMap<>();
        numbers.put(superheat ? "superheat" : "subcooling", margin.value());
        numbers.put("expandedUncertainty", expanded);
        numbers.put("saturation", margin.saturation());
        numbers.put("pressure", Pressure.ofGauge(gauge, air));
        String lead = wording.name(criterion) + ": " + wording.numbers().within(margin.value(), expanded) + ", k = 2";
        List<String> notes = new ArrayList<>();
        if (margin.value().kelvins() < -expanded.kelvins()) {
            notes.add(wording.message(superheat ? "reply.margin.superheatBelow" : "reply.margin.subcoolingBelow"));
        } else if (margin.value().kelvins() < expanded.kelvins()) {
            notes.add(wording.message(superheat ? "reply.margin.superheatZero" : "reply.margin.subcoolingZero"));
        }
        notes.add(wording.message("reply.margin.instruments", Figure.of("error", instrument.fixed())));
        notes.add(Asked.told(air, wording));
        curve.warnings().forEach(warning -> notes.add(wording.of(warning)));
        return new Reply(
                true,
                List.of(lead),
                numbers,
                Map.of("refrigerant", curve.refrigerant().designation()),
                margin.steps(),
                notes);
    }
}
