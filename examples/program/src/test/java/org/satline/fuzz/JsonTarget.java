package org.satline.fuzz;

import java.util.List;
import org.satline.charge.Judgement;
import org.satline.explanation.Finding;
import org.satline.filling.CylinderStamps;
import org.satline.json.JsonFields;
import org.satline.json.SatlineJson;
import org.satline.ledger.LedgerEntry;
import org.satline.refrigerant.Refrigerant;
import org.satline.visit.file.FieldValue;

/** JSON of fields and of results from any text: what is read comes back equal. */
public final class JsonTarget {
    private static final SatlineJson JSON = new SatlineJson();
    private static final List<Class<?>> TYPES =
            List.of(Finding.class, LedgerEntry.class, CylinderStamps.class, Refrigerant.class, Judgement.class);

    private JsonTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        String text = Target.text(bytes);
        Target.refusesAtMost(() -> {
            FieldValue.Fields fields = JsonFields.read(text);
            Target.require(JsonFields.read(JsonFields.write(fields)).equals(fields), "fields changed on their way");
        });
        TYPES.forEach(type -> Target.refusesAtMost(() -> {
            Object read = JSON.read(text, type);
            Target.require(JSON.read(JSON.write(read), type).equals(read), "changed on its way");
        }));
    }
}
