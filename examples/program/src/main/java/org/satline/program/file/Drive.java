package org.satline.program.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;

/** What an output file asks of the file system; a seam, so that tests can fail at any step and see their order. */
interface Drive {
    /** A draft that is being written. */
    interface Draft {
        OutputStream stream();

        /** Makes what was written durable. */
        void force() throws IOException;

        void close() throws IOException;
    }

    /** Opens a file that must not be there yet. */
    Draft create(Path path) throws IOException;

    /** Gives a file the owner, group and permission bits of another. */
    void copyRights(Path from, Path to) throws IOException;

    /** Puts a file in the place of another, at once or not at all. */
    void replace(Path from, Path to) throws IOException;

    /** Makes the names in a folder durable, where the system can. */
    void forceFolder(Path folder) throws IOException;

    void delete(Path path) throws IOException;

    /** Drafts in a folder of runs that are gone. */
    List<Path> orphans(Path folder) throws IOException;
}
