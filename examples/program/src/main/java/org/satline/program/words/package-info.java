/** The words of the program, in each language, beside those of the library. */
@NullMarked
package org.satline.program.words;

import org.jspecify.annotations.NullMarked;
