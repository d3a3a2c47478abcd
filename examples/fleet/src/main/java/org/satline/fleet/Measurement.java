package org.satline.fleet;

import java.util.function.Consumer;

final class Measurement {
    private Measurement() {}

    static void print(long most, long readings, Consumer<String> out) {
        out.accept("" + most + readings);
    }
}
