/** The day's single questions, each answered in one run without a file: number first, then formula and source. */
@NullMarked
package org.satline.program.question;

import org.jspecify.annotations.NullMarked;
