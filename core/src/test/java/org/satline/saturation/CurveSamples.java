package org.satline.saturation;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Tuple;
import org.satline.equation.EquationLibrary;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Prepared refrigerants and states along their lines, shared by the properties and sweeps. */
final class CurveSamples {
    static final List<String> SUBSTANCES = Catalogue.standard().substances().stream()
            .map(Refrigerant::designation)
            .filter(EquationLibrary.standard()::hasEquation)
            .toList();
    static final List<String> BLENDS = List.of("R-404A", "R-407C", "R-410A", "R-448A", "R-454B", "R-507A", "R-513A");

    private static final Map<String, FluidModel> MODELS = new ConcurrentHashMap<>();

    private CurveSamples() {}

    static FluidModel model(String designation) {
        return MODELS.computeIfAbsent(
                designation, name -> FluidModel.of(Catalogue.standard().find(name)));
    }

    static SaturationCurve curve(String designation) {
        return SaturationCurves.solving(model(designation));
    }

    static double endTemperature(String designation) {
        return model(designation).twoPhaseEnd().temperatureK();
    }

    /** A temperature at a fraction of the way from the coldest one to a part of the end of the two-phase line. */
    static double temperature(String designation, double fraction, double partOfEnd) {
        double low = model(designation).minTemperatureK();
        double high = partOfEnd * endTemperature(designation);
        return Math.min(high, low + fraction * (high - low));
    }

    static Arbitrary<String> substances() {
        return Arbitraries.of(SUBSTANCES);
    }

    static Arbitrary<String> refrigerants() {
        return Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.of(SUBSTANCES)), Tuple.of(2, Arbitraries.of(BLENDS)));
    }

    static Arbitrary<Double> fractions() {
        return Arbitraries.doubles().between(0, 1).ofScale(6);
    }
}
