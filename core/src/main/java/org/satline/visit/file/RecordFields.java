package org.satline.visit.file;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;
import org.satline.quantity.TemperatureDifference;

/** Reads what a visit file keeps on record and nothing is computed from: the time, the kit that was used, the readings before these. */
final class RecordFields {
    private static final List<String> KIT = List.of("file", "sha256");
    private static final List<String> HISTORY =
            List.of("date", "time", "readings", "cylinder", "scaleReading", "grossBefore", "net", "measured");

    private RecordFields() {}

    /** Refuses a record that cannot be: no time of the day, no digest, a clock that goes back. */
    static void check(FieldReader root) {
        root.optionalObject("kit", KIT).ifPresent(kit -> {
            kit.value("file", "van.json", TextFields::line);
            kit.value("sha256", "64 hexadecimal digits", RecordFields::digest);
        });
        Optional<LocalDateTime> last = Optional.empty();
        for (FieldReader entry : root.objects("history", HISTORY)) {
            Optional<LocalDateTime> when = when(entry);
            refuseBackwards(entry, last, when);
            last = when.isPresent() ? when : last;
            FieldReader readings = entry.object("readings", SystemFields.READINGS);
            SystemFields.READINGS.forEach(each -> readings.optional(each, "118 psig", TextFields::line));
            entry.optional("cylinder", "recovery cylinder no. 4", TextFields::line);
            entry.optional("scaleReading", "41.35 lb", MassDifference::parse);
            entry.optional("grossBefore", "41.35 lb", Mass::parse);
            entry.value("net", "-0.3 lb", MassDifference::parse);
            entry.optional("measured", "16.1 degF", TemperatureDifference::parse);
        }
        refuseBackwards(root, last, when(root));
    }

    private static Optional<LocalDateTime> when(FieldReader fields) {
        Optional<LocalDate> date = fields.optional("date", "2026-07-14", TextFields::date);
        Optional<LocalTime> time = fields.optional("time", "14:35", TextFields::time);
        return date.flatMap(day -> time.map(day::atTime));
    }

    private static void refuseBackwards(
            FieldReader fields, Optional<LocalDateTime> before, Optional<LocalDateTime> now) {
        if (before.isPresent() && now.isPresent() && now.get().isBefore(before.get())) {
            throw fields.refused(
                    "time",
                    now.get() + " is before " + before.get()
                            + " of the readings before it; the clock cannot go back, look at date and time of both");
        }
    }

    private static String digest(String text) {
        if (!text.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException(
                    FieldReader.quoted(text) + " is no SHA-256; 64 digits 0-9 and a-f are expected");
        }
        return text;
    }
}
