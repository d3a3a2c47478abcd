package org.satline.tables;

import java.util.stream.Stream;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

class SolvingEngineContractTest extends SaturationContract {
    /** Every refrigerant in profile certify. */
    private static final boolean ALL = Boolean.getBoolean("satline.certify");

    static Stream<SaturationCurve> curves() {
        return ALL
                ? Tables.all().map(table -> SaturationCurves.solving(table.refrigerant()))
                : Stream.of("R-134a", "R-410A", "R-454C", "R-744")
                        .map(name ->
                                SaturationCurves.solving(Catalogue.standard().find(name)));
    }
}
