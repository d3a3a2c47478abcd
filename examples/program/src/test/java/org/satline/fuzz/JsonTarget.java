package org.satline.fuzz;

import java.util.List;
import org.satline.charge.Judgement;
import org.satline.explanation.Finding;
import org.satline.filling.CylinderStamps;
import org.satline.ledger.LedgerEntry;
import org.satline.refrigerant.Refrigerant;

/** JSON of fields and of results from any text: what is read comes back equal. */
public final class JsonTarget {
    private static final List<Class<?>> TYPES =
            List.of(Finding.class, LedgerEntry.class, CylinderStamps.class, Refrigerant.class, Judgement.class);

    private JsonTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        String text = Target.text(bytes);
        Target.refusesAtMost(() -> Target.fieldsComeBack(text));
        TYPES.forEach(type -> Target.refusesAtMost(() -> {
            Object read = Target.JSON.read(text, type);
            Target.require(Target.JSON.read(Target.JSON.write(read), type).equals(read), "changed on its way");
        }));
    }
}
