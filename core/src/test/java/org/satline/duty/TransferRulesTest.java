package org.satline.duty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.satline.duty.Holder.Kind;
import org.satline.duty.TransferRules.Answer;
import org.satline.duty.TransferRules.Finding;
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

    private static List<String> forbidden(Holder from, Holder to) {
        return RULES.check(from, to).stream()
                .filter(finding -> finding.answer() == Answer.FORBIDDEN)
                .map(Finding::rule)
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
        assertThat(RULES.check(recovered, BAKERY)).extracting(Finding::citation).contains("40 CFR 82.154(d)");
        assertThat(forbidden(recovered, DAIRY)).containsExactly("same-owner");
        assertThat(forbidden(recovered, holder(Kind.RECLAIMER, "reclaimer", R410A, Provenance.RECOVERED)))
                .isEmpty();
    }

    @Test
    void mixedRecoveredRefrigerantNeverGoesIntoASystem() {
        Holder mixed = holder(Kind.RECOVERY_CYLINDER, "bakery", R410A, Provenance.MIXED_RECOVERED);
        assertThat(forbidden(mixed, BAKERY)).containsExactly("no-mixed-recovered");
        Holder unknown = new Holder(Kind.RECOVERY_CYLINDER, "bakery", Optional.empty(), Provenance.MIXED_RECOVERED);
        assertThat(forbidden(unknown, BAKERY)).contains("one-refrigerant", "no-mixed-recovered");
    }

    @Test
    void refrigerantsAreNotMixed() {
        Holder cylinder = holder(Kind.RECOVERY_CYLINDER, "bakery", R32, Provenance.RECOVERED);
        assertThat(forbidden(BAKERY, cylinder)).containsExactly("one-refrigerant");
        Holder empty = new Holder(Kind.RECOVERY_CYLINDER, "bakery", Optional.empty(), Provenance.RECOVERED);
        assertThat(forbidden(BAKERY, empty)).isEmpty();
        assertThat(RULES.check(BAKERY, empty)).extracting(Finding::rule).contains("certified-person");
    }

    @Test
    void nothingUsedGoesIntoASourceOrDisposableCylinderOrTheAir() {
        assertThat(forbidden(BAKERY, holder(Kind.SOURCE_CYLINDER, "bakery", R410A, Provenance.NEW)))
                .containsExactly("source-new-or-reclaimed");
        assertThat(forbidden(BAKERY, holder(Kind.NON_REFILLABLE_CYLINDER, "bakery", R410A, Provenance.NEW)))
                .containsExactly("refillable-receiver");
        Holder air = new Holder(Kind.ATMOSPHERE, "nobody", Optional.empty(), Provenance.NEW);
        assertThat(forbidden(BAKERY, air)).containsExactly("no-venting");
        Holder carbonDioxide = holder(Kind.SYSTEM, "dairy", CATALOGUE.find("R-744"), Provenance.NEW);
        assertThat(forbidden(carbonDioxide, air)).isEmpty();
        assertThat(RULES.check(carbonDioxide, air)).extracting(Finding::rule).contains("venting-exemption");
    }

    @Test
    void anOwnerIsAlwaysNamed() {
        assertThatThrownBy(() -> holder(Kind.SYSTEM, " ", R410A, Provenance.NEW))
                .hasMessageContaining("owner");
    }
}
