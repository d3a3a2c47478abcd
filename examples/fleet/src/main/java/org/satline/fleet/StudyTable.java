package org.satline.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** The table of days to detection and false alarms. */
final class StudyTable {
    private static final double[] CLASSES = {5, 10, 20, 30, 40, 50.0001};

    private StudyTable() {}

    static FleetPlan plan(long seed, double leakShare) {
        return new FleetPlan(seed, 20_454, leakShare, 0.05, 0.5, LeakStudy.BEFORE_D, LeakStudy.BEFORE_D + 364, 0.2);
    }

    static void print(long seed, int units, Consumer<String> out) {
        List<LeakStudy.UnitYear> without = years(plan(seed, 0), units);
        List<LeakStudy.UnitYear> with = years(plan(seed + 1, 1), units);
        int alarms = without.stream().mapToInt(LeakStudy.UnitYear::alarms).sum();
        int early = without.stream().mapToInt(LeakStudy.UnitYear::alarmsBefore).sum()
                + with.stream().mapToInt(LeakStudy.UnitYear::alarmsBefore).sum();
        out.accept(String.format(
                Locale.ROOT,
                "without leaks: %d false alarms in %d unit-years, %.3f a unit-year; "
                        + "in the %d days before each year: %d on %d units",
                alarms,
                units,
                alarms / (double) units,
                LeakStudy.BEFORE_D,
                early,
                2 * units));
        out.accept(
                "| leak, % of the charge a year | units | found within the year | days to the alarm: median (10 %, 90 %)"
                        + " | charge lost at the median, % |"
                        + " rate told, and the true one within 2 u of it |");
        out.accept("|---|---|---|---|---|---|");
        for (int i = 0; i + 1 < CLASSES.length; i++) {
            double low = CLASSES[i];
            double high = CLASSES[i + 1];
            row(
                    String.format(Locale.ROOT, "%.0f to %.0f", low, high),
                    with.stream()
                            .filter(year -> year.percentPerYear() >= low && year.percentPerYear() < high)
                            .toList(),
                    out);
        }
        row("all", with, out);
        for (UnitModel model : UnitModel.values()) {
            row(
                    "all, model " + model.label(),
                    with.stream().filter(year -> year.model() == model).toList(),
                    out);
        }
    }

    private static List<LeakStudy.UnitYear> years(FleetPlan plan, int units) {
        List<LeakStudy.UnitYear> years = new ArrayList<>();
        for (long unit = 0; unit < units; unit++) {
            years.add(LeakStudy.of(plan, unit, LeakRule.usual()));
        }
        return years;
    }

    private static void row(String name, List<LeakStudy.UnitYear> years, Consumer<String> out) {
        List<LeakStudy.UnitYear> found =
                years.stream().filter(year -> year.daysToAlarm() >= 0).toList();
        double[] days = found.stream()
                .mapToDouble(LeakStudy.UnitYear::daysToAlarm)
                .sorted()
                .toArray();
        double[] lost = found.stream()
                .mapToDouble(year -> year.percentPerYear() * year.daysToAlarm() / LeakStudy.YEAR_D)
                .sorted()
                .toArray();
        List<LeakStudy.UnitYear> told =
                years.stream().filter(year -> year.foundPercent() > 0).toList();
        long covered = told.stream()
                .filter(year -> Math.abs(year.foundPercent() - year.percentPerYear()) <= 2 * year.foundUncertainty())
                .count();
        out.accept(String.format(
                Locale.ROOT,
                "| %s | %d | %.1f %% | %.0f (%.0f, %.0f) | %.1f | %.0f %%, %.0f %% |",
                name,
                years.size(),
                100.0 * found.size() / Math.max(1, years.size()),
                quantile(days, 0.5),
                quantile(days, 0.1),
                quantile(days, 0.9),
                quantile(lost, 0.5),
                100.0 * told.size() / Math.max(1, years.size()),
                100.0 * covered / Math.max(1, told.size())));
    }

    static double quantile(double[] sorted, double share) {
        return sorted.length == 0 ? Double.POSITIVE_INFINITY : sorted[(int) (share * (sorted.length - 1))];
    }
}
