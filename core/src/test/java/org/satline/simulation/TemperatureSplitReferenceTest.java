package org.satline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.satline.charge.TargetTemperatureSplit;
import org.satline.charge.margin.MeteringDevice;
import org.satline.measurement.Reading;
import org.satline.quantity.Temperature;

/**
 * Temperature split of a rightly charged system with its full airflow against the published target: California Energy Code, RA3.2 (2008),
 * target temperature split table (from memory). Its tolerance, 3 degF, is what a sound system is granted there; no constant of the model
 * was fitted to the table.
 */
class TemperatureSplitReferenceTest {
    private static final double TOLERANCE_F = 3;

    @ParameterizedTest
    @EnumSource(MeteringDevice.class)
    void staysWithinThePublishedToleranceAllOverTheTable(MeteringDevice metering) {
        assertThat(differences(metering, 95)).hasSizeGreaterThan(15).allMatch(d -> Math.abs(d) <= TOLERANCE_F);
    }

    /**
     * The table does not ask for the outdoor air, the cooling of a system depends on it: one corner, 84 degF indoors and 75 degF outdoors,
     * passes it.
     */
    @ParameterizedTest
    @EnumSource(MeteringDevice.class)
    void staysNearTheTableInMildAndHotWeather(MeteringDevice metering) {
        List<Double> differences = new ArrayList<>(differences(metering, 75));
        differences.addAll(differences(metering, 105));
        assertThat(differences).filteredOn(d -> Math.abs(d) > TOLERANCE_F).hasSizeLessThanOrEqualTo(1);
        assertThat(differences.stream().mapToDouble(d -> d).average().orElseThrow())
                .isCloseTo(0, within(TOLERANCE_F / 3)); // no bias that would use up the tolerance
    }

    private static List<Double> differences(MeteringDevice metering, double outdoor) {
        SimulatedSystem system = Systems.typical("R-410A", metering);
        List<Double> differences = new ArrayList<>();
        for (double dryBulb = 72; dryBulb <= 84; dryBulb += 4) {
            for (double wetBulb = 55; wetBulb <= Math.min(72, dryBulb - 4); wetBulb += 4) {
                difference(system, outdoor, dryBulb, wetBulb).ifPresent(differences::add);
            }
        }
        return differences;
    }

    /** At the rating point some 25 to 33 % of the cooling goes into moisture (common practice for air conditioners, from memory). */
    @Test
    void driesTheAirAsUsual() {
        SteadyState state =
                Systems.at(Systems.typical("R-410A", MeteringDevice.EXPANSION_VALVE), 1, ImposedFault.none());
        double tonsToTheRoom =
                state.cooling().tonsOfRefrigeration() / (1 + 400 * 0.365 / 3516.853); // less 0.365 W each cfm
        double kilogramsOfAir = 400 * tonsToTheRoom * 0.000471947 * 1.2;
        double split = AirConditions.rated()
                .returnDryBulb()
                .minus(state.supplyDryBulb())
                .kelvins();
        double blower =
                365 / (1000 * 0.000471947 * 1.2 * Assumptions.standard().air.heatCapacity());
        double sensible = kilogramsOfAir
                * Assumptions.standard().air.heatCapacity()
                * (split + blower)
                / state.cooling().watts();
        assertThat(1 - sensible).isBetween(0.25, 0.33);
    }

    /** Half the airflow: the split leaves the published tolerance upwards. */
    @Test
    void showsLowAirflow() {
        SimulatedSystem system = Systems.typical("R-410A", MeteringDevice.EXPANSION_VALVE);
        SteadyState state = Systems.at(system, 1, ImposedFault.lowEvaporatorAirflow(0.5));
        assertThat(AirConditions.rated()
                                .returnDryBulb()
                                .minus(state.supplyDryBulb())
                                .fahrenheitDegrees()
                        - target(80, 67).orElseThrow())
                .isGreaterThan(TOLERANCE_F);
    }

    private static Optional<Double> difference(SimulatedSystem system, double outdoor, double dryBulb, double wetBulb) {
        return target(dryBulb, wetBulb).map(target -> {
            AirConditions air = new AirConditions(
                    Temperature.ofFahrenheit(outdoor),
                    Temperature.ofFahrenheit(dryBulb),
                    Temperature.ofFahrenheit(wetBulb));
            return air.returnDryBulb()
                            .minus(Systems.at(system, 1, air, ImposedFault.none())
                                    .supplyDryBulb())
                            .fahrenheitDegrees()
                    - target;
        });
    }

    private static Optional<Double> target(double dryBulb, double wetBulb) {
        return TargetTemperatureSplit.target(
                        Reading.exact(Temperature.ofFahrenheit(dryBulb)),
                        Reading.exact(Temperature.ofFahrenheit(wetBulb)))
                .map(target -> target.value().fahrenheitDegrees());
    }
}
