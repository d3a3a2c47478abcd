package org.satline.program.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir
    Path folder;

    @Test
    void appearsOnCommitAndLeavesNothingBesideIt() throws IOException {
        Path target = folder.resolve("out.csv");
        try (WholeFile file = WholeFile.startedFor(target)) {
            file.stream().write("all of it".getBytes(StandardCharsets.UTF_8));
            assertThat(target).doesNotExist();
            file.commit();
        }
        assertThat(target).hasContent("all of it");
        assertThat(names()).containsExactly("out.csv");
    }

    @Test
    void withoutCommitTheOldFileStays() throws IOException {
        Path target = folder.resolve("out.csv");
        Files.writeString(target, "old");
        try (WholeFile file = WholeFile.startedFor(target)) {
            file.stream().write("half".getBytes(StandardCharsets.UTF_8));
        }
        assertThat(target).hasContent("old");
        assertThat(names()).containsExactly("out.csv");
    }

    @Test
    void writesThroughASymbolicLink() throws IOException {
        Path target = folder.resolve("real.csv");
        Files.writeString(target, "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), target);
        try (WholeFile file = WholeFile.startedFor(link)) {
            file.stream().write("new".getBytes(StandardCharsets.UTF_8));
            file.commit();
        }
        assertThat(target).hasContent("new");
        assertThat(Files.isSymbolicLink(link)).isTrue();
    }

    @Test
    void refusesAFolderAndAMissingFolder() {
        assertThatThrownBy(() -> WholeFile.startedFor(folder))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("is a folder");
        assertThatThrownBy(() -> WholeFile.startedFor(folder.resolve("no").resolve("out.csv")))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("its folder does not exist");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName())).toList();
        }
    }
}
