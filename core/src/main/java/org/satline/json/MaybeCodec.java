package org.satline.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.Optional;
import java.util.function.Function;

/** A type that may be empty; a field of it is then left out. */
record MaybeCodec<M, T>(Codec<T> content, Function<M, Optional<T>> toOptional, Function<Optional<T>, M> ofOptional)
        implements Codec<M> {
    @Override
    public JsonNode write(M value) {
        return toOptional.apply(value).map(content::write).orElse(MissingNode.getInstance());
    }

    @Override
    public M read(JsonNode node, Place at) {
        return ofOptional.apply(Optional.of(content.read(node, at)));
    }

    @Override
    public Optional<M> absent() {
        return Optional.of(ofOptional.apply(Optional.empty()));
    }
}
