package org.satline.program.visit;

import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a duration like {@code 20 min}. */
final class DurationText {
    private static final Pattern SHAPE = Pattern.compile("(\\d{1,6}(?:\\.\\d{1,3})?) ?(s|min|h)");
    private static final Map<String, Double> SECONDS = Map.of("s", 1.0, "min", 60.0, "h", 3600.0);

    private DurationText() {}

    static Duration parse(String text) {
        Matcher matcher = SHAPE.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException("is no duration; write a number and s, min or h, like \"20 min\"");
        }
        double seconds = Double.parseDouble(matcher.group(1)) * SECONDS.getOrDefault(matcher.group(2), 1.0);
        return Duration.ofMillis(Math.round(seconds * 1000));
    }
}
