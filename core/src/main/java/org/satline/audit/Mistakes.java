package org.satline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.satline.audit.AuditCase.Expected;
import org.satline.audit.LikelyCause.Kind;
import org.satline.audit.Mistake.Code;
import org.satline.equilibrium.ReferenceState;
import org.satline.explanation.Figure;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Temperature;

/** The mistakes that are tried, but for those that depend on the rows: an unknown zero, another refrigerant. */
final class Mistakes {
    /** 273.15 less 273, as some calculators assume. */
    private static final double CELSIUS_ZERO_SLIP_K = 0.15;

    private static final List<String> GAUGE_UNITS =
            List.of("Pa gauge", "kPa gauge", "bar gauge", "MPa gauge", "psig", "inHg vacuum");

    private final List<Hypothesis> all = new ArrayList<>();

    private Mistakes() {}

    static List<Hypothesis> all() {
        Mistakes made = new Mistakes();
        made.gauge();
        made.altitude();
        made.lines();
        made.temperatureScales();
        made.units();
        made.celsiusZero();
        made.references();
        return List.copyOf(made.all);
    }

    private void add(Kind kind, Code code, Function<AuditCase, Optional<Expected>> effect) {
        add(kind, code, List.of(), effect);
    }

    private void add(Kind kind, Code code, List<Figure> figures, Function<AuditCase, Optional<Expected>> effect) {
        all.add(new Hypothesis(new Mistake(kind, code, figures), false, effect));
    }

    private static boolean pressure(AuditCase c) {
        return c.question().quantity().dimension() == Dimension.PRESSURE;
    }

    private static double local(AuditCase c) {
        return c.atmosphere().pressure().pascals();
    }

    private static double seaLevel() {
        return Atmosphere.standard().pressure().pascals();
    }

    private static Optional<Expected> when(boolean applies, java.util.function.Supplier<Expected> expected) {
        return applies ? Optional.of(expected.get()) : Optional.empty();
    }

    /** The pressure that was asked, moved. */
    private static Optional<Expected> askedAt(AuditCase c, boolean applies, double shift) {
        return when(
                applies && c.question().pressurePa().isPresent(),
                () -> c.expected(
                        c.question().atPressure(c.question().pressurePa().getAsDouble() + shift), c.unit()));
    }

    private void gauge() {
        add(
                Kind.GAUGE_OR_ABSOLUTE,
                Code.GAUGE_CALLED_ABSOLUTE,
                c -> when(pressure(c) && !c.unit().isGauge(), () -> c.moved(-local(c))));
        add(
                Kind.GAUGE_OR_ABSOLUTE,
                Code.SEA_LEVEL_GAUGE_CALLED_ABSOLUTE,
                c -> when(
                        pressure(c) && !c.unit().isGauge() && c.row().altitude().isPresent(),
                        () -> c.moved(-seaLevel())));
        add(
                Kind.GAUGE_OR_ABSOLUTE,
                Code.ABSOLUTE_CALLED_GAUGE,
                c -> when(pressure(c) && c.unit().isGauge(), () -> c.moved(local(c))));
        add(Kind.GAUGE_OR_ABSOLUTE, Code.ASKED_AS_GAUGE, c -> askedAt(c, true, local(c)));
        add(Kind.GAUGE_OR_ABSOLUTE, Code.ASKED_LESS_ATMOSPHERE, c -> askedAt(c, true, -local(c)));
    }

    private void altitude() {
        add(
                Kind.ALTITUDE_IGNORED,
                Code.SEA_LEVEL_ANSWER,
                c -> when(
                        pressure(c) && c.unit().isGauge() && c.row().altitude().isPresent(),
                        () -> c.moved(local(c) - seaLevel())));
        add(
                Kind.ALTITUDE_IGNORED,
                Code.SEA_LEVEL_QUESTION,
                c -> askedAt(c, c.row().altitude().isPresent(), seaLevel() - local(c)));
    }

    private void lines() {
        add(
                Kind.BUBBLE_AND_DEW,
                Code.OTHER_LINE,
                c -> c.question()
                        .quantity()
                        .twin()
                        .map(q -> c.expected(c.question().of(q), c.unit())));
        add(
                Kind.BUBBLE_AND_DEW,
                Code.GLIDE_SIGN,
                c -> when(c.question().quantity() == AuditedQuantity.GLIDE, () -> c.moved(-2 * c.ours())));
        add(
                Kind.MEAN_LINE,
                Code.MIDDLE_LINE,
                c -> when(
                        c.question().quantity().onOneLine()
                                && (pressure(c) || c.question().quantity().dimension() == Dimension.TEMPERATURE),
                        () -> middle(c)));
    }

    private static Expected middle(AuditCase c) {
        AuditedQuantity twin = c.question().quantity().twin().orElseThrow();
        Expected other = c.expected(c.question().of(twin), c.unit());
        return new Expected(
                (c.comparison().ours() + other.value()) / 2,
                Math.max(other.width(), c.comparison().tolerance().width()));
    }

    private void temperatureScales() {
        add(
                Kind.CELSIUS_OR_FAHRENHEIT,
                Code.CELSIUS_AS_FAHRENHEIT,
                c -> askedWarm(c, t -> Temperature.ofFahrenheit(t.celsius())));
        add(
                Kind.CELSIUS_OR_FAHRENHEIT,
                Code.FAHRENHEIT_AS_CELSIUS,
                c -> askedWarm(c, t -> Temperature.ofCelsius(t.fahrenheit())));
        otherUnits(Kind.CELSIUS_OR_FAHRENHEIT, Dimension.TEMPERATURE);
        otherUnits(Kind.CELSIUS_OR_FAHRENHEIT, Dimension.TEMPERATURE_DIFFERENCE);
        add(
                Kind.CELSIUS_OR_FAHRENHEIT,
                Code.DIFFERENCE_AS_TEMPERATURE,
                c -> when(
                        c.question().quantity().dimension() == Dimension.TEMPERATURE_DIFFERENCE,
                        () -> c.expected(
                                c.question(),
                                AnswerUnit.ofDifferenceTakenForTemperature(
                                        c.unit().spelling()))));
    }

    private static Optional<Expected> askedWarm(AuditCase c, java.util.function.UnaryOperator<Temperature> slip) {
        return when(c.question().temperatureK().isPresent(), () -> {
            Temperature asked =
                    Temperature.ofKelvins(c.question().temperatureK().getAsDouble());
            return c.expected(c.question().atTemperature(slip.apply(asked).kelvins()), c.unit());
        });
    }

    private void units() {
        for (Dimension dimension : Dimension.values()) {
            if (dimension != Dimension.TEMPERATURE && dimension != Dimension.TEMPERATURE_DIFFERENCE) {
                otherUnits(Kind.UNIT, dimension);
            }
        }
        for (String unit : GAUGE_UNITS) {
            add(
                    Kind.UNIT,
                    Code.OTHER_UNIT,
                    List.of(Figure.of("unit", unit)),
                    c -> when(
                            pressure(c) && c.unit().isGauge(),
                            () -> c.expected(c.question(), AnswerUnit.of(Dimension.PRESSURE, unit, c.atmosphere()))));
        }
    }

    private void otherUnits(Kind kind, Dimension dimension) {
        for (String unit : dimension.usual()) {
            add(
                    kind,
                    Code.OTHER_UNIT,
                    List.of(Figure.of("unit", unit)),
                    c -> when(
                            c.question().quantity().dimension() == dimension
                                    && !c.unit().isGauge(),
                            () -> c.expected(c.question(), AnswerUnit.of(dimension, unit, c.atmosphere()))));
        }
    }

    private void celsiusZero() {
        for (int sign : new int[] {-1, 1}) {
            double shift = sign * CELSIUS_ZERO_SLIP_K;
            List<Figure> amount = List.of(Figure.of("amount", CELSIUS_ZERO_SLIP_K, "K"));
            add(
                    Kind.CELSIUS_ZERO,
                    sign < 0 ? Code.USED_TOO_LOW : Code.USED_TOO_HIGH,
                    amount,
                    c -> when(
                            c.question().temperatureK().isPresent(),
                            () -> c.expected(
                                    c.question()
                                            .atTemperature(
                                                    c.question().temperatureK().getAsDouble() + shift),
                                    c.unit())));
            add(
                    Kind.CELSIUS_ZERO,
                    sign < 0 ? Code.GIVEN_TOO_LOW : Code.GIVEN_TOO_HIGH,
                    amount,
                    c -> when(c.question().quantity().dimension() == Dimension.TEMPERATURE, () -> c.moved(shift)));
        }
    }

    private void references() {
        for (ReferenceState state :
                List.of(ReferenceState.IIR, ReferenceState.MINUS_40_CELSIUS, ReferenceState.NORMAL_BOILING_POINT)) {
            add(
                    Kind.REFERENCE_STATE,
                    Code.OTHER_ZERO,
                    List.of(Figure.of("state", state.description())),
                    c -> c.question().quantity().dimension().countsFromReference()
                            ? c.fluid().from(state).map(c::expected)
                            : Optional.empty());
        }
    }
}
