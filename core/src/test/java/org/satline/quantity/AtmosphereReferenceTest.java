package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@Tag("reference")
class AtmosphereReferenceTest {

    @ParameterizedTest(name = "{0} m: {1} kPa")
    @CsvSource(textBlock = """
        # ISO 2533:1975, table by geometric altitude: z/m, p/kPa; from memory. The US Standard Atmosphere 1976 agrees.
        -500, 107.478
           0, 101.325
         500, 95.461
        1000, 89.876
        2000, 79.501
        3000, 70.121
        4000, 61.660
        5000, 54.048
        """)
    void pressureAtAltitudeAgreesToAllPrintedDigits(double metres, BigDecimal printedKilopascals) {
        double halfOfLastDigit = printedKilopascals.ulp().doubleValue() / 2; // the table rounds
        Atmosphere atmosphere = Atmosphere.atAltitude(Length.ofMetres(metres));
        assertThat(atmosphere.pressure().kilopascals())
                .isCloseTo(printedKilopascals.doubleValue(), within(halfOfLastDigit));
    }
}
