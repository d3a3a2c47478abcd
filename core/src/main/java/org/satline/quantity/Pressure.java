package org.satline.quantity;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Absolute pressure {@code p}, held in pascals, 0 or more. Immutable, thread-safe. A gauge reading becomes one only together with
 * the atmosphere it was read in: {@link #ofGauge}. Microns are micrometres of mercury, the absolute unit of vacuum gauges.
 */
public final class Pressure extends Quantity<Pressure> {
    private static final Unit PASCAL = Unit.of("Pa", 1, "pascal", "pascals", "Pa absolute");
    private static final Unit KILOPASCAL =
            Unit.of("kPa", 1000, "kPa absolute", "kPa abs", "kPa(a)", "kPaa", "kilopascal", "kilopascals");
    private static final Unit MEGAPASCAL = Unit.of("MPa", 1e6, "MPa absolute", "MPa abs", "MPa(a)");
    private static final Unit BAR = Unit.of("bar", 1e5, "bara", "bar absolute", "bar abs", "bar(a)");
    private static final Unit MILLIBAR = Unit.of("mbar", 100, "hPa", "mbar absolute", "mbar abs");
    private static final Unit PSIA = Unit.of("psia", Factors.PSI_PA, "psi absolute", "psi abs", "psi(a)");
    private static final Unit MICRON = Unit.ratio(
            "micron", Factors.MILLIMETRE_OF_MERCURY_PA, 1000, "microns", "Micron", "Microns", "\u00B5mHg", "umHg");
    private static final Unit MILLIMETRE_OF_MERCURY =
            Unit.of("mmHg", Factors.MILLIMETRE_OF_MERCURY_PA, "mm Hg", "mmHg absolute", "mmHg abs");
    private static final Unit INCH_OF_MERCURY = Unit.of(
            "inHg absolute", Factors.INCH_OF_MERCURY_PA, "inHg abs", "in. Hg absolute", "in Hg absolute", "inHga");
    private static final Unit TORR = Unit.ratio("torr", Factors.STANDARD_ATMOSPHERE_PA, 760);
    private static final Unit ATMOSPHERE = Unit.of("atm", Factors.STANDARD_ATMOSPHERE_PA);

    private static final String BELOW_ZERO_ADVICE =
            "an absolute pressure is never negative; a gauge reading or a vacuum below the atmosphere needs its gauge unit and its"
                    + " atmosphere";
    private static final String PSI_ADVICE = "write psia for absolute or psig for gauge";
    private static final String MERCURY_ADVICE =
            "write inHg absolute, or inHg vacuum for a reading below the local atmosphere";

    private static final List<Unit> UNITS = List.of(
            KILOPASCAL,
            PASCAL,
            MEGAPASCAL,
            BAR,
            MILLIBAR,
            PSIA,
            MICRON,
            MILLIMETRE_OF_MERCURY,
            INCH_OF_MERCURY,
            TORR,
            ATMOSPHERE);

    private static final QuantityKind KIND = refusingUnclear(
                    QuantityKind.of("absolute pressure", UNITS).from(0, BELOW_ZERO_ADVICE))
            .refusing(
                    "a gauge reading is not an absolute pressure without its atmosphere: give the atmosphere too, or an absolute unit",
                    GaugePressure.spellings());

    /** Perfect vacuum. */
    public static final Pressure ZERO = new Pressure(0);

    /** For a text whose atmosphere is known. A class of its own, so that it is made only where such a text is read. */
    private static final class WithAtmosphere {
        static final QuantityKind KIND = refusingUnclear(QuantityKind.of(
                "pressure",
                Stream.concat(UNITS.stream(), GaugePressure.units().stream()).toList()));
    }

    private Pressure(double pascals) {
        super(pascals);
    }

    private static QuantityKind refusingUnclear(QuantityKind kind) {
        return kind.refusing(PSI_ADVICE, "psi", "lb/in2", "lbf/in2", "pounds")
                .refusing(MERCURY_ADVICE, "inHg", "in Hg", "in. Hg", "\"Hg");
    }

    private static Pressure of(double value, Unit unit) {
        return new Pressure(KIND.toSi(value, unit));
    }

    /**
     * Makes an absolute pressure from pascals.
     *
     * @param pascals p, Pa; finite, 0 or more
     * @return the pressure
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Pressure ofPascals(double pascals) {
        return of(pascals, PASCAL);
    }

    /**
     * Makes an absolute pressure from kilopascals.
     *
     * @param kilopascals p, kPa; finite, 0 or more
     * @return the pressure
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Pressure ofKilopascals(double kilopascals) {
        return of(kilopascals, KILOPASCAL);
    }

    /**
     * Makes an absolute pressure from megapascals.
     *
     * @param megapascals p, MPa; finite, 0 or more
     * @return the pressure
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Pressure ofMegapascals(double megapascals) {
        return of(megapascals, MEGAPASCAL);
    }

    /**
     * Makes an absolute pressure from bars.
     *
     * @param bars p, bar; finite, 0 or more
     * @return the pressure
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Pressure ofBars(double bars) {
        return of(bars, BAR);
    }

    /**
     * Makes an absolute pressure from pounds-force per square inch, absolute.
     *
     * @param psia p, psia; finite, 0 or more
     * @return the pressure
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Pressure ofPsia(double psia) {
        return of(psia, PSIA);
    }

    /**
     * Makes an absolute pressure from micrometres of mercury (conventional), as deep-vacuum gauges show it.
     *
     * @param microns p, micrometres of mercury, 0.1333224 Pa each; finite, 0 or more
     * @return the pressure
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Pressure ofMicrons(double microns) {
        return of(microns, MICRON);
    }

    /**
     * Makes an absolute pressure from conventional inches of mercury, as barometers show it. Not for a vacuum reading, which is below
     * the local atmosphere: {@link GaugePressure#ofInchesOfMercuryVacuum}.
     *
     * @param inchesOfMercury p, inHg, 3386.389 Pa each; finite, 0 or more
     * @return the pressure
     * @throws IllegalArgumentException if not finite or negative
     */
    public static Pressure ofInchesOfMercury(double inchesOfMercury) {
        return of(inchesOfMercury, INCH_OF_MERCURY);
    }

    /**
     * Makes an absolute pressure from a gauge reading and the atmosphere around the gauge.
     *
     * @param gauge the reading
     * @param atmosphere the local atmosphere
     * @return gauge plus atmospheric pressure
     * @throws IllegalArgumentException if the reading is further below the atmosphere than a perfect vacuum
     */
    public static Pressure ofGauge(GaugePressure gauge, Atmosphere atmosphere) {
        Objects.requireNonNull(gauge, "gauge");
        Objects.requireNonNull(atmosphere, "atmosphere");
        double atmospherePa = atmosphere.pressure().pascals();
        if (!(gauge.pascals() >= -atmospherePa)) {
            throw new IllegalArgumentException("gauge pressure " + gauge.kilopascals() + " kPa is below "
                    + KILOPASCAL.fromSi(-atmospherePa) + " kPa, a perfect vacuum in the " + atmosphere.description()
                    + "; check the reading and the atmosphere");
        }
        return ofPascals(gauge.pascals() + atmospherePa);
    }

    /**
     * Reads an absolute pressure such as {@code 101.325 kPa}, {@code 14.7 psia} or {@code 500 micron}. A unit without a word on its
     * zero, such as {@code kPa} or {@code bar}, is absolute; {@code psi} and {@code inHg} alone are refused, since the trade uses
     * them both ways.
     *
     * @param text number and unit
     * @return the pressure
     * @throws QuantityFormatException if the text is not a number with a unit of absolute pressure
     * @throws IllegalArgumentException if the value is not finite or negative
     */
    public static Pressure parse(String text) {
        return new Pressure(KIND.parse(text));
    }

    /**
     * Reads an absolute or a gauge pressure, such as {@code 68 psig}, {@code 5 barg} or {@code 14.2 inHg vacuum}.
     *
     * @param text number and unit
     * @param atmosphere the atmosphere around the gauge; not used for an absolute unit
     * @return the absolute pressure
     * @throws QuantityFormatException if the text is not a number with a unit of pressure
     * @throws IllegalArgumentException if the value is not finite, or below a perfect vacuum
     */
    public static Pressure parse(String text, Atmosphere atmosphere) {
        Objects.requireNonNull(atmosphere, "atmosphere");
        Written reading = WithAtmosphere.KIND.read(text);
        if (GaugePressure.units().contains(reading.unit())) {
            return ofGauge(GaugePressure.of(reading.value(), reading.unit()), atmosphere);
        }
        return of(reading.value(), reading.unit());
    }

    /**
     * Value in pascals.
     *
     * @return p, Pa
     */
    public double pascals() {
        return si();
    }

    /**
     * Value in kilopascals.
     *
     * @return p, kPa
     */
    public double kilopascals() {
        return KILOPASCAL.fromSi(si());
    }

    /**
     * Value in megapascals.
     *
     * @return p, MPa
     */
    public double megapascals() {
        return MEGAPASCAL.fromSi(si());
    }

    /**
     * Value in bars.
     *
     * @return p, bar
     */
    public double bars() {
        return BAR.fromSi(si());
    }

    /**
     * Value in pounds-force per square inch, absolute.
     *
     * @return p, psia
     */
    public double psia() {
        return PSIA.fromSi(si());
    }

    /**
     * Value in micrometres of mercury.
     *
     * @return p, micron
     */
    public double microns() {
        return MICRON.fromSi(si());
    }

    /**
     * Value in conventional inches of mercury, absolute.
     *
     * @return p, inHg absolute
     */
    public double inchesOfMercury() {
        return INCH_OF_MERCURY.fromSi(si());
    }

    /**
     * What a gauge vented to an atmosphere shows at this pressure.
     *
     * @param atmosphere the local atmosphere
     * @return this pressure less the atmospheric one
     */
    public GaugePressure gauge(Atmosphere atmosphere) {
        Objects.requireNonNull(atmosphere, "atmosphere");
        return GaugePressure.ofPascals(si() - atmosphere.pressure().si());
    }

    /**
     * How far this pressure lies above another.
     *
     * @param other the pressure to subtract
     * @return the difference; negative if this one is the lower
     */
    public PressureDifference minus(Pressure other) {
        Objects.requireNonNull(other, "other");
        return PressureDifference.ofPascals(si() - other.si());
    }

    /**
     * This pressure, raised by a difference.
     *
     * @param difference what to add; may be negative
     * @return the sum
     * @throws IllegalArgumentException if the result is negative
     */
    public Pressure plus(PressureDifference difference) {
        Objects.requireNonNull(difference, "difference");
        return ofPascals(si() + difference.pascals());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    /** Deep vacuum reads badly in kPa and psia: below 1 kPa it is printed in Pa and micron. */
    @Override
    Unit unitIn(UnitSystem system) {
        boolean deep = si() < KILOPASCAL.multiplier();
        if (system == UnitSystem.SI) {
            return deep ? PASCAL : KILOPASCAL;
        }
        return deep ? MICRON : PSIA;
    }
}
