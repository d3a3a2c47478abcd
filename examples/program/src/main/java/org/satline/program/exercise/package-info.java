/**
 * Worked problems for teaching, drawn from the simulated systems and the rules: question sheet and answer key. Read
 * {@link org.satline.program.exercise.ExerciseSheet} first.
 */
@NullMarked
package org.satline.program.exercise;

import org.jspecify.annotations.NullMarked;
