package org.satline.program.visit;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.satline.measurement.DialGauge;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.GaugeClass;
import org.satline.measurement.PressureInstrument;
import org.satline.measurement.Thermometer;
import org.satline.measurement.ThermometerClass;
import org.satline.measurement.WeighingScale;
import org.satline.program.file.JsonFields;
import org.satline.program.file.Shown;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.TemperatureDifference;

/** Reads the part {@code instruments} of the file: what the readings were taken with, and so how far they can be trusted. */
final class InstrumentReader {
    private static final List<String> GAUGE =
            List.of("name", "percentOfReading", "limitOfError", "accuracyClass", "scaleFrom", "scaleTo");
    private static final List<String> THERMOMETER = List.of("name", "accuracyClass", "resolution", "pipeContact");
    private static final List<String> SCALE = List.of("name", "resolution", "percentOfReading");

    /** Names of the fields. */
    static final List<String> FIELDS = List.of("suctionGauge", "liquidGauge", "thermometer", "scale");

    /**
     * The instruments of a visit.
     *
     * @param suctionGauge gauge on the low side
     * @param liquidGauge gauge on the high side
     * @param thermometer for all temperatures
     * @param pipeContactK limit of the contact error of a clamp on a pipe, K
     * @param scale under the cylinder
     */
    record Instruments(
            PressureInstrument suctionGauge,
            PressureInstrument liquidGauge,
            Thermometer thermometer,
            double pipeContactK,
            Optional<WeighingScale> scale) {}

    private InstrumentReader() {}

    static Instruments read(JsonFields fields) {
        JsonFields thermometer = fields.object("thermometer", THERMOMETER);
        return new Instruments(
                gauge(fields.object("suctionGauge", GAUGE)),
                gauge(fields.object("liquidGauge", GAUGE)),
                new Thermometer(
                        thermometer.value("name", "pipe clamps", text -> text),
                        thermometer.value("accuracyClass", "thermocouple-k-class-1", ThermometerClass::named),
                        kelvins(thermometer, "resolution", "0.1 K")),
                kelvins(thermometer, "pipeContact", "0.5 K"),
                fields.optionalObject("scale", SCALE).map(InstrumentReader::scale));
    }

    private static PressureInstrument gauge(JsonFields fields) {
        String name = fields.value("name", "digital gauge", text -> text);
        if (fields.has("accuracyClass")) {
            if (fields.has("percentOfReading") || fields.has("limitOfError")) {
                throw fields.refused(
                        "gives both an accuracy class and an error; give accuracyClass, scaleFrom and scaleTo for a dial gauge, "
                                + "percentOfReading and limitOfError for a digital one");
            }
            GaugeClass accuracy = fields.value("accuracyClass", "en-837-1", GaugeClass::named);
            GaugePressure low = fields.value("scaleFrom", "0 psig", GaugePressure::parse);
            GaugePressure high = fields.value("scaleTo", "500 psig", GaugePressure::parse);
            return made(fields, () -> new DialGauge(name, accuracy, low, high));
        }
        double percent = fields.value("percentOfReading", "0.5 %", InstrumentReader::percent);
        PressureDifference fixed = fields.value("limitOfError", "0.5 psi", PressureDifference::parse);
        return made(fields, () -> new DigitalGauge(name, percent, fixed));
    }

    private static WeighingScale scale(JsonFields fields) {
        return new WeighingScale(
                fields.value("name", "refrigerant scale", text -> text),
                fields.value("resolution", "0.05 lb", Mass::parse),
                fields.value("percentOfReading", "0.05 %", InstrumentReader::percent));
    }

    private static double kelvins(JsonFields fields, String field, String example) {
        return fields.value(field, example, text -> {
            double kelvins = TemperatureDifference.parse(text).kelvins();
            if (!(kelvins >= 0 && kelvins <= 10)) {
                throw new IllegalArgumentException(Shown.quoted(text) + " is outside [0, 10] K");
            }
            return kelvins;
        });
    }

    /** Reads {@code 0.5 %}. */
    static double percent(String text) {
        String number = text.strip();
        if (!number.matches("\\d{1,3}(\\.\\d{1,6})? ?%")) {
            throw new IllegalArgumentException(Shown.quoted(text) + " is no percentage; write it like \"0.5 %\"");
        }
        double percent = Double.parseDouble(number.replace("%", "").strip());
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException(Shown.quoted(text) + " is outside [0, 100] %");
        }
        return percent;
    }

    private static <T> T made(JsonFields fields, Supplier<T> maker) {
        try {
            return maker.get();
        } catch (IllegalArgumentException e) {
            throw fields.refused(String.valueOf(e.getMessage()));
        }
    }
}
