package org.satline.tables;

import java.util.stream.Stream;
import org.satline.saturation.SaturationCurve;

class TableEngineContractTest extends SaturationContract {
    static Stream<SaturationCurve> curves() {
        return Tables.all();
    }
}
