package org.satline.visit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.json.JsonFields;
import org.satline.visit.FieldException;
import org.satline.visit.Visit;

class RecordFieldsTest {
    private static final String DIGEST = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    private static final FieldValue.Fields PLAIN = JsonFields.read("""
            {
              "site": { "altitude": "0 m" },
              "system": { "refrigerant": "R-134a", "metering": "expansion-valve" },
              "instruments": {
                "suctionGauge": { "name": "low", "percentOfReading": "0 %", "limitOfError": "3.5 psi" },
                "liquidGauge": { "name": "high", "percentOfReading": "0 %", "limitOfError": "7 psi" },
                "thermometer": { "name": "clamp", "accuracyClass": "thermocouple-k-class-1", "resolution": "0.1 K", "pipeContact": "0.5 K" }
              },
              "readings": {}
            }
            """);

    private static Visit read(String more) {
        Map<String, FieldValue> all = new LinkedHashMap<>(PLAIN.values());
        all.putAll(JsonFields.read("{" + more + "}").values());
        return VisitFile.read(new FieldValue.Fields(all));
    }

    private static String entry(String date, String time) {
        return "{ \"date\": \"" + date + "\", \"time\": \"" + time
                + "\", \"readings\": { \"suctionLine\": \"53 degF\" }, \"net\": \"0 lb\", \"measured\": \"16.1 degF\" }";
    }

    @Test
    void whatIsKeptOnRecordChangesNothing() {
        Visit visit = read("\"time\": \"14:35\", \"kit\": { \"file\": \"van.json\", \"sha256\": \"" + DIGEST
                + "\" }, \"history\": [ " + entry("2026-07-13", "09:00") + ", " + entry("2026-07-14", "08:00") + " ]");
        assertThat(visit).isEqualTo(read(""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"time\": \"25:10\" | time",
                "\"kit\": { \"file\": \"van.json\" } | kit.sha256",
                "\"kit\": { \"file\": \"van.json\", \"sha256\": \"abc\" } | kit.sha256",
                "\"history\": [ { \"net\": \"0 lb\" } ] | history[0].readings",
                "\"history\": [ { \"readings\": {}, \"net\": \"0 degF\" } ] | history[0].net",
                "\"history\": [ { \"readings\": { \"colour\": \"grey\" }, \"net\": \"0 lb\" } ] | history[0].readings.colour"
            })
    void whatCannotBeIsRefusedWithItsField(String more, String path) {
        assertThatThrownBy(() -> read(more))
                .isInstanceOfSatisfying(
                        FieldException.class, e -> assertThat(e.path()).isEqualTo(path));
    }

    @Test
    void theClockDoesNotGoBack() {
        String order = "\"history\": [ " + entry("2026-07-14", "09:00") + ", " + entry("2026-07-14", "08:00") + " ]";
        String now =
                "\"date\": \"2026-07-14\", \"time\": \"08:59\", \"history\": [ " + entry("2026-07-14", "09:00") + " ]";
        for (String more : List.of(order, now)) {
            assertThatThrownBy(() -> read(more))
                    .isInstanceOf(FieldException.class)
                    .hasMessageContaining("2026-07-14T09:00");
        }
    }
}
