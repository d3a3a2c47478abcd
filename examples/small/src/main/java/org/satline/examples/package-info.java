/**
 * Small programs to start from: one class for one question, each with a main method that prints its answer. Copy one and change it.
 *
 * <p>Read {@link org.satline.examples.SuperheatInThreeLines} first. A test runs each of them and holds what it prints against a published
 * figure or a sum done by hand.
 */
@NullMarked
package org.satline.examples;

import org.jspecify.annotations.NullMarked;
