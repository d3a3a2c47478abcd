/**
 * Reading what people wrote and writing what they will rely on: strict JSON and CSV in, whole files or none out. Read
 * {@link org.satline.examples.file.JsonFields} and {@link org.satline.examples.file.CsvRows} first.
 */
@NullMarked
package org.satline.examples.file;

import org.jspecify.annotations.NullMarked;
