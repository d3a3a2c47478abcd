package org.satline.page;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.satline.refrigerant.Catalogue;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;

/** Visits at random: the invented sample with other refrigerants, readings, conditions, cylinders and hoses. Same seed, same visits. */
final class RandomVisits {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<String> GASES = List.of("R-410A", "R-32", "R-22", "R-134a", "R-407C", "R-290", "R-454B");
    private static final List<String> VALVES =
            List.of("recovery-vapour", "recovery-vapour", "source-liquid", "source-vapour");
    private static final List<String> ENDS = List.of("open-close-valve", "self-sealing", "plain-flare");
    private static final List<String> HOLDS = List.of("air", "vapour", "evacuated");

    private final Random random;
    private final ObjectNode sample;

    RandomVisits(long seed) {
        random = new Random(seed);
        try {
            sample =
                    (ObjectNode) JSON.readTree(Files.readString(Path.of("..", "program", "samples", "boathouse.json")));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    String next() {
        ObjectNode visit = sample.deepCopy();
        String gas = one(GASES);
        ObjectNode system = (ObjectNode) visit.path("system");
        system.put("refrigerant", gas);
        system.put("metering", random.nextInt(3) == 0 ? "fixed-orifice" : "expansion-valve");
        readings((ObjectNode) visit.path("readings"), gas);
        ObjectNode conditions = (ObjectNode) visit.path("conditions");
        conditions.remove("settling");
        conditions.put("settled", random.nextInt(8) != 0);
        conditions.put("running", figure("%.0f min", 5, 60));
        if (random.nextBoolean()) {
            visit.remove("moved");
        }
        if (random.nextInt(4) == 0) {
            visit.remove("manifold");
        }
        cylinder((ObjectNode) visit.path("cylinder"), gas);
        if (random.nextInt(6) == 0) {
            visit.remove("cylinder");
        }
        return visit.toString();
    }

    private void readings(ObjectNode readings, String gas) {
        SaturationCurve curve = SaturationCurves.of(Catalogue.standard().find(gas));
        double outdoor = 293 + 20 * random.nextDouble();
        double evaporating = 273 + 12 * random.nextDouble();
        double condensing = outdoor + 8 + 15 * random.nextDouble();
        readings.put("suctionPressure", kilopascals(curve.dewPressurePa(evaporating)));
        readings.put("suctionLine", celsius(evaporating + 1 + 14 * random.nextDouble()));
        readings.put("liquidPressure", kilopascals(curve.bubblePressurePa(condensing)));
        readings.put("liquidLine", celsius(condensing - 12 * random.nextDouble()));
        readings.put("outdoorAir", celsius(outdoor));
        readings.put("returnDryBulb", celsius(295 + 6 * random.nextDouble()));
        readings.put("returnWetBulb", celsius(288 + 5 * random.nextDouble()));
        if (random.nextInt(5) == 0) {
            readings.remove("outdoorAir");
        }
    }

    private void cylinder(ObjectNode cylinder, String gas) {
        cylinder.put("valve", one(VALVES));
        cylinder.put("holding", random.nextInt(8) == 0 ? one(GASES) : gas);
        cylinder.put("temperature", figure("%.1f degC", 5, 40));
        cylinder.remove("pressure");
        cylinder.put("scaleReading", figure("%.2f lb", 30, 68));
        cylinder.remove("hoseContents");
        ObjectNode hose = (ObjectNode) cylinder.path("hoses").path(0);
        hose.put("systemEnd", one(ENDS));
        hose.put("cylinderEnd", one(ENDS));
        String holds = one(HOLDS);
        hose.put("holds", holds);
        if (!holds.equals("vapour")) {
            hose.remove("contentsFrom");
        }
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private String figure(String form, double low, double high) {
        return String.format(Locale.ROOT, form, low + (high - low) * random.nextDouble());
    }

    private static String kilopascals(double pascals) {
        return String.format(Locale.ROOT, "%.1f kPa gauge", (pascals - 97_656) / 1000);
    }

    private static String celsius(double kelvins) {
        return String.format(Locale.ROOT, "%.1f degC", kelvins - 273.15);
    }
}
