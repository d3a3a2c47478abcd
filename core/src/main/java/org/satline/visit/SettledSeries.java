package org.satline.visit;

import java.util.Optional;
import org.satline.charge.LineMargin;
import org.satline.charge.OperatingConditions;
import org.satline.measurement.SettlingTest.Contradicted;
import org.satline.measurement.SettlingTest.Settled;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.TemperatureDifference;

/** Holds the end of a series that stands still against the readings: a series of another moment proves nothing about them. */
final class SettledSeries {
    private SettledSeries() {}

    static OperatingConditions against(Optional<LineMargin> read, OperatingConditions conditions) {
        if (read.isEmpty() || !(conditions.settled().orElse(null) instanceof Settled settled)) {
            return conditions;
        }
        double difference = settled.mean() - read.get().value().kelvins();
        if (Math.abs(difference) <= limitK(read.get(), settled)) {
            return conditions;
        }
        return conditions.withSettled(new Contradicted("the series ends at "
                + Figures.of(TemperatureDifference.ofKelvins(settled.mean())) + ", the readings say "
                + Figures.of(read.get().value()) + ": they differ by more than "
                + Figures.of(TemperatureDifference.ofKelvins(limitK(read.get(), settled)))
                + ", so they are not of one moment"));
    }

    /**
     * Expanded uncertainty of the difference, k = 2 (JCGM 100, 5.2): series and reading come from the same instruments, minutes apart, so at least half of
     * their variance is common to both and the difference of the two is no more uncertain than one of them; the spread of the series is added.
     */
    private static double limitK(LineMargin read, Settled settled) {
        return read.budget()
                .plus(UncertaintyBudget.of("spread of the series", settled.spread()))
                .expanded();
    }
}
