package org.satline.wording;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.satline.quantity.Quantity;
import org.satline.quantity.UnitSystem;

/** What is printed is what the quantity's own reader takes back. */
class NumberPrinterProperties {
    /** Every order of magnitude alike, of both signs. */
    @Provide
    Arbitrary<Double> values() {
        return Arbitraries.doubles()
                .between(-4, 6)
                .ofScale(6)
                .flatMap(exponent -> Arbitraries.of(1, -1).map(sign -> sign * Math.pow(10, exponent)));
    }

    @Property
    void printedLandsWithinHalfAUnitOfTheLastDigit(
            @ForAll PrintedQuantities kind, @ForAll("values") double value, @ForAll UnitSystem system) {
        Quantity<?> quantity = kind.of(value);
        String lead = PrintedQuantities.lead(NumberPrinter.of(system).print(quantity));
        Quantity<?> read = kind.readLead(NumberPrinter.of(system).print(quantity));
        String number = lead.substring(0, lead.indexOf(' '));
        String unit = lead.substring(lead.indexOf(' ') + 1);
        int decimals = number.indexOf('.') < 0 ? 0 : number.length() - 1 - number.indexOf('.');
        double halfUnit = 0.5 * Math.pow(10, -decimals);
        // conversions there and back: some roundings of the number, which is at most 1e6 of the units here and 460 degF
        // beside
        double noise = 8 * Math.ulp(Math.abs(quantity.valueIn(unit)) + 460);
        assertThat(Math.abs(read.valueIn(unit) - quantity.valueIn(unit))).isLessThanOrEqualTo(halfUnit + noise);
        assertThat(number).doesNotMatch("-0(\\.0*)?");
    }

    @Property
    void limitsAreNeverOnTheUnsafeSide(
            @ForAll PrintedQuantities kind, @ForAll("values") double value, @ForAll UnitSystem system) {
        Quantity<?> quantity = kind.of(value);
        NumberPrinter printer = NumberPrinter.of(system);
        // what the printer calls noise: 1e-14 of the number, of 1000 more on a scale with a shifted zero
        double noise = 2e-14 * (Math.abs(quantity.si()) + (kind == PrintedQuantities.TEMPERATURE ? 1000 : 0));
        assertThat(kind.readLead(printer.down(quantity)).si()).isLessThanOrEqualTo(quantity.si() + noise);
        assertThat(kind.readLead(printer.up(quantity)).si()).isGreaterThanOrEqualTo(quantity.si() - noise);
    }

    @Property
    void bothOrdersPrintTheSameTwoNumbers(@ForAll PrintedQuantities kind, @ForAll("values") double value) {
        Quantity<?> quantity = kind.of(value);
        String trade = NumberPrinter.of(UnitSystem.US).print(quantity);
        String si = NumberPrinter.of(UnitSystem.SI).print(quantity);
        String tradeLead = PrintedQuantities.lead(trade);
        String siLead = PrintedQuantities.lead(si);
        assertThat(si).isEqualTo(siLead + " (" + tradeLead + ")");
        assertThat(trade).isEqualTo(tradeLead + " (" + siLead.replace(" gauge", "") + ")");
    }
}
