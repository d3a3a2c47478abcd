package org.satline.equation;

import java.util.Map;
import org.satline.resource.CsvResource;
import org.satline.resource.ResourceFormatException;
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

    /** The files of a caller. */
    static EquationFiles of(Map<String, byte[]> files) {
        return name -> {
            byte[] bytes = files.get(name);
            if (bytes == null) {
                throw new ResourceFormatException(name, 0, "is missing; give it beside the others");
            }
            return bytes;
        };
    }

    default CsvResource table(String name, String... columns) {
        return CsvResource.parse(name, bytes(name), columns);
    }

    default CsvResource table(String name, String[] columns, String[] optional) {
        return CsvResource.parse(name, bytes(name), columns, optional);
    }
}
