package org.satline.page.build;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The data files of the library and the words of the page, one behind the other: length and bytes of the path, length and bytes of the file. Stateless. */
final class DataFiles {
    private static final String ROOT = "org/satline/";
    private static final List<String> ENDINGS = List.of(".csv", ".saturation", ".properties", ".digests");
    /** Certificates are read by the command line alone. */
    private static final String NOT_NEEDED = ".certificate.csv";

    private DataFiles() {}

    static byte[] packed(List<String> classPath) throws IOException {
        SortedMap<String, byte[]> files = new TreeMap<>();
        for (String entry : classPath) {
            Path path = Path.of(entry);
            if (Files.isDirectory(path)) {
                collect(path, files);
            } else if (String.valueOf(path.getFileName()).startsWith("satline-")) {
                try (FileSystem jar = FileSystems.newFileSystem(path)) {
                    collect(jar.getPath("/"), files);
                }
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream data = new DataOutputStream(bytes);
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            data.writeUTF(file.getKey());
            data.writeInt(file.getValue().length);
            data.write(file.getValue());
        }
        return bytes.toByteArray();
    }

    private static void collect(Path root, SortedMap<String, byte[]> files) throws IOException {
        try (Stream<Path> all = Files.walk(root)) {
            for (Path each : all.filter(Files::isRegularFile).toList()) {
                String name = root.relativize(each).toString();
                boolean wanted = name.startsWith(ROOT) && ENDINGS.stream().anyMatch(name::endsWith);
                if (wanted && !name.endsWith(NOT_NEEDED)) {
                    files.put(name, Files.readAllBytes(each));
                }
            }
        }
    }
}
