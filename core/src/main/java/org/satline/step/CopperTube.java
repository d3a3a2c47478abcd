package org.satline.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.satline.quantity.Length;
import org.satline.quantity.Parts;
import org.satline.quantity.PlainText;
import org.satline.quantity.Volume;
import org.satline.resource.CsvResource;

/**
 * A size of copper tube (ASTM B280). Immutable, thread-safe.
 *
 * @param nominalSize the size as it is called, in inches of outside diameter, such as {@code 3/8}
 * @param temper how it is delivered
 * @param outsideDiameter outside diameter
 * @param insideDiameter inside diameter
 * @param fromMemory true where the wall was not read in a printed table
 */
public record CopperTube(
        String nominalSize, Temper temper, Length outsideDiameter, Length insideDiameter, boolean fromMemory) {
    private static final String SOURCE = "ASTM B280";
    private static final String SOURCE_FROM_MEMORY = "ASTM B280 (wall from memory)";

    /** How the tube is delivered; the wall differs. */
    public enum Temper {
        /** Soft, in coils. */
        ANNEALED,
        /** Soft, in coils, with the heavier of two walls. */
        ANNEALED_HEAVY,
        /** Hard, in straight lengths. */
        DRAWN
    }

    /** {@inheritDoc} */
    public CopperTube {
        Parts.required("nominalSize temper outsideDiameter", nominalSize, temper, outsideDiameter);
        Parts.required("insideDiameter", insideDiameter);
    }

    /**
     * Returns the tubes of the standard.
     *
     * @return by rising size
     */
    public static List<CopperTube> all() {
        List<CopperTube> tubes = new ArrayList<>();
        CsvResource table = CsvResource.read(
                CopperTube.class,
                "copper-tubes.csv",
                "nominal_size",
                "temper",
                "outside_diameter_in",
                "inside_diameter_in",
                "confirmation");
        for (CsvResource.Row row : table.rows()) {
            tubes.add(new CopperTube(
                    row.text("nominal_size"),
                    Temper.valueOf(row.text("temper").toUpperCase(Locale.ROOT).replace('-', '_')),
                    Length.ofInches(row.number("outside_diameter_in")),
                    Length.ofInches(row.number("inside_diameter_in")),
                    row.text("confirmation").equals("memory")));
        }
        return List.copyOf(tubes);
    }

    /**
     * Finds a tube.
     *
     * @param nominalSize such as {@code 3/8}; a trailing inch mark or unit is allowed
     * @param temper how it is delivered
     * @return the tube
     * @throws IllegalArgumentException if the standard has none of that size and temper; the message lists the sizes
     */
    public static CopperTube of(String nominalSize, Temper temper) {
        Parts.required("nominalSize", nominalSize);
        String wanted = nominalSize.strip().replaceFirst("\\s*(\"|in)$", "");
        List<CopperTube> tubes = all();
        return tubes.stream()
                .filter(tube -> tube.temper() == temper && tube.nominalSize().equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("tube size " + PlainText.quoted(nominalSize)
                        + " of temper " + temper
                        + " is unknown (ASTM B280); take one of "
                        + String.join(
                                ", ",
                                tubes.stream()
                                        .filter(tube -> tube.temper() == temper)
                                        .map(CopperTube::nominalSize)
                                        .toList())));
    }

    /**
     * Returns the inner volume of a length of tube.
     *
     * @param length the length
     * @return the area of the bore times the length
     */
    public Volume volume(Length length) {
        double radius = insideDiameter.metres() / 2;
        return Volume.ofCubicMetres(Math.PI * radius * radius * length.metres());
    }

    /** Where the dimensions come from. */
    String source() {
        return fromMemory ? SOURCE_FROM_MEMORY : SOURCE;
    }
}
