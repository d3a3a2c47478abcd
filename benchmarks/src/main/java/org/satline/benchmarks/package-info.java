/** Benchmarks only; never published. */
@NullMarked
package org.satline.benchmarks;

import org.jspecify.annotations.NullMarked;
