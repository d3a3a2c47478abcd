package consumer;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.satline.equation.EquationLibrary;
import org.satline.equilibrium.FailedTrialException;
import org.satline.equilibrium.FluidModel;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.tables.GeneratedTable;

/**
 * A program of somebody else with an equation of its own: that of Tillner-Roth and Yokozeki (J. Phys. Chem. Ref. Data 26 (1997)
 * 1273-1328) under another name,
 * from files in its own jar.
 */
public final class Main {
    private static final List<String> FILES =
            List.of("equation.csv", "ideal-terms.csv", "residual-terms.csv", "check-values.csv");

    private Main() {}

    /** Fails where the own equation does not answer, alone or in a blend, or where a wrong one is not refused. */
    public static void main(String[] args) throws IOException {
        Refrigerant own = Refrigerant.substance("Own 32", "difluoromethane", 0.052024, "the paper");
        Map<String, byte[]> files = new HashMap<>();
        for (String file : FILES) {
            try (InputStream in = Main.class.getResourceAsStream(file)) {
                files.put(file, in.readAllBytes());
            }
        }
        EquationLibrary library = EquationLibrary.standard().with(files);
        FluidModel model = FluidModel.of(own, library);
        SaturationCurve curve = SaturationCurves.solving(model);
        // 813.1 kPa at 0 degC, as widely printed tables based on this equation have it (from memory)
        Pressure pressure = curve.bubblePressure(Temperature.ofCelsius(0));
        check(Math.abs(pressure.kilopascals() - 813.1) < 0.5, "pressure " + pressure);
        byte[] kept = GeneratedTable.of(model).toBytes();
        SaturationCurve table = GeneratedTable.read(model, "own.saturation", kept).curve();
        check(table.engine().name().equals("TABLE"), "engine " + table.engine());
        // twice the bound of a table
        double read = table.bubblePressurePa(Temperature.ofCelsius(0).kelvins());
        check(Math.abs(read / pressure.pascals() - 1) < 2e-8, "table " + table);
        Catalogue catalogue = Catalogue.standard()
                .with(List.of(own))
                .withBlends(
                        "blends.csv",
                        "blend,component,mass_percent\nshop mix,Own 32,50\nshop mix,R-125,50\n"
                                .getBytes(StandardCharsets.UTF_8));
        SaturationCurve blend = SaturationCurves.solving(FluidModel.of(catalogue.find("Shop Mix"), library));
        check(blend.glide(Pressure.ofKilopascals(800)).kelvins() >= 0, "glide");
        Composition listed = Catalogue.standard().find("R-410A").composition();
        check(Refrigerant.blend("mine", listed).asListed().designation().equals("R-410A"), "known by composition");
        check(SaturationCurves.of(Refrigerant.blend("mine", listed)).engine().name().equals("TABLE"), "its table");
        files.put(
                "residual-terms.csv",
                new String(files.get("residual-terms.csv"), StandardCharsets.UTF_8)
                        .replace("1.046634", "1.056634")
                        .getBytes(StandardCharsets.UTF_8));
        try {
            FluidModel.of(own, EquationLibrary.standard().with(files));
            check(false, "a wrong digit passed");
        } catch (FailedTrialException refused) {
            check(!refused.trial().faults().isEmpty(), "no fault named");
        }
        System.out.println("consumer with its own equation: " + pressure);
    }

    private static void check(boolean holds, String what) {
        if (!holds) {
            throw new IllegalStateException(what);
        }
    }
}
