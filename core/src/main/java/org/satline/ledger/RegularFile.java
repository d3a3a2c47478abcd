package org.satline.ledger;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Which files the ledger touches: plain ones with one name. */
final class RegularFile {
    private RegularFile() {}

    /** Refuses a path that names anything but a plain file with one name. */
    static Optional<Object> require(Disk disk, Path path) throws IOException {
        Disk.Facts facts = disk.facts(path).orElseThrow(() -> new NoSuchFileException(path.toString()));
        if (!facts.regular()) {
            throw new IOException(path + " is a folder, a link, a device or a pipe; give the path of a plain file");
        }
        if (facts.names() > 1) {
            // two names would make two locks
            throw new IOException(
                    path + " is one file with " + facts.names() + " names; remove the others, or copy it");
        }
        return facts.key();
    }

    static void requireIfThere(Disk disk, Path path) throws IOException {
        if (disk.facts(path).isPresent()) {
            require(disk, path);
        }
    }

    /** The path of a file beside another, its name with an ending. */
    static Path beside(Path path, String ending) {
        return path.resolveSibling(path.getFileName() + "." + ending);
    }

    /** A name beside another that names nothing yet. */
    static Path free(Disk disk, Path path, String ending) throws IOException {
        Path free = beside(path, ending);
        for (int i = 2; disk.facts(free).isPresent(); i++) {
            free = beside(path, ending + "-" + i);
        }
        return free;
    }
}
