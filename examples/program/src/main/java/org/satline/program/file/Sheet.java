package org.satline.program.file;

/** What a page about a visit is written on: headings, rows of a label with its text, and lists. Implementations are for one thread. */
public interface Sheet {
    /** Where a page with pictures puts them. */
    enum Spot {
        /** After superheat and subcooling: pictures of the system. */
        SYSTEM,
        /** After what is known about the cylinder: pictures of it. */
        CYLINDER
    }

    /**
     * Begins the page.
     *
     * @param text what the page is about
     * @return this
     */
    Sheet title(String text);

    /**
     * Begins a section.
     *
     * @param text what the section is about
     * @return this
     */
    Sheet heading(String text);

    /**
     * Begins a part of a section.
     *
     * @param text what the part is about
     * @return this
     */
    Sheet subheading(String text);

    /**
     * Writes a label with its text.
     *
     * @param label the label; in capitals where it is a warning; empty to go on with the row before
     * @param text the text
     * @return this
     */
    Sheet row(String label, String text);

    /**
     * Writes an item of a list.
     *
     * @param text the item
     * @return this
     */
    Sheet item(String text);

    /**
     * Writes a line.
     *
     * @param text the line; may be empty
     * @return this
     */
    Sheet line(String text);

    /**
     * Marks a spot for pictures. A sheet without pictures passes over it.
     *
     * @param spot which one
     * @return this
     */
    default Sheet spot(Spot spot) {
        return this;
    }
}
