package org.satline.saturation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.satline.equation.PairStatus;

/**
 * Stated uncertainties of pairs cover measured bubble pressures that did not make them. After data or equations have
 * changed, {@code mvn -q -pl core test -Dtest=PairUncertaintyTest -Dsatline.uncertainty.write} writes the figures anew.
 */
class PairUncertaintyTest {
    private static final Path FILE = Path.of("src/main/resources/org/satline/saturation/pair-uncertainty.csv");
    private static final Pattern MARK = Pattern.compile("\\d+ measured bubble pressures");

    @Test
    void twiceTheUncertaintyCoversSetsThatWereHeldOut() {
        List<PairUncertaintyFit.Coverage> classes = PairUncertaintyFit.crossValidation();
        PairUncertaintyFit.Coverage all = classes.get(classes.size() - 1);
        assertThat(all.points()).isGreaterThan(1400);
        assertThat(all.twice()).isBetween(0.93, 0.97);
        for (PairUncertaintyFit.Coverage each : classes) {
            assertThat(each.low()).as(each.name()).isLessThanOrEqualTo(0.95);
            assertThat(each.high()).as(each.name()).isGreaterThanOrEqualTo(0.95);
            if (each.sources() >= 3) {
                assertThat(each.twice()).as(each.name()).isGreaterThan(0.85);
            }
        }
    }

    @Test
    void setsThatScatterDoNotHideWhatAGoodOneShows() {
        // R-32 + R-134a: two of four sets miss by 2 and 4 % and jump by as much from isotherm to isotherm; the best, of
        // 0.2 %, agrees within 0.4 %, and R-407C meets
        // its pseudo-pure equation within 0.5 %. The share lies between that paper's own statement (0.5 %, k = 2) and a
        // pair of which nothing was measured.
        PairUncertaintyFit fit = PairUncertaintyFit.toAllSets();
        assertThat(fit.figureOf("R-134a + R-32", PairStatus.FITTED, false)).isBetween(0.0025, fit.fitted(false));
    }

    @Test
    void theShippedFiguresAreThoseOfTheFit() throws IOException {
        List<String> expected = expected();
        if (System.getProperty("satline.uncertainty.write") != null) {
            Files.write(FILE, expected, StandardCharsets.UTF_8);
        }
        assertThat(Files.readAllLines(FILE, StandardCharsets.UTF_8)).isEqualTo(expected);
    }

    /** Rows of pairs and of the fitted class from the fit; the rest as it stands, what a gas costs by the fit. */
    private static List<String> expected() throws IOException {
        PairUncertaintyFit fit = PairUncertaintyFit.toAllSets();
        List<String> lines = new ArrayList<>();
        boolean written = false;
        for (String line : Files.readAllLines(FILE, StandardCharsets.UTF_8)) {
            if (line.startsWith("#") || line.startsWith("first,")) {
                lines.add(line);
            } else if (!MARK.matcher(line).find()) {
                if (!written) {
                    lines.addAll(fit.rows());
                    written = true;
                }
                lines.add(line.startsWith(",,fitted,,") ? fittedClass(fit) : other(fit, line));
            }
        }
        return lines;
    }

    private static String fittedClass(PairUncertaintyFit fit) {
        return String.format(
                Locale.ROOT,
                ",,fitted,,%.2f,%.2f,\"root mean square over the measured sets of fitted pairs, their own scatter"
                        + " and bias taken off; none of them entered a fit of this project\"",
                100 * fit.fitted(false),
                100 * fit.fitted(true));
    }

    private static String other(PairUncertaintyFit fit, String line) {
        String[] cells = line.split(",", 7);
        cells[5] = String.format(Locale.ROOT, "%.2f", 100 * fit.withGas(Double.parseDouble(cells[4]) / 100));
        return String.join(",", cells);
    }
}
