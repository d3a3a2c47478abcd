package org.satline.simulation;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.satline.resource.CsvResource;
import org.satline.resource.OnDemand;

/**
 * Figures of the simulation that are assumed, from {@code assumptions.csv}: each stands there with its unit and basis. Immutable,
 * thread-safe.
 */
final class Assumptions {
    private static final double CUBIC_METRES_PER_SECOND_FOR_CFM = 0.000471947;
    private static final double WATTS_FOR_TON = 3516.853;

    private static final OnDemand<Map<String, Assumed>> TABLE = new OnDemand<>() {
        @Override
        protected Map<String, Assumed> read() {
            Map<String, Assumed> rows = new LinkedHashMap<>();
            for (CsvResource.Row row : CsvResource.read(
                            Assumptions.class,
                            "assumptions.csv",
                            "name",
                            "value",
                            "unit",
                            "least",
                            "most",
                            "limit",
                            "basis")
                    .rows()) {
                row.text("basis");
                rows.put(
                        row.text("name"),
                        new Assumed(
                                row.number("value"),
                                row.cell("unit"),
                                row.optionalNumber("least"),
                                row.optionalNumber("most")));
            }
            return rows;
        }
    };
    private static final OnDemand<Assumptions> STANDARD = new OnDemand<>() {
        @Override
        protected Assumptions read() {
            return new Assumptions(values());
        }
    };

    final double coilAirShare;
    final double coilVapourResistance;
    final double coilLiquidResistance;
    final double coilFlowExponent;
    final double coilAirExponent;
    final double oilForEachWatt;
    final double oilSolubility;
    final double oilRiseK;
    final double oilLeastRiseK;
    final double flashShare;
    final double staticShare;
    final double spanShare;
    final double clearance;
    final double clearanceExponent;
    final double leakedWorkKept;
    /** Airflow over the evaporator, tons being those that reach the room, m3/s for each watt. */
    final double usualAir;

    final double condenserAir;
    /** Work of the blower, all of it heat in the air, J/m3. */
    final double blowerWork;

    final MoistAir air;
    private final Map<String, Double> values;

    /**
     * One assumed figure.
     *
     * @param value its value
     * @param unit its unit, empty for none
     * @param least the least that is physically possible, where half the value is not
     * @param most the most that is physically possible, where twice the value is not
     */
    record Assumed(double value, String unit, OptionalDouble least, OptionalDouble most) {}

    private Assumptions(Map<String, Double> values) {
        this.values = values;
        coilAirShare = value("coil air share");
        coilVapourResistance = value("coil vapour resistance");
        coilLiquidResistance = value("coil liquid resistance");
        coilFlowExponent = value("coil flow exponent");
        coilAirExponent = value("coil air exponent");
        oilForEachWatt = value("oil for each watt");
        oilSolubility = value("oil solubility");
        oilRiseK = value("oil rise");
        oilLeastRiseK = value("oil least rise");
        flashShare = value("metering flash share");
        staticShare = value("metering static share");
        spanShare = value("metering span share");
        clearance = value("compressor clearance");
        clearanceExponent = value("compressor exponent");
        leakedWorkKept = value("compressor leaked work kept");
        usualAir = value("air for each ton") * CUBIC_METRES_PER_SECOND_FOR_CFM / WATTS_FOR_TON;
        condenserAir = value("condenser air");
        blowerWork = value("blower power") / (1000 * CUBIC_METRES_PER_SECOND_FOR_CFM);
        air = new MoistAir(
                value("air coil heat capacity"),
                value("air density"),
                value("air dry heat capacity"),
                value("air vapour heat capacity"),
                value("air water heat capacity"),
                value("air latent heat"),
                value("air molar mass ratio"),
                value("air vapour pressure"),
                value("air vapour pressure slope"),
                value("air vapour pressure pole"));
    }

    /** The figures of the file. */
    static Assumptions standard() {
        return STANDARD.get();
    }

    /** Every figure of the file by its name. */
    static Map<String, Assumed> all() {
        return TABLE.get();
    }

    private static Map<String, Double> values() {
        Map<String, Double> values = new HashMap<>();
        all().forEach((name, assumed) -> values.put(name, assumed.value()));
        return values;
    }

    /** The same with another value for one of them. */
    Assumptions with(String name, double value) {
        value(name);
        Map<String, Double> changed = new HashMap<>(values);
        changed.put(name, value);
        return new Assumptions(changed);
    }

    /** One figure by its name, in the unit of its row. */
    double value(String name) {
        Double value = values.get(name);
        if (value == null) {
            throw new IllegalStateException("assumptions.csv has no row \"" + name + "\"");
        }
        return value;
    }
}
