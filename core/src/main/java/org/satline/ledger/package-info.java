/**
 * Where every gram is: entries of what was moved, emptied and weighed, the balance of every place, and the file that keeps them. Read
 * {@link org.satline.ledger.Ledger} first, {@link org.satline.ledger.LedgerFile} for the file.
 *
 * <p>It helps a licensed person to keep records; the rule text in force and the local code say which records are due.
 *
 * <p>Stable from the first release on.
 */
@NullMarked
package org.satline.ledger;

import org.jspecify.annotations.NullMarked;
