package org.satline.audit.answer;

import java.util.OptionalDouble;
import org.satline.equilibrium.BoundaryPoint;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.FluidState;

/** What was asked, and our answer to it in SI. Immutable, thread-safe. */
public final class Question {
    private final AuditedQuantity quantity;
    private final OptionalDouble temperatureK;
    private final OptionalDouble pressurePa;

    /**
     * Asks.
     *
     * @param temperatureK T, K; empty where not given
     * @param pressurePa p, Pa; empty where not given
     */
    Question(AuditedQuantity quantity, OptionalDouble temperatureK, OptionalDouble pressurePa) {
        this.quantity = quantity;
        this.temperatureK = temperatureK;
        this.pressurePa = pressurePa;
    }

    /** {@return what is asked for} */
    public AuditedQuantity quantity() {
        return quantity;
    }

    /** {@return T, K; empty where not given} */
    public OptionalDouble temperatureK() {
        return temperatureK;
    }

    /** {@return p, Pa; empty where not given} */
    public OptionalDouble pressurePa() {
        return pressurePa;
    }

    /**
     * Checks that what is given fits the quantity.
     *
     * @throws IllegalArgumentException if it does not
     */
    public void check() {
        boolean temperature = temperatureK.isPresent();
        boolean pressure = pressurePa.isPresent();
        String name = quantity.label();
        boolean fits = switch (quantity.given()) {
            case TEMPERATURE -> temperature && !pressure;
            case PRESSURE -> pressure && !temperature;
            case TEMPERATURE_OR_PRESSURE -> temperature != pressure;
            case TEMPERATURE_AND_PRESSURE -> temperature && pressure;
        };
        if (!fits) {
            String fault = switch (quantity.given()) {
                case TEMPERATURE -> error(name, "is found from a temperature alone; give it and no pressure");
                case PRESSURE -> error(name, "is found from a pressure alone; give it and no temperature");
                case TEMPERATURE_OR_PRESSURE ->
                    error(name, "is on a saturation line, where temperature and pressure fix each other; give one");
                case TEMPERATURE_AND_PRESSURE -> error(name, "of one phase needs temperature and pressure; give both");
            };
            throw new IllegalArgumentException(fault);
        }
        temperatureK.ifPresent(t -> requirePositive("temperature", t, "K"));
        pressurePa.ifPresent(p -> requirePositive("pressure", p, "Pa"));
    }

    private static String error(String name, String advice) {
        return name + " " + advice;
    }

    private static void requirePositive(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    what + " " + value + " " + unit + " is not finite and above 0; give an absolute one");
        }
    }

    /**
     * Asks for another quantity at the same place.
     *
     * @param other the quantity
     * @return the question
     */
    public Question of(AuditedQuantity other) {
        return new Question(other, temperatureK, pressurePa);
    }

    /**
     * Asks the same at another temperature.
     *
     * @param kelvins T, K
     * @return the question
     */
    public Question atTemperature(double kelvins) {
        return new Question(quantity, OptionalDouble.of(kelvins), pressurePa);
    }

    /**
     * Asks the same at another pressure.
     *
     * @param pascals p, Pa
     * @return the question
     */
    public Question atPressure(double pascals) {
        return new Question(quantity, temperatureK, OptionalDouble.of(pascals));
    }

    /** Our answer, SI. */
    double answer(FluidModel model) {
        return answer(Points.solved(model));
    }

    /** Our answer, SI. */
    double answer(Points model) {
        if (quantity == AuditedQuantity.GLIDE) {
            double p = pressurePa.orElseThrow();
            return model.dewAtPressure(p).temperatureK()
                    - model.bubbleAtPressure(p).temperatureK();
        }
        if (quantity.given() == AuditedQuantity.Given.TEMPERATURE_AND_PRESSURE) {
            return of(model.model().stateAt(temperatureK.orElseThrow(), pressurePa.orElseThrow()));
        }
        BoundaryPoint point = point(model);
        return switch (quantity.dimension()) {
            case PRESSURE -> point.pressurePa();
            case TEMPERATURE -> point.temperatureK();
            default -> of(point.saturated());
        };
    }

    /** The point of the line that was asked about. */
    BoundaryPoint point(Points model) {
        boolean bubble = quantity.onBubbleLine();
        if (temperatureK.isPresent()) {
            double t = temperatureK.getAsDouble();
            return bubble ? model.bubbleAtTemperature(t) : model.dewAtTemperature(t);
        }
        double p = pressurePa.orElseThrow();
        return bubble ? model.bubbleAtPressure(p) : model.dewAtPressure(p);
    }

    private double of(FluidState state) {
        return switch (quantity.dimension()) {
            case DENSITY -> state.density();
            case ENTHALPY -> state.specificEnthalpy();
            case ENTROPY -> state.specificEntropy();
            case HEAT_CAPACITY -> state.isobaricHeatCapacity();
            case SPEED -> state.speedOfSound();
            default -> throw new IllegalStateException(quantity.label() + " is not a property of one phase");
        };
    }

    /** {@return where on its curve it lies: the temperature, K, or without one the logarithm of the pressure in Pa} */
    public double place() {
        return temperatureK.orElseGet(() -> Math.log(pressurePa.orElseThrow()));
    }

    /** The question in words and numbers. */
    String words() {
        StringBuilder text = new StringBuilder();
        temperatureK.ifPresent(t -> text.append("T = ").append(t).append(" K"));
        pressurePa.ifPresent(p -> text.append(text.length() == 0 ? "" : ", ")
                .append("p = ")
                .append(p)
                .append(" Pa"));
        return text.toString();
    }
}
