package org.satline.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.satline.refrigerant.Catalogue;

/** Refrigerant in the oil of the compressor. */
class OilTest {
    private static final WorkingFluid R410A =
            WorkingFluid.of(Catalogue.standard().find("R-410A"));

    /** Published charts, from memory: about 9 % by mass of R-410A in ester oil at 60 degC and 1 MPa; 1 % is what memory is good for. */
    @Test
    void holdsWhatChartsSay() {
        double superheat = 60 + 273.15 - 20 - R410A.dewK(1e6);
        double dissolved = new Oil(1, Assumptions.standard()).dissolved(R410A, 1e6, superheat);
        assertThat(dissolved / (1 + dissolved)).isCloseTo(0.09, within(0.01));
    }

    @Test
    void holdsMoreTheColderItIsAndTheHigherThePressure() {
        Oil oil = Oil.of(10_000, Assumptions.standard());
        assertThat(oil.kilograms()).isCloseTo(1, within(1e-12));
        assertThat(oil.dissolved(R410A, 1e6, 5)).isGreaterThan(oil.dissolved(R410A, 1e6, 15));
        assertThat(oil.dissolved(R410A, 1e6, 5)).isGreaterThan(oil.dissolved(R410A, 0.8e6, 5));
        assertThat(oil.dissolved(R410A, 1e6, -40)).isEqualTo(oil.dissolved(R410A, 1e6, -15));
    }
}
