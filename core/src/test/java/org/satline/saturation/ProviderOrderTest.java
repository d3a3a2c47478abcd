package org.satline.saturation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;

/** Providers in the class loader of the caller are found, and asked in the stated order. */
class ProviderOrderTest {
    private static final Refrigerant R32 = Catalogue.standard().find("R-32");
    private static final SaturationCurve FIRST = SaturationCurves.solving(R32);
    private static final SaturationCurve SECOND = SaturationCurves.solving(R32);

    @TempDir
    private Path folder = Path.of("");

    /** Asked late. */
    public static final class Late implements SaturationCurveProvider {
        @Override
        public Optional<SaturationCurve> curve(Refrigerant refrigerant) {
            return refrigerant.equals(R32) ? Optional.of(SECOND) : Optional.empty();
        }

        @Override
        public int priority() {
            return -5;
        }
    }

    /** Asked first, and knows nothing but R-32. */
    public static final class Early implements SaturationCurveProvider {
        @Override
        public Optional<SaturationCurve> curve(Refrigerant refrigerant) {
            return refrigerant.equals(R32) ? Optional.of(FIRST) : Optional.empty();
        }

        @Override
        public int priority() {
            return 5;
        }
    }

    /** Answers everything with R-32. */
    public static final class Confused implements SaturationCurveProvider {
        @Override
        public Optional<SaturationCurve> curve(Refrigerant refrigerant) {
            return Optional.of(FIRST);
        }
    }

    /** Names providers in a file of its own, as an application does whose library stands in a loader above it. */
    private static final class Application extends ClassLoader {
        private final URL services;

        Application(URL services) {
            super(ProviderOrderTest.class.getClassLoader());
            this.services = services;
        }

        @Override
        public Enumeration<URL> getResources(String name) throws IOException {
            return name.equals("META-INF/services/" + SaturationCurveProvider.class.getName())
                    ? Collections.enumeration(List.of(services))
                    : super.getResources(name);
        }
    }

    private <T> T within(Supplier<T> asked, Class<?>... providers) throws IOException {
        StringBuilder names = new StringBuilder();
        for (Class<?> provider : providers) {
            names.append(provider.getName()).append('\n');
        }
        Path file = Files.writeString(folder.resolve("providers"), names);
        Thread thread = Thread.currentThread();
        ClassLoader before = thread.getContextClassLoader();
        thread.setContextClassLoader(new Application(file.toUri().toURL()));
        try {
            return asked.get();
        } finally {
            thread.setContextClassLoader(before);
        }
    }

    @Test
    void theHigherPriorityIsAskedFirstWhereverItStands() throws IOException {
        assertThat(within(() -> SaturationCurves.of(R32), Late.class, Early.class))
                .isSameAs(FIRST);
        assertThat(within(() -> SaturationCurves.of(R32), Early.class, Late.class))
                .isSameAs(FIRST);
        assertThat(within(() -> SaturationCurves.of(R32), Late.class)).isSameAs(SECOND);
    }

    @Test
    void whatNoProviderHasIsSolved() throws IOException {
        Refrigerant other = Catalogue.standard().find("R-290");
        assertThat(within(() -> SaturationCurves.of(other), Late.class, Early.class))
                .satisfies(curve -> assertThat(curve.refrigerant()).isEqualTo(other));
    }

    @Test
    void theCurveOfAnotherRefrigerantIsRefused() {
        assertThatThrownBy(() ->
                        within(() -> SaturationCurves.of(Catalogue.standard().find("R-290")), Confused.class))
                .isInstanceOf(IllegalStateException.class);
    }
}
