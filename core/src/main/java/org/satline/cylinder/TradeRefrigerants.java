package org.satline.cylinder;

import java.util.List;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** What stands in the cylinders of the trade; common practice, no source. The curves are made once, when first asked for. */
final class TradeRefrigerants {
    static final List<SaturationCurve> CURVES = List.of(
                    "R-22",
                    "R-32",
                    "R-134a",
                    "R-404A",
                    "R-407A",
                    "R-407C",
                    "R-410A",
                    "R-448A",
                    "R-449A",
                    "R-452B",
                    "R-454B",
                    "R-507A",
                    "R-1234yf",
                    "R-290",
                    "R-600a")
            .stream()
            .map(Catalogue.standard()::find)
            .map(SaturationCurves::of)
            .toList();

    private TradeRefrigerants() {}
}
