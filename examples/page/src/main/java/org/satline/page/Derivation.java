package org.satline.page;

import org.satline.explanation.Step;
import org.satline.wording.StepText;
import org.satline.wording.Wording;

/** One step of a derivation: its result, and behind it formula, figures and source. */
final class Derivation {
    private final Wording wording;
    private final StepText step;

    Derivation(Wording wording, Step step) {
        this.wording = wording;
        this.step = wording.of(step);
    }

    Node node(boolean open) {
        Node details = Node.of("details", "derivation")
                .add(
                        Node.of("summary")
                                .add(
                                        Node.of("span").text(step.name() + " "),
                                        Node.of("b").text(step.result())),
                        new Facts()
                                .add(wording.message("page.formula"), step.formula())
                                .add(wording.message("page.numbers"), String.join(", ", step.given()))
                                .add(wording.message("page.source"), step.source())
                                .node());
        return open ? details.set("open", "") : details;
    }
}
