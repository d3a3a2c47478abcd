package org.satline.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.satline.CoreClasses;
import org.satline.quantity.Quantity;

/** What the JSON forms find out about records and sealed interfaces is what the platform itself says of them. */
class ShapesTest {
    private static Stream<Class<?>> types() {
        return CoreClasses.all().stream().map(JavaClass::reflect);
    }

    @Test
    void recordsHaveTheirComponentsInOrder() {
        List<Class<?>> records = types().filter(Class::isRecord).toList();
        assertThat(records).hasSizeGreaterThan(100);
        for (Class<?> type : records) {
            RecordComponent[] components = type.getRecordComponents();
            assertThat(Shapes.parts(type).stream().map(Shapes.Part::name))
                    .as(type.getName())
                    .containsExactlyElementsOf(Arrays.stream(components)
                            .map(RecordComponent::getName)
                            .toList());
            assertThat(Shapes.parts(type).stream().map(Shapes.Part::genericType))
                    .as(type.getName())
                    .containsExactlyElementsOf(Arrays.stream(components)
                            .map(RecordComponent::getGenericType)
                            .toList());
        }
        assertThat(types().filter(Shapes::isRecord)).containsExactlyInAnyOrderElementsOf(records);
    }

    @Test
    void publicSealedInterfacesHaveTheirRecords() {
        List<Class<?>> interfaces = types().filter(type -> type.isSealed() && Modifier.isPublic(type.getModifiers()))
                .toList();
        assertThat(interfaces).hasSizeGreaterThan(10);
        for (Class<?> type : interfaces) {
            if (type == Quantity.class) { // its values are classes, and any of them is bound to a form of its own
                continue;
            }
            assertThat(Shapes.cases(type))
                    .as(type.getName() + ": nest its records in it, or name them in Shapes")
                    .containsExactlyInAnyOrder(type.getPermittedSubclasses());
        }
        assertThat(types().filter(
                                type -> !type.isSealed() && !Shapes.cases(type).isEmpty()))
                .as("open interfaces that look sealed")
                .isEmpty();
    }
}
