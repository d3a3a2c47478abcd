package org.satline.fuzz;

import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Names of refrigerants from any text: what is found is found again by its designation. */
public final class DesignationTarget {
    private DesignationTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        Target.refusesAtMost(() -> {
            String text = Target.text(bytes);
            Refrigerant found = Catalogue.standard().find(text);
            Target.require(Catalogue.standard().find(found.designation()).equals(found), found.designation());
            boolean foreign = text.codePoints().anyMatch(c -> c > 0x7e && Character.isLetterOrDigit(c));
            Target.require(!foreign, "letters of another script left out");
        });
    }
}
