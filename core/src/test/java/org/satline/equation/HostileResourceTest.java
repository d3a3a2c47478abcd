package org.satline.equation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.satline.resource.CsvResource;
import org.satline.resource.ResourceFormatException;

/** Broken coefficient files are refused with file and line, never read half. */
class HostileResourceTest {
    private static final EquationFiles JAR = EquationFiles.ofJar();
    private static final String FOLDER = PureEquationReader.folder("R-125");

    /** The files of the jar, one text in one of them replaced by another; the first occurrence, which must exist. */
    private static EquationFiles changed(String file, String text, String replacement) {
        return name -> {
            if (!name.endsWith(file)) {
                return JAR.bytes(name);
            }
            String content = new String(JAR.bytes(name), StandardCharsets.UTF_8);
            int at = content.indexOf(text);
            assertThat(at).as("%s holds %s", name, text).isNotNegative();
            return (content.substring(0, at) + replacement + content.substring(at + text.length()))
                    .getBytes(StandardCharsets.UTF_8);
        };
    }

    @Test
    void soundFilesAreRead() {
        PureEquation read = PureEquationReader.read("R-125", FOLDER, JAR);
        assertThat(read.constants())
                .isEqualTo(EquationLibrary.standard().pure("R-125").constants());
        assertThat(read.source().doi()).isNotNull();
    }

    // ~ stands for a line feed; a line number of 0 means the whole file
    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
            equation.csv | cas,                        | colour,                  | 5
            equation.csv | gas_constant_J_per_molK,    | cas,                     | 7
            equation.csv | molar_mass_kg_per_mol,0.    | molar_mass_kg_per_mol,-0. | 6
            equation.csv | molar_mass_kg_per_mol,0.    | molar_mass_kg_per_mol,NaN | 6
            equation.csv | molar_mass_kg_per_mol,0.    | molar_mass_kg_per_mol,9e | 6
            equation.csv | designation,R-125           | designation,R-126        | 3
            equation.csv | chemical_name,pentafluoroethane~ | ''                  | 0
            equation.csv | critical_temperature_K,     | critical_temperature_K,0.00 | 10
            equation.csv | highest_temperature_K,      | highest_temperature_K,0.0 | 15
            equation.csv | key,value                   | key,worth                | 2
            ideal-terms.csv | constant,                | steady,                  | 4
            ideal-terms.csv | linear,                  | constant,                | 5
            ideal-terms.csv | logarithm,               | linear,                  | 6
            ideal-terms.csv | power,                   | planck-einstein,         | 7
            residual-terms.csv | power,                | sextic,                  | 4
            residual-terms.csv | power,                | gaussian,                | 4
            residual-terms.csv | power,                | critical-region,         | 4
            residual-terms.csv | form,n,d              | form,n,n                 | 3
            residual-terms.csv | form,n,d              | form,n,colour            | 3
            """)
    void brokenFileIsRefusedWithFileAndLine(String file, String text, String replacement, int line) {
        EquationFiles files = changed(file, text.replace('~', '\n'), replacement.replace('~', '\n'));
        assertThatExceptionOfType(ResourceFormatException.class)
                .isThrownBy(() -> PureEquationReader.read("R-125", FOLDER, files))
                .satisfies(e -> {
                    assertThat(e.resource()).isEqualTo(FOLDER + file);
                    assertThat(e.line()).isEqualTo(line);
                });
    }

    @ParameterizedTest(name = "{0}: {1} -> {2}")
    @CsvSource(delimiter = '|', textBlock = """
            pairs.csv          | R-11,R-12,1.00726     | R-11,R-11,1.00726
            pairs.csv          | R-11,R-12,1.00726     | R-11,R-13,1.00726
            pairs.csv          | R-11,R-12,1.00726     | R-12,R-13,100.726
            pairs.csv          | R-11,R-12,1.00726     | R-12,R-13,-1.00726
            pairs.csv          | fitted                | guessed
            pairs.csv          | Bell 2016             | Nobody 2016
            pairs.csv          | ,1.0,1.0,0,           | ,1.0,1.0,0.5,
            pairs.csv          | ,1.0,1.0,0,           | ,1.0,1.0,99,
            adjusted-pairs.csv | ,use,yes,             | ,use,perhaps,
            departures.csv     | HFC-a,Lemmon 2004     | HFC-a,Nobody 2004
            departures.csv     | HFC-general,          | HFC-a,
            departures.csv     | exponential           | power
            sources.csv        | Kunz 2012,            | Bell 2016,
            """)
    void brokenPairsAreRefused(String file, String text, String replacement) {
        PairReader reader = new PairReader(changed("mixing/" + file, text, replacement));
        assertThatExceptionOfType(ResourceFormatException.class)
                .isThrownBy(() -> {
                    reader.pairs(InteractionModel.ADJUSTED_OVER_PUBLISHED);
                    reader.departures();
                })
                .satisfies(e -> assertThat(e.line()).isPositive());
    }

    @Test
    void anEmptyFileAndAMissingOneAreRefused() {
        for (String file : List.of("equation.csv", "ideal-terms.csv", "residual-terms.csv")) {
            EquationFiles empty = name -> name.endsWith(file) ? new byte[0] : JAR.bytes(name);
            assertThatExceptionOfType(ResourceFormatException.class)
                    .isThrownBy(() -> PureEquationReader.read("R-125", FOLDER, empty));
        }
        assertThatExceptionOfType(ResourceFormatException.class)
                .isThrownBy(() -> PureEquationReader.read("R-125", "pure/absent/", JAR))
                .satisfies(e -> assertThat(e.resource()).isEqualTo("pure/absent/equation.csv"));
    }

    private static void refused(String header, String... rows) {
        byte[] file = (header + "\n" + String.join("\n", rows)).getBytes(StandardCharsets.UTF_8);
        CsvResource table = CsvResource.parse("x.csv", file, new String[] {"form", "n"}, TermRows.COLUMNS);
        assertThatExceptionOfType(ResourceFormatException.class)
                .isThrownBy(() -> TermRows.read(table.rows()))
                .satisfies(e -> assertThat(e.line()).isEqualTo(1 + rows.length));
    }

    @Test
    void eachFormHasItsOwnCells() {
        refused("form,n,d,t", "power,1,1,");
        refused("form,n,d", "power,1,1");
        refused("form,n,d,t,l", "power,1,1,1,1");
        refused("form,n,d,t", "exponential,1,1,1");
        refused("form,n,d,t,l", "exponential,1,1,1,1.5");
        refused("form,n,d,t,l", "exponential,1,1,1,0");
        refused("form,n,d,t,l", "exponential,1,1,1,2000000000");
        refused("form,n,d,t,l,g", "exponential,1,1,1,1,", "exponential,1,1,1,1,1");
        refused("form,n,d,t,l", "double-exponential,1,1,1,1");
        refused("form,n,d,t", "gaussian,1,1,1");
        refused("form,n,d,t", "association,1,1,1");
        refused("form,n,d,t", "power,1,1,1", "power,1,NaN,1");
        refused("form,n,d,t", "power,1,1,1", "power,1,1," + "1".repeat(41));
    }

    @Test
    void unknownSubstanceIsNamed() {
        EquationLibrary library = EquationLibrary.standard();
        assertThatExceptionOfType(MissingEquationException.class)
                .isThrownBy(() -> library.pure("R-9999"))
                .withMessageContaining("R-9999");
        assertThat(library.hasEquation("../mixing/pairs")).isFalse();
    }

    @Test
    void whatHasAnEquationIsAnsweredAndNothingElse() {
        EquationLibrary library = EquationLibrary.standard();
        for (String name :
                List.of("r-32", "R32", "R-32 ", "R-1234ze-e", "", "R-1234ZE(E)", "R-32\u0000", "R-".repeat(99))) {
            assertThat(library.hasEquation(name)).as(name).isFalse();
            assertThatExceptionOfType(MissingEquationException.class).isThrownBy(() -> library.pure(name));
        }
        assertThat(library.hasEquation("R-1234ze(E)")).isTrue();
    }

    @Test
    void componentsAreTwoDifferentOnesAtLeast() {
        EquationLibrary library = EquationLibrary.standard();
        InteractionModel model = InteractionModel.PUBLISHED_ONLY;
        assertThatIllegalArgumentException().isThrownBy(() -> library.mixture(List.of(), model));
        assertThatIllegalArgumentException().isThrownBy(() -> library.mixture(List.of("R-32", "R-32"), model));
    }

    @Test
    void theRecordOfTheAdjustmentsIsWhole() {
        for (CsvResource.Row row : JAR.table(
                        PairReader.DEVIATIONS,
                        "first",
                        "second",
                        "compared_with",
                        "points",
                        "blends",
                        "quantity",
                        "before",
                        "after")
                .rows()) {
            assertThat(row.number("before")).isNotNegative();
            assertThat(row.number("after")).isNotNegative();
            assertThat(row.text("quantity")).isIn("p_percent", "y", "blends_K");
        }
    }
}
