package org.satline.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.xml.sax.InputSource;

class MainTest {
    @TempDir
    Path folder;

    /** The command of the README on few units: the page is well formed, with both charts. */
    @Test
    void aRunEndsWithAPage() throws Exception {
        Main.main(new String[] {
            "run",
            "--out",
            folder.toString(),
            "--units",
            "20",
            "--days",
            "90",
            "--parallelism",
            "1",
            "--checkpoint-seconds",
            "2"
        });
        String page = Files.readString(folder.resolve("summary.html"));
        assertThat(page).contains("<svg", "Leaks", "CO2e");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        assertThat(factory.newDocumentBuilder()
                        .parse(new InputSource(new StringReader(page.replaceFirst("<!DOCTYPE html>", ""))))
                        .getElementsByTagName("svg")
                        .getLength())
                .isEqualTo(2);
    }

    @Test
    void hiddenFilesOfAnOpenCheckpointAreNotRead() throws IOException {
        Files.createDirectories(folder.resolve("days"));
        Files.writeString(folder.resolve("days/part-a-0"), "one\n");
        Files.writeString(folder.resolve("days/.part-a-1.inprogress.x"), "two\n");
        assertThat(OutputFiles.lines(folder, "days")).containsExactly("one");
    }
}
