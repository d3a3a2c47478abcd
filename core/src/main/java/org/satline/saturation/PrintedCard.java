package org.satline.saturation;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.satline.equilibrium.Range;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Refrigerant;
import org.satline.resource.CsvResource;
import org.satline.resource.CsvResource.Row;
import org.satline.resource.ResourceFormatException;

/**
 * Saturation lines from the points of a printed pressure-temperature card, for a refrigerant without an equation. Immutable, thread-safe.
 *
 * <pre>{@code
 * PrintedCard card = PrintedCard.of(
 *         Refrigerant.substance("Field 7", "as on the cylinder", 0.1, "maker's card"),
 *         "maker's card, 2024",
 *         PressureDifference.ofKilopascals(0.5), // half of the last printed digit
 *         List.of(
 *                 PrintedCard.Point.of(Temperature.ofCelsius(0), Pressure.ofKilopascals(293)),
 *                 PrintedCard.Point.of(Temperature.ofCelsius(10), Pressure.ofKilopascals(415)),
 *                 PrintedCard.Point.of(Temperature.ofCelsius(20), Pressure.ofKilopascals(572))));
 * TemperatureDifference superheat = card.superheat(Pressure.ofKilopascals(350), Temperature.ofCelsius(12));
 * }</pre>
 *
 * <p>Between two points the logarithm of the pressure is a straight line over the reciprocal temperature, as by Clausius and Clapeyron at
 * constant latent heat: monotone, and the same line both ways. Nothing is answered beyond the first and the last point. {@link
 * #limitOfErrorK} states the rounding of the card and what the straight lines miss, from how well each point is foretold by its neighbours.
 */
public final class PrintedCard implements SaturationLines {
    private static final int FEWEST_POINTS = 3;
    /** A point that its neighbours foretell worse than this is a slip of the pen or of the press, K; our choice. */
    private static final double OUT_OF_LINE_K = 1;
    /** Twice the distance makes four times the error; half of it, not a quarter, is stated. */
    private static final double OF_LEFT_OUT = 0.5;

    private final Refrigerant refrigerant;
    private final String source;
    private final CardLine bubble;
    private final CardLine dew;
    private final double limitOfErrorK;

    /**
     * One printed row.
     *
     * @param temperature temperature, taken as exact
     * @param bubble absolute bubble-point pressure
     * @param dew absolute dew-point pressure; that of the bubble point where both are one
     */
    public record Point(Temperature temperature, Pressure bubble, Pressure dew) {
        /** {@inheritDoc} */
        public Point {
            Parts.required("temperature bubble dew", temperature, bubble, dew);
            if (!(dew.pascals() <= bubble.pascals())) {
                throw new IllegalArgumentException("dew pressure " + dew + " at " + temperature
                        + " is above the bubble pressure " + bubble + "; check which column is which");
            }
        }

        /**
         * A row with one pressure, of a substance or an azeotrope.
         *
         * @param temperature temperature
         * @param pressure absolute saturation pressure
         * @return the row
         */
        public static Point of(Temperature temperature, Pressure pressure) {
            return new Point(temperature, pressure, pressure);
        }
    }

    private PrintedCard(Refrigerant refrigerant, String source, double halfDigitPa, List<Point> points) {
        this.refrigerant = refrigerant;
        this.source = source;
        double[] kelvins =
                points.stream().mapToDouble(p -> p.temperature().kelvins()).toArray();
        bubble = new CardLine(
                "bubble",
                refrigerant,
                kelvins,
                points.stream().mapToDouble(p -> p.bubble().pascals()).toArray());
        dew = new CardLine(
                "dew",
                refrigerant,
                kelvins,
                points.stream().mapToDouble(p -> p.dew().pascals()).toArray());
        double missed = Math.max(bubble.largestMissK(), dew.largestMissK());
        if (!(missed <= OUT_OF_LINE_K)) {
            throw new IllegalArgumentException("card of " + refrigerant.designation() + ": the point at "
                    + (bubble.largestMissK() >= dew.largestMissK() ? bubble : dew).worst()
                    + " lies out of line with its neighbours; check its digits, or give more points around it");
        }
        limitOfErrorK = Math.max(bubble.kelvinsOf(halfDigitPa), dew.kelvinsOf(halfDigitPa)) + OF_LEFT_OUT * missed;
    }

    /**
     * Takes the points of a card.
     *
     * @param refrigerant what the card is of
     * @param source what card it is, for the derivation of every number
     * @param halfLastDigit half of the last printed digit of the pressures, or their stated error
     * @param points at least three, in any order; pressures rise with temperature
     * @return the lines
     * @throws IllegalArgumentException if points are too few, stand twice, do not rise, or one lies out of line with its neighbours
     */
    public static PrintedCard of(
            Refrigerant refrigerant, String source, PressureDifference halfLastDigit, List<Point> points) {
        Parts.required("refrigerant source halfLastDigit", refrigerant, source, halfLastDigit);
        if (points.size() < FEWEST_POINTS) {
            throw new IllegalArgumentException("card of " + refrigerant.designation() + " has " + points.size()
                    + " points; give " + FEWEST_POINTS + " or more");
        }
        if (!(halfLastDigit.pascals() >= 0)) {
            throw new IllegalArgumentException(
                    "error of the printed pressures " + halfLastDigit + " is below 0; give half of the last digit");
        }
        List<Point> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparing(Point::temperature));
        return new PrintedCard(refrigerant, source, halfLastDigit.pascals(), sorted);
    }

    /**
     * Reads a card from a file: CSV as {@link CsvResource} describes it, with the columns {@code temperature_degC,bubble_kPa,dew_kPa},
     * pressures absolute and with the printed digits; an empty dew point is the bubble point.
     *
     * @param refrigerant what the card is of
     * @param source what card it is
     * @param name name of the file, for messages
     * @param utf8 the whole file
     * @return the lines
     * @throws ResourceFormatException if the file is not of that form
     * @throws IllegalArgumentException as {@link #of}
     */
    public static PrintedCard read(Refrigerant refrigerant, String source, String name, byte[] utf8) {
        Parts.required("refrigerant source", refrigerant, source);
        List<Point> points = new ArrayList<>();
        double halfDigitKpa = 0;
        for (Row row : CsvResource.parse(name, utf8, "temperature_degC", "bubble_kPa", "dew_kPa")
                .rows()) {
            String dew = row.isEmpty("dew_kPa") ? "bubble_kPa" : "dew_kPa";
            halfDigitKpa = Math.max(halfDigitKpa, Math.max(halfDigit(row, "bubble_kPa"), halfDigit(row, dew)));
            try {
                points.add(new Point(
                        Temperature.ofCelsius(row.number("temperature_degC")),
                        Pressure.ofKilopascals(row.number("bubble_kPa")),
                        Pressure.ofKilopascals(row.number(dew))));
            } catch (IllegalArgumentException wrong) {
                ResourceFormatException broken = row.fault(String.valueOf(wrong.getMessage()));
                broken.initCause(wrong);
                throw broken;
            }
        }
        return of(refrigerant, source, PressureDifference.ofKilopascals(halfDigitKpa), points);
    }

    private static double halfDigit(Row row, String column) {
        row.number(column);
        return new BigDecimal(row.text(column)).ulp().doubleValue() / 2;
    }

    @Override
    public Refrigerant refrigerant() {
        return refrigerant;
    }

    @Override
    public String source() {
        return source;
    }

    @Override
    public double limitOfErrorK() {
        return limitOfErrorK;
    }

    @Override
    public Range bubbleTemperatureRange() {
        return bubble.temperatures();
    }

    @Override
    public Range dewTemperatureRange() {
        return dew.temperatures();
    }

    @Override
    public Range bubblePressureRange() {
        return bubble.pressures();
    }

    @Override
    public Range dewPressureRange() {
        return dew.pressures();
    }

    @Override
    public double bubblePressurePa(double temperatureK) {
        return bubble.pressurePa(temperatureK);
    }

    @Override
    public double dewPressurePa(double temperatureK) {
        return dew.pressurePa(temperatureK);
    }

    @Override
    public double bubbleTemperatureK(double pressurePa) {
        return bubble.temperatureK(pressurePa);
    }

    @Override
    public double dewTemperatureK(double pressurePa) {
        return dew.temperatureK(pressurePa);
    }

    @Override
    public String toString() {
        return "card of " + refrigerant.designation() + ", " + source;
    }
}
