/**
 * Worked problems for teaching, drawn from the simulated systems and the rules: question sheet and answer key. Read
 * {@link org.satline.examples.exercise.ExerciseSheet} first.
 */
@NullMarked
package org.satline.examples.exercise;

import org.jspecify.annotations.NullMarked;
