package org.satline.ledger;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The ledger on disk: JSON Lines, one entry a line, only ever appended to. An entry is acknowledged after it has been forced to the disk,
 * line feed included; so a crash at any byte loses nothing that was acknowledged. One writer at a time, guarded by a lock on the file;
 * the methods of one object may be called from several threads.
 */
public final class LedgerFile implements Closeable {
    private final Path path;
    private final FileChannel channel;
    private final LedgerReading found;
    private final Ledger ledger;
    private boolean broken;

    private LedgerFile(Path path, FileChannel channel, LedgerReading found) {
        this.path = path;
        this.channel = channel;
        this.found = found;
        this.ledger = found.ledger();
    }

    /**
     * Reads a ledger without opening it for writing.
     *
     * @param path the file
     * @return the whole entries and the damaged lines
     * @throws IOException if the file cannot be read
     */
    public static LedgerReading read(Path path) throws IOException {
        return LedgerReading.of(Files.readAllBytes(path));
    }

    /**
     * Opens a ledger for appending, or starts one. A last line that a crash cut short was never acknowledged and is cut off.
     *
     * @param path the file
     * @return the open ledger
     * @throws IOException if the file cannot be opened, or another process has it open
     */
    public static LedgerFile open(Path path) throws IOException {
        FileChannel channel =
                FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
        try {
            lock(path, channel);
            forceDirectory(path);
            byte[] bytes = Files.readAllBytes(path);
            LedgerReading found = LedgerReading.of(bytes);
            int end = bytes.length;
            if (found.tornTail()) {
                while (end > 0 && bytes[end - 1] != '\n') {
                    end--;
                }
                channel.truncate(end);
            }
            channel.position(end);
            if (end > 0 && bytes[end - 1] != '\n') {
                write(channel, new byte[] {'\n'}); // the last entry is whole, only its line feed is missing
            }
            channel.force(true);
            return new LedgerFile(path, channel, found);
        } catch (IOException | RuntimeException e) {
            channel.close();
            throw e;
        }
    }

    private static void lock(Path path, FileChannel channel) throws IOException {
        @Nullable FileLock lock;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            throw new IOException("ledger " + path + " is open already in this process; use that one", e);
        }
        if (lock == null) {
            throw new IOException("ledger " + path + " is open in another process; close it there first");
        }
    }

    /** Makes a new file's name durable too; not every system lets a directory be forced, and none that refuses needs it. */
    private static void forceDirectory(Path path) {
        Path directory = path.toAbsolutePath().getParent();
        if (directory == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(directory, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            return;
        }
    }

    /**
     * Appends an entry and forces it to the disk.
     *
     * @param entry the entry
     * @return its number, once it is safe; or why it was refused
     * @throws IOException if it could not be written; whether the entry is in the file is then not known, open the ledger anew
     */
    public synchronized Ledger.Decision append(LedgerEntry entry) throws IOException {
        if (broken) {
            throw new IOException(
                    "an earlier entry could not be written to " + path + "; close the ledger and open it anew");
        }
        if (!found.damages().isEmpty()) {
            return new Ledger.Decision.Refused(
                    "the ledger is damaged and its balances cannot be trusted: "
                            + found.damages().stream()
                                    .map(LedgerReading.Damage::toString)
                                    .collect(Collectors.joining("; "))
                            + "; restore it from a copy, or start a new one from weighings",
                    java.util.List.of());
        }
        Optional<Ledger.Decision.Refused> contradiction = ledger.contradiction(entry);
        if (contradiction.isPresent()) {
            return contradiction.get();
        }
        long number = ledger.lastNumber() + 1;
        byte[] line = LedgerLine.encode(new Ledger.Numbered(number, entry));
        byte[] withFeed = Arrays.copyOf(line, line.length + 1);
        withFeed[line.length] = '\n';
        broken = true; // until all of it is safe
        write(channel, withFeed);
        channel.force(true);
        broken = false;
        ledger.post(number, entry);
        return new Ledger.Decision.Entered(number);
    }

    private static void write(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
    }

    /**
     * Returns what was found when the ledger was opened.
     *
     * @return entries, damages and whether the tail was torn; its ledger goes on to grow with this file
     */
    public LedgerReading found() {
        return found;
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
        channel.close();
    }
}
