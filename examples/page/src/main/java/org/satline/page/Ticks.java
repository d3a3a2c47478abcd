package org.satline.page;

import java.util.ArrayList;
import java.util.List;

/** Which acts of the plan are done, and when the wait ends; kept on the device. For the one thread of a page. */
final class Ticks {
    private static final String NAME = "ticks";
    private static final String END = "wait";

    private String plan = "";
    private final List<Integer> done = new ArrayList<>();

    Ticks() {
        String[] parts = Browser.remembered(NAME).split("\n", 2);
        plan = parts.length == 2 ? parts[1] : "";
        for (String each : parts[0].split(",", -1)) {
            if (!each.isEmpty()) {
                done.add(Integer.parseInt(each));
            }
        }
    }

    /** Holds the ticks against the plan as it is now: those of another plan are dropped. */
    void of(String acts) {
        if (!acts.equals(plan)) {
            plan = acts;
            done.clear();
            keep();
        }
    }

    boolean isDone(int act) {
        return done.contains(act);
    }

    void turn(int act) {
        if (!done.remove(Integer.valueOf(act))) {
            done.add(act);
        }
        keep();
    }

    void clear() {
        plan = "";
        done.clear();
        keep();
        waitUntil(0);
    }

    private void keep() {
        List<String> numbers = done.stream().map(String::valueOf).toList();
        Browser.remember(NAME, String.join(",", numbers) + "\n" + plan);
    }

    /** When the wait ends, in milliseconds of the clock; 0 where none runs. */
    double waitUntil() {
        String text = Browser.remembered(END);
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    void waitUntil(double end) {
        Browser.remember(END, end == 0 ? "" : String.valueOf(end));
    }
}
