package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** A listed refrigerant is its designation, a blend of the caller's own is its name with its composition. */
record RefrigerantCodec(Codec<Forms.OwnBlend> ownBlend) implements Codec<Refrigerant> {
    @Override
    public JsonNode write(Refrigerant refrigerant) {
        return Catalogue.standard().all().contains(refrigerant)
                ? TextNode.valueOf(refrigerant.designation())
                : ownBlend.write(Forms.OwnBlend.of(refrigerant));
    }

    @Override
    public Refrigerant read(JsonNode node, Place at) {
        if (node.isTextual()) {
            return Codec.guarded(at, () -> Catalogue.standard().find(node.textValue()));
        }
        Forms.OwnBlend read = ownBlend.read(node, at);
        return Codec.guarded(at, read::blend);
    }
}
