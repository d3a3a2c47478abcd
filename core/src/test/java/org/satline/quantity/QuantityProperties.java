package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class QuantityProperties {

    @Provide
    Arbitrary<Quantities.Access> accesses() {
        return Arbitraries.of(Quantities.ACCESS);
    }

    @Provide
    Arbitrary<Quantities.Textual> quantities() {
        return Arbitraries.of(Quantities.ALL);
    }

    /** Every order of magnitude alike, so that small values are tried as often as large ones. */
    @Provide
    Arbitrary<Double> magnitudes() {
        return Arbitraries.doubles().between(-6, 6).ofScale(6).map(exponent -> Math.pow(10, exponent));
    }

    @Property
    void factoryAndAccessorAreInverse(
            @ForAll("accesses") Quantities.Access access, @ForAll("magnitudes") double value) {
        // at most three roundings each way; on the shifted scales they happen at up to 460 degF beside the value
        double scale = access.name().startsWith("Temperature ") ? value + 460 : value;
        double read = access.accessor().apply(access.factory().apply(value));
        assertThat(read).isCloseTo(value, within(6 * Math.ulp(scale)));
    }

    @Property
    void everyFactoryRefusesWhatIsNotFinite(@ForAll("accesses") Quantities.Access access) {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> access.factory().apply(bad))
                    .withMessageContaining(String.valueOf(bad));
        }
    }

    @Property
    void printedTextReadsBack(
            @ForAll("quantities") Quantities.Textual quantity,
            @ForAll("magnitudes") double value,
            @ForAll @IntRange(max = 11) int unitIndex,
            @ForAll @IntRange(min = 6, max = 15) int decimals) {
        List<String> units = Quantities.units(quantity);
        String unit = units.get(unitIndex % units.size());
        String number = BigDecimal.valueOf(value).toPlainString();
        Quantity<?> original = quantity.parse(number + " " + unit);
        String printed = original.in(unit, decimals);
        // half of the last printed digit, and the roundings of the conversions
        double tolerance = 0.51 * Math.pow(10, -decimals) + 8 * Math.ulp(value + 460);
        assertThat(quantity.parse(printed).valueIn(unit)).as(printed).isCloseTo(value, within(tolerance));
    }

    @Property
    void formattedTextReadsBack(
            @ForAll("quantities") Quantities.Textual quantity,
            @ForAll("magnitudes") double value,
            @ForAll UnitSystem system) {
        Quantity<?> original =
                quantity.parse(value + " " + Quantities.units(quantity).get(0));
        double read = quantity.parse(original.format(system)).si();
        // six significant digits; temperatures and their differences are printed to 0.01 degC or 0.01 degF
        double tolerance = quantity.name().startsWith("temperature") ? 0.0051 : 5.1e-6 * Math.abs(original.si());
        assertThat(read).isCloseTo(original.si(), within(tolerance));
    }

    @Property
    void gaugeAndAbsoluteAreInverse(
            @ForAll @DoubleRange(max = 1e7) double pascals,
            @ForAll @DoubleRange(min = -500, max = 11000) double metres) {
        Atmosphere atmosphere = Atmosphere.atAltitude(Length.ofMetres(metres));
        Pressure pressure = Pressure.ofPascals(pascals);
        Pressure back = Pressure.ofGauge(pressure.gauge(atmosphere), atmosphere);
        // one rounding each way, at the larger of pressure and atmosphere
        double rounding = Math.ulp(Math.max(pascals, atmosphere.pressure().pascals()));
        assertThat(Math.abs(back.pascals() - pascals)).isLessThanOrEqualTo(rounding);
    }

    @Property
    void atmosphereThinsWithAltitude(
            @ForAll @DoubleRange(min = -500, max = 10999) double low,
            @ForAll @DoubleRange(min = 0.01, max = 1) double step) {
        Pressure below = Atmosphere.atAltitude(Length.ofMetres(low)).pressure();
        Pressure above = Atmosphere.atAltitude(Length.ofMetres(low + step)).pressure();
        assertThat(above).isLessThan(below);
    }

    @Property
    void differenceOfTemperaturesBringsOneToTheOther(
            @ForAll @DoubleRange(min = 1, max = 1000) double from,
            @ForAll @DoubleRange(min = 1, max = 1000) double to) {
        Temperature start = Temperature.ofKelvins(from);
        Temperature end = Temperature.ofKelvins(to);
        assertThat(start.plus(end.minus(start)).kelvins()).isCloseTo(to, within(2 * Math.ulp(1000.0)));
        assertThat(end.minus(start)).isEqualTo(start.minus(end).negated());
    }

    @Property
    void orderAndEqualityFollowTheValue(@ForAll @From("magnitudes") double a, @ForAll @From("magnitudes") double b) {
        assertThat(Mass.ofKilograms(a).compareTo(Mass.ofKilograms(b))).isEqualTo(Double.compare(a, b));
        assertThat(Mass.ofKilograms(a).equals(Mass.ofKilograms(b))).isEqualTo(a == b);
        assertThat(Mass.ofKilograms(a)).hasSameHashCodeAs(Mass.ofKilograms(a));
    }
}
