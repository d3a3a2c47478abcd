/**
 * Reading what people wrote and writing what they will rely on: strict JSON and CSV in, whole files or none out. Read
 * {@link org.satline.program.file.CsvRows} first.
 */
@NullMarked
package org.satline.program.file;

import org.jspecify.annotations.NullMarked;
