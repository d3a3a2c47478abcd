package org.satline;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The classes of core without its tests, read once for all tests that look at them. */
public final class CoreClasses {
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.satline");

    private CoreClasses() {}

    /** All of them, read from the class path by the first who asks. */
    public static JavaClasses all() {
        return CORE;
    }
}
