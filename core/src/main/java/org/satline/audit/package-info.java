/**
 * Another calculator's answers against ours: within tolerance, outside, or not comparable, and what probably went wrong where a pattern
 * tells. Read {@link org.satline.audit.Auditor} first, then {@link org.satline.audit.AuditReport}.
 *
 * <p>Nothing here prints or reads files. A tolerance says where it comes from: the stated uncertainty of the equations, the printed digits
 * of the answer, or the person who asks.
 *
 * <p>Experimental: which causes it names and how may change in any release.
 */
@NullMarked
package org.satline.audit;

import org.jspecify.annotations.NullMarked;
