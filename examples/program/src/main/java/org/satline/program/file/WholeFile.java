package org.satline.program.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * An output file that appears whole or not at all: written beside its target under another name and moved into place by
 * {@link #commit()}. Closing without a commit leaves the target as it was. For one thread.
 */
public final class WholeFile implements AutoCloseable {
    private final Path target;
    private final Path draft;
    private final OutputStream stream;
    private final Thread cleanUp;

    private WholeFile(Path target, Path draft, OutputStream stream) {
        this.target = target;
        this.draft = draft;
        this.stream = stream;
        // An interrupted run must not leave the draft behind either.
        this.cleanUp = new Thread(() -> draft.toFile().delete(), "remove-draft");
        Runtime.getRuntime().addShutdownHook(cleanUp);
    }

    /**
     * Starts an output file.
     *
     * @param target where the file shall stand in the end; its folder must exist; an existing regular file is replaced on commit
     * @return the open draft
     * @throws BadInputException if the target cannot be written
     */
    public static WholeFile startedFor(Path target) {
        if (Files.isDirectory(target)) {
            throw new BadInputException(target + ": is a folder; name a file to write");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new BadInputException(target + ": is not a regular file; name a file to write");
        }
        try {
            // Through a symbolic link the file it points to is meant, not the link.
            Path real = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
            Path folder = real.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new BadInputException(target + ": its folder does not exist; make the folder first");
            }
            Path draft = folder.resolve("." + real.getFileName() + "." + UUID.randomUUID() + ".draft");
            return new WholeFile(
                    real, draft, Files.newOutputStream(draft, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
        } catch (IOException e) {
            throw new BadInputException(target + ": cannot be written (" + reason(e) + ")");
        }
    }

    /**
     * Starts an output file that must not be the input.
     *
     * @param in an existing file
     * @param out as for {@link #startedFor}
     * @return the open draft
     * @throws BadInputException if the output is the input or cannot be written
     */
    public static WholeFile besides(Path in, Path out) {
        try {
            if (Files.exists(out) && Files.isSameFile(in, out)) {
                throw new BadInputException(out + ": is the input; name another file to write");
            }
        } catch (IOException e) {
            throw new BadInputException(out + ": cannot be written (" + reason(e) + ")");
        }
        return startedFor(out);
    }

    /**
     * Returns the stream of the draft, unbuffered.
     *
     * @return where the content goes
     */
    public OutputStream stream() {
        return stream;
    }

    /**
     * Moves the finished draft into place. Flush what you wrapped around the stream first.
     *
     * @throws IOException if the draft cannot be closed or moved
     */
    public void commit() throws IOException {
        stream.close();
        try {
            Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Closes the draft and removes it if it was not committed. */
    @Override
    public void close() throws IOException {
        try {
            stream.close();
        } finally {
            Files.deleteIfExists(draft);
            Runtime.getRuntime().removeShutdownHook(cleanUp);
        }
    }

    /** The kind of failure in words: the messages of the file system repeat the path and little else. */
    static String reason(IOException e) {
        String kind = e.getClass().getSimpleName();
        return switch (kind) {
            case "NoSuchFileException" -> "no such file";
            case "AccessDeniedException" -> "access denied";
            default -> e.getMessage() == null ? kind : Shown.line(e.getMessage());
        };
    }
}
