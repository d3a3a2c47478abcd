package org.satline.fleet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.satline.program.drawing.Axis;
import org.satline.program.drawing.Chart;
import org.satline.program.drawing.Ink;
import org.satline.program.drawing.Pen;
import org.satline.program.drawing.Points;
import org.satline.program.drawing.Series;
import org.satline.program.drawing.SvgWriter;
import org.satline.program.page.Block;
import org.satline.program.page.PageHtml;

/**
 * The page at the end of a run: alarms by cause, the leaks that cost most, how the evidence grew, what was rejected.
 */
final class SummaryPage {
    private static final int MOST_ROWS = 25;
    private static final List<Pen> PENS = List.of(Pen.SOLID, Pen.DASHED, Pen.DOTTED, Pen.DASH_DOT, Pen.HEAVY);
    private static final List<Ink> INKS = List.of(Ink.BLACK, Ink.BLUE, Ink.RUST);
    private static final int LINES = PENS.size();

    private final List<String[]> alarms;
    private final List<String[]> days;
    private final List<String> rejected;

    private SummaryPage(List<String[]> alarms, List<String[]> days, List<String> rejected) {
        this.alarms = alarms;
        this.days = days;
        this.rejected = rejected;
    }

    static void write(Path out, Consumer<String> to) throws IOException {
        SummaryPage page = new SummaryPage(
                split(OutputFiles.lines(out, "alarms")),
                split(OutputFiles.lines(out, "days")),
                OutputFiles.lines(out, "rejected"));
        Path file = out.resolve("summary.html");
        Files.writeString(file, PageHtml.of("Watch over a fleet", PageHtml.Style.REPORT, page.blocks()));
        to.accept("summary: " + file);
    }

    private static List<String[]> split(List<String> lines) {
        return lines.stream().map(line -> line.split(",", -1)).toList();
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading(1, "Watch over a fleet"));
        blocks.add(new Block.Paragraph(String.format(
                Locale.ROOT,
                "%d unit-days with settled readings of %d units. "
                        + "The outcome supports licensed practice and does not replace it: "
                        + "a leak is found and repaired on site.",
                days.size(),
                days.stream().map(day -> day[0]).distinct().count())));
        blocks.add(new Block.Heading(2, "Alarms"));
        blocks.add(byCause());
        List<String[]> leaks = latest().stream()
                .sorted(Comparator.comparingDouble((String[] alarm) -> -Double.parseDouble(alarm[11])))
                .toList();
        if (!leaks.isEmpty()) {
            blocks.add(new Block.Heading(2, "Leaks"));
            blocks.add(leaks(leaks));
            blocks.add(change(leaks));
            blocks.add(evidence(leaks));
        }
        blocks.add(new Block.Heading(2, "Rejected readings"));
        blocks.add(rejected());
        return blocks;
    }

    /** The latest news of each leak. */
    private List<String[]> latest() {
        Map<String, String[]> byUnit = new TreeMap<>();
        alarms.stream()
                .filter(alarm -> alarm[2].equals(Cause.LEAK.name()) && !alarm[3].equals(Alarm.News.GONE.name()))
                .sorted(Comparator.comparing((String[] alarm) -> alarm[4]))
                .forEach(alarm -> byUnit.put(alarm[0], alarm));
        return List.copyOf(byUnit.values());
    }

    private Block byCause() {
        List<List<String>> rows = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            long raised = count(cause, Alarm.News.RAISED);
            if (raised > 0) {
                rows.add(List.of(
                        cause.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        Long.toString(raised),
                        Long.toString(raised - count(cause, Alarm.News.GONE))));
            }
        }
        return new Block.Table("Alarms by cause", List.of("cause", "raised", "stand at the end"), rows);
    }

    private long count(Cause cause, Alarm.News news) {
        return alarms.stream()
                .filter(alarm -> alarm[2].equals(cause.name()) && alarm[3].equals(news.name()))
                .count();
    }

    private static Block leaks(List<String[]> leaks) {
        List<List<String>> rows = leaks.stream()
                .limit(MOST_ROWS)
                .map(leak -> List.of(
                        leak[0],
                        leak[1].toLowerCase(Locale.ROOT),
                        date(leak[4]),
                        leak[6] + " of " + leak[7],
                        String.format(Locale.ROOT, "%.1f", 100 * Double.parseDouble(leak[8])),
                        leak[9] + " ± " + leak[10],
                        leak[11],
                        trigger(leak),
                        leak[14].equals("0") ? "none asked for" : leak[14]))
                .toList();
        return new Block.Table(
                "Leaks, the costliest for the climate first (± is one standard uncertainty)",
                List.of(
                        "unit",
                        "model",
                        "day",
                        "evidence of limit",
                        "lost, %",
                        "rate, % a year",
                        "t CO2e a year",
                        "trigger of 40 CFR 84.106",
                        "months between leak checks, (EU) 2024/573"),
                rows);
    }

    private static String trigger(String[] leak) {
        return switch (Alarm.Stand.valueOf(leak[13])) {
            case NO_TRIGGER -> "charge below the rule";
            case ABOVE -> "above " + leak[12] + " %";
            case BELOW -> "below " + leak[12] + " %";
            case OPEN -> "open, " + leak[12] + " %";
        };
    }

    private Block rejected() {
        Map<String, Long> counts = rejected.stream()
                .collect(Collectors.groupingBy(
                        line -> line.substring(0, line.indexOf(',')), TreeMap::new, Collectors.counting()));
        List<List<String>> rows = new ArrayList<>();
        counts.forEach((reason, count) ->
                rows.add(List.of(reason.toLowerCase(Locale.ROOT).replace('_', ' '), Long.toString(count))));
        return new Block.Table("Rejected readings by reason", List.of("reason", "readings"), rows);
    }

    private Block change(List<String[]> leaks) {
        return figure(
                "Charge against the baseline",
                "change of the charge, %",
                lines(leaks, 7, 100),
                "How the charge of the units with the costliest leaks fell "
                        + "against what each unit had taught about itself.",
                "Estimate of the charge by the library, mean of a day; zero while the baseline is learned. "
                        + "Day 0 is the first of the run.");
    }

    private Block evidence(List<String[]> leaks) {
        return figure(
                "Evidence for a leak",
                "cumulative sum, spreads of a day",
                lines(leaks, 8, 1),
                "How the cumulative sum of the same units grew to the limit at which the alarm is raised, and beyond.",
                "Limit " + LeakRule.usual().limit() + ": one false alarm in ten unit-years or fewer, see the README.");
    }

    private Map<String, Points> lines(List<String[]> leaks, int field, double factor) {
        int first = days.stream().mapToInt(SummaryPage::day).min().orElse(0);
        Map<String, Points> lines = new LinkedHashMap<>();
        leaks.stream().map(leak -> leak[0]).distinct().limit(LINES).forEach(unit -> {
            Points points = new Points();
            days.stream()
                    .filter(day -> day[0].equals(unit))
                    .sorted(Comparator.comparingInt(SummaryPage::day))
                    .forEach(day -> points.add(day(day) - first, factor * Double.parseDouble(day[field])));
            lines.put("unit " + unit, points);
        });
        return lines;
    }

    private static int day(String[] day) {
        return Integer.parseInt(day[2]);
    }

    private static Block figure(
            String title, String yAxis, Map<String, Points> lines, String description, String note) {
        double low = 0;
        double high = 0;
        double last = 1;
        for (Points points : lines.values()) {
            low = Math.min(low, Arrays.stream(points.y()).min().orElse(0));
            high = Math.max(high, Arrays.stream(points.y()).max().orElse(0));
            last = Math.max(last, Arrays.stream(points.x()).max().orElse(0));
        }
        double room = 0.05 * (high - low) + 0.1;
        Chart chart = new Chart(
                title,
                new Axis("day", 0, last, Axis.Scale.EVEN),
                new Axis(yAxis, low - room, high + room, Axis.Scale.EVEN));
        int kind = 0;
        for (Map.Entry<String, Points> line : lines.entrySet()) {
            chart.add(Series.line(line.getKey(), line.getValue(), PENS.get(kind), INKS.get(kind % INKS.size())));
            kind++;
        }
        String name = title.toLowerCase(Locale.ROOT).replace(' ', '-');
        return new Block.Figure(SvgWriter.element(chart.drawing(description, List.of()), name), List.of(note));
    }

    private static String date(String day) {
        return LocalDate.ofEpochDay(Long.parseLong(day)).toString();
    }
}
