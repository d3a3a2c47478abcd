package org.satline.program.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;

/**
 * An output file that appears whole or not at all: written beside its target under another name, forced to the disk and moved into place
 * by {@link #commit()}. Closing without a commit leaves the target as it was. Owner, group and permission bits of a file that is replaced
 * are kept; a symbolic link is followed; what would lose a name or a protection is refused. The draft of a run that was killed is removed
 * by a later run in the same folder, ten minutes after its last byte. For one thread.
 */
public final class WholeFile implements AutoCloseable {
    private final Drive drive;
    private final Path target;
    private final boolean replaces;
    private final Path draft;
    private final Drive.Draft open;
    private final Thread cleanUp;

    private WholeFile(Drive drive, Path target, boolean replaces, Path draft) throws IOException {
        this.drive = drive;
        this.target = target;
        this.replaces = replaces;
        this.draft = draft;
        this.open = drive.create(draft);
        // An interrupted run must not leave the draft behind either.
        this.cleanUp = new Thread(this::deleteQuietly, "remove-draft");
        Runtime.getRuntime().addShutdownHook(cleanUp);
    }

    /**
     * Starts an output file.
     *
     * @param target where the file shall stand in the end; its folder must exist; an existing regular file is replaced on commit
     * @return the open draft
     * @throws BadInputException if the target cannot be written, or not without loss: it is write-protected, has a second name, or is a
     *     symbolic link to nothing
     */
    public static WholeFile startedFor(Path target) {
        return startedFor(target, new LocalDrive());
    }

    static WholeFile startedFor(Path target, Drive drive) {
        if (Files.isDirectory(target)) {
            throw new BadInputException(target + ": is a folder; name a file to write");
        }
        if (Files.isSymbolicLink(target) && !Files.exists(target)) {
            throw new BadInputException(target + ": is a link to a file that does not exist; name that file");
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new BadInputException(target + ": is not a regular file; name a file to write");
        }
        try {
            // Through a symbolic link the file it points to is meant, not the link.
            boolean replaces = Files.exists(target);
            Path real = replaces ? target.toRealPath() : target.toAbsolutePath();
            Path folder = real.getParent();
            if (folder == null || !Files.isDirectory(folder)) {
                throw new BadInputException(target + ": its folder does not exist; make the folder first");
            }
            if (replaces) {
                requireReplaceable(target, real);
            }
            for (Path orphan : drive.orphans(folder)) {
                drive.delete(orphan);
            }
            WholeFile whole = new WholeFile(drive, real, replaces, LocalDrive.draftIn(folder));
            if (replaces) {
                whole.keepRights();
            }
            return whole;
        } catch (IOException e) {
            throw new BadInputException(target + ": cannot be written (" + reason(e) + ")");
        }
    }

    private static void requireReplaceable(Path target, Path real) throws IOException {
        if (!Files.isWritable(real)) {
            throw new BadInputException(target + ": is write-protected; lift that, or name another file to write");
        }
        if (real.getFileSystem().supportedFileAttributeViews().contains("unix")
                && Files.getAttribute(real, "unix:nlink", LinkOption.NOFOLLOW_LINKS) instanceof Integer names
                && names > 1) {
            throw new BadInputException(target + ": is one file with " + names
                    + " names, and only one of them would change; name another file to write");
        }
    }

    /** Before anything is written, so that nobody reads the draft who may not read the target. */
    private void keepRights() throws IOException {
        try {
            drive.copyRights(target, draft);
        } catch (IOException e) {
            close();
            throw new IOException("its owner or rights cannot be kept: " + reason(e), e);
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
        return open.stream();
    }

    /**
     * Moves the finished draft into place, durable before and after. Flush what you wrapped around the stream first, and leave it open.
     *
     * @throws IOException if the draft cannot be forced to the disk, closed or moved; the target is then as it was
     */
    public void commit() throws IOException {
        open.force();
        open.close();
        if (!replaces && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException("something else was put there meanwhile");
        }
        drive.replace(draft, target);
        drive.forceFolder(folder());
    }

    private Path folder() {
        Path folder = draft.getParent();
        return folder == null ? draft : folder;
    }

    private void deleteQuietly() {
        try {
            drive.delete(draft);
        } catch (IOException e) {
            // nobody is left to tell; a later run removes it
            return;
        }
    }

    /** Closes the draft and removes it if it was not committed. */
    @Override
    public void close() throws IOException {
        try {
            open.close();
        } finally {
            drive.delete(draft);
            try {
                Runtime.getRuntime().removeShutdownHook(cleanUp);
            } catch (IllegalStateException e) {
                // the machine is going down and does the same
            }
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
