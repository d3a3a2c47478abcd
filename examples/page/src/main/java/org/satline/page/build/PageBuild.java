package org.satline.page.build;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.satline.page.Entry;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.diagnostics.Problem;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.builder.BuildException;
import org.teavm.tooling.builder.BuildResult;
import org.teavm.tooling.builder.InProcessBuildStrategy;
import org.teavm.vm.TeaVMOptimizationLevel;

/** Compiles the page and the library to JavaScript and puts it into one file with style, words and data. */
public final class PageBuild {
    private static final long MOST_BYTES = 8_000_000;

    private PageBuild() {}

    /**
     * Builds the page.
     *
     * @param args folder for what is built; the class path of this process is that of the page, which stands first in it, since two of its classes stand in
     *     for those of the compiler's library
     * @throws IOException if a file cannot be read or written
     * @throws BuildException if the compiler fails
     */
    public static void main(String[] args) throws IOException, BuildException {
        Path target = Path.of(args[0]);
        List<String> classPath = List.of(System.getProperty("java.class.path").split(File.pathSeparator));
        Path script = target.resolve("js").resolve("satline.js");
        compile(script, classPath);
        byte[] files = DataFiles.packed(classPath);
        Files.write(target.resolve("js").resolve("files.bin"), files);
        write(target, Files.readString(script), files);
    }

    private static void compile(Path script, List<String> classPath) throws BuildException {
        InProcessBuildStrategy build = new InProcessBuildStrategy();
        build.init();
        build.setClassPathEntries(classPath);
        build.setTargetType(TeaVMTargetType.JAVASCRIPT);
        build.setJsModuleType(JSModuleType.NONE);
        build.setMainClass(Entry.class.getName());
        build.setEntryPointName("main");
        build.setTargetDirectory(String.valueOf(script.getParent()));
        build.setTargetFileName(String.valueOf(script.getFileName()));
        build.setObfuscated(!Boolean.getBoolean("satline.page.readable"));
        // else bounds, casts and nulls go unchecked
        build.setStrict(true);
        build.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        BuildResult result = build.build();
        List<Problem> problems = result.getProblems().getSevereProblems();
        if (!problems.isEmpty()) {
            throw new BuildException(new IllegalStateException("the page does not compile: "
                    + problems.stream().map(PageBuild::described).toList()));
        }
    }

    private static String described(Problem problem) {
        return problem.getText() + " " + List.of(problem.getParams()) + " at " + problem.getLocation();
    }

    private static void write(Path target, String script, byte[] files) throws IOException {
        if (script.contains("</script") || script.contains("<!--")) {
            throw new IllegalStateException("the script would end its own element; escape it before it is put in");
        }
        String page = text("page.html")
                .replace("${style}", text("page.css"))
                .replace("${start}", text("start.js"))
                .replace("${files}", Base64.getEncoder().encodeToString(deflated(files)))
                .replace("${script}", script);
        byte[] bytes = page.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > MOST_BYTES) {
            throw new IllegalStateException("the page has " + bytes.length + " bytes, at most " + MOST_BYTES
                    + " are allowed; see which data or classes came in");
        }
        CRC32 version = new CRC32();
        version.update(bytes);
        Files.write(target.resolve("satline-page.html"), bytes);
        Files.writeString(target.resolve("satline-page.webmanifest"), text("manifest.json"));
        Files.writeString(
                target.resolve("satline-worker.js"),
                text("worker.js").replace("${version}", Long.toHexString(version.getValue())));
        System.out.println("satline-page.html: " + bytes.length + " bytes, script " + script.length() + ", data "
                + files.length + " before deflating");
    }

    private static byte[] deflated(byte[] bytes) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
            out.write(bytes);
        } finally {
            deflater.end();
        }
        return packed.toByteArray();
    }

    private static String text(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(Entry.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
