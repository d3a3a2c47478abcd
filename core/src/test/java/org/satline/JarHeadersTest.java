package org.satline;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.resource.SealedResources;

/** What the jar of core says about itself to OSGi and to native images is what is in it. */
class JarHeadersTest {
    private static final Path POM = Path.of("pom.xml");
    private static final Path PARENT = Path.of("..", "pom.xml");
    private static final JavaClasses CORE = CoreClasses.all();

    private static String element(Path file, String name) throws IOException {
        Matcher found = Pattern.compile("<" + name + ">([^<]*)</" + name + ">").matcher(Files.readString(file));
        assertThat(found.find()).as(name).isTrue();
        return found.group(1);
    }

    private static Set<String> packages(String header) throws IOException {
        return Arrays.stream(element(POM, header).split(",(?=[a-z])", -1))
                .map(clause -> clause.strip().replaceFirst(";.*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyPackageWithAPublicTypeIsExported() throws IOException {
        assertThat(packages("Export-Package"))
                .isEqualTo(CORE.stream()
                        .filter(type -> !type.getSimpleName().equals("package-info"))
                        .map(JavaClass::getPackageName)
                        .collect(Collectors.toCollection(TreeSet::new)));
    }

    @Test
    void everyPackageOfOthersThatIsUsedIsImported() throws IOException {
        Stream<JavaClass> used = CORE.stream()
                .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
                .map(Dependency::getTargetClass)
                .map(JavaClass::getBaseComponentType);
        assertThat(packages("Import-Package"))
                .containsAll(used.map(JavaClass::getPackageName)
                        // annotations that nothing looks for when the program runs
                        .filter(name -> !name.isEmpty() && !name.startsWith("org.jspecify"))
                        .filter(name -> !name.startsWith("java.") && !name.startsWith("org.satline"))
                        .collect(Collectors.toSet()));
    }

    @Test
    void theVersionForOsgiIsThatOfTheProject() throws IOException {
        // the first version in the parent is its own
        assertThat(element(PARENT, "osgi\\.version"))
                .isEqualTo(element(PARENT, "version").replace('-', '.'));
    }

    @Test
    void aNativeImageTakesEveryResource() throws IOException {
        String config = Files.readString(
                Path.of("src/main/resources/META-INF/native-image/org.satline/satline-core/resource-config.json"));
        Matcher pattern = Pattern.compile("\"pattern\": \"([^\"]+)\"").matcher(config);
        assertThat(pattern.find()).isTrue();
        Pattern taken = Pattern.compile(pattern.group(1).replace("\\\\", "\\"));
        assertThat(SealedResources.core().paths())
                .allMatch(path -> taken.matcher(path).matches());
    }
}
