package org.satline.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.satline.audit.AuditCase.Expected;
import org.satline.audit.LikelyCause.Kind;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Temperature;

/** The mistakes that are tried, but for those that depend on the rows: an unknown zero, another refrigerant. */
final class Mistakes {
    /** 273.15 less 273, as half of the calculators of this world have it. */
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

    private void add(Kind kind, String description, Function<AuditCase, Optional<Expected>> effect) {
        all.add(new Hypothesis(kind, description, false, effect));
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
                "the answer is a gauge pressure, labelled absolute",
                c -> when(pressure(c) && !c.unit().isGauge(), () -> c.moved(-local(c))));
        add(
                Kind.GAUGE_OR_ABSOLUTE,
                "the answer is a gauge pressure at sea level, labelled absolute",
                c -> when(
                        pressure(c) && !c.unit().isGauge() && c.row().altitude().isPresent(),
                        () -> c.moved(-seaLevel())));
        add(
                Kind.GAUGE_OR_ABSOLUTE,
                "the answer is an absolute pressure, labelled gauge",
                c -> when(pressure(c) && c.unit().isGauge(), () -> c.moved(local(c))));
        add(
                Kind.GAUGE_OR_ABSOLUTE,
                "the absolute pressure of the question was taken for a gauge pressure",
                c -> askedAt(c, true, local(c)));
        add(
                Kind.GAUGE_OR_ABSOLUTE,
                "an atmosphere was taken off the absolute pressure of the question",
                c -> askedAt(c, true, -local(c)));
    }

    private void altitude() {
        add(
                Kind.ALTITUDE_IGNORED,
                "the gauge pressure counts from the atmosphere at sea level",
                c -> when(
                        pressure(c) && c.unit().isGauge() && c.row().altitude().isPresent(),
                        () -> c.moved(local(c) - seaLevel())));
        add(
                Kind.ALTITUDE_IGNORED,
                "the pressure of the question was made from a gauge reading with the atmosphere at sea level",
                c -> askedAt(c, c.row().altitude().isPresent(), seaLevel() - local(c)));
    }

    private void lines() {
        add(
                Kind.BUBBLE_AND_DEW,
                "the answer belongs to the other line: dew for bubble, vapour for liquid, or the reverse",
                c -> c.question()
                        .quantity()
                        .twin()
                        .map(q -> c.expected(c.question().of(q), c.unit())));
        add(
                Kind.BUBBLE_AND_DEW,
                "the glide has the wrong sign",
                c -> when(c.question().quantity() == AuditedQuantity.GLIDE, () -> c.moved(-2 * c.ours())));
        add(
                Kind.MEAN_LINE,
                "the answer lies in the middle between bubble and dew",
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
                "the Celsius number of the question was used as Fahrenheit",
                c -> askedWarm(c, t -> Temperature.ofFahrenheit(t.celsius())));
        add(
                Kind.CELSIUS_OR_FAHRENHEIT,
                "the Fahrenheit number of the question was used as Celsius",
                c -> askedWarm(c, t -> Temperature.ofCelsius(t.fahrenheit())));
        otherUnits(Kind.CELSIUS_OR_FAHRENHEIT, Dimension.TEMPERATURE);
        otherUnits(Kind.CELSIUS_OR_FAHRENHEIT, Dimension.TEMPERATURE_DIFFERENCE);
        add(
                Kind.CELSIUS_OR_FAHRENHEIT,
                "the difference was converted as if it were a temperature",
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
                    "the number is in " + unit,
                    c -> when(
                            pressure(c) && c.unit().isGauge(),
                            () -> c.expected(c.question(), AnswerUnit.of(Dimension.PRESSURE, unit, c.atmosphere()))));
        }
    }

    private void otherUnits(Kind kind, Dimension dimension) {
        for (String unit : dimension.usual()) {
            add(
                    kind,
                    "the number is in " + unit,
                    c -> when(
                            c.question().quantity().dimension() == dimension
                                    && !c.unit().isGauge(),
                            () -> c.expected(c.question(), AnswerUnit.of(dimension, unit, c.atmosphere()))));
        }
    }

    private void celsiusZero() {
        for (int sign : new int[] {-1, 1}) {
            double shift = sign * CELSIUS_ZERO_SLIP_K;
            String words = " is " + (sign < 0 ? "0.15 K too low" : "0.15 K too high");
            add(
                    Kind.CELSIUS_ZERO,
                    "the temperature used" + words,
                    c -> when(
                            c.question().temperatureK().isPresent(),
                            () -> c.expected(
                                    c.question()
                                            .atTemperature(
                                                    c.question().temperatureK().getAsDouble() + shift),
                                    c.unit())));
            add(
                    Kind.CELSIUS_ZERO,
                    "the temperature given" + words,
                    c -> when(c.question().quantity().dimension() == Dimension.TEMPERATURE, () -> c.moved(shift)));
        }
    }

    private void references() {
        for (ReferenceState state :
                List.of(ReferenceState.IIR, ReferenceState.MINUS_40_CELSIUS, ReferenceState.NORMAL_BOILING_POINT)) {
            add(
                    Kind.REFERENCE_STATE,
                    "the answer counts from another zero: " + state.description(),
                    c -> c.question().quantity().dimension().countsFromReference()
                            ? c.fluid().from(state).map(c::expected)
                            : Optional.empty());
        }
    }
}
