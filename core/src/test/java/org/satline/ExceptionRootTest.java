package org.satline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.util.concurrent.CompletionException;
import org.junit.jupiter.api.Test;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.resource.ResourceFormatException;

/** What a program does with the root of the exceptions; that each has it is held by {@link ArchitectureTest}. */
class ExceptionRootTest {
    @Test
    void theRootIsFoundThroughWhatWrapsIt() {
        Throwable unknown = catchThrowable(() -> Catalogue.standard().find("R-999"));
        assertThat(SatlineException.in(new CompletionException(new IllegalStateException(unknown))))
                .containsSame((SatlineException) unknown);
        assertThat(((SatlineException) unknown).origin()).isEqualTo(SatlineException.Origin.QUESTION);
        assertThat(new ResourceFormatException("blends.csv", 3, "is cut off").origin())
                .isEqualTo(SatlineException.Origin.DATA);
        assertThatThrownBy(() -> Temperature.parse("12 metres"))
                .isInstanceOf(IllegalArgumentException.class)
                .isInstanceOf(SatlineException.class);
    }

    @Test
    void whatOthersThrowHasNone() {
        IllegalStateException ring = new IllegalStateException("one");
        ring.initCause(new IllegalStateException("two", ring));
        assertThat(SatlineException.in(ring)).isEmpty();
        assertThat(SatlineException.in(new NullPointerException("text"))).isEmpty();
    }
}
