package org.satline.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/** The file system of the machine. */
final class LocalDisk implements Disk {
    @Override
    public Optional<Facts> facts(Path path) throws IOException {
        try {
            BasicFileAttributes found =
                    Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            return Optional.of(new Facts(found.isRegularFile(), names(path), Optional.ofNullable(found.fileKey())));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    private static int names(Path path) throws IOException {
        if (!path.getFileSystem().supportedFileAttributeViews().contains("unix")) {
            return 1;
        }
        return Files.getAttribute(path, "unix:nlink", LinkOption.NOFOLLOW_LINKS) instanceof Integer names ? names : 1;
    }

    @Override
    public FileChannel open(Path path, OpenOption... options) throws IOException {
        return FileChannel.open(path, options);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
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
}
