package org.satline.program.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The file system of the machine. */
final class LocalDrive implements Drive {
    private static final Pattern DRAFT = Pattern.compile("\\.satline-(\\d{1,18})-[0-9a-f]{8}\\.draft");
    /** A folder that machines share shows drafts of processes that this one cannot see; one at work writes more often. */
    private static final Duration UNTOUCHED = Duration.ofMinutes(10);

    /** A short name, whatever the target is called: names have an end, at 255 bytes on most systems. */
    static Path draftIn(Path folder) {
        return folder.resolve(String.format(
                java.util.Locale.ROOT,
                ".satline-%d-%08x.draft",
                ProcessHandle.current().pid(),
                java.util.concurrent.ThreadLocalRandom.current().nextInt()));
    }

    /** An open draft. */
    private record Opened(FileChannel channel, OutputStream stream) implements Draft {
        @Override
        public void force() throws IOException {
            channel.force(true);
        }

        @Override
        public void close() throws IOException {
            channel.close();
        }
    }

    @Override
    public Draft create(Path path) throws IOException {
        FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        return new Opened(channel, Channels.newOutputStream(channel));
    }

    @Override
    public void copyRights(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        PosixFileAttributeView old = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (view == null || old == null) {
            return; // no such bits there
        }
        PosixFileAttributes kept = old.readAttributes();
        PosixFileAttributes now = view.readAttributes();
        if (!now.owner().equals(kept.owner())) {
            view.setOwner(kept.owner());
        }
        if (!now.group().equals(kept.group())) {
            view.setGroup(kept.group());
        }
        view.setPermissions(kept.permissions());
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (!folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            return; // no channel on a folder there
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.deleteIfExists(path);
    }

    @Override
    public List<Path> orphans(Path folder) throws IOException {
        List<Path> orphans = new ArrayList<>();
        try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, ".satline-*.draft")) {
            for (Path draft : drafts) {
                Matcher name = DRAFT.matcher(String.valueOf(draft.getFileName()));
                if (name.matches()
                        && ProcessHandle.of(Long.parseLong(name.group(1))).isEmpty()
                        && Files.isRegularFile(draft, LinkOption.NOFOLLOW_LINKS)
                        && Files.getLastModifiedTime(draft)
                                .toInstant()
                                .isBefore(Instant.now().minus(UNTOUCHED))) {
                    orphans.add(draft);
                }
            }
        } catch (java.nio.file.DirectoryIteratorException e) {
            throw e.getCause();
        }
        return orphans;
    }
}
