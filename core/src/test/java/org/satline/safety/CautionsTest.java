package org.satline.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.GaugePressure;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.refrigerant.SafetyGroup;

/** What must be said: common practice, no source, unless a rule is named. */
class CautionsTest {
    private static List<String> ids(List<Caution> cautions) {
        return cautions.stream().map(Caution::id).toList();
    }

    private static List<String> handling(String refrigerant, Task task) {
        return ids(Cautions.forHandling(Catalogue.standard().find(refrigerant), task));
    }

    @ParameterizedTest
    @EnumSource
    void everyTaskOfEveryRefrigerantNamesFlamesEyesHandsAirAndLocalCodesLast(Task task) {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            assertThat(ids(Cautions.forHandling(refrigerant, task)))
                    .endsWith("flames", "goggles", "ventilate", "localCodes");
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyCautionHasABasisAndIsSaidOnce(Task task) {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            List<Caution> cautions = Cautions.forHandling(refrigerant, task, GaugePressure.ofKilopascals(2000));
            assertThat(ids(cautions)).doesNotHaveDuplicates().allMatch(id -> id.matches("[a-z]+([A-Z][a-z]+)*"));
            assertThat(cautions).allSatisfy(c -> assertThat(c.basis()).isNotBlank());
        }
    }

    @ParameterizedTest
    @EnumSource
    void ignitionIsNamedForEveryFlammableGroupAndNoOther(SafetyGroup group) {
        List<String> said = ids(Cautions.forHandling(group, Task.RECOVERY));
        assertThat(said.contains("flammableMachines")).isEqualTo(group.isFlammable());
        assertThat(said.contains("flammableCylinder")).isEqualTo(group.isFlammable());
    }

    @ParameterizedTest
    @EnumSource
    void toxicityIsNamedForEveryGroupOfClassBAndNoOther(SafetyGroup group) {
        assertThat(ids(Cautions.forHandling(group, Task.READING)).contains("toxicVapour"))
                .isEqualTo(group.isToxic());
    }

    @Test
    void unknownGroupGetsAllThatFlammableAndToxicGetAndSaysSo() {
        Map<Refrigerant, Double> halves = new LinkedHashMap<>();
        halves.put(Catalogue.standard().find("R-22"), 0.5);
        halves.put(Catalogue.standard().find("R-13I1"), 0.5);
        Refrigerant own = Refrigerant.blend("harbour mix", Composition.ofMassFractions(halves));
        List<Caution> cautions = Cautions.forHandling(own, Task.RECOVERY);

        assertThat(cautions.get(0).id()).isEqualTo("groupUnknown");
        assertThat(cautions).containsAll(Cautions.forHandling(SafetyGroup.B3, Task.RECOVERY));
        assertThat(cautions).containsAll(Cautions.forHandling(SafetyGroup.B2L, Task.RECOVERY));
        assertThat(handling("R-410A", Task.RECOVERY)).doesNotContain("groupUnknown");
    }

    @Test
    void substancesWithDangersOfTheirOwnAreNamedInBlendsToo() {
        assertThat(handling("R-717", Task.READING)).contains("ammonia", "ammoniaMetals");
        assertThat(handling("R-744", Task.CHARGING)).contains("dryIce");
        assertThat(handling("R-455A", Task.CHARGING)).contains("dryIce");
        assertThat(handling("R-454B", Task.CHARGING)).doesNotContain("dryIce", "ammoniaMetals");
    }

    /** Chemistry: no fluoride without fluorine, no phosgene without chlorine. */
    @ParameterizedTest(name = "{0}: fluorine {1}, chlorine {2}, bromine or iodine {3}")
    @CsvSource({
        "R-717, false, false, false",
        "R-290, false, false, false",
        "R-744, false, false, false",
        "R-718, false, false, false",
        "R-764, false, false, false",
        "R-1270, false, false, false",
        "R-410A, true, false, false",
        "R-1234yf, true, false, false",
        "R-22, true, true, false",
        "R-502, true, true, false",
        "R-1233zd(E), true, true, false",
        "R-40, false, true, false",
        "R-466A, true, false, true",
        "R-12B1, true, true, true"
    })
    void heatBreakdownFollowsTheElements(String name, boolean fluorine, boolean chlorine, boolean heavier) {
        List<String> said = handling(name, Task.READING);
        assertThat(said.contains("hydrogenFluoride")).isEqualTo(fluorine);
        assertThat(said.contains("phosgene")).isEqualTo(chlorine);
        assertThat(said.contains("hydrogenBromide")).isEqualTo(heavier);
    }

    @Test
    void whatIsNotKnownMayBeInIt() {
        assertThat(ids(Cautions.forHandling(SafetyGroup.A1, Task.READING)))
                .contains("hydrogenFluoride", "phosgene", "hydrogenBromide");
        assertThat(ids(Cautions.forHandling(SafetyGroup.A3, Task.RECOVERY))).contains("knowingRelease");
    }

    /** 40 CFR 82.154(a)(1): exempt in the end uses that it lists; every other one is banned. */
    @ParameterizedTest
    @ValueSource(strings = {"R-744", "R-728", "R-718", "R-717", "R-290", "R-600a", "R-170", "R-441A"})
    void naturalGasesAreToldOfTheirExemptionInsteadOfTheBan(String name) {
        assertThat(handling(name, Task.RECOVERY)).contains("exemptRelease").doesNotContain("knowingRelease");
    }

    @Test
    void everyRefrigerantIsToldOneOfTheTwoReleaseRules() {
        for (Refrigerant refrigerant : Catalogue.standard().all()) {
            assertThat(ids(Cautions.forHandling(refrigerant, Task.HOSE_PURGE)))
                    .containsAnyOf("exemptRelease", "knowingRelease");
        }
        assertThat(handling("R-455A", Task.RECOVERY)).contains("knowingRelease").doesNotContain("exemptRelease");
        assertThat(handling("R-1270", Task.RECOVERY)).contains("knowingRelease").doesNotContain("exemptRelease");
    }

    @Test
    void recoveryNamesScaleNonRefillableAndOneRefrigerant() {
        assertThat(handling("R-22", Task.RECOVERY))
                .contains("weighAlways", "unfitCylinder", "oneRefrigerant", "knowingRelease", "trappedLiquid");
        assertThat(handling("R-407C", Task.CHARGING)).contains("blendAsLiquid", "liquidSlug", "trappedLiquid");
    }

    @ParameterizedTest(name = "{0} kPa gauge: {1}")
    @CsvSource({
        "-101, belowAtmosphere",
        "0, underPressure",
        "1599.9, underPressure",
        "1600, pressureRating",
        "5516, aboveServiceRating"
    })
    void pressureAddsItsOwnCautions(double kilopascals, String expected) {
        GaugePressure pressure = GaugePressure.ofKilopascals(kilopascals);
        assertThat(ids(Cautions.forPressure(pressure))).contains(expected);
        assertThat(Cautions.forHandling(Catalogue.standard().find("R-134a"), Task.READING, pressure))
                .containsAll(Cautions.forPressure(pressure));
    }

    @Test
    void lowPressureAsksForNoMoreThanDrawingTheHoseDown() {
        assertThat(Cautions.forPressure(GaugePressure.ofKilopascals(100))).hasSize(1);
        assertThat(Cautions.forPressure(GaugePressure.ofKilopascals(-50))).hasSize(1);
    }

    @Test
    void aCautionIsAFindingThatForbidsNothing() {
        Caution caution = Cautions.forPressure(GaugePressure.ofKilopascals(100)).get(0);
        assertThat(caution.finding(Subject.system("cold room"))).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.code()).isEqualTo(new CautionId("underPressure"));
            assertThat(finding.code().word()).isEqualTo("underPressure");
            assertThat(finding.basis()).isEqualTo(caution.basis());
        });
    }
}
