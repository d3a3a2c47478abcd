package org.satline.json;

import org.jspecify.annotations.Nullable;

/** Where in a document: a step and the place it starts from. */
record Place(@Nullable Place parent, String step) {
    /** Longest name that a message repeats. */
    private static final int LONGEST = 60;

    static final Place ROOT = new Place(null, "");

    Place in(String name) {
        return new Place(this, name.length() <= LONGEST ? name : name.substring(0, LONGEST) + "...");
    }

    Place at(int index) {
        return new Place(this, Integer.toString(index));
    }

    @Override
    public String toString() {
        if (parent == null) {
            return "/";
        }
        String before = parent.toString();
        return before.equals("/") ? "/" + step : before + "/" + step;
    }
}
