package org.satline.refrigerant;

import java.util.regex.Pattern;
import org.satline.quantity.Parts;
import org.satline.resource.OnDemand;
import org.satline.resource.SealedResources;

/**
 * Which figures of the library a result rests on: keep it with the result, and name it when a figure is doubted. Immutable, thread-safe.
 *
 * <p>It says nothing of figures of the caller's own; the curve or the refrigerant that brought them names those.
 *
 * @param release of the figures, such as {@code 2026.1}
 * @param digest of every file with figures or rules, 8 hexadecimal digits (CRC-32 of their lines in the manifest of the jar): it differs
 *     where a single digit of them does, and stays where texts alone change
 */
public record DataVersion(String release, String digest) {
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{8}");

    private static final OnDemand<DataVersion> CURRENT = new OnDemand<>() {
        @Override
        protected DataVersion read() {
            return new DataVersion(
                    Catalogue.DATA_VERSION, SealedResources.core().digest(DataVersion::holdsFigures));
        }
    };

    /** {@inheritDoc} */
    public DataVersion {
        Parts.required("release digest", release, digest);
        if (!DIGEST.matcher(digest).matches()) {
            throw new IllegalArgumentException("digest of the data is not 8 hexadecimal digits in lower case");
        }
    }

    /**
     * The version of the figures in this jar.
     *
     * @return version, the same object each time
     * @throws org.satline.resource.ResourceFormatException if the manifest of the jar is missing or damaged
     */
    public static DataVersion current() {
        return CURRENT.get();
    }

    private static boolean holdsFigures(String path) {
        return !path.startsWith("org/satline/wording/") && !path.startsWith("org/satline/json/");
    }
}
