package org.satline.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.satline.equilibrium.Range;
import org.satline.ledger.LedgerReading;
import org.satline.quantity.PressureDifference;

/** Numbers come back to the last bit, whatever they are. */
class ExactNumbersProperties {
    private final SatlineJson json = new SatlineJson();
    private final ObjectMapper decimals = new ObjectMapper()
            .registerModule(new SatlineModule())
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    /** Every bit pattern that is a finite number, subnormal ones and both zeros among them. */
    @Provide
    Arbitrary<Double> finite() {
        return Arbitraries.longs().map(Double::longBitsToDouble).filter(Double::isFinite);
    }

    /** Those that a quantity takes: beyond, another unit of it would be infinite. */
    @Provide
    Arbitrary<Double> held() {
        return finite().filter(number -> Math.abs(number) <= 1e300);
    }

    @Property
    void bareNumbersKeepEveryBit(@ForAll("finite") double number) throws Exception {
        String text = json.write(new Range(number, -number));
        Range read = json.read(text, Range.class);
        assertThat(Double.doubleToLongBits(read.low())).isEqualTo(Double.doubleToLongBits(number));
        assertThat(Double.doubleToLongBits(read.high())).isEqualTo(Double.doubleToLongBits(-number));
        assertThat(decimals.readValue(text, Range.class).low()).isEqualTo(number);
    }

    @Property
    void quantitiesKeepEveryBit(@ForAll("held") double number) {
        PressureDifference before = PressureDifference.ofPascals(number);
        PressureDifference after = json.read(json.write(before), PressureDifference.class);
        assertThat(Double.doubleToLongBits(after.pascals())).isEqualTo(Double.doubleToLongBits(before.pascals()));
    }

    @Property
    void wholeNumbersKeepEveryDigit(@ForAll long number) {
        LedgerReading.Damage before = new LedgerReading.Damage(number, LedgerReading.Damage.Kind.UNREADABLE, "");
        assertThat(json.read(json.write(before), LedgerReading.Damage.class)).isEqualTo(before);
    }
}
