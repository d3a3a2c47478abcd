package org.satline.visit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.satline.cylinder.CylinderContents;
import org.satline.cylinder.FillAssessment;
import org.satline.cylinder.FillAssessor;
import org.satline.cylinder.FillQuestion;
import org.satline.cylinder.Refusal;
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
        return new CylinderReport(cylinder, assessment, doubts, room);
    }
}
