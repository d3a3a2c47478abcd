package org.satline.duty;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.satline.explanation.Figure;
import org.satline.explanation.Step;
import org.satline.quantity.Mass;
import org.satline.quantity.Parts;
import org.satline.quantity.Pressure;
import org.satline.resource.CsvResource;

/**
 * How far an appliance is evacuated before it is opened or disposed of, 40 CFR 82.156, table 1. Immutable, thread-safe.
 */
public final class EvacuationLevels {
    /** Equipment made from this day on has the stricter levels. */
    private static final LocalDate STRICTER_SINCE = LocalDate.of(1993, 11, 15);
    /** The full atmosphere from which the table counts its vacuum; the sea-level figure that it prints. */
    private static final double ATMOSPHERE_INCHES = 29.92;

    private static final Mass LARGE_CHARGE = Mass.ofPounds(200);
    private static final double MILLIMETRE_OF_MERCURY_MICRONS = 1000;
    private static final String CITATION = "40 CFR 82.156, table 1";

    private record Entry(String appliance, String charge, String kind, double before, double since, boolean memory) {}

    /** What has to be reached. */
    public sealed interface Level {
        /**
         * Returns the derivation.
         *
         * @return the steps
         */
        List<Step> steps();

        /**
         * An absolute pressure that must not be exceeded.
         *
         * @param highest the highest pressure left in the appliance
         * @param steps the derivation
         */
        record AbsolutePressure(Pressure highest, List<Step> steps) implements Level {
            /** {@inheritDoc} */
            public AbsolutePressure {
                Objects.requireNonNull(highest, "highest");
                steps = Parts.list("steps", steps);
            }

            /**
             * Tells whether a measured pressure meets the level.
             *
             * @param measured the absolute pressure after the appliance has been left to stand
             * @return true where it is not above
             */
            public boolean isMetBy(Pressure measured) {
                return measured.pascals() <= highest.pascals();
            }
        }

        /**
         * A share of the charge that must be recovered.
         *
         * @param percentOfCharge the least share, per cent
         * @param alternative the pressure that serves in its place
         * @param steps the derivation
         */
        record ShareRecovered(double percentOfCharge, Pressure alternative, List<Step> steps) implements Level {
            /** {@inheritDoc} */
            public ShareRecovered {
                Parts.numbers("percentOfCharge", percentOfCharge);
                Objects.requireNonNull(alternative, "alternative");
                steps = Parts.list("steps", steps);
            }
        }
    }

    private final List<Entry> entries;

    private EvacuationLevels(List<Entry> entries) {
        this.entries = List.copyOf(entries);
    }

    /**
     * Reads the table that ships with the library.
     *
     * @return the levels
     */
    public static EvacuationLevels standard() {
        List<Entry> entries = new ArrayList<>();
        CsvResource table = CsvResource.read(
                EvacuationLevels.class,
                "evacuation-levels.csv",
                "appliance",
                "charge",
                "kind",
                "equipment_before",
                "equipment_since",
                "confirmation");
        for (CsvResource.Row row : table.rows()) {
            entries.add(new Entry(
                    row.text("appliance"),
                    row.text("charge"),
                    row.text("kind"),
                    row.number("equipment_before"),
                    row.number("equipment_since"),
                    row.text("confirmation").equals("memory")));
        }
        return new EvacuationLevels(entries);
    }

    /**
     * Returns the level for an appliance.
     *
     * @param appliance its class
     * @param fullCharge its full charge
     * @param equipmentMade the day on which the recovery equipment was made
     * @return the level
     */
    public Level required(ApplianceClass appliance, Mass fullCharge, LocalDate equipmentMade) {
        String charge = fullCharge.kilograms() < LARGE_CHARGE.kilograms() ? "below-200-lb" : "from-200-lb";
        Entry entry = find(appliance.key(), charge);
        double figure = figure(entry, equipmentMade);
        if (!entry.kind().equals("recovered")) {
            Pressure pressure = absolute(entry, figure);
            return new Level.AbsolutePressure(pressure, List.of(step(entry, figure, pressure)));
        }
        Entry alternative = find("small-alternative", charge);
        double vacuum = figure(alternative, equipmentMade);
        Pressure pressure = absolute(alternative, vacuum);
        Step share = new Step(
                "shareToRecover",
                "m_recovered / m_full",
                List.of(Figure.of("appliance", appliance.key())),
                Figure.of("share", figure, "%"),
                CITATION);
        return new Level.ShareRecovered(figure, pressure, List.of(share, step(alternative, vacuum, pressure)));
    }

    private Entry find(String appliance, String charge) {
        return entries.stream()
                .filter(entry -> entry.appliance().equals(appliance)
                        && (entry.charge().equals("any") || entry.charge().equals(charge)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("evacuation-levels.csv has no row for " + appliance));
    }

    private static double figure(Entry entry, LocalDate equipmentMade) {
        return equipmentMade.isBefore(STRICTER_SINCE) ? entry.before() : entry.since();
    }

    private static Pressure absolute(Entry entry, double figure) {
        return entry.kind().equals("vacuum")
                ? Pressure.ofInchesOfMercury(ATMOSPHERE_INCHES - figure)
                : Pressure.ofMicrons(figure * MILLIMETRE_OF_MERCURY_MICRONS);
    }

    private static Step step(Entry entry, double figure, Pressure pressure) {
        boolean vacuum = entry.kind().equals("vacuum");
        return new Step(
                "pressureLeft",
                vacuum ? "p = 29.92 inHg - vacuum" : "p",
                List.of(vacuum ? Figure.of("vacuum", figure, "inHg") : Figure.of("p", figure, "mm Hg")),
                Figure.of("p", pressure),
                entry.memory() ? CITATION + " (from memory)" : CITATION);
    }
}
