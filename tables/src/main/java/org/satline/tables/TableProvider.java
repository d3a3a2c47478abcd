package org.satline.tables;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.OnDemand;
import org.satline.resource.ResourceFormatException;
import org.satline.resource.SealedResources;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurveProvider;

/**
 * Offers the tables of this jar to {@link org.satline.saturation.SaturationCurves}. A table is read when its refrigerant is asked for, and
 * anew each time: keep the curve. Thread-safe.
 */
public final class TableProvider implements SaturationCurveProvider {
    private static final OnDemand<SealedResources> RESOURCES = new OnDemand<>() {
        @Override
        protected SealedResources read() {
            return SealedResources.of(TableProvider.class, "tables.digests");
        }
    };

    /** Made by the service loader. */
    public TableProvider() {}

    /**
     * Reads the table of a refrigerant.
     *
     * @param refrigerant the refrigerant
     * @return its curve; empty if there is no table of that designation and composition
     * @throws ResourceFormatException if the table is damaged, truncated, of another format version or made from other data
     */
    @Override
    public Optional<SaturationCurve> curve(Refrigerant refrigerant) {
        return Optional.ofNullable(read(refrigerant));
    }

    static Optional<TableCurve> table(Refrigerant refrigerant) {
        return Optional.ofNullable(read(refrigerant));
    }

    private static @Nullable TableCurve read(Refrigerant refrigerant) {
        Objects.requireNonNull(refrigerant, "refrigerant");
        // a blend with the composition of a listed one has its table, whatever it is called
        Refrigerant listed = refrigerant.asListed();
        String name = TableFormat.fileName(listed.designation());
        byte[] bytes = bytes(name);
        if (bytes == null || !refrigerant.hasComposition()) {
            return null;
        }
        TableData data = TableReader.read(name, bytes, RESOURCES.get().lists(TableProvider.class, name));
        if (!data.isOf(listed)) {
            return null; // a blend of the caller's own that borrows the name
        }
        if (!data.dataVersion().equals(refrigerant.dataVersion())) {
            throw new ResourceFormatException(
                    name,
                    0,
                    "made from data " + data.dataVersion() + ", the library holds " + refrigerant.dataVersion()
                            + "; use the tables and the library of one release, or ask the equation engine");
        }
        return new TableCurve(refrigerant, data);
    }

    /**
     * Returns the files of this jar with their digests.
     *
     * @return the files
     * @throws ResourceFormatException if their manifest is missing or damaged
     */
    public static SealedResources resources() {
        return RESOURCES.get();
    }

    static byte @Nullable [] bytes(String name) {
        return RESOURCES.get().find(TableProvider.class, name);
    }
}
