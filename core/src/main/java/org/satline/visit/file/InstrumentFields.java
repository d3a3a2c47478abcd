package org.satline.visit.file;

import java.util.List;
import org.satline.measurement.DialGauge;
import org.satline.measurement.DigitalGauge;
import org.satline.measurement.GaugeClass;
import org.satline.measurement.PressureInstrument;
import org.satline.measurement.Thermometer;
import org.satline.measurement.ThermometerClass;
import org.satline.measurement.WeighingScale;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.TemperatureDifference;
import org.satline.visit.Instruments;

/** Reads the part {@code instruments}: what the readings were taken with, and so how far they can be trusted. */
final class InstrumentFields {
    private static final List<String> GAUGE =
            List.of("name", "percentOfReading", "limitOfError", "accuracyClass", "scaleFrom", "scaleTo");
    private static final List<String> THERMOMETER = List.of("name", "accuracyClass", "resolution", "pipeContact");
    private static final List<String> SCALE = List.of("name", "resolution", "percentOfReading");
    static final List<String> NAMES = List.of("suctionGauge", "liquidGauge", "thermometer", "scale");

    private InstrumentFields() {}

    static Instruments read(FieldReader fields) {
        FieldReader thermometer = fields.object("thermometer", THERMOMETER);
        return new Instruments(
                gauge(fields.object("suctionGauge", GAUGE)),
                gauge(fields.object("liquidGauge", GAUGE)),
                new Thermometer(
                        thermometer.value("name", "pipe clamps", TextFields::line),
                        thermometer.value("accuracyClass", "thermocouple-k-class-1", ThermometerClass::named),
                        difference(thermometer, "resolution", "0.1 K").kelvins()),
                difference(thermometer, "pipeContact", "0.5 K"),
                fields.optionalObject("scale", SCALE).map(InstrumentFields::scale));
    }

    private static PressureInstrument gauge(FieldReader fields) {
        String name = fields.value("name", "digital gauge", TextFields::line);
        if (fields.has("accuracyClass")) {
            if (fields.has("percentOfReading") || fields.has("limitOfError")) {
                throw fields.refused(
                        "gives both an accuracy class and an error; give accuracyClass, scaleFrom and scaleTo for a dial gauge, "
                                + "percentOfReading and limitOfError for a digital one");
            }
            GaugeClass accuracy = fields.value("accuracyClass", "en-837-1", GaugeClass::named);
            GaugePressure low = fields.value("scaleFrom", "0 psig", GaugePressure::parse);
            GaugePressure high = fields.value("scaleTo", "500 psig", GaugePressure::parse);
            return fields.made(() -> new DialGauge(name, accuracy, low, high));
        }
        double percent = fields.value("percentOfReading", "0.5 %", InstrumentFields::percent);
        PressureDifference fixed = fields.value("limitOfError", "0.5 psi", PressureDifference::parse);
        return fields.made(() -> new DigitalGauge(name, percent, fixed));
    }

    private static WeighingScale scale(FieldReader fields) {
        return new WeighingScale(
                fields.value("name", "refrigerant scale", TextFields::line),
                fields.value("resolution", "0.05 lb", Mass::parse),
                fields.value("percentOfReading", "0.05 %", InstrumentFields::percent));
    }

    private static TemperatureDifference difference(FieldReader fields, String field, String example) {
        return fields.value(field, example, text -> {
            TemperatureDifference difference = TemperatureDifference.parse(text);
            if (!(difference.kelvins() >= 0 && difference.kelvins() <= 10)) {
                throw new IllegalArgumentException(FieldReader.quoted(text) + " is outside [0, 10] K");
            }
            return difference;
        });
    }

    /** Reads {@code 0.5 %}. */
    static double percent(String text) {
        String number = text.strip();
        if (!number.matches("\\d{1,3}(\\.\\d{1,6})? ?%")) {
            throw new IllegalArgumentException(FieldReader.quoted(text) + " is no percentage; write it like \"0.5 %\"");
        }
        double percent = Double.parseDouble(number.replace("%", "").strip());
        if (!(percent >= 0 && percent <= 100)) {
            throw new IllegalArgumentException(FieldReader.quoted(text) + " is outside [0, 100] %");
        }
        return percent;
    }
}
