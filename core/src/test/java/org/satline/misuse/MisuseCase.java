package org.satline.misuse;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/**
 * One wrong call.
 *
 * @param called what is called, and with what
 * @param expected the type that must come back
 * @param call the call
 */
record MisuseCase(String called, Class<? extends Throwable> expected, ThrowingCallable call) {
    @Override
    public String toString() {
        return called + " -> " + expected.getSimpleName();
    }

    /** A table that is written row by row. */
    static final class Rows {
        private final List<MisuseCase> rows = new ArrayList<>();

        Rows refuses(String called, ThrowingCallable call) {
            return refuses(called, IllegalArgumentException.class, call);
        }

        Rows refuses(String called, Class<? extends Throwable> expected, ThrowingCallable call) {
            rows.add(new MisuseCase(called, expected, call));
            return this;
        }

        /** One row for each number that the factory must refuse. */
        Rows numbers(String called, DoubleFunction<?> factory, double... wrong) {
            for (double each : wrong) {
                refuses(called + "(" + each + ")", () -> factory.apply(each));
            }
            return this;
        }

        /** One row for each text that the parser must refuse. */
        Rows texts(String called, Consumer<String> parser, String... wrong) {
            for (String each : wrong) {
                refuses(called + "(\"" + each + "\")", () -> parser.accept(each));
            }
            return this;
        }

        List<MisuseCase> all() {
            return List.copyOf(rows);
        }
    }
}
