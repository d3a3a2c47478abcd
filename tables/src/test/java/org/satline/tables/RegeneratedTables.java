package org.satline.tables;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/**
 * Makes tables anew and prints what changed: {@code mvn -q process-test-classes -P regenerate -pl tables -am}.
 *
 * <p>Arguments: the directory that holds the tables, then designations; all refrigerants if there are none.
 */
public final class RegeneratedTables {
    private RegeneratedTables() {}

    /**
     * Makes tables anew.
     *
     * @param arguments directory, then designations
     * @throws IOException if the directory cannot be made
     */
    public static void main(String[] arguments) throws IOException {
        if (arguments.length == 0) {
            throw new IllegalArgumentException("no directory; give the directory of the tables, then designations");
        }
        Catalogue catalogue = Catalogue.standard();
        List<Refrigerant> wanted = arguments.length == 1
                ? catalogue.all()
                : Arrays.stream(arguments).skip(1).map(catalogue::find).toList();
        PrintStream out = System.out;
        TableGenerator.generate(Path.of(arguments[0]), wanted, out::println);
    }
}
