package org.satline.equilibrium;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.satline.equation.EquationLibrary;
import org.satline.equation.KnownDifference;
import org.satline.equation.MixtureEvidence;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/**
 * The list of known differences holds exactly the blends that differ by more than 0.5 K at 101.325 kPa, with the figures of today's model.
 * Published points: ASHRAE Handbook Fundamentals 2021 (SI), ch. 29, table 2.
 */
@Tag("reference")
class KnownDifferencesTest {
    /** Half of the last digit of the list. */
    private static final double ROUNDING = 0.005 + 1e-6;

    private final List<String> wrong = new ArrayList<>();

    @Test
    void theListIsThatOfTheModel() {
        int listed = 0;
        for (Refrigerant blend : Catalogue.standard().blends()) {
            if (!blend.hasComposition()
                    || !blend.composition().components().stream()
                            .allMatch(c -> EquationLibrary.standard()
                                    .hasEquation(c.substance().designation()))) {
                continue;
            }
            FluidModel model = FluidModel.of(blend);
            Optional<KnownDifference> known = MixtureEvidence.of(blend).knownDifference();
            listed += known.isPresent() ? 1 : 0;
            OptionalDouble bubble = OptionalDouble.empty();
            OptionalDouble dew = OptionalDouble.empty();
            if (model.bubblePressureRange().low() <= 101325) {
                bubble = difference(
                        model.bubbleAtPressure(101325).temperatureK(),
                        blend.published().bubblePoint());
                dew = difference(
                        model.dewAtPressure(101325).temperatureK(),
                        blend.published().dewPoint());
            }
            double worst = Math.max(Math.abs(bubble.orElse(0)), Math.abs(dew.orElse(0)));
            if (worst > 0.5 != known.isPresent()) {
                wrong.add(blend.designation() + " " + worst);
            } else if (known.isPresent()) {
                compare(blend, known.get().bubbleK(), bubble);
                compare(blend, known.get().dewK(), dew);
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(listed).isEqualTo(45);
    }

    private void compare(Refrigerant blend, OptionalDouble listed, OptionalDouble found) {
        if (listed.isPresent() != found.isPresent() || Math.abs(listed.orElse(0) - found.orElse(0)) > ROUNDING) {
            wrong.add(blend.designation() + " lists " + listed + ", the model gives " + found);
        }
    }

    private static OptionalDouble difference(double computed, Optional<Temperature> published) {
        return published.map(t -> OptionalDouble.of(computed - t.kelvins())).orElseGet(OptionalDouble::empty);
    }
}
