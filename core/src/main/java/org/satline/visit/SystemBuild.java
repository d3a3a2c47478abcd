package org.satline.visit;

import java.util.List;
import java.util.Optional;
import org.satline.charge.SystemFeature;
import org.satline.quantity.Parts;

/**
 * How a system is built and held, as far as it decides by what its charge is judged. Immutable, thread-safe.
 *
 * @param features what it has beside the plain cycle, each once
 * @param makersTestMode whether the maker's test mode held it while it was read; empty where that is not said
 * @param evacuated whether it is evacuated and waits for its first filling; nothing runs then
 */
public record SystemBuild(List<SystemFeature> features, Optional<Boolean> makersTestMode, boolean evacuated) {
    /** {@inheritDoc} */
    public SystemBuild {
        features = Parts.list("features", features).stream().distinct().toList();
        Parts.required("makersTestMode", makersTestMode);
    }

    /**
     * A plain cycle that holds refrigerant.
     *
     * @return the build
     */
    public static SystemBuild plain() {
        return new SystemBuild(List.of(), Optional.empty(), false);
    }
}
