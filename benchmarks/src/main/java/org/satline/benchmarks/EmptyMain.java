package org.satline.benchmarks;

/** Does nothing: what a virtual machine costs by itself. */
public final class EmptyMain {
    private EmptyMain() {}

    /**
     * Does nothing.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {}
}
