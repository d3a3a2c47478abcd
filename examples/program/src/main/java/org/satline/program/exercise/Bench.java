package org.satline.program.exercise;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.satline.filling.FillAssessor;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.safety.Caution;
import org.satline.safety.Cautions;
import org.satline.safety.Task;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.WorkingFluid;

/** What all exercises share and what is costly to make: curves, simulated fluids, the book of fill rules. Thread-safe. */
final class Bench {
    /** One substance each. */
    static final List<String> PURE = List.of("R-134a", "R-22", "R-32", "R-290", "R-1234yf", "R-152a");

    /** Blends that boil over several kelvins. */
    static final List<String> GLIDING =
            List.of("R-407C", "R-407A", "R-407F", "R-448A", "R-449A", "R-452A", "R-454C", "R-455A");

    /** Found in air conditioners, glide below 0.2 K. */
    static final List<String> COOLING_WITHOUT_GLIDE = List.of("R-410A", "R-22", "R-32", "R-134a");

    /** Found in air conditioners, with glide. */
    static final List<String> COOLING_WITH_GLIDE = List.of("R-407C", "R-454B", "R-452B");

    private final Map<String, SaturationCurve> curves = new ConcurrentHashMap<>();
    private final Map<String, WorkingFluid> fluids = new ConcurrentHashMap<>();
    private final FillAssessor assessor = FillAssessor.standard();

    Refrigerant refrigerant(String designation) {
        return Catalogue.standard().find(designation);
    }

    SaturationCurve curve(String designation) {
        return curves.computeIfAbsent(designation, name -> SaturationCurves.of(refrigerant(name)));
    }

    WorkingFluid fluid(String designation) {
        return fluids.computeIfAbsent(designation, name -> WorkingFluid.of(refrigerant(name)));
    }

    FillAssessor assessor() {
        return assessor;
    }

    List<Caution> cautions(String designation, Task task) {
        return Cautions.forHandling(refrigerant(designation), task);
    }

    /** The refrigerant of a question, with its safety group. */
    Given<String> refrigerantGiven(String designation, Readout readout) {
        Optional<String> group = refrigerant(designation).safetyGroup().map(Object::toString);
        return Given.words(
                readout.say("exercise.refrigerant"),
                designation
                        + group.map(g -> " " + readout.say("exercise.safety-group", g))
                                .orElse(""));
    }
}
