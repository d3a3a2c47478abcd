package org.satline.cylinder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.explanation.Figure;
import org.satline.explanation.Finding;
import org.satline.explanation.Severity;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.VesselPoint;
import org.satline.measurement.Reading;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.TemperatureDifference;

/** What can hurt someone as a cylinder stands: liquid that fills it, and a pressure that it is not made for. */
final class DangerCheck {
    /** A cylinder in the shade warms by as much within minutes once the sun reaches it; common practice, no source. */
    private static final TemperatureDifference WITHIN = TemperatureDifference.ofKelvins(5);

    private static final String VESSEL = "closed vessel: mass, volume and temperature; 49 CFR 173.304(b)";

    private DangerCheck() {}

    static List<Finding> of(Cylinder cylinder, CylinderFacts facts, Atmosphere site) {
        List<Finding> found = new ArrayList<>();
        if (facts.mayHoldLiquid() && facts.weight().isPresent()) {
            liquidFull(cylinder, facts, found);
        }
        overPressure(cylinder, facts, site, found);
        return found;
    }

    private static void liquidFull(Cylinder cylinder, CylinderFacts facts, List<Finding> found) {
        Temperature now = cylinder.temperature().value();
        Temperature soon = Temperature.ofKelvins(now.kelvins() + WITHIN.kelvins());
        VesselPoint full = facts.liquidFullOf(facts.contents().kilograms());
        if (!full.isBy(soon)) {
            return;
        }
        List<Figure> figures = new ArrayList<>(List.of(
                facts.contentsFigure(),
                Figure.of("waterCapacity", cylinder.stamps().waterCapacity()),
                Figure.of("temperature", now)));
        Temperature fullAt = full instanceof VesselPoint.At at ? at.temperature() : now;
        figures.add(Figure.of("fullAt", fullAt));
        found.add(new Finding(Severity.DANGER_NOW, CylinderCode.LIQUID_FULL, cylinder.subject(), figures, VESSEL));
        Optional<Reading<Pressure>> vapour = cylinder.pressure()
                .filter(read -> facts.isOnLine()
                        && read.value().pascals()
                                <= facts.curve().bubblePressurePa(now.kelvins()) + facts.pressureDoubtPa(read));
        vapour.ifPresent(read -> found.add(Finding.of(
                Severity.CAUTION,
                CylinderCode.WEIGHT_MISFITS_GAUGE,
                cylinder.subject(),
                Figure.of("read", read.value()))));
    }

    /** The pressure read, and the one that goes with its temperature, against what the stamps stand for. */
    private static void overPressure(Cylinder cylinder, CylinderFacts facts, Atmosphere site, List<Finding> found) {
        CylinderStamps stamps = cylinder.stamps();
        // a mark that cannot be true promises no more than the strongest cylinder of its type
        Optional<GaugePressure> believed = stamps.specification()
                .filter(CylinderSpecification::isImpossible)
                .flatMap(CylinderSpecification::largestPressure);
        Optional<GaugePressure> service = stamps.servicePressure()
                .map(stated ->
                        believed.filter(most -> most.compareTo(stated) < 0).orElse(stated));
        double most = Math.min(
                service.map(each -> ClosedVessel.OVER_SERVICE * each.pascals()).orElse(Double.MAX_VALUE),
                stamps.testPressure().map(GaugePressure::pascals).orElse(Double.MAX_VALUE));
        Stream.concat(cylinder.pressure().stream(), facts.byState().stream())
                .map(read -> read.value().gauge(site))
                .filter(gauge -> gauge.pascals() > most)
                .max(GaugePressure::compareTo)
                .ifPresent(gauge -> found.add(Finding.of(
                                Severity.DANGER_NOW,
                                CylinderCode.OVER_PRESSURE,
                                cylinder.subject(),
                                Figure.of("pressure", gauge),
                                Figure.of("most", GaugePressure.ofPascals(most)))
                        .citing(ClosedVessel.OVER_SERVICE_SOURCE)));
    }
}
