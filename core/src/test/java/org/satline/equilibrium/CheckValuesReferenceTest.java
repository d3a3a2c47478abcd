package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.satline.equation.EquationCheck;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Check values printed with the equations, or in tables computed from them; sources and tolerances in the folder of each equation. */
@Tag("reference")
class CheckValuesReferenceTest {
    private static Stream<String> substances() {
        return Catalogue.standard().substances().stream().map(Refrigerant::designation);
    }

    @Test
    void holdsAllValues() {
        List<EquationCheck> all =
                substances().flatMap(name -> EquationCheck.of(name).stream()).toList();
        assertThat(all)
                .hasSize(60)
                .allSatisfy(check -> assertThat(check.source()).contains("from memory"));
        assertThat(EquationCheck.of("R-9999")).isEmpty();
        assertThat(EquationSelfTest.run("r-718")).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> printedValuesRepeat() {
        return substances()
                .filter(name -> !EquationCheck.of(name).isEmpty())
                .map(name -> DynamicTest.dynamicTest(
                        name, () -> assertThat(EquationSelfTest.run(name)).allMatch(EquationSelfTest::repeats)));
    }

    @Test
    void aWrongValueDoesNotRepeat() {
        EquationSelfTest right = EquationSelfTest.run("R-718").get(0);
        double wrong = right.check().printed() * (1 + 2 * right.check().relativeTolerance());
        assertThat(right.repeats()).isTrue();
        assertThat(new EquationSelfTest(right.check(), wrong).repeats()).isFalse();
        assertThatThrownBy(() -> new EquationSelfTest(right.check(), Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
