package org.satline.audit.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.satline.audit.answer.AuditCase;
import org.satline.audit.answer.AuditedQuantity;
import org.satline.audit.answer.Dimension;
import org.satline.audit.answer.Question;
import org.satline.audit.cause.LikelyCause.Kind;
import org.satline.audit.cause.Mistake.Code;
import org.satline.equilibrium.ReferenceState;
import org.satline.explanation.Figure;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/**
 * The mistakes with a question or a value that are tried, but for those that depend on the other rows: an unknown zero, another
 * refrigerant, another place of the table.
 */
final class Mistakes {
    /** How far off it is to take 0 degC for 273 K. */
    private static final double CELSIUS_ZERO_SLIP_K = 0.15;
    /** Atmospheres that people take for any place. */
    private static final List<String> ROUND_ATMOSPHERES = List.of("15 psia", "1 bar", "100 kPa");
    /** Steps of temperature of printed tables. */
    private static final List<Double> SPACINGS_K = List.of(2.0, 5.0, 10.0, 20.0);

    private static final List<Double> SPACINGS_DEG_F = List.of(2.0, 5.0, 10.0, 20.0);

    private final List<Slip.OfCase> questions = new ArrayList<>();
    private final List<Slip.OfCase> values = new ArrayList<>();

    private Mistakes() {
        gauge();
        altitude();
        lines();
        temperatureScales();
        celsiusZero();
        references();
        straightLines();
    }

    /** Those made with the question. */
    static List<Slip.OfCase> ofQuestions() {
        return List.copyOf(new Mistakes().questions);
    }

    /** Those made with the value. */
    static List<Slip.OfCase> ofValues() {
        return List.copyOf(new Mistakes().values);
    }

    private void question(Kind kind, Code code, List<Figure> figures, Function<AuditCase, Optional<Question>> effect) {
        questions.add(new Slip.OfCase(
                new Mistake(kind, code, figures), c -> effect.apply(c).map(c::asked)));
    }

    private void value(Kind kind, Code code, List<Figure> figures, Function<AuditCase, Optional<AuditCase>> effect) {
        values.add(new Slip.OfCase(new Mistake(kind, code, figures), effect));
    }

    static boolean pressure(AuditCase c) {
        return c.question().quantity().dimension() == Dimension.PRESSURE;
    }

    private static boolean temperature(AuditCase c) {
        return c.question().quantity().dimension() == Dimension.TEMPERATURE;
    }

    private static double local(AuditCase c) {
        return c.atmosphere().pressure().pascals();
    }

    private static double seaLevel() {
        return Atmosphere.standard().pressure().pascals();
    }

    /** Our answer moved by an amount, SI. */
    private static Optional<AuditCase> moved(AuditCase c, boolean applies, double si) {
        return applies ? Optional.of(c.answered(c.ours() + si)) : Optional.empty();
    }

    /** The pressure that was asked, moved. */
    private static Optional<Question> askedAt(AuditCase c, boolean applies, double shift) {
        return applies && c.question().pressurePa().isPresent()
                ? Optional.of(c.question().atPressure(c.question().pressurePa().getAsDouble() + shift))
                : Optional.empty();
    }

    private static Optional<Question> askedWarm(AuditCase c, UnaryOperator<Temperature> slip) {
        return c.question().temperatureK().isPresent()
                ? Optional.of(c.question()
                        .atTemperature(slip.apply(Temperature.ofKelvins(
                                        c.question().temperatureK().getAsDouble()))
                                .kelvins()))
                : Optional.empty();
    }

    private void gauge() {
        Kind kind = Kind.GAUGE_OR_ABSOLUTE;
        value(
                kind,
                Code.GAUGE_CALLED_ABSOLUTE,
                List.of(),
                c -> moved(c, pressure(c) && !c.unit().isGauge(), -local(c)));
        value(
                kind,
                Code.SEA_LEVEL_GAUGE_CALLED_ABSOLUTE,
                List.of(),
                c -> moved(
                        c,
                        pressure(c) && !c.unit().isGauge() && c.row().altitude().isPresent(),
                        -seaLevel()));
        value(
                kind,
                Code.ABSOLUTE_CALLED_GAUGE,
                List.of(),
                c -> moved(c, pressure(c) && c.unit().isGauge(), local(c)));
        question(kind, Code.ASKED_AS_GAUGE, List.of(), c -> askedAt(c, true, local(c)));
        question(kind, Code.ASKED_LESS_ATMOSPHERE, List.of(), c -> askedAt(c, true, -local(c)));
        for (String round : ROUND_ATMOSPHERES) {
            double zero = Pressure.parse(round).pascals();
            List<Figure> figures = List.of(Figure.of("pressure", round));
            value(
                    kind,
                    Code.ROUND_ATMOSPHERE,
                    figures,
                    c -> moved(c, pressure(c) && c.unit().isGauge(), local(c) - zero));
            question(kind, Code.ROUND_ATMOSPHERE_ASKED, figures, c -> askedAt(c, true, zero - local(c)));
        }
    }

    private void altitude() {
        value(
                Kind.ALTITUDE_IGNORED,
                Code.SEA_LEVEL_ANSWER,
                List.of(),
                c -> moved(
                        c,
                        pressure(c) && c.unit().isGauge() && c.row().altitude().isPresent(),
                        local(c) - seaLevel()));
        question(
                Kind.ALTITUDE_IGNORED,
                Code.SEA_LEVEL_QUESTION,
                List.of(),
                c -> askedAt(c, c.row().altitude().isPresent(), seaLevel() - local(c)));
    }

    private void lines() {
        question(
                Kind.BUBBLE_AND_DEW,
                Code.OTHER_LINE,
                List.of(),
                c -> c.question().quantity().twin().map(c.question()::of));
        value(
                Kind.BUBBLE_AND_DEW,
                Code.GLIDE_SIGN,
                List.of(),
                c -> moved(c, c.question().quantity() == AuditedQuantity.GLIDE, -2 * c.ours()));
        value(
                Kind.MEAN_LINE,
                Code.MIDDLE_LINE,
                List.of(),
                c -> c.question().quantity().onOneLine() && (pressure(c) || temperature(c))
                        ? c.question()
                                .quantity()
                                .twin()
                                .map(twin -> c.answered(
                                        (c.ours() + c.answer(c.question().of(twin))) / 2))
                        : Optional.empty());
    }

    private void temperatureScales() {
        Kind kind = Kind.CELSIUS_OR_FAHRENHEIT;
        double offset = TemperatureDifference.ofFahrenheitDegrees(32).kelvins();
        question(
                kind,
                Code.CELSIUS_AS_FAHRENHEIT,
                List.of(),
                c -> askedWarm(c, t -> Temperature.ofFahrenheit(t.celsius())));
        question(
                kind,
                Code.FAHRENHEIT_AS_CELSIUS,
                List.of(),
                c -> askedWarm(c, t -> Temperature.ofCelsius(t.fahrenheit())));
        // from Fahrenheit without taking 32 off, or to Fahrenheit without adding it
        for (double shift : new double[] {offset, -offset}) {
            question(
                    kind,
                    Code.QUESTION_LACKS_32,
                    List.of(),
                    c -> askedWarm(c, t -> Temperature.ofKelvins(t.kelvins() + shift)));
            value(kind, Code.ANSWER_LACKS_32, List.of(), c -> moved(c, temperature(c), shift));
        }
    }

    private void celsiusZero() {
        for (int sign : new int[] {-1, 1}) {
            double shift = sign * CELSIUS_ZERO_SLIP_K;
            List<Figure> amount = List.of(Figure.of("amount", CELSIUS_ZERO_SLIP_K, "K"));
            question(
                    Kind.CELSIUS_ZERO,
                    sign < 0 ? Code.USED_TOO_LOW : Code.USED_TOO_HIGH,
                    amount,
                    c -> askedWarm(c, t -> Temperature.ofKelvins(t.kelvins() + shift)));
            value(
                    Kind.CELSIUS_ZERO,
                    sign < 0 ? Code.GIVEN_TOO_LOW : Code.GIVEN_TOO_HIGH,
                    amount,
                    c -> moved(c, temperature(c), shift));
        }
    }

    private void references() {
        for (ReferenceState state :
                List.of(ReferenceState.IIR, ReferenceState.MINUS_40_CELSIUS, ReferenceState.NORMAL_BOILING_POINT)) {
            value(
                    Kind.REFERENCE_STATE,
                    Code.OTHER_ZERO,
                    List.of(Figure.of("state", state.description())),
                    c -> c.question().quantity().dimension().countsFromReference() ? c.from(state) : Optional.empty());
        }
    }

    private void straightLines() {
        SPACINGS_K.forEach(step -> straightLine(step + " K", Temperature.ofCelsius(0), step));
        SPACINGS_DEG_F.forEach(step -> straightLine(
                step + " degF",
                Temperature.ofFahrenheit(0),
                TemperatureDifference.ofFahrenheitDegrees(step).kelvins()));
    }

    private void straightLine(String spacing, Temperature zero, double stepK) {
        value(Kind.COARSE_TABLE, Code.STRAIGHT_LINE, List.of(Figure.of("spacing", spacing)), c -> {
            if (c.question().temperatureK().isEmpty()
                    || c.question().pressurePa().isPresent()) {
                return Optional.empty();
            }
            double steps = (c.question().temperatureK().getAsDouble() - zero.kelvins()) / stepK;
            double below = Math.floor(steps);
            double low = at(c, zero.kelvins() + below * stepK);
            double high = at(c, zero.kelvins() + (below + 1) * stepK);
            return Optional.of(c.answered(low + (steps - below) * (high - low)));
        });
    }

    private static double at(AuditCase c, double kelvins) {
        return c.answer(c.question().atTemperature(kelvins));
    }
}
