package org.satline.refrigerant;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.satline.resource.CsvResource.Row;

/**
 * An entry whose figures are read from its rows when somebody first asks for it. Thread-safe; the refrigerant is always the same object.
 */
abstract class CatalogueEntry {
    private final String designation;
    private final boolean blend;
    private volatile @Nullable Refrigerant made;

    private CatalogueEntry(String designation, boolean blend) {
        this.designation = designation;
        this.blend = blend;
    }

    static CatalogueEntry ofSubstance(String designation, SubstanceReader reader, Row row) {
        return new CatalogueEntry(designation, false) {
            @Override
            Refrigerant read() {
                return reader.substance(row);
            }
        };
    }

    static CatalogueEntry ofBlend(String designation, BlendReader reader, Row row, List<Row> parts) {
        return new CatalogueEntry(designation, true) {
            @Override
            Refrigerant read() {
                return reader.blend(row, parts);
            }
        };
    }

    /** An entry of the caller's own. */
    static CatalogueEntry of(Refrigerant refrigerant) {
        return new CatalogueEntry(refrigerant.designation(), refrigerant.isBlend()) {
            @Override
            Refrigerant read() {
                return refrigerant;
            }

            @Override
            boolean isOwn() {
                return true;
            }
        };
    }

    abstract Refrigerant read();

    /** Whether it came from a caller, who may call it as he likes. */
    boolean isOwn() {
        return false;
    }

    final String designation() {
        return designation;
    }

    final boolean isBlend() {
        return blend;
    }

    final Refrigerant refrigerant() {
        Refrigerant refrigerant = made;
        return refrigerant == null ? make() : refrigerant;
    }

    // a blend asks for its components, which ask for no entry: no two threads can wait for each other
    private synchronized Refrigerant make() {
        Refrigerant refrigerant = made;
        if (refrigerant == null) {
            refrigerant = read();
            made = refrigerant;
        }
        return refrigerant;
    }
}
