package org.satline.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CylinderContents;
import org.satline.cylinder.FillAssessment;
import org.satline.cylinder.FillAssessor;
import org.satline.cylinder.FillQuestion;
import org.satline.cylinder.Refusal;
import org.satline.cylinder.Refusal.Reason;
import org.satline.cylinder.Room;
import org.satline.cylinder.RoomFinder;
import org.satline.quantity.Atmosphere;
import org.satline.refrigerant.Refrigerant;
import org.satline.saturation.SaturationCurve;

/** Works out what the recovery cylinder may still take of the refrigerant in the system. */
final class CylinderReports {
    private CylinderReports() {}

    static CylinderReport of(
            CylinderOnSite cylinder, SaturationCurve systemCurve, Atmosphere site, Optional<LocalDate> date) {
        FillQuestion question = FillQuestion.of(cylinder.stamps(), new CylinderContents.Known(systemCurve))
                .under(cylinder.jurisdiction())
                .warmestAt(cylinder.warmest());
        Optional<Refrigerant> holding = cylinder.holding();
        if (holding.isPresent()) {
            question = question.holding(holding.get());
        }
        if (date.isPresent()) {
            question = question.on(date.get());
        }
        FillAssessment assessment = FillAssessor.standard().assess(question);
        List<Refusal> doubts = CylinderDoubts.of(cylinder, Flows.curve(holding, systemCurve), site);
        Optional<Room> room = assessment.isRefused() || !doubts.isEmpty()
                ? Optional.empty()
                : cylinder.scale()
                        .flatMap(scale -> assessment
                                .governing()
                                .map(limit -> RoomFinder.find(
                                        cylinder.stamps(), limit.maximumContents(), scale, cylinder.hoseContents())));
        List<Refusal> all = new ArrayList<>(doubts);
        room.flatMap(CylinderReports::noRoom).ifPresent(all::add);
        return new CylinderReport(cylinder, assessment, all, room);
    }

    private static Optional<Refusal> noRoom(Room room) {
        if (room instanceof Room.Overfilled over) {
            return Optional.of(new Refusal(
                    Reason.OVERFILLED,
                    "THE CYLINDER IS OVERFILLED by " + Figures.of(over.excess())
                            + ": let nothing more in, keep it cool and people away, and have the excess moved into another cylinder with room before"
                            + " anything else is done",
                    "49 CFR 173.304(b); common practice"));
        }
        if (room instanceof Room.Full) {
            return Optional.of(new Refusal(
                    Reason.FULL,
                    "it is full: what is left below the limit is within the margin of the scale and the contents of the hoses",
                    "common practice, no source"));
        }
        return room instanceof Room.Contradiction contradiction
                ? Optional.of(contradiction.refusal())
                : Optional.empty();
    }
}
