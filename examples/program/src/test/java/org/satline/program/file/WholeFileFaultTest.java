package org.satline.program.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Output files on a file system that fails at any step: the old file stays whole until the new one is durable, and no draft stays behind.
 */
class WholeFileFaultTest {
    @TempDir
    private Path folder = Path.of("");

    /** The file system of the machine, its steps noted, one of them failing. */
    private static final class FaultingDrive implements Drive {
        private final Drive real = new LocalDrive();
        private final List<String> steps = new ArrayList<>();
        private int failAt = Integer.MAX_VALUE;

        private void step(String what) throws IOException {
            steps.add(what);
            if (steps.size() - 1 == failAt) {
                throw new IOException("fails at " + what);
            }
        }

        @Override
        public Draft create(Path path) throws IOException {
            step("create");
            Draft made = real.create(path);
            OutputStream noted = new FilterOutputStream(made.stream()) {
                @Override
                public void write(byte[] bytes, int from, int length) throws IOException {
                    step("write");
                    out.write(bytes, from, length);
                }
            };
            return new Draft() {
                @Override
                public OutputStream stream() {
                    return noted;
                }

                @Override
                public void force() throws IOException {
                    step("force");
                    made.force();
                }

                @Override
                public void close() throws IOException {
                    made.close();
                }
            };
        }

        @Override
        public void copyRights(Path from, Path to) throws IOException {
            step("copy rights");
            real.copyRights(from, to);
        }

        @Override
        public void replace(Path from, Path to) throws IOException {
            step("replace");
            real.replace(from, to);
        }

        @Override
        public void forceFolder(Path folder) throws IOException {
            step("force folder");
            real.forceFolder(folder);
        }

        @Override
        public void delete(Path path) throws IOException {
            real.delete(path);
        }

        @Override
        public List<Path> orphans(Path folder) throws IOException {
            return real.orphans(folder);
        }
    }

    private static boolean written(Path target, Drive drive) {
        try (WholeFile file = WholeFile.startedFor(target, drive)) {
            file.stream().write("new".getBytes(StandardCharsets.UTF_8));
            file.commit();
            return true;
        } catch (IOException | BadInputException e) {
            return false;
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        }
    }

    @Test
    void whatIsWrittenIsForcedBeforeItGetsItsNameAndTheNameAfterIt() throws IOException {
        FaultingDrive drive = new FaultingDrive();
        assertThat(written(folder.resolve("out.csv"), drive)).isTrue();
        assertThat(drive.steps).containsExactly("create", "write", "force", "replace", "force folder");
        drive.steps.clear();
        assertThat(written(folder.resolve("out.csv"), drive)).isTrue();
        assertThat(drive.steps).containsExactly("create", "copy rights", "write", "force", "replace", "force folder");
    }

    @Test
    void aFailureAtAnyStepLeavesTheOldFileOrTheNewOneAndNoDraft() throws IOException {
        Path target = folder.resolve("out.csv");
        for (int step = 0; step < 7; step++) {
            Files.writeString(target, "old");
            FaultingDrive drive = new FaultingDrive();
            drive.failAt = step;
            boolean told = written(target, drive);
            boolean replaced = drive.steps.contains("force folder");
            assertThat(told).isEqualTo(step == 6);
            assertThat(target).hasContent(replaced ? "new" : "old");
            assertThat(names()).containsExactly("out.csv");
        }
    }

    @Test
    void rightsAreKeptOrTheFileIsRefused() throws IOException {
        Path target = folder.resolve("secret.csv");
        Files.writeString(target, "old");
        Files.setPosixFilePermissions(target, java.nio.file.attribute.PosixFilePermissions.fromString("rw-------"));
        assertThat(written(target, new LocalDrive())).isTrue();
        assertThat(java.nio.file.attribute.PosixFilePermissions.toString(Files.getPosixFilePermissions(target)))
                .isEqualTo("rw-------");
        FaultingDrive drive = new FaultingDrive();
        drive.failAt = 1;
        assertThatThrownBy(() -> WholeFile.startedFor(target, drive)).isInstanceOf(BadInputException.class);
        assertThat(names()).containsExactly("secret.csv");
    }

    @Test
    void aSecondNameAndALinkToNothingAreRefused() throws IOException {
        Path target = folder.resolve("one.csv");
        Files.writeString(target, "old");
        Files.createLink(folder.resolve("two.csv"), target);
        assertThatThrownBy(() -> WholeFile.startedFor(target)).isInstanceOf(BadInputException.class);
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), folder.resolve("none.csv"));
        assertThatThrownBy(() -> WholeFile.startedFor(link)).isInstanceOf(BadInputException.class);
        assertThat(Files.isSymbolicLink(link)).isTrue();
    }

    /** The longest name of most file systems, 255 bytes (POSIX.1-2017, NAME_MAX; the figure of common ones from memory). */
    @Test
    void theLongestNameIsWritten() throws IOException {
        Path target = folder.resolve("n".repeat(255));
        assertThat(written(target, new LocalDrive())).isTrue();
        assertThat(target).hasContent("new");
    }

    @Test
    void draftsOfKilledRunsAreRemovedAndThoseOfLivingOnesStay() throws IOException {
        long gone = 999_999_999_999L; // no system numbers its processes so high
        Path old = Files.createFile(folder.resolve(".satline-" + gone + "-0000000a.draft"));
        Files.setLastModifiedTime(
                old,
                java.nio.file.attribute.FileTime.from(java.time.Instant.now().minusSeconds(601)));
        String fresh = ".satline-" + gone + "-0000000b.draft";
        Files.createFile(folder.resolve(fresh));
        String alive = ".satline-" + ProcessHandle.current().pid() + "-0000000c.draft";
        Path own = Files.createFile(folder.resolve(alive));
        Files.setLastModifiedTime(
                own,
                java.nio.file.attribute.FileTime.from(java.time.Instant.now().minusSeconds(601)));
        assertThat(written(folder.resolve("out.csv"), new LocalDrive())).isTrue();
        assertThat(names()).containsExactlyInAnyOrder(fresh, alive, "out.csv");
    }
}
