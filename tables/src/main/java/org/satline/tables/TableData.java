package org.satline.tables;

import java.util.List;
import java.util.Map;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationProperty;

/** What a table file holds. */
record TableData(
        String designation,
        String dataVersion,
        List<Part> parts,
        String source,
        Reference reference,
        LineFacts bubble,
        LineFacts dew,
        Map<SaturationProperty, Column> columns) {
    /** Whether it is the table of that designation and of that composition. */
    boolean isOf(Refrigerant refrigerant) {
        return designation.equals(refrigerant.designation())
                && refrigerant.hasComposition()
                && parts.equals(partsOf(refrigerant));
    }

    static List<Part> partsOf(Refrigerant refrigerant) {
        return refrigerant.composition().components().stream()
                .map(each -> new Part(each.substance().designation(), each.massFraction()))
                .toList();
    }

    /** A component and its mass fraction. */
    record Part(String designation, double massFraction) {}

    /** Which reference state h and s count from; the temperature matters only for {@link Kind#COLDEST_LIQUID}. */
    record Reference(Kind kind, double temperatureK) {
        /** The three defaults of the equation engine. */
        enum Kind {
            IIR,
            NORMAL_BOILING_POINT,
            COLDEST_LIQUID
        }
    }
}
