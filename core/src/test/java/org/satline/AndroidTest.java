package org.satline;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Members that Android lacks at API level 26 and that its build tools do not replace, in the classes which the signature check of the build
 * has to leave out as a whole. The names are the members of these classes that are newer than Java 8, less those that the pom names.
 */
class AndroidTest {
    private static final JavaClasses CORE = CoreClasses.all();

    static Stream<Arguments> banned() {
        return Stream.of(
                Arguments.of(
                        String.class,
                        "lines|indent|transform|formatted|stripIndent|stripLeading|stripTrailing"
                                + "|translateEscapes|describeConstable|resolveConstantDesc"),
                Arguments.of(Stream.class, "takeWhile|dropWhile|ofNullable|mapMulti\\w*|iterate"));
    }

    @ParameterizedTest
    @MethodSource("banned")
    void noMemberIsUsedThatNobodySupplies(Class<?> type, String names) {
        noClasses()
                .should()
                .callMethodWhere(target(owner(assignableTo(type))).and(target(nameMatching(names))))
                .check(CORE);
    }
}
