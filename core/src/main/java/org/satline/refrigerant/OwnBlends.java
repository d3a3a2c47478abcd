package org.satline.refrigerant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.ResourceFormatException;

/** Reads the blend list of a caller. */
final class OwnBlends {
    private final Catalogue catalogue;

    OwnBlends(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Refrigerant> read(String name, byte[] utf8) {
        Map<String, List<Row>> rows = new LinkedHashMap<>();
        String last = "";
        for (Row row : CsvResource.parse(name, utf8, "blend", "component", "mass_percent")
                .rows()) {
            String blend = row.text("blend");
            if (!blend.equals(last) && rows.containsKey(blend)) {
                throw row.fault(blend + " stands twice; put its rows together");
            }
            rows.computeIfAbsent(blend, key -> new ArrayList<>()).add(row);
            last = blend;
        }
        List<Refrigerant> blends = new ArrayList<>();
        rows.forEach((blend, parts) -> blends.add(guarded(parts.get(0), () -> blend(blend, parts))));
        return blends;
    }

    private Refrigerant blend(String name, List<Row> parts) {
        Map<Refrigerant, Double> fractions = new LinkedHashMap<>();
        for (Row part : parts) {
            Refrigerant substance = guarded(part, () -> catalogue.find(part.text("component")));
            if (fractions.put(substance, part.percent("mass_percent")) != null) {
                throw part.fault(part.text("component") + " stands twice; leave one out");
            }
        }
        if (catalogue.lists(name)) {
            throw parts.get(0).fault(name + " stands for an entry already; give it a name of its own");
        }
        return Refrigerant.blend(name, Composition.ofMassFractions(fractions));
    }

    private interface Made {
        Refrigerant made();
    }

    private static Refrigerant guarded(Row row, Made made) {
        try {
            return made.made();
        } catch (IllegalArgumentException wrong) {
            ResourceFormatException broken = row.fault(String.valueOf(wrong.getMessage()));
            broken.initCause(wrong);
            throw broken;
        }
    }
}
