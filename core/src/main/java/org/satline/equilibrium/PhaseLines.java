package org.satline.equilibrium;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.equilibrium.BoundaryTrace.Node;
import org.satline.quantity.OutOfValidityException;

/**
 * The phase boundary of a refrigerant as a whole: its critical point, its warmest point and its highest pressure,
 * slopes of the bubble and dew line, latent heat. Got from {@link FluidModel#lines()}. Immutable and thread-safe; SI
 * units.
 */
public final class PhaseLines {
    private final FluidModel model;
    private final Envelope envelope;

    PhaseLines(FluidModel model, Envelope envelope) {
        this.model = model;
        this.envelope = envelope;
    }

    /**
     * Returns the critical point, solved from the two criticality conditions (Heidemann and Khalil 1980) to better than
     * 0.1 mK; of, whose equations are singular there, the published one.
     *
     * @return the critical point; empty where the phase boundary could not be followed to it
     */
    public Optional<CriticalPoint> criticalPoint() {
        return envelope.critical();
    }

    /**
     * Returns the warmest point of the two-phase region (cricondentherm).
     *
     * @return the point; the critical point where nothing is warmer
     */
    public BoundaryEnd warmestPoint() {
        return envelope.warmest();
    }

    /**
     * Returns the point of the highest pressure of the two-phase region (cricondenbar).
     *
     * @return the point; the critical point where no pressure is higher
     */
    public BoundaryEnd highestPressure() {
        return envelope.highest();
    }

    /**
     * Returns the slope of the bubble line, from the equations of equilibrium, not from differences.
     *
     * @param temperatureK T, K, within the bubble line
     * @return dp/dT, Pa/K
     * @throws OutOfValidityException outside that range
     */
    public double bubbleSlope(double temperatureK) {
        return slope(envelope.bubble.atTemperature(checkTemperature(envelope.bubble, temperatureK)));
    }

    /**
     * Returns the slope of the dew line, from the equations of equilibrium, not from differences.
     *
     * @param temperatureK T, K, within the dew line
     * @return dp/dT, Pa/K
     * @throws OutOfValidityException outside that range
     */
    public double dewSlope(double temperatureK) {
        return slope(envelope.dew.atTemperature(checkTemperature(envelope.dew, temperatureK)));
    }

    private static double slope(IncipientPhase point) {
        Node node = BoundaryTrace.node(point, point.logDensityRatio());
        return point.pressure() / point.temperature() * node.dLogPressure() / node.dLogTemperature();
    }

    /**
     * Returns the latent heat: the enthalpy that evaporates bubble-point liquid to dew-point vapour at one pressure. A
     * blend warms by its glide meanwhile.
     *
     * @param pressurePa p, Pa, within both lines
     * @return J/kg
     * @throws OutOfValidityException outside that range
     */
    public double latentHeat(double pressurePa) {
        return model.dewAtPressure(pressurePa).saturated().specificEnthalpy()
                - model.bubbleAtPressure(pressurePa).saturated().specificEnthalpy();
    }

    /**
     * Returns the pressure at which a pure substance freezes: states above it are refused as solid.
     *
     * @param temperatureK T, K
     * @return Pa; empty outside the range of the published line and where {@link #meltingLineSource()} is empty
     */
    public OptionalDouble meltingPressurePa(double temperatureK) {
        return MeltingLine.of(envelope.composition)
                .flatMap(line -> line.pressure(temperatureK))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /**
     * Returns where the melting line comes from that states are held against.
     *
     * @return citation, with "from memory" where its figures were not checked against the paper; empty for blends and
     *     for substances without a line on record: colder than the triple point they are refused, but a compressed
     *     liquid near it may be solid and is not told apart
     */
    public Optional<String> meltingLineSource() {
        return MeltingLine.of(envelope.composition).map(MeltingLine::source);
    }

    double checkTemperature(PhaseBoundary line, double temperatureK) {
        if (!(temperatureK >= line.minTemperature() && temperatureK <= line.maxTemperature())) {
            throw OutOfValidityException.of(
                    "temperature",
                    temperatureK,
                    "K",
                    line.minTemperature(),
                    line.maxTemperature(),
                    whose(line),
                    "ask for a single-phase state outside it");
        }
        return temperatureK;
    }

    double checkPressure(PhaseBoundary line, double pressurePa) {
        if (!(pressurePa >= line.minPressure() && pressurePa <= line.maxPressure())) {
            throw OutOfValidityException.of(
                    "pressure",
                    pressurePa,
                    "Pa",
                    line.minPressure(),
                    line.maxPressure(),
                    whose(line),
                    "ask for a single-phase state outside it");
        }
        return pressurePa;
    }

    private String whose(PhaseBoundary line) {
        String name = envelope.bubble == envelope.dew ? "saturation" : line.feedIsLiquid() ? "bubble" : "dew";
        String fault = String.format(
                Locale.ROOT,
                "the %s line of %s, which ends at its %s, %.4f K and %.0f Pa%s",
                name,
                model.refrigerant().designation(),
                line.end().kind().words(),
                line.end().temperatureK(),
                line.end().pressurePa(),
                line.beginsAtSplit()
                        ? String.format(
                                Locale.ROOT,
                                ", and begins at %.2f K: colder its liquid would split in two",
                                line.minTemperature())
                        : "");
        return fault;
    }
}
