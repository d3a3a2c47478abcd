package org.satline.program;

import org.satline.refrigerant.Catalogue;
import picocli.CommandLine.IVersionProvider;

/** Reads the version from the manifest of the jar. */
final class Version implements IVersionProvider {
    /** Made by the command line library. */
    Version() {}

    @Override
    public String[] getVersion() {
        String version = Main.class.getPackage().getImplementationVersion();
        return new String[] {
            "satline " + (version == null ? "(not run from its jar)" : version) + ", data "
                    + Catalogue.standard().dataVersion()
        };
    }
}
