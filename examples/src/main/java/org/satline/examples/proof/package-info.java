/** Scores the verdict and the advice on the next step on simulated visits. Read {@link org.satline.examples.proof.Proof} first. */
@NullMarked
package org.satline.examples.proof;

import org.jspecify.annotations.NullMarked;
