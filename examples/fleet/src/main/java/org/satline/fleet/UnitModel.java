package org.satline.fleet;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.satline.charge.margin.MeteringDevice;
import org.satline.quantity.Power;
import org.satline.refrigerant.Catalogue;
import org.satline.refrigerant.Refrigerant;
import org.satline.simulation.SystemDesign;

/** Models of the maker of this invented fleet. A maker knows its models; a unit sends the name of its own. */
public enum UnitModel {
    /** Split system of a home. */
    HOME("R-32", MeteringDevice.EXPANSION_VALVE, 7),
    /** Rooftop unit with enough refrigerant for the rules on leak rates. */
    ROOF("R-410A", MeteringDevice.EXPANSION_VALVE, 80),
    /** Small unit with a fixed orifice. */
    SHOP("R-410A", MeteringDevice.FIXED_ORIFICE, 10);

    private static final Map<String, UnitModel> BY_LABEL =
            Stream.of(values()).collect(Collectors.toUnmodifiableMap(UnitModel::label, Function.identity()));

    private final String refrigerant;
    private final MeteringDevice metering;
    private final int kilowatts;

    UnitModel(String refrigerant, MeteringDevice metering, int kilowatts) {
        this.refrigerant = refrigerant;
        this.metering = metering;
        this.kilowatts = kilowatts;
    }

    /**
     * Returns the name in files.
     *
     * @return the name in lower case
     */
    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Finds a model by its name in files.
     *
     * @param label the name
     * @return the model, if there is one
     */
    public static Optional<UnitModel> ofLabel(String label) {
        return Optional.ofNullable(BY_LABEL.get(label));
    }

    /**
     * Returns the metering device.
     *
     * @return expansion valve or fixed orifice
     */
    public MeteringDevice metering() {
        return metering;
    }

    /**
     * Returns the refrigerant.
     *
     * @return from the catalogue
     */
    public Refrigerant refrigerant() {
        return Catalogue.standard().find(refrigerant);
    }

    /**
     * Returns what the model is built for.
     *
     * @return a typical design of its refrigerant, metering device and size
     */
    public SystemDesign design() {
        return SystemDesign.typical(refrigerant(), metering, Power.ofWatts(1000.0 * kilowatts));
    }
}
