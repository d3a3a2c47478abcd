package org.satline.program.answers;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.satline.audit.AuditSummary;
import org.satline.audit.AuditedRow;
import org.satline.audit.answer.AuditOutcome.Compared;
import org.satline.audit.answer.AuditOutcome.NotComparable;
import org.satline.audit.answer.AuditRow;
import org.satline.audit.answer.AuditTolerance.Share;
import org.satline.audit.answer.Comparison;
import org.satline.audit.cause.Mistake;
import org.satline.json.SatlineJson;
import org.satline.program.file.JsonOutput;
import org.satline.refrigerant.Catalogue;

/**
 * An audit as one JSON object, written row by row; each source and each basis of a tolerance stands there once. Its schema is
 * {@code org/satline/program/audit/audit.schema.json}. The file is whole or absent. For one thread.
 */
public final class AuditJson implements AutoCloseable {
    private final JsonOutput json;
    private final SatlineJson forms = new SatlineJson();
    private final Map<String, String> sources = new LinkedHashMap<>();
    private final Map<String, Integer> bases = new LinkedHashMap<>();

    private AuditJson(JsonOutput json) {
        this.json = json;
    }

    /**
     * Opens an output.
     *
     * @param in the path of the input, to see that the output is another file
     * @param out the output
     * @return the output, to be closed
     * @throws BadInputException if the output cannot be used
     */
    public static AuditJson of(Path in, Path out) {
        JsonOutput json = JsonOutput.of(in, out);
        json.object();
        json.field("form", "audit-1");
        json.field("data", Catalogue.standard().dataVersion());
        json.list("rows");
        return new AuditJson(json);
    }

    /**
     * Writes a row.
     *
     * @param audited the row
     * @throws BadInputException if it cannot be written
     */
    public void add(AuditedRow audited) {
        json.objectOnItsLine();
        asked(audited.outcome().row());
        if (audited.outcome() instanceof Compared compared) {
            compared(compared);
        } else {
            NotComparable refused = (NotComparable) audited.outcome();
            json.field("outcome", "notComparable");
            json.field("reason", refused.reason().name());
            json.field("explanation", refused.explanation());
        }
        if (!audited.mistakes().isEmpty()) {
            json.list("mistakes");
            for (Mistake mistake : audited.mistakes()) {
                json.itemOfJson(forms.write(mistake));
            }
            json.endList();
        }
        json.endObject();
    }

    private void asked(AuditRow row) {
        json.field("id", row.id());
        json.field("refrigerant", row.refrigerant());
        json.field("quantity", row.quantity());
        given("temperatureK", row.temperatureK());
        given("pressurePa", row.pressurePa());
        if (row.altitude().isPresent()) {
            json.field("altitudeM", row.altitude().get().metres());
        }
        given("ownTolerance", row.tolerance());
        json.field("answer", row.answer());
        json.field("unit", row.unit());
    }

    private void given(String name, OptionalDouble value) {
        if (value.isPresent()) {
            json.field(name, value.getAsDouble());
        }
    }

    private void compared(Compared compared) {
        Comparison c = compared.comparison();
        sources.computeIfAbsent(
                compared.designation(), key -> compared.steps().get(0).source());
        json.field("outcome", compared.within() ? "within" : "outside");
        json.field("designation", compared.designation());
        json.field("ours", c.ours());
        json.field("difference", c.difference());
        json.field("tolerance", c.tolerance().width());
        json.list("shares");
        for (Share share : c.tolerance().shares()) {
            json.object();
            json.field("origin", share.origin().name());
            json.field("width", share.width());
            json.field("basis", bases.computeIfAbsent(share.basis(), key -> bases.size()));
            json.endObject();
        }
        json.endList();
    }

    /**
     * Writes what follows the rows and puts the whole file in its place.
     *
     * @param summary the summary
     * @throws BadInputException if it cannot be written; what stood there before is left
     */
    public void commit(AuditSummary summary) {
        json.endList();
        List<String> citations = sources.values().stream()
                .flatMap(source -> Stream.of(source.split("; ", -1)))
                .distinct()
                .toList();
        texts("citations", citations);
        json.list("sources");
        for (Map.Entry<String, String> source : sources.entrySet()) {
            json.object();
            json.field("designation", source.getKey());
            json.list("citations");
            for (String citation : source.getValue().split("; ", -1)) {
                json.item(citations.indexOf(citation));
            }
            json.endList();
            json.endObject();
        }
        json.endList();
        texts(
                "bases",
                bases.keySet().stream()
                        .map(basis -> referring(basis, citations))
                        .toList());
        json.list("worst");
        for (Compared row : summary.worst()) {
            json.item(row.row().id());
        }
        json.endList();
        json.fieldOfJson("summary", forms.write(withoutRows(summary)));
        json.endObject();
        json.commit();
    }

    private void texts(String name, List<String> texts) {
        json.list(name);
        for (String text : texts) {
            json.item(text);
        }
        json.endList();
    }

    /** The text with the place of each citation, from 0, instead of it. */
    private static String referring(String basis, List<String> citations) {
        String text = basis;
        for (int i = 0; i < citations.size(); i++) {
            text = text.replace(citations.get(i), "[" + i + "]");
        }
        return text;
    }

    /** The rows stand in the file already. */
    private static AuditSummary withoutRows(AuditSummary s) {
        return new AuditSummary(
                s.within(),
                s.outside(),
                s.notComparable(),
                List.of(),
                s.biases(),
                s.causes(),
                s.unproven(),
                s.constants(),
                s.unexplained());
    }

    /** Drops the draft unless it was committed. */
    @Override
    public void close() {
        json.close();
    }
}
