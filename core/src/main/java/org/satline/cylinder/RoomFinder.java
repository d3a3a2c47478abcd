package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.explanation.Step;
import org.satline.explanation.Subject;
import org.satline.filling.FillAssessment;
import org.satline.filling.FillQuestion;
import org.satline.measurement.Reading;
import org.satline.quantity.Mass;
import org.satline.quantity.MassDifference;

/** Works out the room left in a cylinder and the reading never to be passed, for both ways of weighing. */
public final class RoomFinder {
    private static final String ARITHMETIC = "arithmetic: gross = tare + contents";

    private RoomFinder() {}

    /**
     * Works out the room. It leaves twice the expanded uncertainty, and what the hoses hold, below the limit, so that they can be
     * emptied into the cylinder afterwards. A cylinder that weighs less than its tare is taken as empty.
     *
     * @param fill the fill that is allowed
     * @param weighing how the cylinder is weighed, with the reading now
     * @param hoseContents the refrigerant in the hoses that will end in the cylinder; zero where they are emptied elsewhere
     * @return the room, or that it is full or overfilled
     * @throws IllegalArgumentException if the cylinder weighs less than its tare by more than the usual scatter
     */
    public static Room find(FillAssessment.Allowed fill, Weighing weighing, Mass hoseContents) {
        FillQuestion question = fill.answers().question();
        Mass tare = question.stamps().tare();
        if (weighing.isBelowTare(tare)) {
            throw new IllegalArgumentException(
                    "contents " + weighing.contents(tare).value() + " are below zero by more than " + "1 % of the tare "
                            + tare + "; check the unit of both weights and that the whole cylinder is on the scale");
        }
        Reading<MassDifference> inside = weighing.contents(tare);
        double kilograms = Math.max(0, inside.value().kilograms());
        Mass contents = Mass.ofKilograms(kilograms);
        double limit = fill.limit().kilograms();
        double margin = 2 * inside.expandedUncertainty();
        double room = limit - kilograms - hoseContents.kilograms() - margin;
        List<Step> steps = new ArrayList<>();
        steps.add(weighed(tare, weighing, inside.value()));
        Figure marginFigure = Figure.of("margin", Mass.ofKilograms(margin));
        steps.add(new Step(
                "scaleMargin",
                "margin = 2 U",
                List.of(Figure.of("U", Mass.ofKilograms(inside.expandedUncertainty()))),
                marginFigure,
                "JCGM 100, 5.1.2 and 6.2; twice: common practice, no source"));
        Figure roomFigure = Figure.of("room", MassDifference.ofKilograms(room));
        steps.add(new Step(
                "roomLeft",
                "room = limit - contents - hose contents - margin",
                List.of(
                        Figure.of("limit", fill.limit()),
                        Figure.of("contents", contents),
                        Figure.of("hoseContents", hoseContents),
                        marginFigure),
                roomFigure,
                ARITHMETIC));
        if (kilograms - inside.expandedUncertainty() > limit) {
            return new Room.Overfilled(contents, Mass.ofKilograms(kilograms - limit), steps);
        }
        if (!(room > 0)) {
            return new Room.Full(contents, steps);
        }
        MassDifference neverPass = weighing.showsAfter(MassDifference.ofKilograms(room));
        steps.add(new Step(
                "neverPass",
                "stop = shown + room",
                List.of(Figure.of("shown", weighing.showsAfter(MassDifference.ZERO)), roomFigure),
                Figure.of("stop", neverPass),
                ARITHMETIC));
        Subject cylinder = Subject.cylinder(question.name());
        CylinderCode hoses =
                weighing instanceof Weighing.SinceZero ? CylinderCode.HOSES_AS_ZEROED : CylinderCode.HOSES_ON_SCALE;
        List<Finding> cautions = List.of(
                Finding.of(Severity.CAUTION, hoses, cylinder),
                Finding.of(Severity.CAUTION, CylinderCode.SCALE_DECIDES, cylinder));
        return new Room.Left(contents, Mass.ofKilograms(room), neverPass, cautions, steps);
    }

    private static Step weighed(Mass tare, Weighing weighing, MassDifference inside) {
        List<Figure> given = new ArrayList<>();
        String formula = "contents = gross - TW - hanging";
        if (weighing instanceof Weighing.SinceZero since) {
            formula = "contents = gross before - TW - hanging + shown";
            given.add(Figure.of("grossBefore", since.grossBefore().value()));
            given.add(Figure.of("shown", since.shown().value()));
        } else if (weighing instanceof Weighing.Gross gross) {
            given.add(Figure.of("gross", gross.shown().value()));
        }
        given.add(Figure.of("TW", tare));
        given.add(Figure.of("hanging", weighing.hanging()));
        return new Step("contentsByScale", formula, given, Figure.of("contents", inside), ARITHMETIC);
    }
}
