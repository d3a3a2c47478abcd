package org.satline.program.page;

import java.util.List;

/** A piece of a page, whatever the page is written in. Texts are plain: the writer makes them safe. Immutable. */
public sealed interface Block {
    /**
     * A heading.
     *
     * @param level 1 for the title of the page, 2 for a section, 3 for a part of one
     * @param text what follows is about
     */
    record Heading(int level, String text) implements Block {
        /** {@inheritDoc} */
        public Heading {
            if (!(level >= 1 && level <= 3)) {
                throw new IllegalArgumentException("level " + level + " is outside [1, 3]");
            }
        }
    }

    /**
     * Running text.
     *
     * @param text one paragraph
     */
    record Paragraph(String text) implements Block {}

    /** A blank line in plain text; elsewhere paragraphs keep their distance anyway. */
    record Gap() implements Block {}

    /**
     * Labels, each with its text.
     *
     * @param rows in order
     */
    record Rows(List<Row> rows) implements Block {
        /** {@inheritDoc} */
        public Rows {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A label with its text.
     *
     * @param label in capitals where it is a warning; empty to go on with the row before
     * @param text the text
     */
    record Row(String label, String text) {}

    /**
     * Lines that matter most, in rows that are broken already: nothing about them is left to the width of the page.
     *
     * @param lines in order
     */
    record Brief(List<BriefLine> lines) implements Block {
        /** {@inheritDoc} */
        public Brief {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line that matters.
     *
     * @param name its name
     * @param rows its text
     * @param warns whether it warns
     */
    record BriefLine(String name, List<String> rows, boolean warns) {
        /** {@inheritDoc} */
        public BriefLine {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A list.
     *
     * @param items in order
     */
    record Points(List<String> items) implements Block {
        /** {@inheritDoc} */
        public Points {
            items = List.copyOf(items);
        }
    }

    /**
     * What is done one after the other, numbered from 1.
     *
     * @param items in order
     */
    record Acts(List<String> items) implements Block {
        /** {@inheritDoc} */
        public Acts {
            items = List.copyOf(items);
        }
    }

    /**
     * A table.
     *
     * @param title what it holds; may be empty
     * @param head names of the columns
     * @param rows cells, as many in each row as the head has
     */
    record Table(String title, List<String> head, List<List<String>> rows) implements Block {
        /** {@inheritDoc} */
        public Table {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /**
     * A question of an exercise.
     *
     * @param letter its name
     * @param text the question
     * @param choices answers to choose from; empty where it is to be written
     * @param answer the answer, on the key; empty on the sheet of questions
     * @param lines how many lines are left for writing; 0 on the key
     */
    record Question(String letter, String text, List<String> choices, String answer, int lines) implements Block {
        /** {@inheritDoc} */
        public Question {
            choices = List.copyOf(choices);
            if (lines < 0) {
                throw new IllegalArgumentException("lines " + lines + " is below 0");
            }
        }
    }

    /**
     * Fields to fill in by hand, side by side.
     *
     * @param labels what belongs in each
     */
    record Blanks(List<String> labels) implements Block {
        /** {@inheritDoc} */
        public Blanks {
            labels = List.copyOf(labels);
        }
    }

    /**
     * A picture.
     *
     * @param svg the picture as an SVG element, as a program drew it: it goes into HTML as it stands
     * @param notes what stands below it, in any form of page
     */
    record Figure(String svg, List<String> notes) implements Block {
        /** {@inheritDoc} */
        public Figure {
            notes = List.copyOf(notes);
        }
    }

    /**
     * A picture to read figures from; a page without pictures has the table in its place.
     *
     * @param svg the picture as an SVG element, as a program drew it: it goes into HTML as it stands
     * @param rows the same in figures
     */
    record Chart(String svg, Table rows) implements Block {}

    /**
     * A place that a page with pictures fills; the others pass over it.
     *
     * @param spot which one
     */
    record Place(Spot spot) implements Block {}

    /** Places for pictures. */
    enum Spot {
        /** After superheat and subcooling: pictures of the system. */
        SYSTEM,
        /** After what is known about the cylinder: pictures of it. */
        CYLINDER
    }

    /**
     * Where a section begins.
     *
     * @param sheet whether it begins a sheet of paper of its own in print
     */
    record Begin(Sheet sheet) implements Block {}

    /** Paper on which a section begins. */
    enum Sheet {
        /** A new one. */
        NEW,
        /** That of the section before if it fits there as a whole. */
        WHOLE,
        /** The one of the section before. */
        SAME
    }
}
