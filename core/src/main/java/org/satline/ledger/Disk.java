package org.satline.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.util.Optional;

/** What the ledger asks of the file system; a seam, so that tests can fill a disk and cut its power between any two steps. */
interface Disk {
    /**
     * A file as its folder shows it, links not followed.
     *
     * @param regular whether it is a plain file
     * @param names by how many names the same file goes; 1 where the system does not say
     * @param key what stays the same when it is renamed; nothing where the system has no such thing
     */
    record Facts(boolean regular, int names, Optional<Object> key) {}

    /** What a path names, nothing where it names nothing. */
    Optional<Facts> facts(Path path) throws IOException;

    FileChannel open(Path path, OpenOption... options) throws IOException;

    /** Gives a file another name in the same folder, at once or not at all. */
    void rename(Path from, Path to) throws IOException;

    /** Makes the names in a folder durable, where the system can. */
    void forceFolder(Path folder) throws IOException;
}
