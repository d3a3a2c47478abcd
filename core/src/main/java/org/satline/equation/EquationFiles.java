package org.satline.equation;

import org.satline.resource.CsvResource;
import org.satline.resource.SealedResources;

/** Where the files of one equation, or of the pairs, come from. */
@FunctionalInterface
interface EquationFiles {
    /** Bytes of a file; a missing one is refused by name. */
    byte[] bytes(String name);

    /** The files of this jar. */
    static EquationFiles ofJar() {
        return name -> SealedResources.core().bytes(EquationFiles.class, name);
    }

    default CsvResource table(String name, String... columns) {
        return CsvResource.parse(name, bytes(name), columns);
    }

    default CsvResource table(String name, String[] columns, String[] optional) {
        return CsvResource.parse(name, bytes(name), columns, optional);
    }
}
