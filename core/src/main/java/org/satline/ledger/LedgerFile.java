package org.satline.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.satline.quantity.Parts;

/**
 * The ledger on disk: JSON Lines, one entry a line, only ever appended to. The methods of one object may be called from several threads.
 *
 * <p><b>What is protected.</b> An entry is acknowledged after it was forced to the disk, line feed included, in a file whose name was
 * forced too; so a crash or a power cut at any byte loses nothing that was acknowledged. Each entry carries the SHA-256 digest of itself
 * and of the entry before it: a changed byte, a line removed, put in, doubled or moved is found when the file is read, and every entry read
 * is held against those before it as if it were new. A damaged ledger is read as far as it goes, takes no entry and stays as it is. What a
 * crash left of an entry is cut off only after a copy of it was made durable beside the ledger. One writer at a time: it holds a lock on a
 * second file, {@code NAME.lock}, which nothing else opens and which stays when the ledger is closed. Before each entry the length of the
 * file is compared, and whether its name and that of the lock still lead to the same files.
 *
 * <p><b>What is not.</b> The digests have no key: who may write the file can forge a whole chain, and can cut whole entries off its end.
 * Number and digest of the last entry ({@link LedgerReading#digest()}), kept elsewhere, show both. The lock binds only those who use this
 * class, on a file system that keeps locks and forces what it is told to force; network folders and drives that answer too early are not
 * such. Nobody may remove the lock file while a ledger is open. Times and names are what the caller says. A last line of which damage
 * leaves a mere beginning, line feed gone, looks like one that a crash cut short; the copy keeps it. There is no copy of the whole file:
 * make backups.
 */
public final class LedgerFile implements Closeable {
    /** Largest file in bytes that is read, held in memory at once. */
    private static final long LARGEST = 256L << 20;

    private final Disk disk;
    private final Path path;
    private final LockFile lock;
    private final FileChannel channel;
    private final Optional<Object> key;
    private final LedgerReading found;
    private final Optional<Path> copyOfTail;
    private final Ledger ledger;
    private long length;
    private String digest;
    private boolean broken;

    private LedgerFile(Disk disk, Path path, LockFile lock, FileChannel channel) throws IOException {
        this.disk = disk;
        this.path = path;
        this.lock = lock;
        this.channel = channel;
        this.key = RegularFile.require(disk, path);
        byte[] bytes = bytes(path, channel);
        this.found = LedgerReading.of(bytes);
        this.ledger = found.ledger();
        this.digest = found.digest();
        boolean sound = found.damages().isEmpty();
        this.copyOfTail = sound && found.tornTail() ? Optional.of(cutTail(bytes)) : Optional.empty();
        this.length = channel.size();
        if (sound && copyOfTail.isEmpty() && length > 0 && bytes[bytes.length - 1] != '\n') {
            write(new byte[] {'\n'}); // the last entry is whole, only its line feed is missing
        }
        channel.force(true);
        disk.forceFolder(folder(path));
    }

    /**
     * Reads a ledger without opening it for writing. It may be open elsewhere; an entry just being written then looks like a torn tail.
     *
     * @param path the file; a plain file and no link
     * @return the whole entries and the damaged lines
     * @throws IOException if the file cannot be read, is no plain file or larger than 256 MiB
     */
    public static LedgerReading read(Path path) throws IOException {
        Disk disk = new LocalDisk();
        RegularFile.require(disk, path);
        try (FileChannel channel = disk.open(path, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
            return LedgerReading.of(bytes(path, channel));
        }
    }

    /**
     * Opens a ledger for appending, or starts one. A last line that a crash cut short was never acknowledged: it is copied, see
     * {@link #copyOfTail()}, and cut off.
     *
     * @param path the file, a plain file with one name or nothing yet; not a link, a folder, a device or a pipe
     * @return the open ledger
     * @throws IOException if the file cannot be opened, copied or forced to the disk, is no plain file, is larger than 256 MiB, or is open
     *     already, here or in another process
     */
    public static LedgerFile open(Path path) throws IOException {
        Parts.required("path", path);
        return open(path, new LocalDisk());
    }

    static LedgerFile open(Path named, Disk disk) throws IOException {
        Path path = named.toAbsolutePath();
        RegularFile.requireIfThere(disk, path);
        LockFile lock = LockFile.of(disk, path);
        try {
            FileChannel channel = disk.open(
                    path,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.READ,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS);
            try {
                return new LedgerFile(disk, path, lock, channel);
            } catch (IOException | RuntimeException e) {
                channel.close();
                throw e;
            }
        } catch (IOException | RuntimeException e) {
            lock.close();
            throw e;
        }
    }

    private static byte[] bytes(Path path, FileChannel channel) throws IOException {
        long size = channel.size();
        if (!(size <= LARGEST)) {
            throw new IOException("ledger " + path + " has " + size + " bytes, more than [0, " + LARGEST
                    + "]; is it a ledger? If so, start a new one from weighings");
        }
        ByteBuffer buffer = ByteBuffer.allocate((int) size);
        while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) >= 0) {
            // reads on
        }
        return Arrays.copyOf(buffer.array(), buffer.position());
    }

    /** Keeps what a crash left of an entry, then cuts it off. */
    private Path cutTail(byte[] bytes) throws IOException {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        Path copy = RegularFile.free(disk, path, "cut-" + (ledger.lastNumber() + 1));
        Path draft = RegularFile.beside(path, "cut-draft"); // one that a crash left is overwritten
        RegularFile.requireIfThere(disk, draft);
        try (FileChannel out = disk.open(
                draft,
                StandardOpenOption.CREATE,
                StandardOpenOption.TRUNCATE_EXISTING,
                StandardOpenOption.WRITE,
                LinkOption.NOFOLLOW_LINKS)) {
            writeAll(out, Arrays.copyOfRange(bytes, end, bytes.length), 0);
            out.force(true);
        }
        disk.rename(draft, copy);
        disk.forceFolder(folder(path));
        channel.truncate(end);
        return copy;
    }

    /**
     * Appends an entry and forces it to the disk.
     *
     * @param entry the entry
     * @return its number, once it is safe; or why it was refused
     * @throws IOException if it could not be written, or something else changed the file or removed its lock; whether the entry is in the
     *     file is then not known, and this object takes no more: close it and open the ledger anew
     */
    public synchronized Ledger.Decision append(LedgerEntry entry) throws IOException {
        if (broken) {
            throw new IOException(
                    "an earlier entry could not be written to " + path + "; close the ledger and open it anew");
        }
        if (!found.damages().isEmpty()) {
            return refused(
                    Ledger.Cause.DAMAGED,
                    "the ledger is damaged and its balances cannot be trusted: "
                            + found.damages().stream()
                                    .limit(3)
                                    .map(LedgerReading.Damage::toString)
                                    .collect(Collectors.joining("; "))
                            + "; restore it from a copy, or start a new one from weighings");
        }
        Ledger.Decision decision = ledger.decide(entry);
        if (decision instanceof Ledger.Decision.Entered entered) {
            LedgerLine.Encoded line = LedgerLine.encode(new Ledger.Numbered(entered.number(), entry), digest);
            byte[] bytes = line.withFeed();
            if (length + bytes.length > LARGEST) {
                return refused(
                        Ledger.Cause.FULL,
                        "the ledger has " + length + " bytes, its limit; start a new one from weighings");
            }
            broken = true; // until all of it is safe
            requireUntouched();
            write(bytes);
            channel.force(true);
            broken = false;
            digest = line.digest();
            ledger.post(entered.number(), entry);
        }
        return decision;
    }

    private static Ledger.Decision.Refused refused(Ledger.Cause cause, String reason) {
        return new Ledger.Decision.Refused(cause, Optional.empty(), reason, List.of());
    }

    private void requireUntouched() throws IOException {
        lock.requireHeld();
        if (!RegularFile.require(disk, path).equals(key)) {
            throw new IOException(
                    "ledger " + path + " was replaced by another file while it was open; see which is right");
        }
        long now = channel.size();
        if (now != length) {
            throw new IOException("ledger " + path + " has " + now + " bytes where it had " + length
                    + " after its last entry: something else wrote to it; close it, read it and see what that was");
        }
    }

    /** Writes at the end; what a full disk lets through of it is taken back, since nobody was told that it is there. */
    private void write(byte[] bytes) throws IOException {
        try {
            writeAll(channel, bytes, length);
        } catch (IOException e) {
            try {
                channel.truncate(length);
            } catch (IOException again) {
                e.addSuppressed(again);
            }
            throw e;
        }
        length += bytes.length;
    }

    private static void writeAll(FileChannel channel, byte[] bytes, long position) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer, position + buffer.position());
        }
    }

    static Path folder(Path path) {
        Path folder = path.getParent();
        return folder == null ? path : folder;
    }

    /**
     * Returns what was found when the ledger was opened.
     *
     * @return entries, damages and whether the tail was torn; its ledger goes on to grow with this file, its digest stays as it was
     */
    public LedgerReading found() {
        return found;
    }

    /**
     * Returns where the last line went that a crash had cut short.
     *
     * @return the file beside the ledger, {@code NAME.cut-NUMBER}; nothing if nothing was cut
     */
    public Optional<Path> copyOfTail() {
        return copyOfTail;
    }

    /**
     * Returns the balance of a place in whole milligrams.
     *
     * @param party the place
     * @return the balance
     */
    public synchronized long balanceMilligrams(Party party) {
        return ledger.balanceMilligrams(party);
    }

    @Override
    public synchronized void close() throws IOException {
        try {
            channel.close();
        } finally {
            lock.close();
        }
    }
}
