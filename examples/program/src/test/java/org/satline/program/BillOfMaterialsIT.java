package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** The bill of materials names what is in the runnable jar, no less and no more; in the profiles that make one. */
@EnabledIfSystemProperty(named = "satline.sbom", matches = "true")
class BillOfMaterialsIT {
    private static final Pattern LISTED = Pattern.compile("\\((\\S+):(\\S+):(\\S+) - ");

    @Test
    void theBillIsWhatTheJarContains() throws IOException {
        Set<String> billed = new TreeSet<>();
        for (JsonNode each :
                new ObjectMapper().readTree(Path.of("target/bom.json").toFile()).path("components")) {
            billed.add(each.path("group").textValue() + ":" + each.path("name").textValue() + ":"
                    + each.path("version").textValue());
        }
        Set<String> contained = new TreeSet<>();
        try (JarFile jar = new JarFile("target/satline.jar")) {
            String list = new String(
                    jar.getInputStream(jar.getEntry("META-INF/THIRD-PARTY.txt")).readAllBytes(),
                    StandardCharsets.UTF_8);
            for (Matcher line = LISTED.matcher(list); line.find(); ) {
                contained.add(line.group(1) + ":" + line.group(2) + ":" + line.group(3));
            }
        }
        assertThat(contained).isNotEmpty();
        assertThat(billed).isEqualTo(contained);
    }
}
