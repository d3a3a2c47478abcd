package org.satline.equation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.equation.PureEquationReader.PureFile;
import org.satline.equation.PureEquationReader.ResidualRow;
import org.satline.resource.ResourceFormatException;

/** Broken coefficient files are refused by name, never read half. */
class HostileResourceTest {

    @Test
    void soundFileIsRead() {
        PureFile file = PureEquationReader.readJson("hostile/sound.json", PureFile.class);
        assertThat(file.residual()).hasSize(2);
        assertThat(PureEquationReader.terms("sound.json", file.residual())).hasSize(2);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "unknown-key, colour",
        "missing-number, gasConstant_J_per_molK",
        "not-a-number, molarMass_kg_per_mol",
        "missing-object, reducing",
        "missing-list, residual",
        "truncated, end-of-input",
        "trailing, railing token",
        "empty, No content",
        "not-there, no such resource"
    })
    void brokenFileIsRefusedByNameAndReason(String file, String reason) {
        String name = "hostile/" + file + ".json";
        assertThatExceptionOfType(ResourceFormatException.class)
                .isThrownBy(() -> PureEquationReader.readJson(name, PureFile.class))
                .withMessageStartingWith(name)
                .withMessageContaining(reason);
    }

    private static ResidualRow row(
            String type, double[] n, double @Nullable [] d, double @Nullable [] t, double @Nullable [] l) {
        return new ResidualRow(
                type, n, d, t, l, null, null, null, null, null, null, null, null, null, null, null, null);
    }

    private static void refused(ResidualRow row, String reason) {
        assertThatExceptionOfType(ResourceFormatException.class)
                .isThrownBy(() -> PureEquationReader.terms("pure/x.json", List.of(row)))
                .withMessageStartingWith("pure/x.json: ")
                .withMessageContaining(reason);
    }

    @Test
    void arraysMustFitEachOther() {
        double[] one = {1};
        double[] two = {1, 2};
        refused(row("power", one, two, one, null), "array d");
        refused(row("power", two, two, one, null), "array t");
        refused(row("power", one, one, null, null), "array t");
        refused(row("exponential", one, one, one, null), "array l");
        refused(row("gaussian", one, one, one, null), "array eta");
        refused(row("association", one, one, one, null), "array eta");
        refused(row("criticalRegion", one, null, null, null), "array a");
        refused(row("doubleExponential", one, one, one, one), "array m");
    }

    @Test
    void numbersMustBeFiniteAndExponentsWhole() {
        double[] one = {1};
        refused(row("power", one, new double[] {Double.NaN}, one, null), "array d holds NaN");
        refused(row("power", one, one, new double[] {Double.POSITIVE_INFINITY}, null), "array t holds Infinity");
        refused(row("power", new double[] {Double.NaN}, one, one, null), "array n holds NaN");
        refused(row("exponential", one, one, one, new double[] {1.5}), "l holds 1.5");
        refused(row("exponential", one, one, one, new double[] {0}), "l holds 0.0");
        refused(row("sextic", one, one, one, null), "unknown residual term type sextic");
    }

    @Test
    void unknownSubstanceIsNamed() {
        assertThatExceptionOfType(MissingEquationException.class)
                .isThrownBy(() -> EquationLibrary.standard().pure("R-9999"))
                .withMessageContaining("R-9999");
        assertThat(EquationLibrary.standard().hasEquation("../mixing/pairs")).isFalse();
    }
}
