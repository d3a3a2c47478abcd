package org.satline.program.pictures;

import java.util.Objects;
import java.util.Optional;
import org.satline.filling.CylinderStamps;
import org.satline.filling.FillAssessment;
import org.satline.quantity.Atmosphere;
import org.satline.quantity.Mass;
import org.satline.quantity.Pressure;
import org.satline.quantity.Temperature;
import org.satline.quantity.Volume;
import org.satline.visit.VisitReport;

/**
 * A cylinder with its contents, as {@link CylinderPicture} draws it. Immutable.
 *
 * @param volume inner volume of the cylinder
 * @param contents mass inside
 * @param fillLimit the most that it may hold
 * @param servicePressure marked service pressure, absolute
 * @param testPressure marked test pressure, absolute
 * @param now temperature of the cylinder now
 */
public record FilledCylinder(
        Volume volume,
        Mass contents,
        Optional<Mass> fillLimit,
        Optional<Pressure> servicePressure,
        Optional<Pressure> testPressure,
        Optional<Temperature> now) {
    /**
     * Checks that no part is missing.
     *
     * @param volume inner volume of the cylinder
     * @param contents mass inside
     * @param fillLimit the most that it may hold
     * @param servicePressure marked service pressure, absolute
     * @param testPressure marked test pressure, absolute
     * @param now temperature of the cylinder now
     */
    public FilledCylinder {
        Objects.requireNonNull(volume, "volume");
        Objects.requireNonNull(contents, "contents");
        Objects.requireNonNull(fillLimit, "fillLimit");
        Objects.requireNonNull(servicePressure, "servicePressure");
        Objects.requireNonNull(testPressure, "testPressure");
        Objects.requireNonNull(now, "now");
    }

    /**
     * Takes the volume from the stamped water capacity.
     *
     * @param waterCapacity the stamp
     * @param contents mass inside
     * @param servicePressure marked service pressure, absolute
     * @return the cylinder, its fill limit, test pressure and temperature now unknown
     */
    public static FilledCylinder stamped(Mass waterCapacity, Mass contents, Optional<Pressure> servicePressure) {
        return new FilledCylinder(
                Volume.ofCubicMetres(waterCapacity.kilograms() / CylinderStamps.WATER_AT_60_F.kilogramsPerCubicMetre()),
                contents,
                Optional.empty(),
                servicePressure,
                Optional.empty(),
                Optional.empty());
    }

    /**
     * Returns the same cylinder with more known of it.
     *
     * @param limit the most that it may hold
     * @param tested marked test pressure, absolute
     * @return the cylinder
     */
    public FilledCylinder with(Optional<Mass> limit, Optional<Pressure> tested) {
        return new FilledCylinder(volume, contents, limit, servicePressure, tested, now);
    }

    /**
     * Takes the cylinder of a visit.
     *
     * @param visit what was found about the visit
     * @return the cylinder; nothing if there is none, or it is empty or not weighed
     */
    static Optional<FilledCylinder> of(VisitReport visit) {
        return visit.connected()
                .flatMap(checked -> checked.vessel().map(vessel -> {
                    CylinderStamps stamps = checked.cylinder().stamps();
                    Atmosphere air = visit.visit().site().atmosphere();
                    return new FilledCylinder(
                            stamps.volume(),
                            vessel.contents(),
                            checked.fill() instanceof FillAssessment.Allowed allowed
                                    ? Optional.of(allowed.limit())
                                    : Optional.empty(),
                            stamps.servicePressure().map(gauge -> Pressure.ofGauge(gauge, air)),
                            stamps.testPressure().map(gauge -> Pressure.ofGauge(gauge, air)),
                            Optional.of(checked.cylinder().temperature().value()));
                }));
    }
}
