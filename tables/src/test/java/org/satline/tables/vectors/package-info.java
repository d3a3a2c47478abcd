/** Makes the test vectors for implementers and holds the published files against them. Start with {@code TestVectorsTest}. */
@NullMarked
package org.satline.tables.vectors;

import org.jspecify.annotations.NullMarked;
