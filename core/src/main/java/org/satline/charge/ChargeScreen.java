package org.satline.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.satline.charge.margin.DecisionRule;
import org.satline.refrigerant.DataVersion;
import org.satline.saturation.SaturationLines;

/**
 * Screens many rows of one refrigerant: superheat, subcooling, deviation from the target, probabilities and level of each, without a text
 * and at the speed of its curve. Immutable, thread-safe. Keep it: making one costs more than asking it.
 *
 * <pre>{@code
 * ChargeScreen screen = ChargeScreen.of(SaturationCurves.of(refrigerant));
 * ChargeRow row = ChargeRow.of(refrigerant, MeteringDevice.EXPANSION_VALVE)
 *         .suction(915_000, 285.2).liquid(2_618_000, 306.4)
 *         .read(Place.OUTDOOR_AIR, 302.6).target(5.6).build();
 * if (screen.screen(row) instanceof ScreenedCharge.Level found) {
 *     found.level(); // Optional[LOW], Optional[ON_TARGET], Optional[HIGH], or empty
 * }
 * }</pre>
 *
 * <p>It is a sieve and no verdict. Superheat, subcooling, deviation and probabilities are those of {@link ChargeJudge}, and readings that
 * cannot be, contradict each other or are taken in the cold give no level. No fault is weighed, nor airflow, nor the condensing
 * temperature, nor how long the system ran. What holds between the two, with the same accepted risks:
 *
 * <ul>
 *   <li>where both give a level it is the same one;
 *   <li>where the screen gives a level the judge may give none: undecided, or another fault first;
 *   <li>the judge, who weighs all readings, may give a level where the screen leaves it open, where an expansion valve's suction line is
 *       not surely dry ({@link ScreenReason#CONDITION_NOT_MET}), and where a contradiction lies within the doubt of the readings ({@link
 *       ScreenReason#CONTRADICTED}).
 * </ul>
 *
 * <p>Nobody adds or takes out refrigerant by it: the judge judges the rows that stand out ({@link ChargeRow#chargeCase}), and a licensed
 * person decides.
 */
public final class ChargeScreen {
    private final SaturationLines curve;
    private final DecisionRule rule;
    private final ScreenLimits limits;

    private ChargeScreen(SaturationLines curve, DecisionRule rule, ScreenLimits limits) {
        this.curve = curve;
        this.rule = rule;
        this.limits = limits;
    }

    /**
     * Returns a screen with risks of 5 %.
     *
     * @param curve saturation lines of the refrigerant of the rows; a table is fastest, and a printed card will do
     * @return the screen
     */
    public static ChargeScreen of(SaturationLines curve) {
        return new ChargeScreen(Objects.requireNonNull(curve, "curve"), DecisionRule.usual(), ScreenLimits.published());
    }

    /**
     * The same screen with other accepted risks.
     *
     * @param producers largest accepted probability of touching a sound charge; in (0, 0.5)
     * @param consumers largest accepted probability of leaving a wrong charge; in (0, 0.5)
     * @return the changed screen
     * @throws IllegalArgumentException if a risk is outside its interval
     */
    public ChargeScreen accepting(double producers, double consumers) {
        return new ChargeScreen(curve, new DecisionRule(producers, consumers), limits);
    }

    /**
     * Returns the curve.
     *
     * @return saturation lines of the rows
     */
    public SaturationLines curve() {
        return curve;
    }

    /**
     * Returns which figures its answers rest on. It stands here and not in each row: keep it once with the rows.
     *
     * @return version of the library's figures; those of the caller's own curve are named by {@link #curve()}
     * @throws org.satline.resource.ResourceFormatException if the manifest of the jar is missing or damaged
     */
    public DataVersion dataVersion() {
        return DataVersion.current();
    }

    /**
     * Screens one row.
     *
     * @param row readings, target and conditions
     * @return its numbers with a level, or why there is none
     */
    public ScreenedCharge screen(ChargeRow row) {
        Objects.requireNonNull(row, "row");
        return new RowScreen(curve, rule, limits, row).screened();
    }

    /**
     * Screens many rows; one that gets no level does not stop the others.
     *
     * @param rows the rows
     * @return an answer for each, in their order
     */
    public List<ScreenedCharge> screen(List<ChargeRow> rows) {
        List<ScreenedCharge> answers = new ArrayList<>(rows.size());
        for (ChargeRow row : rows) {
            answers.add(screen(row));
        }
        return List.copyOf(answers);
    }

    @Override
    public String toString() {
        return "charges of " + curve.refrigerant().designation();
    }
}
