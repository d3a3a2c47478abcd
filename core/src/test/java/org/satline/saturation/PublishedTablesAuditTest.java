package org.satline.saturation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.satline.audit.AuditReport;
import org.satline.audit.Auditor;
import org.satline.audit.answer.AuditOutcome;
import org.satline.audit.answer.AuditOutcome.Compared;
import org.satline.audit.answer.AuditRow;
import org.satline.equilibrium.ReferenceState;
import org.satline.quantity.Temperature;

/**
 * The printed cells of published-points.csv, each with its source there, as answers of another calculator. Whatever the audit finds outside
 * has to be a cell that open-differences.csv lists with a reason, or one of a source of which published-allowances.csv says why it differs.
 */
@Tag("reference")
class PublishedTablesAuditTest {
    private static final List<PublishedPoint> POINTS = PublishedPoint.all();
    private static final List<PublishedAllowance> ALLOWANCES = PublishedAllowance.all();
    private static final Set<String> OPEN = PublishedSaturationReferenceTest.OPEN.keySet();

    /** The cell as a row; empty for volumes, differences and mean lines, about which no audit can be asked. */
    private static Optional<AuditRow> row(PublishedPoint point) {
        String quantity = point.quantity();
        int slash = quantity.indexOf('/');
        String name = slash < 0 ? quantity : quantity.substring(0, slash);
        Optional<String> asked = switch (name) {
            case "saturation pressure", "bubble pressure", "saturation gauge pressure", "bubble gauge pressure" ->
                Optional.of("bubble_pressure");
            case "saturation vacuum" -> Optional.of("bubble_pressure");
            case "dew pressure" -> Optional.of("dew_pressure");
            case "saturation temperature", "bubble temperature" -> Optional.of("bubble_temperature");
            case "dew temperature" -> Optional.of("dew_temperature");
            case "liquid density", "liquid enthalpy", "liquid entropy" ->
                Optional.of(name.replace("liquid ", "bubble_liquid_"));
            case "vapour density", "vapour enthalpy", "vapour entropy" ->
                Optional.of(name.replace("vapour ", "dew_vapour_"));
            default -> Optional.empty();
        };
        String unit = name.endsWith("density")
                ? "kg/m3"
                : name.endsWith("enthalpy")
                        ? "kJ/kg"
                        : name.endsWith("entropy") ? "kJ/(kg K)" : quantity.substring(slash + 1);
        boolean byPressure = point.given().equals("pressure/kPa");
        Temperature t = point.given().equals("temperature/degF")
                ? Temperature.ofFahrenheit(point.givenNumber())
                : Temperature.ofCelsius(byPressure ? 0 : point.givenNumber());
        return asked.map(label -> new AuditRow(
                point.key(),
                point.refrigerant(),
                label,
                byPressure ? OptionalDouble.empty() : OptionalDouble.of(t.kelvins()),
                byPressure ? OptionalDouble.of(point.givenNumber() * 1000) : OptionalDouble.empty(),
                point.printed().toPlainString(),
                name.equals("saturation vacuum") ? "inHg vacuum" : unit,
                Optional.empty(),
                OptionalDouble.empty()));
    }

    @Test
    void nothingIsOutsideButWhatIsListedAndExplained() {
        Map<String, List<AuditRow>> byZero = new TreeMap<>();
        Map<String, PublishedPoint> points = new TreeMap<>();
        for (PublishedPoint point : POINTS) {
            Optional<AuditRow> row = row(point);
            if (row.isPresent()) {
                byZero.computeIfAbsent(point.referenceState(), key -> new ArrayList<>())
                        .add(row.get());
                points.put(point.key(), point);
            }
        }
        Set<String> unexplained = new HashSet<>();
        int compared = 0;
        for (Map.Entry<String, List<AuditRow>> zero : byZero.entrySet()) {
            Auditor auditor =
                    zero.getKey().equals("-40 degC") ? Auditor.of(ReferenceState.MINUS_40_CELSIUS) : Auditor.standard();
            AuditReport report = auditor.audit(zero.getValue());
            assertThat(report.summary().causes())
                    .as("mistakes read into printed tables")
                    .isEmpty();
            for (AuditOutcome outcome : report.outcomes()) {
                assertThat(outcome).as(outcome.row().id()).isInstanceOf(Compared.class);
                compared++;
                Compared row = (Compared) outcome;
                PublishedPoint point =
                        Objects.requireNonNull(points.get(row.row().id()));
                if (!row.within()
                        && !OPEN.contains(point.key())
                        && PublishedAllowance.find(ALLOWANCES, point).isEmpty()) {
                    unexplained.add(point.key() + ": " + row.comparison());
                }
            }
        }
        assertThat(compared).isGreaterThan(700);
        assertThat(unexplained).isEmpty();
    }
}
