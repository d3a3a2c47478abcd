package org.satline.equation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Subject;
import org.satline.quantity.TemperatureDifference;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

class MixtureEvidenceTest {
    private static Refrigerant r(String name) {
        return Catalogue.standard().find(name);
    }

    @Test
    void aSubstanceHasNoPairsAndNothingToWarnOf() {
        MixtureEvidence evidence = MixtureEvidence.of(r("R-134a"));
        assertThat(evidence.pairs()).isEmpty();
        assertThat(evidence.weakest()).isEmpty();
        assertThat(evidence.warnings()).isEmpty();
    }

    @Test
    void aBlendNamesThePaperOfItsPairs() {
        // Lemmon and Jacobsen 2004
        MixtureEvidence evidence = MixtureEvidence.of(r("R-410A"));
        assertThat(evidence.weakest()).contains(PairStatus.FITTED);
        assertThat(evidence.pairs()).hasSize(1);
        assertThat(evidence.pairs().get(0).source()).contains("J. Phys. Chem. Ref. Data 33 (2004)");
        assertThat(evidence.warnings()).isEmpty();
    }

    @Test
    void aBlendThatTheModelMissesSaysSo() {
        // R-401A: -34.4 and -28.8 degC in ASHRAE Handbook Fundamentals 2021, ch. 29, table 2
        MixtureEvidence evidence = MixtureEvidence.of(r("R-401A"));
        assertThat(evidence.weakest()).contains(PairStatus.DEFAULTED);
        Finding warning = Finding.of(
                Severity.CAUTION,
                ModelCode.SATURATION_POINTS_DIFFER,
                new Subject(Subject.Kind.REFRIGERANT, "R-401A"),
                Figure.of("bubble", TemperatureDifference.ofKelvins(1.23)),
                Figure.of("dew", TemperatureDifference.ofKelvins(1.72)),
                Figure.of("cause", KnownDifference.Cause.CONFLICTING_TABLES.word()));
        assertThat(evidence.warnings()).containsExactly(warning);
        assertThat(MixtureEvidence.of(r("R-401A"), InteractionModel.PUBLISHED_ONLY)
                        .knownDifference())
                .isEmpty();
    }

    @Test
    void anAdjustedPairShowsItsEvidence() {
        PairInteraction pair = MixtureEvidence.of(r("R-454B")).pairs().get(0);
        assertThat(pair.status()).isEqualTo(PairStatus.ADJUSTED);
        assertThat(pair.evidence()).contains("fitted to").contains("checked on");
    }

    @Test
    void aBlendOfTheCallersOwnWarnsOfDefaultedPairs() {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        fractions.put(r("R-22"), 0.5);
        fractions.put(r("R-124"), 0.5);
        Refrigerant blend = Refrigerant.blend("shop mix", Composition.ofMassFractions(fractions));
        assertThat(MixtureEvidence.of(blend).warnings())
                .containsExactly(Finding.of(
                        Severity.CAUTION,
                        ModelCode.PAIRS_DEFAULTED,
                        new Subject(Subject.Kind.REFRIGERANT, "shop mix"),
                        Figure.of("pairs", "R-22 + R-124")));
    }
}
