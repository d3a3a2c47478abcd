package org.satline.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * Pressure above the local atmosphere, as a vented gauge shows it; negative below. Immutable, thread-safe. Held in pascals. It says
 * nothing about the state of a refrigerant until {@link Pressure#ofGauge} adds the atmosphere.
 */
public final class GaugePressure extends Quantity<GaugePressure> {
    private static final Unit KILOPASCAL = Unit.of("kPa gauge", 1000, "kPag", "kPa(g)", "kPa g");
    private static final Unit PASCAL = Unit.of("Pa gauge", 1, "Pag", "Pa(g)");
    private static final Unit MEGAPASCAL = Unit.of("MPa gauge", 1e6, "MPag", "MPa(g)");
    private static final Unit BAR = Unit.of("bar gauge", 1e5, "barg", "bar(g)");
    private static final Unit PSIG = Unit.of("psig", Factors.PSI_PA, "psi gauge", "psi(g)");
    private static final Unit INCH_OF_MERCURY_VACUUM = Unit.of(
            "inHg vacuum",
            -Factors.INCH_OF_MERCURY_PA,
            "inHg vac",
            "in Hg vacuum",
            "in Hg vac",
            "inHgv",
            "in. Hg vacuum",
            "in. Hg vac");

    private static final QuantityKind KIND = QuantityKind.of(
                    "gauge pressure", KILOPASCAL, PASCAL, MEGAPASCAL, BAR, PSIG, INCH_OF_MERCURY_VACUUM)
            .refusing("write psig for gauge; psia is absolute", "psi", "lb/in2", "lbf/in2", "pounds")
            .refusing(
                    "without the word gauge this reads as absolute; write it as in kPa gauge",
                    "Pa",
                    "kPa",
                    "MPa",
                    "bar")
            .refusing("write inHg vacuum for a reading below the local atmosphere", "inHg", "in Hg", "in. Hg", "\"Hg")
            .refusing(
                    "this unit is absolute; write a gauge unit", "psia", "bara", "micron", "microns", "inHg absolute");

    private GaugePressure(double pascals) {
        super(pascals);
    }

    static GaugePressure of(double value, Unit unit) {
        if (value < 0 && unit.equals(INCH_OF_MERCURY_VACUUM)) {
            throw new IllegalArgumentException("gauge pressure " + value
                    + " inHg vacuum is negative; a vacuum reading counts downwards from 0 at the atmosphere, give a pressure"
                    + " above it in psig");
        }
        return new GaugePressure(KIND.toSi(value, unit));
    }

    static List<Unit> units() {
        return KIND.units();
    }

    static String[] spellings() {
        List<String> spellings = new ArrayList<>(); // no stream: Pressure asks while it is being loaded
        for (Unit unit : units()) {
            spellings.add(unit.symbol());
            spellings.addAll(unit.spellings());
        }
        return spellings.toArray(new String[0]);
    }

    /**
     * Makes a gauge pressure from pascals.
     *
     * @param pascals Pa above the atmosphere; finite
     * @return the gauge pressure
     * @throws IllegalArgumentException if not finite
     */
    public static GaugePressure ofPascals(double pascals) {
        return of(pascals, PASCAL);
    }

    /**
     * Makes a gauge pressure from kilopascals.
     *
     * @param kilopascals kPa above the atmosphere; finite
     * @return the gauge pressure
     * @throws IllegalArgumentException if not finite
     */
    public static GaugePressure ofKilopascals(double kilopascals) {
        return of(kilopascals, KILOPASCAL);
    }

    /**
     * Makes a gauge pressure from bars.
     *
     * @param bars bar above the atmosphere; finite
     * @return the gauge pressure
     * @throws IllegalArgumentException if not finite
     */
    public static GaugePressure ofBars(double bars) {
        return of(bars, BAR);
    }

    /**
     * Makes a gauge pressure from pounds-force per square inch.
     *
     * @param psig psi above the atmosphere; finite
     * @return the gauge pressure
     * @throws IllegalArgumentException if not finite
     */
    public static GaugePressure ofPsig(double psig) {
        return of(psig, PSIG);
    }

    /**
     * Makes a gauge pressure from conventional inches of mercury below the local atmosphere.
     *
     * @param inchesOfMercury inHg below the atmosphere, 3386.389 Pa each; finite, 0 or more
     * @return the gauge pressure, 0 or negative
     * @throws IllegalArgumentException if not finite or negative
     */
    public static GaugePressure ofInchesOfMercuryVacuum(double inchesOfMercury) {
        return of(inchesOfMercury, INCH_OF_MERCURY_VACUUM);
    }

    /**
     * Reads a gauge pressure such as {@code 68 psig}, {@code 5 barg}, {@code 310 kPa gauge} or {@code 14.2 inHg vacuum}.
     *
     * @param text number and unit
     * @return the gauge pressure
     * @throws QuantityFormatException if the text is not a number with a unit of gauge pressure
     * @throws IllegalArgumentException if the value is not finite, or a vacuum reading negative
     */
    public static GaugePressure parse(String text) {
        Written reading = KIND.read(text);
        return of(reading.value(), reading.unit());
    }

    /**
     * Value in pascals.
     *
     * @return Pa above the atmosphere
     */
    public double pascals() {
        return si();
    }

    /**
     * Value in kilopascals.
     *
     * @return kPa above the atmosphere
     */
    public double kilopascals() {
        return KILOPASCAL.fromSi(si());
    }

    /**
     * Value in bars.
     *
     * @return bar above the atmosphere
     */
    public double bars() {
        return BAR.fromSi(si());
    }

    /**
     * Value in pounds-force per square inch.
     *
     * @return psi above the atmosphere
     */
    public double psig() {
        return PSIG.fromSi(si());
    }

    /**
     * Depth below the local atmosphere.
     *
     * @return inHg below the atmosphere; negative for a pressure above it
     */
    public double inchesOfMercuryVacuum() {
        return INCH_OF_MERCURY_VACUUM.fromSi(si());
    }

    @Override
    QuantityKind kind() {
        return KIND;
    }

    /** Below the atmosphere the US trade reads inHg vacuum. */
    @Override
    Unit unitIn(UnitSystem system) {
        if (system == UnitSystem.SI) {
            return KILOPASCAL;
        }
        return si() < 0 ? INCH_OF_MERCURY_VACUUM : PSIG;
    }
}
