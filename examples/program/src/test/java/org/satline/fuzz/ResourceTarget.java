package org.satline.fuzz;

import org.satline.resource.CsvResource;

/** The reader of CSV resources on any bytes. */
public final class ResourceTarget {
    private ResourceTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Target.refusesAtMost(
                () -> CsvResource.parse("any.csv", bytes, new String[] {"id", "value"}, new String[] {"note"})
                        .rows()
                        .forEach(row -> {
                            row.optionalNumber("value");
                            row.text("id");
                            row.cell("note");
                        }));
    }
}
