package org.satline.program.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A headless browser, started anew for each look. Everything that it asks the network for goes to a server of the test. */
final class Browser {
    private final Path folder;
    private final int proxyPort;

    Browser(Path folder, int proxyPort) {
        this.folder = folder;
        this.proxyPort = proxyPort;
    }

    /**
     * What came back.
     *
     * @param out standard output, the document after scripts where it was asked for
     * @param messages lines of the log that come from the page
     */
    record Look(String out, List<String> messages) {}

    /** Opens a file in a window of the given width. */
    Look at(Path page, int width, String... wanted) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                "chromium",
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update",
                "--disable-sync",
                "--disable-extensions",
                "--hide-scrollbars",
                "--enable-logging=stderr",
                "--virtual-time-budget=4000",
                "--user-data-dir=" + folder.resolve("profile"),
                "--proxy-server=http://127.0.0.1:" + proxyPort,
                "--proxy-bypass-list=<-loopback>",
                "--window-size=" + width + ",1600"));
        command.addAll(List.of(wanted));
        command.add(page.toUri().toString());
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process = new ProcessBuilder(command)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        if (!process.waitFor(90, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("the browser did not end: " + Files.readString(err));
        }
        String log = Files.readString(err, StandardCharsets.UTF_8);
        assertThat(process.exitValue()).as(log).isZero();
        return new Look(
                Files.readString(out, StandardCharsets.UTF_8),
                log.lines().filter(line -> line.contains(":CONSOLE")).toList());
    }
}
