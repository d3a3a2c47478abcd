package org.satline.program.audit;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.satline.audit.AuditOutcome.Compared;
import org.satline.audit.AuditOutcome.NotComparable;
import org.satline.audit.AuditRow;
import org.satline.audit.AuditSummary;
import org.satline.audit.AuditTolerance.Share;
import org.satline.audit.AuditedRow;
import org.satline.audit.Comparison;
import org.satline.audit.Mistake;
import org.satline.json.SatlineJson;
import org.satline.program.file.BadInputException;
import org.satline.program.file.WholeFile;
import org.satline.refrigerant.Catalogue;

/**
 * An audit as one JSON object, written row by row; each source and each basis of a tolerance stands there once. Its schema is
 * {@code audit.schema.json} beside this class. The file is whole or absent. For one thread.
 */
public final class AuditJson implements AutoCloseable {
    private final Path out;
    private final WholeFile whole;
    private final JsonGenerator json;
    private final SatlineJson forms = new SatlineJson();
    private final Map<String, String> sources = new LinkedHashMap<>();
    private final Map<String, Integer> bases = new LinkedHashMap<>();

    private AuditJson(Path out, WholeFile whole, JsonGenerator json) {
        this.out = out;
        this.whole = whole;
        this.json = json;
    }

    /** What may fail for the disk. */
    private interface Writing {
        void run() throws IOException;
    }

    private void write(Writing writing) {
        try {
            writing.run();
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be written");
        }
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
        WholeFile whole = WholeFile.besides(in, out);
        try {
            JsonGenerator json = new JsonFactory()
                    .disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET)
                    .createGenerator(new BufferedOutputStream(whole.stream()));
            json.writeStartObject();
            json.writeStringField("form", "audit-1");
            json.writeStringField("data", Catalogue.standard().dataVersion());
            json.writeArrayFieldStart("rows");
            return new AuditJson(out, whole, json);
        } catch (IOException e) {
            dropped(out, whole);
            throw new BadInputException(out + ": cannot be written");
        }
    }

    /**
     * Writes a row.
     *
     * @param audited the row
     * @throws BadInputException if it cannot be written
     */
    public void add(AuditedRow audited) {
        write(() -> {
            json.writeRaw("\n");
            json.writeStartObject();
            asked(audited.outcome().row());
            if (audited.outcome() instanceof Compared compared) {
                compared(compared);
            } else {
                NotComparable refused = (NotComparable) audited.outcome();
                json.writeStringField("outcome", "notComparable");
                json.writeStringField("reason", refused.reason().name());
                json.writeStringField("explanation", refused.explanation());
            }
            if (!audited.mistakes().isEmpty()) {
                json.writeArrayFieldStart("mistakes");
                for (Mistake mistake : audited.mistakes()) {
                    json.writeRawValue(forms.write(mistake));
                }
                json.writeEndArray();
            }
            json.writeEndObject();
        });
    }

    private void asked(AuditRow row) throws IOException {
        json.writeStringField("id", row.id());
        json.writeStringField("refrigerant", row.refrigerant());
        json.writeStringField("quantity", row.quantity());
        given("temperatureK", row.temperatureK());
        given("pressurePa", row.pressurePa());
        if (row.altitude().isPresent()) {
            json.writeNumberField("altitudeM", row.altitude().get().metres());
        }
        given("ownTolerance", row.tolerance());
        json.writeStringField("answer", row.answer());
        json.writeStringField("unit", row.unit());
    }

    private void given(String name, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(name, value.getAsDouble());
        }
    }

    private void compared(Compared compared) throws IOException {
        Comparison c = compared.comparison();
        sources.computeIfAbsent(
                compared.designation(), key -> compared.steps().get(0).source());
        json.writeStringField("outcome", compared.within() ? "within" : "outside");
        json.writeStringField("designation", compared.designation());
        json.writeNumberField("ours", c.ours());
        json.writeNumberField("difference", c.difference());
        json.writeNumberField("tolerance", c.tolerance().width());
        json.writeArrayFieldStart("shares");
        for (Share share : c.tolerance().shares()) {
            json.writeStartObject();
            json.writeStringField("origin", share.origin().name());
            json.writeNumberField("width", share.width());
            json.writeNumberField("basis", bases.computeIfAbsent(share.basis(), key -> bases.size()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /**
     * Writes what follows the rows and puts the whole file in its place.
     *
     * @param summary the summary
     * @throws BadInputException if it cannot be written; what stood there before is left
     */
    public void commit(AuditSummary summary) {
        write(() -> {
            json.writeEndArray();
            List<String> citations = sources.values().stream()
                    .flatMap(source -> Stream.of(source.split("; ")))
                    .distinct()
                    .toList();
            texts("citations", citations);
            json.writeArrayFieldStart("sources");
            for (Map.Entry<String, String> source : sources.entrySet()) {
                json.writeStartObject();
                json.writeStringField("designation", source.getKey());
                json.writeArrayFieldStart("citations");
                for (String citation : source.getValue().split("; ")) {
                    json.writeNumber(citations.indexOf(citation));
                }
                json.writeEndArray();
                json.writeEndObject();
            }
            json.writeEndArray();
            texts(
                    "bases",
                    bases.keySet().stream()
                            .map(basis -> referring(basis, citations))
                            .toList());
            json.writeArrayFieldStart("worst");
            for (Compared row : summary.worst()) {
                json.writeString(row.row().id());
            }
            json.writeEndArray();
            json.writeFieldName("summary");
            json.writeRawValue(forms.write(withoutRows(summary)));
            json.writeEndObject();
            json.writeRaw("\n");
            json.close();
            whole.commit();
        });
    }

    private void texts(String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
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
        dropped(out, whole);
    }

    private static void dropped(Path out, WholeFile whole) {
        try {
            whole.close();
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be closed");
        }
    }
}
