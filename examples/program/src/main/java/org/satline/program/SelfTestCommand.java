package org.satline.program;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import org.satline.equation.EquationLibrary;
import org.satline.equilibrium.EquationSelfTest;
import org.satline.program.page.Printed;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.SealedResources;
import org.satline.tables.TableProvider;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows that this copy is whole and computes what was printed. */
@Command(
        name = "selftest",
        description = {
            "Holds every data file of the program against its SHA-256, and computes the values that papers print to check their equations.",
            "Status 0: all files are those released and all values repeat; 1: a value does not; 2: a file is damaged."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
final class SelfTestCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--each", description = "Print each value with its source, not only those that do not repeat.")
    private boolean each;

    /** Made by the command line library. */
    SelfTestCommand() {}

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        int files = 0;
        for (SealedResources sealed : List.of(SealedResources.core(), TableProvider.resources())) {
            sealed.verify();
            files += sealed.paths().size();
        }
        out.println(files + " data files are those released, by SHA-256");
        int values = 0;
        int wrong = 0;
        int unchecked = 0;
        for (Refrigerant substance : Catalogue.standard().substances()) {
            List<EquationSelfTest> tests = EquationSelfTest.run(substance.designation());
            boolean solved = EquationLibrary.standard().hasEquation(substance.designation());
            unchecked += solved && tests.isEmpty() ? 1 : 0;
            for (EquationSelfTest test : tests) {
                values++;
                wrong += test.repeats() ? 0 : 1;
                if (each || !test.repeats()) {
                    out.println(line(test));
                }
            }
        }
        out.println(values - wrong + " of " + values + " check values repeat; " + unchecked
                + " equations have none on record");
        out.flush();
        return wrong == 0 ? ExitStatus.DONE : ExitStatus.SOME_ROWS_REFUSED;
    }

    private static String line(EquationSelfTest test) {
        return test.check().designation() + " "
                + test.check()
                        .quantity()
                        .name()
                        .toLowerCase(java.util.Locale.ROOT)
                        .replace('_', ' ') + ": printed "
                + Printed.given(test.check().printed()) + ", computed "
                + Printed.figure("%.9g", test.computed()) + (test.repeats() ? ", repeats" : ", DOES NOT REPEAT")
                + " [" + test.check().source() + "]";
    }
}
