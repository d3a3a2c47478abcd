/**
 * A visit asked at the prompt: which questions there are, in which order they come, and what the answers add to the file. {@link
 * org.satline.program.ask.LinePrompt} alone knows a terminal.
 */
@NullMarked
package org.satline.program.ask;

import org.jspecify.annotations.NullMarked;
