package org.satline.json;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.measurement.Place;
import org.satline.measurement.Reading;
import org.satline.measurement.SystemReadings;
import org.satline.measurement.UncertaintyBudget;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.GaugePressure;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.PressureDifference;
import org.satline.quantity.Quantity;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Composition;
import org.satline.refrigerant.Refrigerant;

/** What the classes that are no records look like in JSON. */
final class Forms {
    private Forms() {}

    /** A component of a blend. */
    record Part(String substance, double massFraction, double moleFraction) {
        static List<Part> of(Composition composition) {
            return composition.components().stream()
                    .map(each -> new Part(each.substance().designation(), each.massFraction(), each.moleFraction()))
                    .toList();
        }

        static Composition composition(List<Part> parts) {
            return Composition.ofComponents(parts.stream()
                    .map(part -> new Composition.Component(
                            Catalogue.standard().find(part.substance), part.massFraction, part.moleFraction))
                    .toList());
        }
    }

    /** A blend of the caller's own. */
    record OwnBlend(String name, List<Part> components) {
        static OwnBlend of(Refrigerant refrigerant) {
            return new OwnBlend(refrigerant.designation(), Part.of(refrigerant.composition()));
        }

        Refrigerant blend() {
            return Refrigerant.blend(name, Part.composition(components));
        }
    }

    /** A quantity of any kind, with the name of the kind. */
    record Amount(String kind, double value, String unit) {
        static Amount of(Quantity<?> quantity) {
            return new Amount(quantity.getClass().getSimpleName(), quantity.si(), quantity.siUnit());
        }
    }

    /** An atmosphere. */
    record Air(Pressure pressure, String description) {
        static Air of(Atmosphere atmosphere) {
            return new Air(atmosphere.pressure(), atmosphere.description());
        }

        Atmosphere atmosphere() {
            return Atmosphere.described(pressure, description);
        }
    }

    /** What one origin adds to an uncertainty, with the sign of its sensitivity. */
    record Contribution(String origin, double standardUncertainty) {
        static List<Contribution> of(UncertaintyBudget budget) {
            return budget.contributions().entrySet().stream()
                    .map(each -> new Contribution(each.getKey(), each.getValue()))
                    .toList();
        }

        static UncertaintyBudget budget(List<Contribution> contributions) {
            UncertaintyBudget sum = UncertaintyBudget.none();
            for (Contribution each : contributions) {
                if (sum.contributions().containsKey(each.origin)) {
                    throw new IllegalArgumentException("origin " + each.origin + " is named twice; add its parts up");
                }
                sum = sum.plus(each.budget());
            }
            return sum;
        }

        private UncertaintyBudget budget() {
            if (standardUncertainty == 0) { // an origin whose parts cancelled: kept, as it was
                UncertaintyBudget one = UncertaintyBudget.of(origin, 1);
                return one.minus(one);
            }
            UncertaintyBudget size = UncertaintyBudget.of(origin, Math.abs(standardUncertainty));
            return standardUncertainty < 0 ? size.scaled(-1) : size;
        }
    }

    /** What was read on a system. */
    record Readings(
            Optional<Reading<Pressure>> suctionPressure,
            Optional<Reading<Temperature>> suctionLine,
            Optional<Reading<Pressure>> liquidPressure,
            Optional<Reading<Temperature>> liquidLine,
            Optional<Reading<Temperature>> returnWetBulb,
            Optional<Reading<Temperature>> returnDryBulb,
            Optional<Reading<Temperature>> supplyDryBulb,
            Optional<Reading<Temperature>> condenserAir,
            Optional<Reading<Temperature>> condenserAirLeaving,
            Optional<Reading<Temperature>> dischargeLine,
            PressureDifference evaporatorAboveSuctionPort,
            PressureDifference condenserAboveLiquidPort) {
        static Readings of(SystemReadings read) {
            return new Readings(
                    read.pressure(Place.SUCTION_PRESSURE),
                    read.temperature(Place.SUCTION_LINE),
                    read.pressure(Place.LIQUID_PRESSURE),
                    read.temperature(Place.LIQUID_LINE),
                    read.temperature(Place.RETURN_WET_BULB),
                    read.temperature(Place.RETURN_DRY_BULB),
                    read.temperature(Place.SUPPLY_DRY_BULB),
                    read.temperature(Place.OUTDOOR_AIR),
                    read.temperature(Place.OUTDOOR_AIR_LEAVING),
                    read.temperature(Place.DISCHARGE_LINE),
                    read.drop(Place.SUCTION_DROP),
                    read.drop(Place.LIQUID_DROP));
        }

        SystemReadings readings() {
            SystemReadings.Builder builder = SystemReadings.builder()
                    .suctionDrop(evaporatorAboveSuctionPort)
                    .liquidDrop(condenserAboveLiquidPort);
            suctionPressure.ifPresent(builder::suctionPressure);
            suctionLine.ifPresent(builder::suctionLine);
            liquidPressure.ifPresent(builder::liquidPressure);
            liquidLine.ifPresent(builder::liquidLine);
            returnWetBulb.ifPresent(builder::returnWetBulb);
            returnDryBulb.ifPresent(builder::returnDryBulb);
            supplyDryBulb.ifPresent(builder::supplyDryBulb);
            condenserAir.ifPresent(builder::condenserAir);
            condenserAirLeaving.ifPresent(builder::condenserAirLeaving);
            dischargeLine.ifPresent(builder::dischargeLine);
            return builder.build();
        }
    }

    /** The stamps of a cylinder; what follows from its specification is not repeated. */
    record Stamps(
            Mass tare,
            Mass waterCapacity,
            Optional<CylinderSpecification> specification,
            Optional<GaugePressure> servicePressure,
            Optional<GaugePressure> testPressure,
            Optional<Boolean> flammableMark,
            Optional<LocalDate> retestDue,
            Optional<Boolean> refillable,
            Optional<Mass> massRating) {
        static Stamps of(CylinderStamps stamps) {
            Stamps all = new Stamps(
                    stamps.tare(),
                    stamps.waterCapacity(),
                    stamps.specification(),
                    Optional.empty(),
                    stamps.testPressure(),
                    stamps.flammableMark(),
                    stamps.retestDue(),
                    Optional.empty(),
                    stamps.massRating());
            CylinderStamps implied = all.stamps();
            return new Stamps(
                    all.tare,
                    all.waterCapacity,
                    all.specification,
                    stamps.servicePressure().filter(own -> !Optional.of(own).equals(implied.servicePressure())),
                    all.testPressure,
                    all.flammableMark,
                    all.retestDue,
                    stamps.isRefillingContradictory()
                            ? Optional.of(true)
                            : stamps.refillable()
                                    .filter(own -> !Optional.of(own).equals(implied.refillable())),
                    all.massRating);
        }

        CylinderStamps stamps() {
            CylinderStamps.Builder builder = CylinderStamps.builder().tare(tare).waterCapacity(waterCapacity);
            specification.ifPresent(builder::specification);
            servicePressure.ifPresent(builder::servicePressure);
            testPressure.ifPresent(builder::testPressure);
            flammableMark.ifPresent(builder::flammableMark);
            retestDue.ifPresent(builder::retestDue);
            refillable.ifPresent(builder::refillable);
            massRating.ifPresent(builder::massRating);
            return builder.build();
        }
    }
}
