package org.satline.duty;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.resource.CsvResource;

/**
 * How often the rules of the European Union ask for a leak check. Immutable, thread-safe.
 *
 * @param measure tonnes of carbon dioxide equivalent, or kilograms for gases of Annex II section 1
 * @param months the longest time between checks; nothing where none is asked for
 * @param steps the derivation
 */
public record LeakCheckInterval(double measure, Optional<Integer> months, List<Step> steps) {
    private static final String FORMULA = "5, 50, 500 t or 1, 10, 100 kg: 12, 6, 3 months; x 2 with detection";
    private static final String CITATION = "Regulation (EU) 2024/573 art. 5 (thresholds from memory)";

    /** {@inheritDoc} */
    public LeakCheckInterval {
        Parts.numbers("measure", measure);
        Objects.requireNonNull(months, "months");
        steps = Parts.list("steps", steps);
    }

    /**
     * The interval for a gas of Annex I, by its carbon dioxide equivalent.
     *
     * @param charge the charge
     * @param globalWarmingPotential the potential that the regulation's annex gives, from the fourth assessment report; mixtures by mass
     * @param leakDetection whether a leak detection system is fitted
     * @return the interval
     */
    public static LeakCheckInterval byCarbonDioxideEquivalent(
            Mass charge, double globalWarmingPotential, boolean leakDetection) {
        Parts.required("charge", charge);
        if (!(globalWarmingPotential >= 0 && globalWarmingPotential <= 50_000)) {
            throw new IllegalArgumentException(
                    "global warming potential " + globalWarmingPotential + " is outside [0, 50000]");
        }
        double tonnes = charge.kilograms() * globalWarmingPotential / 1000;
        Step step = new Step(
                "carbonDioxideEquivalent",
                "m GWP / 1000",
                List.of(Figure.of("m", charge), Figure.of("GWP", globalWarmingPotential, "1")),
                Figure.of("equivalent", tonnes, "t"),
                "Regulation (EU) 2024/573 Annex VI (from memory)");
        return of("tonnes", tonnes, leakDetection, List.of(step));
    }

    /**
     * The interval for an unsaturated gas of Annex II section 1, by mass.
     *
     * @param charge the charge
     * @param leakDetection whether a leak detection system is fitted
     * @return the interval
     */
    public static LeakCheckInterval byMass(Mass charge, boolean leakDetection) {
        Parts.required("charge", charge);
        return of("kilograms", charge.kilograms(), leakDetection, List.of());
    }

    private static LeakCheckInterval of(String measure, double value, boolean leakDetection, List<Step> steps) {
        CsvResource table = CsvResource.read(
                LeakCheckInterval.class,
                "leak-check-intervals.csv",
                "measure",
                "from",
                "months",
                "months_with_detection");
        Optional<Integer> months = Optional.empty();
        for (CsvResource.Row row : table.rows()) {
            if (row.text("measure").equals(measure) && value >= row.number("from")) {
                months = Optional.of((int) row.number(leakDetection ? "months_with_detection" : "months"));
            }
        }
        List<Step> all = new java.util.ArrayList<>(steps);
        all.add(new Step(
                "leakCheckInterval",
                FORMULA,
                List.of(Figure.of(measure, value, "1")),
                months.map(count -> Figure.of("interval", count, "months")).orElse(Figure.of("interval", "none")),
                CITATION));
        return new LeakCheckInterval(value, months, all);
    }
}
