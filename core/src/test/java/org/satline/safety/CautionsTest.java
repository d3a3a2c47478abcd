package org.satline.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.quantity.GaugePressure;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;

/** What must be said: common practice, no source, unless a rule is named. */
class CautionsTest {
    private static String text(List<Caution> cautions) {
        return String.join("\n", cautions.stream().map(Caution::text).toList());
    }

    private static String handling(String refrigerant, Task task) {
        return text(Cautions.forHandling(Catalogue.standard().find(refrigerant), task));
    }

    @ParameterizedTest
    @EnumSource
    void everyTaskOfEveryRefrigerantNamesEyesHandsAirAndLocalCodes(Task task) {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            List<Caution> cautions = Cautions.forHandling(refrigerant, task);
            assertThat(text(cautions)).contains("goggles", "gloves", "ventilate");
            assertThat(cautions.get(cautions.size() - 1).text()).contains("local codes", "licensed practice prevail");
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyCautionHasABasisAndIsSaidOnce(Task task) {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            List<Caution> cautions = Cautions.forHandling(refrigerant, task, GaugePressure.ofKilopascals(2000));
            assertThat(cautions).doesNotHaveDuplicates().allSatisfy(c -> {
                assertThat(c.text()).isNotBlank();
                assertThat(c.basis()).isNotBlank();
            });
        }
    }

    @ParameterizedTest
    @EnumSource
    void ignitionIsNamedForEveryFlammableGroupAndNoOther(SafetyGroup group) {
        String said = text(Cautions.forHandling(group, Task.RECOVERY));
        assertThat(said.contains("rated for flammable gas")).isEqualTo(group.isFlammable());
        assertThat(said.contains("marked for flammable gas")).isEqualTo(group.isFlammable());
    }

    @ParameterizedTest
    @EnumSource
    void toxicityIsNamedForEveryGroupOfClassBAndNoOther(SafetyGroup group) {
        assertThat(text(Cautions.forHandling(group, Task.READING)).contains("breathing protection"))
                .isEqualTo(group.isToxic());
    }

    @Test
    void unknownGroupGetsAllThatFlammableAndToxicGetAndSaysSo() {
        Map<Refrigerant, Double> halves = new LinkedHashMap<>();
        halves.put(Catalogue.standard().find("R-32"), 0.5);
        halves.put(Catalogue.standard().find("R-134a"), 0.5);
        Refrigerant own = Refrigerant.blend("harbour mix", Composition.ofMassFractions(halves));
        List<Caution> cautions = Cautions.forHandling(own, Task.RECOVERY);

        assertThat(cautions.get(0).text()).contains("not on record", "most cautious");
        assertThat(cautions).containsAll(Cautions.forHandling(SafetyGroup.B3, Task.RECOVERY));
        assertThat(cautions).containsAll(Cautions.forHandling(SafetyGroup.B2L, Task.RECOVERY));
        assertThat(handling("R-410A", Task.RECOVERY)).doesNotContain("not on record");
    }

    @Test
    void substancesWithDangersOfTheirOwnAreNamedInBlendsToo() {
        assertThat(handling("R-717", Task.READING)).contains("25 ppm", "no copper");
        assertThat(handling("R-744", Task.CHARGING)).contains("triple point", "dry ice");
        assertThat(handling("R-455A", Task.CHARGING)).contains("dry ice");
        assertThat(handling("R-454B", Task.CHARGING)).doesNotContain("dry ice", "copper");
    }

    @Test
    void recoveryNamesScaleNonRefillableAndOneRefrigerant() {
        assertThat(handling("R-22", Task.RECOVERY))
                .contains(
                        "weigh the cylinder", "non-refillable", "one refrigerant in each cylinder", "knowing release");
        assertThat(handling("R-407C", Task.CHARGING)).contains("as liquid", "never charge from a cylinder of mixed");
    }

    @ParameterizedTest(name = "{0} kPa gauge: {1}")
    @CsvSource({
        "-101, below the local atmosphere",
        "0, under pressure",
        "1599.9, under pressure",
        "1600, the lowest one decides",
        "5516, 800 psi"
    })
    void pressureAddsItsOwnCautions(double kilopascals, String expected) {
        GaugePressure pressure = GaugePressure.ofKilopascals(kilopascals);
        assertThat(text(Cautions.forPressure(pressure))).contains(expected);
        assertThat(Cautions.forHandling(Catalogue.standard().find("R-134a"), Task.READING, pressure))
                .containsAll(Cautions.forPressure(pressure));
    }

    @Test
    void lowPressureAsksForNoMoreThanDrawingTheHoseDown() {
        assertThat(Cautions.forPressure(GaugePressure.ofKilopascals(100))).hasSize(1);
        assertThat(Cautions.forPressure(GaugePressure.ofKilopascals(-50))).hasSize(1);
    }
}
