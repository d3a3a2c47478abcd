package org.satline.program.exercise;

import java.util.List;

/** A piece of a page, whatever it is written in. */
sealed interface Block {
    /** A heading; level 1 for the title of the page. */
    record Heading(int level, String text) implements Block {}

    /** Running text. */
    record Text(String text) implements Block {}

    /** A numbered question: the letter, the text, and the answer where it is the key. */
    record Question(String letter, String text, String answer, boolean lines) implements Block {}

    /** Points. */
    record Points(List<String> items) implements Block {
        public Points {
            items = List.copyOf(items);
        }
    }

    /** A table. */
    record Table(String title, List<String> head, List<List<String>> rows, String note) implements Block {
        public Table {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Where an exercise begins: on a page of its own, or below the one before. */
    record Begin(boolean newPage) implements Block {}
}
