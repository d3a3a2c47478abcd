package org.satline.tables;

import java.util.Optional;
import java.util.stream.Stream;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;

/** The tables of this jar, for tests. */
final class Tables {
    private Tables() {}

    static Stream<SaturationCurve> all() {
        return Catalogue.standard().all().stream().map(TableProvider::table).flatMap(Optional::stream);
    }

    static TableCurve of(String name) {
        return TableProvider.table(Catalogue.standard().find(name)).orElseThrow();
    }
}
