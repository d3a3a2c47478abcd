package org.satline.filling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.satline.explanation.Coded;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Parts;
import org.satline.quantity.PlainText;

/**
 * The specification stamped on a cylinder, such as {@code DOT-4BA400}: what it is for and, where it is part of the mark, its service
 * pressure. Immutable, thread-safe.
 *
 * <p>Sources: 49 CFR 178.35(f) and 178.36 to 178.68 (marks, types, bounds of the service pressure); CSA B339 (TC marks, in bar); ADR
 * 6.2.4.1 (EN and ISO standards); from memory but for 178.35.
 *
 * @param text the mark as stamped
 * @param kind what the mark says of its use
 * @param type the US type within the mark, such as {@code 4BA}, also where the mark is its Canadian equivalent; empty where it is of
 *     another system
 * @param markedPressure the service pressure within the mark, gauge at 70 degF; the lowest where there are two marks
 */
public record CylinderSpecification(String text, Kind kind, String type, Optional<GaugePressure> markedPressure) {
    /** What a mark says of the use of a cylinder. */
    public enum Kind implements Coded {
        /** May be refilled. */
        REFILLABLE,
        /** May be filled once only, by its maker (49 CFR 178.65, EN 12205, ISO 11118). */
        NON_REFILLABLE,
        /** Made for something else: cryogenic liquid (4L), acetylene (8, 8AL), aircraft (3HT, 4D, 4DA, 4DS). */
        NOT_FOR_REFRIGERANT,
        /** A portable tank, for which instruction T50 stands in place of P200. */
        PORTABLE_TANK,
        /** The mark says neither: an exemption (DOT-SP), a mark of transport rules alone (UN, ADR), or unknown here. */
        UNKNOWN
    }

    private static final int LONGEST = 100;
    /** Letters and numbers of any kind; {@code \\p{N}} in its three parts, since the patterns of browsers' Java lack the whole. */
    private static final String LETTERS = "[\\p{L}\\p{Nd}\\p{Nl}\\p{No}]";

    private static final String ALONE = "(?<!" + LETTERS + ")";
    private static final String ENDS = "(?!" + LETTERS + ")";
    private static final Pattern NON_REFILLABLE = Pattern.compile(ALONE
            + "(?:(?:DOT|TC|ICC|CTC)?[- ]?39M?[- ]?NRC(?:[- ]?\\d{3,4}(?:/\\d{3,4})?)?|(?:DOT|TC|ICC|CTC)[- ]?39M?|39M?|NRC|NON[- ]?REFILLABLE"
            + "|(?:EN|EN ISO|ISO)[- ]?(?:11118|12205))" + ENDS);
    /** Service and test pressure beside a specification 39 mark, psig (49 CFR 178.65(i)). */
    private static final Pattern SERVICE_AND_TEST = Pattern.compile("(\\d{3,4}) ?/ ?\\d{3,4}(?!\\d)");

    private static final Pattern EXEMPTION = Pattern.compile(ALONE + "(?:DOT|TC)?[- ]?(?:SP|SU|E)[- ]?\\d{3,5}" + ENDS);
    private static final Pattern PORTABLE_TANK = Pattern.compile(ALONE + "(?:T50|PORTABLE\\s+TANK)" + ENDS);
    /** What no portable tank carries: beside T50 it makes a mark that says two things. */
    private static final Pattern OF_A_CYLINDER = Pattern.compile(
            ALONE + "(?:(?:DOT|TC|ICC|CTC|EN|ISO)[- ]?\\d|DOT-SP|[34][A-Z]{1,3}[- ]?\\d{0,4}" + ENDS + ")");

    private static final Pattern STANDARD = Pattern.compile(ALONE
            + "(?:EN|ISO)[- ]?(?:4706|9809|7866|20703|18172|13322|14208|14140|14638|1442|12807|13110|1964|1975|12862)"
            + ENDS);
    private static final Pattern US = Pattern.compile("(?:DOT|ICC|CTC)?[- ]?"
            + "(3HT|3AAX|3AX|3AA|3AL|3A|3B|3E|3T|3|4AA|4BA|4BW|4B|4E|4L|4DA|4DS|4D|8AL|8)[- ]?(\\d{3,4})?(?:ET|X)?");
    private static final Pattern CANADIAN = Pattern.compile(
            "TC[- ]?(3HT|3AAX|3AX|3AA|3AL|3A|3T|4AA|4BA|4BW|4B|4E|4L|4DA|4DS|4D|8AL|8)(?:M|WM)?[- ]?(\\d{2,3})?");
    private static final List<String> FOR_OTHER_THINGS = List.of("3HT", "4L", "4DA", "4DS", "4D", "8AL", "8");

    /** Least and largest service pressure of a type, psig; the types without an upper bound end where no cylinder of the trade goes. */
    private static final Map<String, double[]> PRESSURES = Map.ofEntries(
            Map.entry("3A", new double[] {150, 10_000}),
            Map.entry("3AA", new double[] {150, 10_000}),
            Map.entry("3AL", new double[] {150, 10_000}),
            Map.entry("3AX", new double[] {500, 10_000}),
            Map.entry("3AAX", new double[] {500, 10_000}),
            Map.entry("3T", new double[] {1800, 10_000}),
            Map.entry("3B", new double[] {150, 500}),
            Map.entry("3E", new double[] {1800, 1800}),
            Map.entry("4AA", new double[] {480, 480}),
            Map.entry("4B", new double[] {150, 500}),
            Map.entry("4BA", new double[] {225, 500}),
            Map.entry("4BW", new double[] {225, 500}),
            Map.entry("4E", new double[] {225, 500}));
    /** Marks in whole bar and in whole psi of the same pressure differ by their rounding; 1 %. */
    private static final double ROUNDING = 0.01;

    /** {@inheritDoc} */
    public CylinderSpecification {
        Parts.required("text kind type markedPressure", text, kind, type, markedPressure);
    }

    /**
     * Reads a mark, or several of one cylinder with {@code /} between them.
     *
     * @param mark such as {@code DOT-4BA400}, {@code 4bw 260}, {@code DOT-39 NRC}, {@code DOT-4BW400/TC-4BWM28}, {@code EN 13322-1}
     * @return the specification
     * @throws IllegalArgumentException if the mark is blank, has more than 100 characters or hidden ones ({@link PlainText#isHidden})
     */
    public static CylinderSpecification parse(String mark) {
        Parts.required("mark", mark);
        PlainText.require(mark, LONGEST, "cylinder specification");
        String text = mark.strip();
        if (text.isEmpty()) {
            throw new IllegalArgumentException(
                    "cylinder specification is blank; give the mark as stamped, such as DOT-4BA400");
        }
        String plain = text.toUpperCase(Locale.ROOT).replace('\u2013', '-').replace('_', '-');
        plain = plain.replaceAll("\\s+", " ").replaceAll(" ?- ?", "-");
        if (NON_REFILLABLE.matcher(plain).find()) {
            Matcher pressures = SERVICE_AND_TEST.matcher(plain);
            return new CylinderSpecification(
                    text,
                    Kind.NON_REFILLABLE,
                    "39",
                    pressures.find()
                            ? Optional.of(GaugePressure.ofPsig(Double.parseDouble(pressures.group(1))))
                            : Optional.empty());
        }
        List<CylinderSpecification> typed = new ArrayList<>();
        for (String part : plain.split("[/,;]| (?=TC|DOT)", -1)) {
            typed(text, part.strip()).ifPresent(typed::add);
        }
        if (!typed.isEmpty()) {
            return lowest(typed);
        }
        Kind kind = PORTABLE_TANK.matcher(plain).find()
                ? !OF_A_CYLINDER.matcher(plain).find() ? Kind.PORTABLE_TANK : Kind.UNKNOWN
                : !EXEMPTION.matcher(plain).find() && STANDARD.matcher(plain).find() ? Kind.REFILLABLE : Kind.UNKNOWN;
        return new CylinderSpecification(text, kind, "", Optional.empty());
    }

    private static Optional<CylinderSpecification> typed(String text, String part) {
        Matcher us = US.matcher(part);
        if (us.matches()) {
            return Optional.of(typed(
                    text,
                    us.group(1),
                    Optional.ofNullable(us.group(2)).map(psig -> GaugePressure.ofPsig(Double.parseDouble(psig)))));
        }
        Matcher canadian = CANADIAN.matcher(part);
        return canadian.matches()
                ? Optional.of(typed(
                        text,
                        canadian.group(1),
                        Optional.ofNullable(canadian.group(2))
                                .map(bar -> GaugePressure.ofBars(Double.parseDouble(bar)))))
                : Optional.empty();
    }

    private static CylinderSpecification typed(String text, String type, Optional<GaugePressure> marked) {
        return FOR_OTHER_THINGS.contains(type)
                ? new CylinderSpecification(text, Kind.NOT_FOR_REFRIGERANT, type, Optional.empty())
                : new CylinderSpecification(text, Kind.REFILLABLE, type, marked);
    }

    /** Of several marks the one that allows least. */
    private static CylinderSpecification lowest(List<CylinderSpecification> marks) {
        CylinderSpecification least = marks.get(0);
        for (CylinderSpecification other : marks) {
            boolean worse = other.kind == Kind.NOT_FOR_REFRIGERANT && least.kind != Kind.NOT_FOR_REFRIGERANT;
            if (worse || (other.kind == least.kind && other.pressureOrTop() < least.pressureOrTop())) {
                least = other;
            }
        }
        return least;
    }

    private double pressureOrTop() {
        return markedPressure.map(GaugePressure::pascals).orElse(Double.MAX_VALUE);
    }

    /**
     * Whether it may be refilled, by the mark.
     *
     * @return true or false; nothing where the mark does not say so
     */
    public Optional<Boolean> refillable() {
        return switch (kind) {
            case REFILLABLE, PORTABLE_TANK -> Optional.of(true);
            case NON_REFILLABLE -> Optional.of(false);
            case NOT_FOR_REFRIGERANT, UNKNOWN -> Optional.empty();
        };
    }

    /**
     * Whether this is a portable tank.
     *
     * @return true where the mark names T50 or a portable tank, in words of their own, and no cylinder
     */
    public boolean isPortableTank() {
        return kind == Kind.PORTABLE_TANK;
    }

    /**
     * The largest service pressure of its type.
     *
     * @return gauge pressure, where it is of a type that states one
     */
    public Optional<GaugePressure> largestPressure() {
        return Optional.ofNullable(PRESSURES.get(type)).map(bounds -> GaugePressure.ofPsig(bounds[1]));
    }

    /** The least service pressure of its type. */
    Optional<GaugePressure> leastPressure() {
        return Optional.ofNullable(PRESSURES.get(type)).map(bounds -> GaugePressure.ofPsig(bounds[0]));
    }

    /**
     * Whether the pressure within the mark is none that its specification knows.
     *
     * @return true where the mark was misread, or is no mark
     */
    public boolean isImpossible() {
        return markedPressure
                .filter(marked -> largestPressure()
                                .filter(most -> marked.pascals() > most.pascals() * (1 + ROUNDING))
                                .isPresent()
                        || leastPressure()
                                .filter(least -> marked.pascals() < least.pascals() * (1 - ROUNDING))
                                .isPresent())
                .isPresent();
    }

    /** A welded cylinder of moderate pressure, the usual recovery cylinder. */
    boolean isWeldedLowPressure() {
        return type.equals("4BA") || type.equals("4BW") || type.equals("4B") || type.equals("4E");
    }

    /** Whether a table that lists {@code listed} covers this cylinder: the same type, of that service pressure or higher. */
    boolean isCoveredBy(CylinderSpecification listed, Optional<GaugePressure> servicePressure) {
        if (type.isEmpty() || !type.equals(listed.type)) {
            return false;
        }
        if (listed.markedPressure.isEmpty()) {
            return true;
        }
        double least = listed.markedPressure.get().pascals();
        return markedPressure
                .or(() -> servicePressure)
                .filter(p -> p.pascals() >= least)
                .isPresent();
    }

    @Override
    public String toString() {
        return text;
    }
}
