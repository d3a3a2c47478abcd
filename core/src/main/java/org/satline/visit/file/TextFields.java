package org.satline.visit.file;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurves;

/** Texts of a visit file that are no plain quantities: names, dates, durations, refrigerants, pressures with their atmosphere. */
final class TextFields {
    private static final int LONGEST = 200;
    private static final Pattern US_DATE = Pattern.compile("(\\d{1,2})/(\\d{1,2})/(\\d{4})");
    private static final Pattern DURATION = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?) ?(s|min|h)");

    private TextFields() {}

    /** One line of text. */
    static String line(String text) {
        if (text.isBlank() || text.length() > LONGEST) {
            throw new IllegalArgumentException(
                    FieldReader.quoted(text) + " has " + text.length() + " characters, allowed [1, " + LONGEST + "]");
        }
        return FieldReader.plain(text);
    }

    /** {@code 2026-07-14}, or the US way where the day cannot be taken for the month. */
    static LocalDate date(String text) {
        Matcher us = US_DATE.matcher(text.strip());
        try {
            if (us.matches()) {
                int month = Integer.parseInt(us.group(1));
                int day = Integer.parseInt(us.group(2));
                if (day <= 12 && day != month) {
                    throw new IllegalArgumentException(FieldReader.quoted(text)
                            + " may be either of two days; write year, month and day like \"2026-07-14\"");
                }
                return LocalDate.of(Integer.parseInt(us.group(3)), month, day);
            }
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    FieldReader.quoted(text) + " is no date; write year, month and day like \"2026-07-14\"", e);
        } catch (java.time.DateTimeException e) {
            throw new IllegalArgumentException(
                    FieldReader.quoted(text) + " is no day of the calendar; write it like \"2026-07-14\"", e);
        }
    }

    /** {@code 14:35}, local time. */
    static LocalTime time(String text) {
        try {
            return LocalTime.parse(text.strip());
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    FieldReader.quoted(text) + " is no time of the day; write hour and minute like \"14:35\"", e);
        }
    }

    /** {@code 25 min}. */
    static Duration duration(String text) {
        Matcher parts = DURATION.matcher(text.strip());
        if (!parts.matches()) {
            throw new IllegalArgumentException(
                    FieldReader.quoted(text) + " is no duration; write it like \"20 min\", \"30 s\" or \"2 h\"");
        }
        double seconds = Double.parseDouble(parts.group(1))
                * switch (parts.group(2)) {
                    case "s" -> 1;
                    case "min" -> 60;
                    default -> 3600;
                };
        return Duration.ofMillis(Math.round(seconds * 1000));
    }

    /** Asks for the curve at once, so that a refrigerant without an equation is refused with the name of its field. */
    static Refrigerant refrigerant(String text) {
        return SaturationCurves.of(Catalogue.standard().find(text)).refrigerant();
    }

    /** An absolute figure is taken back to what the gauge would have shown, since its error is stated by that. */
    static GaugePressure gauge(String text, Atmosphere site) {
        return Pressure.parse(text, site).gauge(site);
    }
}
