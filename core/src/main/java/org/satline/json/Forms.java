package org.satline.json;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.satline.filling.CylinderSpecification;
import org.satline.filling.CylinderStamps;
import org.satline.filling.Stamp;
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

    /**
     * A component of a blend.
     *
     * @param substance designation of the substance
     * @param massFraction mass fraction, above 0, at most 1
     * @param moleFraction mole fraction, above 0, at most 1
     */
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

    /**
     * A blend of the caller's own.
     *
     * @param name what it is called
     * @param components what it consists of
     */
    record OwnBlend(String name, List<Part> components) {
        static OwnBlend of(Refrigerant refrigerant) {
            return new OwnBlend(refrigerant.designation(), Part.of(refrigerant.composition()));
        }

        Refrigerant blend() {
            return Refrigerant.blend(name, Part.composition(components));
        }
    }

    /**
     * A quantity of any kind, with the name of the kind.
     *
     * @param kind type of the quantity
     * @param value its size in the unit
     * @param unit its SI unit
     */
    record Amount(String kind, double value, String unit) {
        static Amount of(Quantity<?> quantity) {
            return new Amount(quantity.getClass().getSimpleName(), quantity.si(), quantity.siUnit());
        }
    }

    /**
     * An atmosphere.
     *
     * @param pressure absolute pressure of the air
     * @param description where that comes from
     */
    record Air(Pressure pressure, String description) {
        static Air of(Atmosphere atmosphere) {
            return new Air(atmosphere.pressure(), atmosphere.description());
        }

        Atmosphere atmosphere() {
            return Atmosphere.described(pressure, description);
        }
    }

    /**
     * What one origin adds to an uncertainty.
     *
     * @param origin what the error belongs to
     * @param contribution sensitivity times standard uncertainty, with the sign of the sensitivity, in the unit of the value
     */
    record Contribution(String origin, double contribution) {
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
            if (contribution == 0) { // an origin whose parts cancelled: kept, as it was
                UncertaintyBudget one = UncertaintyBudget.of(origin, 1);
                return one.minus(one);
            }
            UncertaintyBudget size = UncertaintyBudget.of(origin, Math.abs(contribution));
            return contribution < 0 ? size.scaled(-1) : size;
        }
    }

    /**
     * What was read at one place of a system; one of the values, by the kind of the place.
     *
     * @param place where it was read
     * @param pressure absolute pressure, at a place of that kind
     * @param temperature temperature, at a place of that kind
     * @param drop how much lower the port stands than the coil, at a place of that kind
     */
    record PlaceReading(
            org.satline.measurement.Place place,
            Optional<Reading<Pressure>> pressure,
            Optional<Reading<Temperature>> temperature,
            Optional<Reading<PressureDifference>> drop) {
        static List<PlaceReading> of(SystemReadings readings) {
            return readings.all().keySet().stream()
                    .map(place -> of(place, readings))
                    .toList();
        }

        private static PlaceReading of(org.satline.measurement.Place place, SystemReadings readings) {
            return switch (place.kind()) {
                case PRESSURE -> new PlaceReading(place, readings.pressure(place), Optional.empty(), Optional.empty());
                case PIPE, AIR ->
                    new PlaceReading(place, Optional.empty(), readings.temperature(place), Optional.empty());
                case DROP ->
                    new PlaceReading(
                            place,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(Reading.exact(readings.drop(place))));
            };
        }

        static SystemReadings readings(List<PlaceReading> all) {
            SystemReadings.Builder builder = SystemReadings.builder();
            for (PlaceReading each : all) {
                Optional<? extends Reading<?>> read = each.pressure.isPresent()
                        ? each.pressure
                        : each.temperature.isPresent() ? each.temperature : each.drop;
                builder.put(
                        each.place,
                        read.orElseThrow(
                                () -> new IllegalArgumentException(each.place.field() + " has no reading; give one")));
            }
            return builder.build();
        }
    }

    /**
     * One stamp of a cylinder; one of the values, by the type of the stamp.
     *
     * @param stamp which stamp
     * @param mass its value, where it is a mass
     * @param pressure its value, where it is a pressure
     * @param mark its value, where it is a specification
     * @param day its value, where it is a day
     * @param flag its value, where it is yes or no
     */
    record StampValue(
            Stamp stamp,
            Optional<Mass> mass,
            Optional<GaugePressure> pressure,
            Optional<CylinderSpecification> mark,
            Optional<LocalDate> day,
            Optional<Boolean> flag) {
        static List<StampValue> of(CylinderStamps stamps) {
            return stamps.values().entrySet().stream()
                    .map(each -> new StampValue(
                            each.getKey(),
                            only(each.getValue(), Mass.class),
                            only(each.getValue(), GaugePressure.class),
                            only(each.getValue(), CylinderSpecification.class),
                            only(each.getValue(), LocalDate.class),
                            only(each.getValue(), Boolean.class)))
                    .toList();
        }

        private static <T> Optional<T> only(Object value, Class<T> type) {
            return Optional.of(value).filter(type::isInstance).map(type::cast);
        }

        static CylinderStamps stamps(List<StampValue> all) {
            Map<Stamp, Object> values = new EnumMap<>(Stamp.class);
            for (StampValue each : all) {
                Object value = Stream.of(each.mass, each.pressure, each.mark, each.day, each.flag)
                        .flatMap(Optional::stream)
                        .findFirst()
                        .orElseThrow(
                                () -> new IllegalArgumentException(each.stamp.field() + " has no value; give one"));
                values.put(each.stamp, value);
            }
            return new CylinderStamps(values);
        }
    }
}
