/**
 * One answer of another calculator beside ours, with the tolerance and where it comes from. Read
 * {@link org.satline.audit.answer.AuditRow} first, then {@link org.satline.audit.answer.AuditOutcome}.
 *
 * <p>Experimental: as the audit itself.
 */
@NullMarked
package org.satline.audit.answer;

import org.jspecify.annotations.NullMarked;
