package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;
import org.satline.equilibrium.PhaseSplit;
import org.satline.program.file.CsvRow;
import org.satline.program.points.PointAnswers;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.Engine;

/** States named by any pair of quantities in the optional columns of {@code points}. */
class PointStatesTest {
    private static final String T = "temperature_K";
    private static final String P = "pressure_Pa";
    private static final String D = "density_kg_m3";
    private static final String V = "specific_volume_m3_kg";
    private static final String H = "enthalpy_J_kg";
    private static final String S = "entropy_J_kg_K";
    private static final String U = "internal_energy_J_kg";
    private static final String Q = "quality";

    private final PointAnswers answers = new PointAnswers(Engine.EQUATION);

    private List<String> ask(String refrigerant, String quantity, Map<String, String> cells) {
        Map<String, String> row = new HashMap<>(cells);
        row.put("id", "x");
        row.put("refrigerant", refrigerant);
        row.put("quantity", quantity);
        return answers.answer(new CsvRow(2, row, Optional.empty())).cells();
    }

    private double number(String refrigerant, String quantity, Map<String, String> cells) {
        List<String> answer = ask(refrigerant, quantity, cells);
        assertThat(answer.get(3))
                .as(quantity + " from " + cells + ": " + answer.get(5))
                .isNotEmpty();
        return Double.parseDouble(answer.get(3));
    }

    @Test
    void everyPairLeadsBackToItsState() {
        Random random = new Random(17);
        for (String name : List.of("R-134a", "R-744", "R-410A", "R-407C", "R-448A")) {
            FluidModel model = FluidModel.of(Catalogue.standard().find(name));
            double pressure = 1e5 + 1e6 * random.nextDouble();
            PhaseSplit mixed =
                    model.states().atPressureAndVapourFraction(pressure > 6e5 ? pressure : 7e5, random.nextDouble());
            leadsBack(name, mixed);
            leadsBack(name, model.states().atTemperatureAndPressure(mixed.temperatureK() + 20, 4e5));
        }
    }

    /** A pair is met to 1e-9; that moves the pressure of a liquid by some 1e-6 of itself at most. */
    private void leadsBack(String name, PhaseSplit state) {
        Map<String, Double> all = new HashMap<>(Map.of(
                T, state.temperatureK(),
                P, state.pressurePa(),
                D, state.density(),
                V, 1 / state.density(),
                H, state.specificEnthalpy(),
                S, state.specificEntropy(),
                U, state.specificInternalEnergy()));
        List<List<String>> pairs = new ArrayList<>(List.of(
                List.of(P, H),
                List.of(P, S),
                List.of(P, D),
                List.of(P, V),
                List.of(T, D),
                List.of(T, V),
                List.of(H, S),
                List.of(U, V),
                List.of(U, D),
                List.of(T, H),
                List.of(T, S)));
        if (state.phases() == PhaseSplit.Phases.LIQUID_AND_VAPOUR) {
            all.put(Q, state.vapourFraction());
            pairs.addAll(List.of(List.of(T, Q), List.of(P, Q)));
        }
        String phase = state.phases().name().toLowerCase(Locale.ROOT);
        for (List<String> pair : pairs) {
            Map<String, String> cells = new HashMap<>();
            pair.forEach(column -> cells.put(column, String.valueOf(all.get(column))));
            cells.put("phase", phase);
            assertThat(number(name, "temperature", cells))
                    .as(name + pair)
                    .isCloseTo(state.temperatureK(), offset(1e-5));
            assertThat(number(name, "pressure", cells))
                    .as(name + pair)
                    .isCloseTo(state.pressurePa(), offset(1e-6 * state.pressurePa()));
            assertThat(number(name, "density", cells))
                    .as(name + pair)
                    .isCloseTo(state.density(), offset(1e-6 * state.density()));
            assertThat(ask(name, "phase", cells).get(3)).isEqualTo(phase);
            assertThat(number(name, "quality", cells)).isCloseTo(state.vapourFraction(), offset(1e-6));
        }
    }

    @Test
    void derivedPropertiesOfOnePhaseAreThoseOfTheLibrary() {
        FluidState state = FluidModel.of(Catalogue.standard().find("R-32")).stateAt(320, 1e6);
        Map<String, String> at = Map.of(T, "320", P, "1e6");
        assertThat(number("R-32", "isentropic_exponent", at)).isCloseTo(state.isentropicExponent(), offset(1e-12));
        assertThat(number("R-32", "joule_thomson_coefficient", at))
                .isCloseTo(state.jouleThomsonCoefficient(), offset(1e-18));
        assertThat(number("R-32", "compressibility_factor", at))
                .isCloseTo(state.compressibilityFactor(), offset(1e-12));
        assertThat(number("R-32", "isothermal_compressibility", at))
                .isCloseTo(state.isothermalCompressibility(), offset(1e-19));
        assertThat(number("R-32", "volume_expansivity", at)).isCloseTo(state.volumeExpansivity(), offset(1e-15));
        assertThat(number("R-32", "gibbs_energy", at)).isCloseTo(state.specificGibbsEnergy(), offset(1e-8));
        assertThat(number("R-32", "internal_energy", at)).isCloseTo(state.specificInternalEnergy(), offset(1e-8));
        assertThat(number("R-32", "isochoric_heat_capacity", at))
                .isCloseTo(state.isochoricHeatCapacity(), offset(1e-10));
        // by definition d(ln phi)/d(ln p) = Z - 1, and phi tends to 1 in a thin gas
        assertThat(number("R-32", "fugacity_coefficient", Map.of(T, "320", P, "1")))
                .isCloseTo(1, offset(1e-5));
        double low = number("R-32", "fugacity_coefficient", Map.of(T, "320", P, "999000"));
        double high = number("R-32", "fugacity_coefficient", Map.of(T, "320", P, "1001000"));
        assertThat(Math.log(high / low) / Math.log(1001.0 / 999.0))
                .isCloseTo(state.compressibilityFactor() - 1, offset(1e-6));
    }

    @Test
    void latentHeatAndSlopeMeetClausiusAndClapeyron() {
        // of a pure substance dp/dT = h_fg / (T (v_g - v_f)), exact
        double pressure = number("R-134a", "bubble_pressure", Map.of(T, "280"));
        double latent = number("R-134a", "latent_heat", Map.of(P, String.valueOf(pressure)));
        double vapour = number("R-134a", "dew_vapour_density", Map.of(T, "280"));
        double liquid = number("R-134a", "bubble_liquid_density", Map.of(T, "280"));
        double slope = latent / (280 * (1 / vapour - 1 / liquid));
        assertThat(number("R-134a", "bubble_pressure_slope", Map.of(T, "280"))).isCloseTo(slope, offset(1e-7 * slope));
        assertThat(number("R-134a", "dew_pressure_slope", Map.of(T, "280"))).isCloseTo(slope, offset(1e-7 * slope));
        assertThat(latent)
                .isBetween(190e3, 197e3); // Cengel and Boles table A-11: 194.19 kJ/kg at 6.85 degC within rounding
    }

    @Test
    void theSameEnthalpyTwiceAsksForThePhase() {
        // compressing a cold liquid first lowers, then raises its enthalpy; compressing a gas lowers it
        FluidModel model = FluidModel.of(Catalogue.standard().find("R-134a"));
        double h = model.stateAt(300, 60e6).specificEnthalpy();
        Map<String, String> cells = new HashMap<>(Map.of(T, "300", H, String.valueOf(h)));
        List<String> refused = ask("R-134a", "pressure", cells);
        assertThat(refused.get(3)).isEmpty();
        assertThat(refused.get(5)).contains("several states share this pair", "liquid at", "liquid_and_vapour at");
        cells.put("phase", "liquid");
        assertThat(number("R-134a", "pressure", cells)).isCloseTo(60e6, offset(60.0));
    }

    @ParameterizedTest(name = "{0} of {1} from {2}={3}, {4}={5}")
    @CsvSource({
        "density, R-134a, enthalpy_J_kg, 4e5, quality, 0.5, name no state",
        "density, R-134a, temperature_K, 300, quality, 1.5, outside [",
        "density, R-134a, pressure_Pa, 1e6, enthalpy_J_kg, 1e9, outside [",
        "density, R-134a, temperature_K, 300, density_kg_m3, -1, density",
        "density, R-134a, temperature_K, 300, specific_volume_m3_kg, 0, specific_volume",
        "density, R-134a, temperature_K, 300, phase, liquid, fill in both",
        "dew_pressure, R-134a, temperature_K, 300, quality, 0.5, ambiguous",
        "speed_of_sound, R-410A, pressure_Pa, 1e6, quality, 0.5, mixture of liquid and vapour",
        "quality, R-744, temperature_K, 320, pressure_Pa, 1e7, not defined",
    })
    void whatNamesNoStateIsRefusedWithAReason(
            String quantity, String name, String first, String a, String second, String b, String part) {
        List<String> answer = ask(name, quantity, Map.of(first, a, second, b));
        assertThat(answer.get(3)).isEmpty();
        assertThat(answer.get(5)).contains(part);
    }

    @Test
    void aBlendNamesTheComponentOfAFugacityCoefficient() {
        Map<String, String> cells = new HashMap<>(Map.of(T, "320", P, "1e6"));
        assertThat(ask("R-410A", "fugacity_coefficient", cells).get(5)).contains("component");
        cells.put("component", "R-22");
        assertThat(ask("R-410A", "fugacity_coefficient", cells).get(5)).contains("allowed: [R-32, R-125]");
        cells.put("component", "R-125");
        assertThat(number("R-410A", "fugacity_coefficient", cells)).isBetween(0.8, 1.0);
    }
}
