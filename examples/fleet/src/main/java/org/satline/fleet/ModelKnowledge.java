package org.satline.fleet;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.satline.charge.ChargeScreen;
import org.satline.charge.belief.ChargeEstimate.Constants;
import org.satline.quantity.Mass;
import org.satline.quantity.Temperature;
import org.satline.refrigerant.GlobalWarmingPotential.Report;
import org.satline.saturation.SaturationCurve;
import org.satline.saturation.SaturationCurves;
import org.satline.simulation.SimulatedSystem;

/**
 * What the maker of a model knows of it: its saturation curve, what it shows at the rated charge in any weather, how it
 * answers to charge, its rated charge. Immutable, thread-safe; prepared once a process.
 *
 * @param curve saturation curve of its refrigerant
 * @param screen screen of charges on this curve
 * @param responses steady states
 * @param constants of the charge estimate, fitted on the steady states between 93 % and the rated charge
 * @param ratedCharge rated charge
 * @param gwp global warming potential of the fourth assessment report, which the rules on leaks count with
 */
public record ModelKnowledge(
        SaturationCurve curve,
        ChargeScreen screen,
        ResponseTable responses,
        Constants constants,
        Mass ratedCharge,
        double gwp) {
    private static final double ZERO_CELSIUS_K = Temperature.ofCelsius(0).kelvins();

    /** k_sh / k_sc, typical, as in the library. */
    private static final double RATIO = 0.4;

    private static final double SHORT = 0.93;

    private static final class Holder {
        static final Map<UnitModel, ModelKnowledge> ALL = new EnumMap<>(UnitModel.class);

        static {
            for (UnitModel model : UnitModel.values()) {
                ALL.put(model, prepared(model));
            }
        }
    }

    /**
     * Returns what is known of a model.
     *
     * @param model the model
     * @return the knowledge
     */
    public static ModelKnowledge of(UnitModel model) {
        return Objects.requireNonNull(Holder.ALL.get(model));
    }

    /**
     * What the model shows at some charge in some weather.
     *
     * @param superheatK superheat, K
     * @param subcoolingK subcooling, K
     * @param evaporatingK dew point in the evaporator, K
     * @param condensingK bubble point in the condenser, K
     * @param dischargeC discharge line, degC
     */
    public record Expected(
            double superheatK, double subcoolingK, double evaporatingK, double condensingK, double dischargeC) {}

    /**
     * Returns what a sound unit shows at the rated charge.
     *
     * @param outdoorC outdoor air, degC
     * @param wetBulbC wet bulb of the return air, degC
     * @return the expected values
     */
    public Expected expected(double outdoorC, double wetBulbC) {
        return at(curve, responses, 1, outdoorC, wetBulbC);
    }

    private static Expected at(
            SaturationCurve curve, ResponseTable responses, double charge, double outdoorC, double wetBulbC) {
        double[] answers = new double[ResponseTable.ANSWERS];
        responses.sound(charge, outdoorC, wetBulbC, answers);
        double dewK = curve.dewTemperatureK(answers[0] * 1000);
        double bubbleK = curve.bubbleTemperatureK(answers[1] * 1000);
        return new Expected(
                answers[2] + ZERO_CELSIUS_K - dewK, bubbleK - answers[3] - ZERO_CELSIUS_K, dewK, bubbleK, answers[4]);
    }

    private static ModelKnowledge prepared(UnitModel model) {
        SaturationCurve curve = SaturationCurves.of(model.refrigerant());
        ResponseTable responses = ResponseTable.of(model);
        Expected rated = at(curve, responses, 1, 30, 18.5);
        Expected less = at(curve, responses, SHORT, 30, 18.5);
        double kelvins = (rated.subcoolingK() - less.subcoolingK()) - RATIO * (rated.superheatK() - less.superheatK());
        return new ModelKnowledge(
                curve,
                ChargeScreen.of(curve),
                responses,
                new Constants(RATIO, kelvins / (1 - SHORT), true),
                SimulatedSystem.of(model.design()).ratedCharge(),
                model.refrigerant().gwp(Report.AR4).orElseThrow().value());
    }
}
