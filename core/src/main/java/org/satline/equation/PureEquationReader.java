package org.satline.equation;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.satline.quantity.Parts;
import org.satline.resource.ResourceFormatException;

/** Reads coefficient files strictly: an unknown key, a missing array or arrays of unequal length are errors that name the file. */
final class PureEquationReader {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .build();
    private static final double[] NONE = {};

    private PureEquationReader() {}

    record Reducing(
            @JsonProperty("T_K") double temperature,
            @JsonProperty("rho_mol_per_m3") double density) {
        Reducing {
            positive("reducing", temperature, density);
        }
    }

    record Critical(
            @JsonProperty("T_K") double temperature,
            @JsonProperty("p_Pa") double pressure,
            @JsonProperty("rho_mol_per_m3") double density) {
        Critical {
            positive("critical", temperature, pressure, density);
        }
    }

    record Validity(
            @JsonProperty("Tmin_K") double minTemperature,
            @JsonProperty("Tmax_K") double maxTemperature,
            @JsonProperty("pmax_Pa") double maxPressure) {
        Validity {
            positive("validity", minTemperature, maxTemperature, maxPressure);
        }
    }

    @SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
    record IdealRow(
            String type,
            @Nullable Double constant,
            @Nullable Double linear,
            @Nullable Double log,
            double @Nullable [] n,
            double @Nullable [] t,
            double @Nullable [] theta) {}

    @SuppressWarnings("ArrayRecordComponent") // never leaves the package, never compared
    record ResidualRow(
            String type,
            double[] n,
            double @Nullable [] d,
            double @Nullable [] t,
            double @Nullable [] l,
            double @Nullable [] g,
            double @Nullable [] m,
            double @Nullable [] eta,
            double @Nullable [] eps,
            double @Nullable [] beta,
            double @Nullable [] gam,
            double @Nullable [] a,
            double @Nullable [] b,
            @JsonProperty("A") double @Nullable [] bigA,
            @JsonProperty("B") double @Nullable [] bigB,
            @JsonProperty("C") double @Nullable [] bigC,
            @JsonProperty("D") double @Nullable [] bigD) {}

    record PureFile(
            String designation,
            String chemicalName,
            String cas,
            @JsonProperty("molarMass_kg_per_mol") double molarMass,
            @JsonProperty("gasConstant_J_per_molK") double gasConstant,
            Reducing reducing,
            Critical critical,
            @JsonProperty("tripleT_K") double tripleTemperature,
            Validity validity,
            double acentricFactor,
            List<IdealRow> ideal,
            List<ResidualRow> residual,
            EquationSource source) {
        PureFile {
            Parts.required("designation-is-missing reducing-is-missing", designation, reducing);
            Parts.required("critical-is-missing validity-is-missing ideal-is-missing", critical, validity, ideal);
            Parts.required("residual-is-missing source-is-missing", residual, source);
            positive(
                    "molarMass_kg_per_mol, gasConstant_J_per_molK or tripleT_K",
                    molarMass,
                    gasConstant,
                    tripleTemperature);
        }
    }

    /** Text such as "NaN" passes for a number in the JSON library, so the values themselves are looked at. */
    private static void positive(String key, double... values) {
        for (double value : values) {
            if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(key + " holds " + value + ", expected a finite number above 0");
            }
        }
    }

    /** Name of the resource that holds a substance: {@code R-1234ze(E)} is in {@code pure/r1234ze-e.json}. */
    static String resourceName(String designation) {
        String name = designation.toLowerCase(Locale.ROOT).replaceFirst("-", "");
        return "pure/" + name.replace('(', '-').replace(")", "") + ".json";
    }

    static PureEquation read(String designation) {
        String resource = resourceName(designation);
        PureFile file = readJson(resource, PureFile.class);
        if (!file.designation().equals(designation)) {
            throw new ResourceFormatException(resource, 0, "holds " + file.designation() + ", expected " + designation);
        }
        PureConstants constants = new PureConstants(
                designation,
                file.chemicalName(),
                file.molarMass(),
                file.gasConstant(),
                file.reducing().temperature(),
                file.reducing().density(),
                file.critical().temperature(),
                file.critical().pressure(),
                file.critical().density(),
                file.tripleTemperature(),
                file.validity().minTemperature(),
                file.validity().maxTemperature(),
                file.validity().maxPressure(),
                file.acentricFactor());
        return new PureEquation(
                constants, file.source(), idealGas(resource, file.ideal()), terms(resource, file.residual()));
    }

    static <T> T readJson(String resource, Class<T> type) {
        try (InputStream in = PureEquationReader.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new ResourceFormatException(resource, 0, "no such resource; the jar is incomplete");
            }
            return MAPPER.readValue(in, type);
        } catch (IOException e) {
            ResourceFormatException broken = new ResourceFormatException(resource, 0, "" + e.getMessage());
            broken.initCause(e);
            throw broken;
        }
    }

    private static IdealGas idealGas(String resource, List<IdealRow> rows) {
        IdealGas found = new IdealGas(0, 0, 0, NONE, NONE, NONE, NONE);
        boolean logarithmic = false;
        for (IdealRow row : rows) {
            switch (row.type()) {
                case "logarithmic" -> {
                    if (logarithmic || row.constant() == null || row.linear() == null || row.log() == null) {
                        throw new ResourceFormatException(
                                resource, 0, "the logarithmic term is repeated or incomplete");
                    }
                    logarithmic = true;
                    found = new IdealGas(
                            row.constant(),
                            row.linear(),
                            row.log(),
                            found.powerN(),
                            found.powerT(),
                            found.vibrationN(),
                            found.vibrationTheta());
                }
                case "power" ->
                    found = new IdealGas(
                            found.constant(),
                            found.linear(),
                            found.log(),
                            same(resource, "n", row.n(), row.n()),
                            same(resource, "t", row.t(), row.n()),
                            found.vibrationN(),
                            found.vibrationTheta());
                case "planckEinstein" ->
                    found = new IdealGas(
                            found.constant(),
                            found.linear(),
                            found.log(),
                            found.powerN(),
                            found.powerT(),
                            same(resource, "n", row.n(), row.n()),
                            same(resource, "theta", row.theta(), row.n()));
                default -> throw new ResourceFormatException(resource, 0, "unknown ideal-gas term type " + row.type());
            }
        }
        if (!logarithmic) {
            throw new ResourceFormatException(resource, 0, "the logarithmic term is missing");
        }
        return found;
    }

    static ResidualTerms[] terms(String resource, List<ResidualRow> rows) {
        return rows.stream().map(row -> group(resource, row)).toArray(ResidualTerms[]::new);
    }

    private static ResidualTerms group(String resource, ResidualRow row) {
        double[] n = same(resource, "n", row.n(), row.n());
        return switch (row.type()) {
            case "power" ->
                new PolynomialTerms(
                        n,
                        same(resource, "d", row.d(), n),
                        same(resource, "t", row.t(), n),
                        new int[n.length],
                        zeros(n));
            case "exponential" ->
                new PolynomialTerms(
                        n,
                        same(resource, "d", row.d(), n),
                        same(resource, "t", row.t(), n),
                        integers(resource, same(resource, "l", row.l(), n)),
                        row.g() == null ? ones(n) : same(resource, "g", row.g(), n));
            case "gaussian" ->
                new GaussianTerms(
                        n,
                        same(resource, "d", row.d(), n),
                        same(resource, "t", row.t(), n),
                        same(resource, "eta", row.eta(), n),
                        same(resource, "eps", row.eps(), n),
                        same(resource, "beta", row.beta(), n),
                        same(resource, "gam", row.gam(), n));
            case "gaussianDensity" ->
                new DensityGaussianTerms(
                        n,
                        same(resource, "d", row.d(), n),
                        same(resource, "t", row.t(), n),
                        same(resource, "eta", row.eta(), n),
                        same(resource, "eps", row.eps(), n),
                        same(resource, "beta", row.beta(), n),
                        same(resource, "gam", row.gam(), n));
            case "doubleExponential" ->
                new DoubleExponentialTerms(
                        n,
                        same(resource, "d", row.d(), n),
                        same(resource, "t", row.t(), n),
                        same(resource, "l", row.l(), n),
                        same(resource, "m", row.m(), n));
            case "association" ->
                new AssociationTerms(
                        n,
                        same(resource, "d", row.d(), n),
                        same(resource, "t", row.t(), n),
                        same(resource, "eta", row.eta(), n),
                        same(resource, "eps", row.eps(), n),
                        same(resource, "beta", row.beta(), n),
                        same(resource, "gam", row.gam(), n),
                        same(resource, "b", row.b(), n));
            case "criticalRegion" ->
                new CriticalRegionTerms(
                        n,
                        same(resource, "a", row.a(), n),
                        same(resource, "b", row.b(), n),
                        same(resource, "beta", row.beta(), n),
                        same(resource, "A", row.bigA(), n),
                        same(resource, "B", row.bigB(), n),
                        same(resource, "C", row.bigC(), n),
                        same(resource, "D", row.bigD(), n));
            default -> throw new ResourceFormatException(resource, 0, "unknown residual term type " + row.type());
        };
    }

    private static double[] same(String resource, String name, double @Nullable [] values, double @Nullable [] n) {
        if (values == null || n == null || values.length != n.length) {
            throw new ResourceFormatException(resource, 0, "array " + name + " is missing or not as long as n");
        }
        for (double value : values) {
            if (!Double.isFinite(value)) {
                throw new ResourceFormatException(resource, 0, "array " + name + " holds " + value);
            }
        }
        return values;
    }

    private static double[] zeros(double[] n) {
        return new double[n.length];
    }

    private static double[] ones(double[] n) {
        double[] ones = new double[n.length];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static int[] integers(String resource, double[] values) {
        int[] integers = new int[values.length];
        for (int i = 0; i < values.length; i++) {
            integers[i] = (int) values[i];
            if (integers[i] != values[i] || integers[i] < 1) {
                throw new ResourceFormatException(
                        resource, 0, "l holds " + values[i] + ", expected a whole number above 0");
            }
        }
        return integers;
    }
}
