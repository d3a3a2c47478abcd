package org.satline.program.verdicts;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.Parts;

/**
 * One row of a bulk evaluation in SI doubles, as files hold it; what was not read is absent. Nothing but null is refused here:
 * {@link BulkVerdicts} answers a bad row with a note. Immutable, thread-safe.
 *
 * @param id name of the row
 * @param refrigerant designation
 * @param metering {@code expansion-valve} or {@code fixed-orifice}
 * @param figures what was read or is given
 * @param outdoorMinimumMet whether outdoor air is warm enough for the method
 */
public record VerdictQuery(
        String id,
        String refrigerant,
        String metering,
        Map<Cell, Double> figures,
        Optional<Boolean> outdoorMinimumMet) {
    /** What a row may hold, by its column. */
    public enum Cell {
        /** Absolute pressure at the suction port, Pa. */
        SUCTION_PRESSURE("suction_pressure_Pa"),
        /** Suction-line temperature, K. */
        SUCTION_LINE("suction_line_K"),
        /** Absolute pressure at the liquid port, Pa. */
        LIQUID_PRESSURE("liquid_pressure_Pa"),
        /** Liquid-line temperature, K. */
        LIQUID_LINE("liquid_line_K"),
        /** Wet bulb of the return air, K. */
        RETURN_WET_BULB("return_wet_bulb_K"),
        /** Air entering the condenser, K. */
        CONDENSER_AIR("condenser_air_K"),
        /** Maker's target superheat, K. */
        TARGET_SUPERHEAT("target_superheat_K"),
        /** Maker's target subcooling, K. */
        TARGET_SUBCOOLING("target_subcooling_K"),
        /** Standard uncertainty of each pressure, Pa. */
        PRESSURE_UNCERTAINTY("pressure_standard_uncertainty_Pa"),
        /** Standard uncertainty of each temperature, K. */
        TEMPERATURE_UNCERTAINTY("temperature_standard_uncertainty_K"),
        /** Half-width of the band, K; the published one where it is not given. */
        TOLERANCE("tolerance_K"),
        /** Dry bulb of the return air, K. */
        RETURN_DRY_BULB("return_dry_bulb_K"),
        /** Dry bulb of the supply air, K. */
        SUPPLY_DRY_BULB("supply_dry_bulb_K"),
        /** Discharge-line temperature, K. */
        DISCHARGE_LINE("discharge_line_K");

        private final String column;

        Cell(String column) {
            this.column = column;
        }

        /**
         * Name of the column.
         *
         * @return with its unit
         */
        public String column() {
            return column;
        }
    }

    /** {@inheritDoc} */
    public VerdictQuery {
        Parts.required("id refrigerant metering outdoorMinimumMet", id, refrigerant, metering, outdoorMinimumMet);
        Map<Cell, Double> own = new EnumMap<>(Cell.class);
        own.putAll(figures);
        own.forEach((cell, figure) -> Parts.required(cell.column(), figure));
        figures = Collections.unmodifiableMap(own);
    }

    /**
     * Begins a row.
     *
     * @param id name of the row
     * @param refrigerant designation
     * @param metering {@code expansion-valve} or {@code fixed-orifice}
     * @return a builder with nothing read
     */
    public static Builder of(String id, String refrigerant, String metering) {
        return new Builder(id, refrigerant, metering);
    }

    /**
     * A figure.
     *
     * @param cell which
     * @return its value, in the unit of the column; empty where it is not given
     */
    public OptionalDouble get(Cell cell) {
        Double figure = figures.get(cell);
        return figure == null ? OptionalDouble.empty() : OptionalDouble.of(figure);
    }

    /** Builds a row; for one thread. */
    public static final class Builder {
        private final String id;
        private final String refrigerant;
        private final String metering;
        private final Map<Cell, Double> figures = new EnumMap<>(Cell.class);
        private Optional<Boolean> outdoorMinimumMet = Optional.empty();

        private Builder(String id, String refrigerant, String metering) {
            this.id = id;
            this.refrigerant = refrigerant;
            this.metering = metering;
        }

        /**
         * Gives a figure.
         *
         * @param cell which
         * @param figure in the unit of the column
         * @return this builder
         */
        public Builder with(Cell cell, double figure) {
            figures.put(cell, figure);
            return this;
        }

        /**
         * Tells whether outdoor air is warm enough for the method.
         *
         * @param met whether it is
         * @return this builder
         */
        public Builder outdoorMinimumMet(boolean met) {
            outdoorMinimumMet = Optional.of(met);
            return this;
        }

        /**
         * Ends the row.
         *
         * @return the row
         */
        public VerdictQuery build() {
            return new VerdictQuery(id, refrigerant, metering, figures, outdoorMinimumMet);
        }
    }
}
