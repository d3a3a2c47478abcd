package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.equilibrium.FluidModel;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Stored certificates keep the bounds and repeat: a sample by default, all of them with {@code -P certify}. */
class CertificateTest {
    private static final boolean ALL = Boolean.getBoolean("satline.certify");
    private static final int SAMPLED_STATES = 10;
    /** Other states than those of the stored certificate may be a little worse than its worst. */
    private static final double OTHER_STATES = 4;

    static Stream<Refrigerant> tabulated() {
        return Catalogue.standard().all().stream().filter(r -> Certificate.of(r).isPresent());
    }

    static Stream<Refrigerant> measured() {
        return ALL ? tabulated() : Stream.of("R-134a", "R-410A").map(Catalogue.standard()::find);
    }

    @ParameterizedTest
    @MethodSource("tabulated")
    void storedCertificateKeepsEveryBoundUpTo099(Refrigerant refrigerant) {
        assertThat(Certificate.of(refrigerant).orElseThrow().entries())
                .isNotEmpty()
                .filteredOn(e -> e.region() != Region.ABOVE_0_99)
                .allSatisfy(e -> assertThat(e.largestError())
                        .isLessThanOrEqualTo(e.region().bound(e.property())));
    }

    @ParameterizedTest
    @MethodSource("measured")
    void certificateRepeats(Refrigerant refrigerant) {
        Certificate stored = Certificate.of(refrigerant).orElseThrow();
        TableCurve table = TableProvider.table(refrigerant).orElseThrow();
        int states = ALL ? GeneratedTable.CERTIFIED_STATES : SAMPLED_STATES;
        List<Certificate.Entry> measured = new Certifier(FluidModel.of(refrigerant), table.data(), states).measure();
        for (Certificate.Entry entry : measured) {
            Certificate.Entry same = stored.entries().stream()
                    .filter(e -> e.property() == entry.property() && e.region() == entry.region())
                    .findFirst()
                    .orElseThrow();
            assertThat(entry.largestError())
                    .as("%s %s", entry.property().words(), entry.region().words())
                    .isLessThanOrEqualTo(Math.max(
                            OTHER_STATES * same.largestError(), entry.region().bound(entry.property()) / 10));
        }
    }
}
