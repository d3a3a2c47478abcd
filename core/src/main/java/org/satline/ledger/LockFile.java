package org.satline.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The lock of a ledger: a file of its own, empty, never removed. Where locks belong to a process and not to a channel (POSIX), closing any
 * other channel of the locked file gives the lock away; nothing has a reason to open this one, while a backup reads the ledger itself.
 */
final class LockFile implements Closeable {
    private final Disk disk;
    private final Path path;
    private final FileChannel channel;
    private final Optional<Object> key;

    private LockFile(Disk disk, Path path, FileChannel channel, Optional<Object> key) {
        this.disk = disk;
        this.path = path;
        this.channel = channel;
        this.key = key;
    }

    /** Locks a ledger. */
    static LockFile of(Disk disk, Path ledger) throws IOException {
        Path path = RegularFile.beside(ledger, "lock");
        RegularFile.requireIfThere(disk, path);
        FileChannel channel =
                disk.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
        try {
            lock(ledger, channel);
            return new LockFile(disk, path, channel, RegularFile.require(disk, path));
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private static void lock(Path ledger, FileChannel channel) throws IOException {
        @Nullable FileLock lock;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            throw new IOException("ledger " + ledger + " is open already in this process; use that one", e);
        }
        if (lock == null) {
            throw new IOException("ledger " + ledger + " is open in another process; close it there first");
        }
    }

    /** Its name still leads to the file that is locked: who came later found the same lock. */
    void requireHeld() throws IOException {
        if (!channel.isOpen() || !RegularFile.require(disk, path).equals(key)) {
            throw new IOException(
                    "the lock file " + path + " was closed or replaced; close the ledger and open it anew");
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
