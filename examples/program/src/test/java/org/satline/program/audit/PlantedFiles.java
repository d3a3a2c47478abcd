package org.satline.program.audit;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.satline.equilibrium.FluidModel;
import org.satline.equilibrium.ReferenceState;
import org.satline.refrigerant.Catalogue;

/**
 * Answer files of calculators that make known mistakes. The values come from the equations, the mistakes from sums written here alone;
 * which mistakes people make is common practice, no source.
 */
final class PlantedFiles {
    private static final double PSI = 6894.757293168361; // NIST SP 811 (2008), appendix B.8
    private static final double KGF_CM2 = 98066.5; // NIST SP 811
    private static final double KCAL = 4186.8; // NIST SP 811, International Table calorie
    private static final double BTU_LB = 2326; // NIST SP 811, exact
    private static final double LB_FT3 = 16.01846337396014; // NIST SP 811
    private static final double INHG = 3386.389; // NIST SP 811, at 0 degC
    private static final double AIR = 101325; // ISO 2533:1975
    private static final double AIR_1600_M = AIR * Math.pow(1 - 0.0065 * 1600 / 288.15, 5.25588); // ISO 2533:1975
    private static final int ROWS = 40;

    private PlantedFiles() {}

    /** What a calculator does with a question, K or Pa, about a fluid. */
    private interface Sum {
        double at(FluidModel fluid, double asked);
    }

    /** A mistake with the quantity in which it is made. */
    private record Plan(
            String mistake, String codes, String quantity, boolean byTemperature, String unit, Sum right, Sum wrong) {}

    private static double dew(FluidModel f, double t) {
        return f.dewAtTemperature(t).pressurePa();
    }

    private static double bubble(FluidModel f, double t) {
        return f.bubbleAtTemperature(t).pressurePa();
    }

    private static double vapourDensity(FluidModel f, double t) {
        return f.dewAtTemperature(t).saturated().density();
    }

    private static double liquidDensity(FluidModel f, double t) {
        return f.bubbleAtTemperature(t).saturated().density();
    }

    private static double vapourHeat(FluidModel f, double t) {
        return f.dewAtTemperature(t).saturated().specificEnthalpy();
    }

    private static double minus40(FluidModel f, double t) {
        return vapourHeat(f, t) - f.bubbleAtTemperature(233.15).saturated().specificEnthalpy();
    }

    /** Between the rows of a table with this spacing, K, counted from 0 degC. */
    private static double straight(Sum sum, FluidModel f, double t, double spacing) {
        double low = 273.15 + spacing * Math.floor((t - 273.15) / spacing);
        return sum.at(f, low) + (t - low) / spacing * (sum.at(f, low + spacing) - sum.at(f, low));
    }

    /** A polynomial of third order in the temperature through four values, used beyond them as well. */
    private static double polynomial(FluidModel f, double t) {
        double[] nodes = {280, 286, 292, 298};
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double share = dew(f, nodes[i]);
            for (int j = 0; j < nodes.length; j++) {
                share *= i == j ? 1 : (t - nodes[j]) / (nodes[i] - nodes[j]);
            }
            sum += share;
        }
        return sum;
    }

    private static final Sum KPA = (f, t) -> dew(f, t) / 1000;
    private static final Sum PSIG = (f, t) -> (dew(f, t) - AIR) / PSI;
    private static final Sum BUBBLE_T = (f, p) -> f.bubbleAtPressure(p).temperatureK() - 273.15;
    private static final Sum DEW_T = (f, p) -> f.dewAtPressure(p).temperatureK() - 273.15;
    private static final Sum KJ = (f, t) -> vapourHeat(f, t) / 1000;

    private static Plan pressure(String mistake, String codes, Sum wrong) {
        return new Plan(mistake, codes, "dew_pressure", true, "kPa", KPA, wrong);
    }

    private static final List<Plan> SINGLE = List.of(
            pressure("gauge labelled absolute", "GAUGE_CALLED_ABSOLUTE", (f, t) -> (dew(f, t) - AIR) / 1000),
            new Plan(
                    "gauge zero 15 psi",
                    "ROUND_ATMOSPHERE",
                    "dew_pressure",
                    true,
                    "psig",
                    PSIG,
                    (f, t) -> dew(f, t) / PSI - 15),
            new Plan(
                    "gauge zero 1 bar",
                    "ROUND_ATMOSPHERE",
                    "dew_pressure",
                    true,
                    "kPa gauge",
                    (f, t) -> (dew(f, t) - AIR) / 1000,
                    (f, t) -> dew(f, t) / 1000 - 100),
            pressure("psi for kPa", "OTHER_UNIT", (f, t) -> dew(f, t) / PSI),
            new Plan(
                    "kgf/cm2 for bar",
                    "OTHER_UNIT",
                    "dew_pressure",
                    true,
                    "bar",
                    (f, t) -> dew(f, t) / 1e5,
                    (f, t) -> dew(f, t) / KGF_CM2),
            new Plan(
                    "bar for Pa",
                    "OTHER_UNIT",
                    "dew_pressure",
                    true,
                    "Pa",
                    PlantedFiles::dew,
                    (f, t) -> dew(f, t) / 1e5),
            new Plan(
                    "inches of vacuum",
                    "OTHER_UNIT",
                    "dew_pressure",
                    true,
                    "psig",
                    PSIG,
                    (f, t) -> (AIR - dew(f, t)) / INHG),
            pressure("0 degC taken for 273 K", "USED_TOO_LOW", (f, t) -> dew(f, t - 0.15) / 1000),
            new Plan(
                    "0 degC taken for 273 K, answer",
                    "GIVEN_TOO_HIGH",
                    "dew_temperature",
                    false,
                    "degC",
                    DEW_T,
                    (f, p) -> DEW_T.at(f, p) + 0.15),
            pressure("32 forgotten", "QUESTION_LACKS_32", (f, t) -> dew(f, t - 32 / 1.8) / 1000),
            pressure("decimal place", "DECIMAL_PLACE", (f, t) -> dew(f, t) / 100),
            pressure("straight lines, 20 K", "STRAIGHT_LINE", (f, t) -> straight(PlantedFiles::dew, f, t, 20) / 1000),
            pressure("straight lines, 10 K", "STRAIGHT_LINE", (f, t) -> straight(PlantedFiles::dew, f, t, 10) / 1000),
            pressure("straight lines, 5 K", "STRAIGHT_LINE", (f, t) -> straight(PlantedFiles::dew, f, t, 5) / 1000),
            pressure(
                    "Celsius as Fahrenheit",
                    "CELSIUS_AS_FAHRENHEIT",
                    (f, t) -> dew(f, (t - 273.15 + 459.67) / 1.8) / 1000),
            new Plan(
                    "dew for bubble", "OTHER_LINE", "bubble_pressure", true, "kPa", (f, t) -> bubble(f, t) / 1000, KPA),
            new Plan(
                    "subcooling from the dew line", "OTHER_LINE", "bubble_temperature", false, "degC", BUBBLE_T, DEW_T),
            pressure("mean of bubble and dew", "MIDDLE_LINE", (f, t) -> (dew(f, t) + bubble(f, t)) / 2000),
            new Plan(
                    "zero at -40 degC",
                    "OTHER_ZERO",
                    "dew_vapour_enthalpy",
                    true,
                    "kJ/kg",
                    KJ,
                    (f, t) -> minus40(f, t) / 1000),
            new Plan(
                    "kcal for kJ",
                    "OTHER_UNIT",
                    "dew_vapour_enthalpy",
                    true,
                    "kJ/kg",
                    KJ,
                    (f, t) -> vapourHeat(f, t) / KCAL),
            new Plan(
                    "Btu/lb for kJ",
                    "OTHER_UNIT",
                    "dew_vapour_enthalpy",
                    true,
                    "kJ/kg",
                    KJ,
                    (f, t) -> vapourHeat(f, t) / BTU_LB),
            new Plan(
                    "volume for density",
                    "RECIPROCAL",
                    "dew_vapour_density",
                    true,
                    "lb/ft3",
                    (f, t) -> vapourDensity(f, t) / LB_FT3,
                    (f, t) -> LB_FT3 / vapourDensity(f, t)),
            new Plan(
                    "lb/ft3 for kg/m3",
                    "OTHER_UNIT",
                    "bubble_liquid_density",
                    true,
                    "kg/m3",
                    PlantedFiles::liquidDensity,
                    (f, t) -> liquidDensity(f, t) / LB_FT3),
            new Plan(
                    "vapour for liquid",
                    "OTHER_LINE",
                    "bubble_liquid_density",
                    true,
                    "kg/m3",
                    PlantedFiles::liquidDensity,
                    PlantedFiles::vapourDensity),
            new Plan(
                    "density in the enthalpy column",
                    "OTHER_COLUMN",
                    "dew_vapour_enthalpy",
                    true,
                    "kJ/kg",
                    KJ,
                    PlantedFiles::vapourDensity),
            new Plan(
                    "altitude ignored",
                    "SEA_LEVEL_ANSWER",
                    "dew_pressure",
                    true,
                    "psig",
                    (f, t) -> (dew(f, t) - AIR_1600_M) / PSI,
                    PSIG),
            pressure(
                    "another refrigerant",
                    "OTHER_REFRIGERANT",
                    (f, t) -> FluidModel.of(Catalogue.standard().find("R-152a"))
                                    .dewAtTemperature(t)
                                    .pressurePa()
                            / 1000),
            pressure("digits cut off", "DIGITS_CUT", KPA),
            pressure("polynomial used outside", "RUNS_AWAY", (f, t) -> polynomial(f, t) / 1000),
            pressure("one row later", "ROW_AFTER", KPA),
            pressure("stuck", "STUCK", (f, t) -> dew(f, 280) / 1000),
            new Plan(
                    "Celsius for kelvins",
                    "OTHER_UNIT",
                    "dew_temperature",
                    false,
                    "K",
                    (f, p) -> f.dewAtPressure(p).temperatureK(),
                    DEW_T));

    private static final List<Plan> PAIRS = List.of(
            pressure("gauge and psi", "GAUGE_CALLED_ABSOLUTE OTHER_UNIT", (f, t) -> (dew(f, t) - AIR) / PSI),
            pressure(
                    "32 forgotten and gauge",
                    "QUESTION_LACKS_32 GAUGE_CALLED_ABSOLUTE",
                    (f, t) -> (dew(f, t - 32 / 1.8) - AIR) / 1000),
            pressure("0 degC taken for 273 K, and psi", "USED_TOO_LOW OTHER_UNIT", (f, t) -> dew(f, t - 0.15) / PSI),
            pressure(
                    "0 degC taken for 273 K, and gauge",
                    "USED_TOO_LOW GAUGE_CALLED_ABSOLUTE",
                    (f, t) -> (dew(f, t - 0.15) - AIR) / 1000),
            pressure(
                    "straight lines and gauge",
                    "STRAIGHT_LINE GAUGE_CALLED_ABSOLUTE",
                    (f, t) -> (straight(PlantedFiles::dew, f, t, 20) - AIR) / 1000),
            new Plan(
                    "zero at -40 degC and Btu",
                    "OTHER_ZERO OTHER_UNIT",
                    "dew_vapour_enthalpy",
                    true,
                    "kJ/kg",
                    KJ,
                    (f, t) -> minus40(f, t) / BTU_LB),
            new Plan(
                    "vapour for liquid, and lb/ft3",
                    "OTHER_LINE OTHER_UNIT",
                    "bubble_liquid_density",
                    true,
                    "kg/m3",
                    PlantedFiles::liquidDensity,
                    (f, t) -> vapourDensity(f, t) / LB_FT3),
            pressure(
                    "Celsius as Fahrenheit and psi",
                    "CELSIUS_AS_FAHRENHEIT OTHER_UNIT",
                    (f, t) -> dew(f, (t - 273.15 + 459.67) / 1.8) / PSI));

    private static final List<String> PURE = List.of("R-134a", "R-32", "R-290", "R-1234yf", "R-600a");
    private static final Set<String> OF_BLENDS =
            Set.of("dew for bubble", "subcooling from the dew line", "mean of bubble and dew");

    /**
     * A hundred files, 76 with one mistake and 24 with two.
     *
     * @param seed which hundred; 0 stands in the README
     */
    static List<PlantedFile> hundred(int seed) {
        List<PlantedFile> files = new ArrayList<>();
        for (int i = 0; i < 76; i++) {
            files.add(file(SINGLE.get(i % SINGLE.size()), i, seed));
        }
        for (int i = 0; i < 24; i++) {
            files.add(file(PAIRS.get(i % PAIRS.size()), i, seed));
        }
        return files;
    }

    private static PlantedFile file(Plan plan, int number, int seed) {
        Random random = new Random(100 + number + 1000L * seed);
        boolean vacuum = plan.mistake.equals("inches of vacuum");
        boolean volume = plan.mistake.equals("volume for density");
        String name = OF_BLENDS.contains(plan.mistake)
                ? List.of("R-407C", "R-454B").get((number + seed) % 2)
                : vacuum ? "R-245fa" : PURE.get((number / 3 + number + seed) % PURE.size());
        FluidModel fluid = FluidModel.of(Catalogue.standard().find(name)).with(ReferenceState.IIR);
        double usual = vacuum ? 245 : volume ? 225 : 250 + random.nextInt(5) + 0.15;
        double first = seed > 0 ? usual + 4 * random.nextDouble() - 2 : usual;
        double step = (vacuum || volume ? 0.9 : 1.3) * (seed > 0 ? 0.8 + 0.3 * random.nextDouble() : 1);
        List<Double> asked = new ArrayList<>();
        for (int i = 0; i < ROWS; i++) {
            double t = Math.rint(100 * (first + step * i)) / 100;
            asked.add(plan.byTemperature ? t : Math.rint(dew(fluid, t)));
        }
        boolean later = plan.mistake.equals("one row later");
        return made(
                plan.mistake,
                Set.of(plan.codes.split(" ")),
                plan,
                name,
                asked,
                x -> plan.right.at(fluid, x),
                x -> plan.wrong.at(fluid, later ? x + step : x),
                plan.mistake.equals("digits cut off") ? RoundingMode.DOWN : RoundingMode.HALF_EVEN);
    }

    private static PlantedFile made(
            String mistake,
            Set<String> codes,
            Plan plan,
            String name,
            List<Double> asked,
            DoubleUnaryOperator right,
            DoubleUnaryOperator wrong,
            RoundingMode rounding) {
        return new PlantedFile(
                mistake,
                codes,
                name,
                plan.quantity,
                plan.byTemperature,
                plan.unit,
                mistake.equals("altitude ignored") ? 1600 : 0,
                asked,
                asked.stream().map(right::applyAsDouble).toList(),
                asked.stream().map(wrong::applyAsDouble).toList(),
                rounding);
    }

    /**
     * A file without a mistake that has a name: clean, noisy or drifting in turn.
     *
     * @param number which file
     * @param seed which of many such files
     */
    static PlantedFile innocent(int number, int seed) {
        Random random = new Random(7000 + number + 100_000L * seed);
        List<Plan> plans =
                SINGLE.stream().filter(plan -> !plan.unit.equals("Pa")).toList();
        Plan plan = plans.get(random.nextInt(plans.size()));
        String name = number % 4 == 3 ? "R-407C" : PURE.get(random.nextInt(PURE.size()));
        FluidModel fluid = FluidModel.of(Catalogue.standard().find(name)).with(ReferenceState.IIR);
        int rows = 8 + random.nextInt(40);
        double noise = number % 3 == 1 ? Math.pow(10, -3.5 + 2.5 * random.nextDouble()) : 0;
        double drift = number % 3 == 2 ? Math.pow(10, -4.5 + 2.5 * random.nextDouble()) : 0;
        double bend = drift * 0.02 * random.nextGaussian();
        double level = number % 3 == 2 ? 20 * drift * random.nextGaussian() : 0;
        List<Double> asked = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        List<Double> wrong = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            double t = Math.rint(100 * (245 + 60 * random.nextDouble())) / 100;
            double x = plan.byTemperature ? t : Math.rint(dew(fluid, t));
            double value = plan.right.at(fluid, x);
            asked.add(x);
            right.add(value);
            wrong.add(value
                    * (1 + noise * random.nextGaussian() + level + drift * (t - 260) + bend * (t - 260) * (t - 260)));
        }
        return new PlantedFile(
                List.of("clean", "noisy", "drifting").get(number % 3),
                Set.of(),
                name,
                plan.quantity,
                plan.byTemperature,
                plan.unit,
                plan.mistake.equals("altitude ignored") ? 1600 : 0,
                asked,
                right,
                wrong,
                RoundingMode.HALF_EVEN);
    }
}
