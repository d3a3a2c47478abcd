/**
 * Scores the verdict and the advice on the next step on simulated visits. Read {@link
 * org.satline.program.proof.Proof} first.
 */
@NullMarked
package org.satline.program.proof;

import org.jspecify.annotations.NullMarked;
