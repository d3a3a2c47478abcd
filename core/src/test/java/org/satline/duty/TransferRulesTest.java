package org.satline.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.duty.Holder.Kind;
import org.satline.explanation.Finding;
import org.satline.explanation.FindingCode;
import org.satline.explanation.Severity;
import org.satline.filling.Provenance;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

class TransferRulesTest {
    private static final TransferRules RULES = TransferRules.standard();
    private static final Catalogue CATALOGUE = Catalogue.standard();
    private static final Refrigerant R410A = CATALOGUE.find("R-410A");
    private static final Refrigerant R32 = CATALOGUE.find("R-32");

    private static Holder holder(Kind kind, String owner, Refrigerant refrigerant, Provenance provenance) {
        return new Holder(kind, owner, Optional.of(refrigerant), provenance);
    }

    private static final Holder BAKERY = holder(Kind.SYSTEM, "bakery", R410A, Provenance.NEW);
    private static final Holder DAIRY = holder(Kind.SYSTEM, "dairy", R410A, Provenance.NEW);

    private static List<FindingCode> forbidden(Holder from, Holder to) {
        return RULES.check(from, to).stream()
                .filter(finding -> finding.severity() == Severity.FORBIDS)
                .map(Finding::code)
                .toList();
    }

    @Test
    void newRefrigerantMayGoIntoASystem() {
        assertThat(forbidden(holder(Kind.SOURCE_CYLINDER, "bakery", R410A, Provenance.NEW), BAKERY))
                .isEmpty();
        assertThat(forbidden(holder(Kind.SOURCE_CYLINDER, "trader", R410A, Provenance.RECLAIMED), BAKERY))
                .isEmpty();
    }

    /** 40 CFR 82.154(d): back to the same owner, to no other unless reclaimed. */
    @Test
    void recoveredRefrigerantStaysWithItsOwner() {
        Holder recovered = holder(Kind.RECOVERY_CYLINDER, "bakery", R410A, Provenance.RECOVERED);
        assertThat(forbidden(recovered, BAKERY)).isEmpty();
        assertThat(RULES.check(recovered, BAKERY)).extracting(Finding::basis).contains("40 CFR 82.154(d)");
        assertThat(forbidden(recovered, DAIRY)).containsExactly(DutyCode.OTHER_OWNER);
        assertThat(forbidden(recovered, holder(Kind.RECLAIMER, "reclaimer", R410A, Provenance.RECOVERED)))
                .isEmpty();
    }

    @Test
    void mixedRecoveredRefrigerantNeverGoesIntoASystem() {
        Holder mixed = holder(Kind.RECOVERY_CYLINDER, "bakery", R410A, Provenance.MIXED_RECOVERED);
        assertThat(forbidden(mixed, BAKERY)).containsExactly(DutyCode.MIXED_RECOVERED);
        Holder unknown = new Holder(Kind.RECOVERY_CYLINDER, "bakery", Optional.empty(), Provenance.MIXED_RECOVERED);
        assertThat(forbidden(unknown, BAKERY)).contains(DutyCode.MIXING, DutyCode.MIXED_RECOVERED);
    }

    @Test
    void refrigerantsAreNotMixed() {
        Holder cylinder = holder(Kind.RECOVERY_CYLINDER, "bakery", R32, Provenance.RECOVERED);
        assertThat(forbidden(BAKERY, cylinder)).containsExactly(DutyCode.MIXING);
        Holder empty = new Holder(Kind.RECOVERY_CYLINDER, "bakery", Optional.empty(), Provenance.RECOVERED);
        assertThat(forbidden(BAKERY, empty)).isEmpty();
        assertThat(RULES.check(BAKERY, empty)).extracting(Finding::code).contains(DutyCode.CERTIFIED_PERSON);
    }

    @Test
    void nothingUsedGoesIntoASourceOrDisposableCylinderOrTheAir() {
        assertThat(forbidden(BAKERY, holder(Kind.SOURCE_CYLINDER, "bakery", R410A, Provenance.NEW)))
                .containsExactly(DutyCode.SOURCE_SPOILT);
        assertThat(forbidden(BAKERY, holder(Kind.NON_REFILLABLE_CYLINDER, "bakery", R410A, Provenance.NEW)))
                .containsExactly(DutyCode.NON_REFILLABLE_RECEIVER);
        Holder air = new Holder(Kind.ATMOSPHERE, "nobody", Optional.empty(), Provenance.NEW);
        assertThat(forbidden(BAKERY, air)).containsExactly(DutyCode.VENTING);
        Holder carbonDioxide = holder(Kind.SYSTEM, "dairy", CATALOGUE.find("R-744"), Provenance.NEW);
        assertThat(forbidden(carbonDioxide, air)).isEmpty();
        assertThat(RULES.check(carbonDioxide, air)).extracting(Finding::code).contains(DutyCode.VENTING_EXEMPTION);
    }

    /** 40 CFR 82.154(d): the person is reminded of the owner. */
    @Test
    void aConditionIsNoBan() {
        Holder recovered = holder(Kind.RECOVERY_CYLINDER, "bakery", R410A, Provenance.RECOVERED);
        assertThat(RULES.check(recovered, BAKERY))
                .allSatisfy(each -> assertThat(each.severity()).isEqualTo(Severity.CAUTION))
                .extracting(Finding::code)
                .contains(DutyCode.OTHER_OWNER);
    }

    @Test
    void whatForbidsComesFirst() {
        Holder mixed = holder(Kind.RECOVERY_CYLINDER, "bakery", R32, Provenance.MIXED_RECOVERED);
        assertThat(RULES.check(mixed, BAKERY).stream().map(Finding::severity)).isSorted();
    }

    @Test
    void everyRuleHasItsCitation() {
        Holder carbonDioxide = holder(Kind.SYSTEM, "dairy", CATALOGUE.find("R-744"), Provenance.NEW);
        assertThat(Stream.of(
                                BAKERY,
                                DAIRY,
                                carbonDioxide,
                                holder(Kind.RECOVERY_CYLINDER, "x", R32, Provenance.MIXED_RECOVERED))
                        .flatMap(from -> Stream.of(Kind.values())
                                .map(kind -> holder(kind, "y", R410A, Provenance.NEW))
                                .flatMap(to -> RULES.check(from, to).stream())))
                .isNotEmpty()
                .allSatisfy(each -> assertThat(each.basis()).isNotBlank())
                .extracting(Finding::code)
                .contains((FindingCode[]) DutyCode.values());
    }

    @Test
    void anOwnerIsAlwaysNamed() {
        assertThatThrownBy(() -> holder(Kind.SYSTEM, " ", R410A, Provenance.NEW))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("owner");
    }
}
