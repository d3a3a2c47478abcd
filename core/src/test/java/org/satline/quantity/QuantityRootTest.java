package org.satline.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What callers outside the package, such as Kotlin with {@code a < b}, reach on each quantity. */
class QuantityRootTest {
    static Stream<Class<?>> kinds() {
        return Arrays.stream(Quantity.class.getPermittedSubclasses());
    }

    static Stream<Quantity<?>> samples() {
        return Quantities.ALL.stream().map(Quantities::sample);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyKindIsSampled(Class<?> kind) {
        assertThat(samples()).anyMatch(kind::isInstance);
    }

    /** A caller compiles the declaring class into its own code; one that is not public is an IllegalAccessError when it runs. */
    @ParameterizedTest
    @MethodSource("kinds")
    void declaringClassesOfPublicMethodsArePublic(Class<?> kind) {
        assertThat(kind.getMethods())
                .allSatisfy(each -> assertThat(
                                Modifier.isPublic(each.getDeclaringClass().getModifiers()))
                        .as(each.toString())
                        .isTrue());
        assertThat(kind.getSuperclass()).isEqualTo(Quantity.class);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void comparesThroughThePublicRoot(Quantity<?> sample) throws ReflectiveOperationException {
        Method compareTo = Quantity.class.getMethod("compareTo", Quantity.class);
        assertThat(compareTo.getDeclaringClass()).isEqualTo(Quantity.class);
        assertThat(compareTo.invoke(sample, sample)).isEqualTo(0);
    }

    @ParameterizedTest
    @MethodSource("samples")
    void siValueIsTheOneInTheSiUnit(Quantity<?> sample) {
        assertThat(sample.valueIn(sample.siUnit())).isEqualTo(sample.si());
    }
}
