package org.satline.tables;

import org.satline.fuzz.Target;

/** Table files from any bytes: the checksum tells a damaged one; without it the form alone must hold. */
public final class TableTarget {
    private TableTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Target.refusesAtMost(() -> TableReader.read("any.saturation", bytes));
        Target.refusesAtMost(() -> TableReader.read("any.saturation", bytes, true));
    }
}
