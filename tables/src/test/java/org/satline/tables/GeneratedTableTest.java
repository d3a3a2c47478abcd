package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.equation.EquationLibrary;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.ResourceFormatException;
import org.satline.saturation.Engine;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.saturation.SaturationProperty;

/**
 * A table of an equation that the library does not have: that of Tillner-Roth and Yokozeki (J. Phys. Chem. Ref. Data 26 (1997) 1273-1328)
 * under a name of its own.
 */
class GeneratedTableTest {
    private static final Path FILES =
            Path.of("src", "it", "consumer-own-equation", "src", "main", "resources", "consumer");
    private static final Refrigerant OWN = Refrigerant.substance("Own 32", "difluoromethane", 0.052024, "the paper");
    private static final FluidModel MODEL =
            FluidModel.of(OWN, EquationLibrary.standard().with(files()));
    private static final GeneratedTable MADE = GeneratedTable.of(MODEL);

    private static Map<String, byte[]> files() {
        Map<String, byte[]> files = new HashMap<>();
        for (String name : List.of("equation.csv", "ideal-terms.csv", "residual-terms.csv", "check-values.csv")) {
            try {
                files.put(name, Files.readAllBytes(FILES.resolve(name)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return files;
    }

    /** 813.1 kPa at 0 degC, as widely printed tables based on this equation have it (from memory): half of the last digit. */
    @Test
    void itAnswersAsPrintedTablesDo() {
        SaturationCurve curve = MADE.curve();
        assertThat(curve.engine()).isEqualTo(Engine.TABLE);
        assertThat(curve.refrigerant()).isEqualTo(OWN);
        assertThat(curve.bubblePressurePa(273.15)).isBetween(813_050.0, 813_150.0);
    }

    @Test
    void itsCertificateKeepsEveryBound() {
        assertThat(MADE.certificate().entries()).isNotEmpty().allMatch(Certificate.Entry::keepsBound);
    }

    @Test
    void itIsReadBackAndSolvesItsOwnEquationBeyondItsColumns() {
        SaturationCurve read =
                GeneratedTable.read(MODEL, "own.saturation", MADE.toBytes()).curve();
        SaturationCurve solved = SaturationCurves.solving(MODEL);
        assertThat(read.bubblePressurePa(273.15)).isEqualTo(MADE.curve().bubblePressurePa(273.15));
        double nearTheEnd = solved.bubbleTemperatureRange().high() * (1 - 1e-9);
        List<SaturationProperty> beyond = Stream.of(SaturationProperty.values())
                .filter(property -> !property.askedByPressure())
                .filter(property -> read.engineAt(property, nearTheEnd) == Engine.EQUATION)
                .toList();
        assertThat(beyond)
                .isNotEmpty()
                .allSatisfy(property ->
                        assertThat(read.value(property, nearTheEnd)).isEqualTo(solved.value(property, nearTheEnd)));
    }

    @Test
    void aTableOfAnotherRefrigerantIsRefused() {
        Refrigerant other = Refrigerant.substance("Own 32b", "difluoromethane", 0.052024, "the paper");
        Map<String, byte[]> files = files();
        files.put(
                "equation.csv",
                text(files, "equation.csv").replace("Own 32", "Own 32b").getBytes(StandardCharsets.UTF_8));
        FluidModel model = FluidModel.of(other, EquationLibrary.standard().with(files));
        assertThatThrownBy(() -> GeneratedTable.read(model, "own.saturation", MADE.toBytes()))
                .isInstanceOf(ResourceFormatException.class);
    }

    /** A sixth digit of the largest residual coefficient: the check values of the paper, printed shorter, would pass it. */
    @Test
    void aTableOfAnotherCoefficientIsRefused() {
        Map<String, byte[]> files = files();
        String terms = text(files, "residual-terms.csv");
        assertThat(terms).contains("1.046634");
        files.put("residual-terms.csv", terms.replace("1.046634", "1.046644").getBytes(StandardCharsets.UTF_8));
        FluidModel model = FluidModel.of(OWN, EquationLibrary.standard().with(files));
        assertThatThrownBy(() -> GeneratedTable.read(model, "own.saturation", MADE.toBytes()))
                .isInstanceOf(ResourceFormatException.class);
    }

    @Test
    void aDamagedFileIsRefused() {
        byte[] bytes = MADE.toBytes();
        bytes[bytes.length / 2] ^= 1;
        assertThatThrownBy(() -> GeneratedTable.read(MODEL, "own.saturation", bytes))
                .isInstanceOf(ResourceFormatException.class);
    }

    @Test
    void anUnusualReferenceStateIsRefused() {
        assertThatThrownBy(() -> GeneratedTable.of(MODEL.with(ReferenceState.MINUS_40_CELSIUS)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static String text(Map<String, byte[]> files, String name) {
        return new String(files.get(name), StandardCharsets.UTF_8);
    }
}
