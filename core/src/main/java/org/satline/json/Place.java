package org.satline.json;

import org.jspecify.annotations.Nullable;

/** Where in a document: a step and the place it starts from, and whether fields that this version does not know are refused there. */
record Place(@Nullable Place parent, String step, boolean strict) {
    /** Longest name that a message repeats. */
    private static final int LONGEST = 60;

    static final Place ROOT = new Place(null, "", false);
    static final Place STRICT_ROOT = new Place(null, "", true);

    Place in(String name) {
        return new Place(this, name.length() <= LONGEST ? name : name.substring(0, LONGEST) + "...", strict);
    }

    Place at(int index) {
        return new Place(this, Integer.toString(index), strict);
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
