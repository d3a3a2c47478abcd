package org.satline.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.satline.equilibrium.Range;
import org.satline.quantity.OutOfValidityException;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationProperty;

/** A table answers up to the ends that it states, also where exponential functions and logarithms differ in their last bit. */
class OtherMathTest {
    private static Range range(SaturationCurve curve, SaturationProperty property) {
        if (property.askedByPressure()) {
            return property.onBubbleLine() ? curve.bubblePressureRange() : curve.dewPressureRange();
        }
        return property.onBubbleLine() ? curve.bubbleTemperatureRange() : curve.dewTemperatureRange();
    }

    /** Questions at the very ends that are refused. */
    private static long refused(Stream<SaturationCurve> curves) {
        return curves.flatMap(curve -> Stream.of(SaturationProperty.values()).flatMap(property -> {
                    Range range = range(curve, property);
                    return Stream.of(range.low(), Math.nextUp(range.low()), range.high(), Math.nextDown(range.high()))
                            .filter(at -> isRefused(curve, property, at));
                }))
                .count();
    }

    private static boolean isRefused(SaturationCurve curve, SaturationProperty property, double at) {
        try {
            return !(curve.value(property, at) > Double.NEGATIVE_INFINITY);
        } catch (OutOfValidityException e) {
            return true;
        }
    }

    @Test
    void everyTableAnswersAtItsEndsAndNotBeyond() {
        assertThat(refused(Tables.all())).isZero();
        SaturationCurve curve = Tables.of("R-404A");
        for (SaturationProperty property : SaturationProperty.values()) {
            assertThat(isRefused(
                            curve, property, Math.nextUp(range(curve, property).high())))
                    .isTrue();
        }
    }

    /** Without the machine's own instructions Java computes both by its portable library, which differs in last bits. */
    @ParameterizedTest
    @ValueSource(strings = {"_dexp", "_dlog,_dpow"})
    void soDoesAJavaThatComputesExponentialsOtherwise(String intrinsics) throws IOException, InterruptedException {
        Process other = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+IgnoreUnrecognizedVMOptions",
                        "-XX:+UnlockDiagnosticVMOptions",
                        "-XX:DisableIntrinsic=" + intrinsics,
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path")
                                + System.getProperty("path.separator")
                                + System.getProperty("jdk.module.path", ""),
                        Asked.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(other.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(other.waitFor()).as(said).isZero();
        assertThat(said.strip()).isEqualTo("0");
    }

    /** Asks the tables whose ends moved furthest, and two that fill limits need. */
    static final class Asked {
        private Asked() {}

        public static void main(String[] args) {
            System.out.println(refused(Stream.of("R-32", "R-404A", "R-113", "R-402A", "R-402B", "R-403A", "R-245fa")
                    .map(Catalogue.standard()::find)
                    .map(TableProvider::table)
                    .flatMap(Optional::stream)));
        }
    }
}
