/**
 * The search for what went wrong where answers lie outside: mistakes that calculators make, each tried on a sample of the rows. Read
 * {@link org.satline.audit.cause.LikelyCause} first, then {@link org.satline.audit.cause.Mistake}.
 *
 * <p>Experimental: which causes it names and how may change in any release.
 */
@NullMarked
package org.satline.audit.cause;

import org.jspecify.annotations.NullMarked;
