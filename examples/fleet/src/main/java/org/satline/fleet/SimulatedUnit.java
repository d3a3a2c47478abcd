package org.satline.fleet;

import java.util.Arrays;

/**
 * One unit of the simulated fleet with its truth: charge and leak, fault, drift of its sensors, offsets as installed,
 * weather. Everything depends on plan and number alone. Sizes of offsets, drifts and disturbances are our choice, of
 * the order of installed sensors of the trade; no source. Immutable, thread-safe.
 */
public final class SimulatedUnit {
    private static final int DAY = 86_400;
    private static final double YEAR_S = 365.0 * DAY;
    private static final int HALF_YEAR_D = 182;
    /** Below this outdoor temperature nothing cools, degC. */
    private static final double COOLS_FROM_C = 18;
    /** Salts of what is drawn once for a unit. */
    private static final int LEAKS = 1,
            RATE = 2,
            BEGIN = 3,
            CHARGE = 4,
            OFFSETS = 10,
            DRIFTS = 20,
            SLOPE = 5,
            FAULTS = 6;
    /** Salts of what is drawn by day, by window, by reading. */
    private static final int WEATHER = 30, ROOM = 31, UNEXPLAINED = 32, STARTING = 33, NOISE = 40;

    private final FleetPlan plan;
    private final long unit;
    private final UnitModel model;
    private final ResponseTable responses;
    private final double firstCharge;
    private final double leakPerYear;
    private final int leakDay;
    private final double[] offsetsK = new double[4];
    private final double[] driftsKPerYear = new double[4];
    private final double weatherSlope;

    /**
     * Makes a unit.
     *
     * @param plan of the fleet
     * @param unit its number
     */
    public SimulatedUnit(FleetPlan plan, long unit) {
        this.plan = plan;
        this.unit = unit;
        int kind = (int) Math.floorMod(unit, 10L);
        model = kind < 5 ? UnitModel.HOME : kind < 8 ? UnitModel.ROOF : UnitModel.SHOP;
        responses = ResponseTable.of(model);
        firstCharge = 1 + 0.012 * once(CHARGE);
        leakPerYear =
                uniform(LEAKS) < plan.leakShare() ? Draw.between(plan.leastLeak(), plan.mostLeak(), uniform(RATE)) : 0;
        leakDay = plan.firstDay() + (int) Draw.between(plan.leakFrom(), plan.leakTo() + 1.0, uniform(BEGIN));
        for (int i = 0; i < 4; i++) {
            offsetsK[i] = 0.2 * once(OFFSETS + i);
            driftsKPerYear[i] = 0.2 * once(DRIFTS + i);
        }
        weatherSlope = 0.02 * once(SLOPE);
    }

    /**
     * Returns the model.
     *
     * @return the model
     */
    public UnitModel model() {
        return model;
    }

    /**
     * Returns the truth about the leak.
     *
     * @return share of the rated charge a year; 0 for none
     */
    public double leakPerYear() {
        return leakPerYear;
    }

    /**
     * Returns when the leak begins.
     *
     * @return days since 1970; without meaning where nothing leaks
     */
    public int leakDay() {
        return leakDay;
    }

    /**
     * Returns the truth about the charge.
     *
     * @param second s since 1970
     * @return share of the rated charge
     */
    public double charge(long second) {
        double years = (second - (long) leakDay * DAY) / YEAR_S;
        return Math.max(0.5, firstCharge - leakPerYear * Math.max(0, years));
    }

    /**
     * Returns the truth about other faults.
     *
     * @param day days since 1970
     * @return the fault of this day
     */
    public UnitFault fault(long day) {
        long since = day - plan.firstDay();
        long half = Math.floorDiv(since, (long) HALF_YEAR_D);
        if (Draw.uniform(plan.seed(), unit, half, FAULTS) >= plan.faultShare()) {
            return UnitFault.NONE;
        }
        long bits = Draw.bits(plan.seed(), unit, half, FAULTS + 1);
        int from = 10 + (int) (bits >>> 8 & 127);
        int length = 10 + (int) (bits >>> 20 & 31);
        long at = Math.floorMod(since, (long) HALF_YEAR_D);
        return at >= from && at < from + length ? UnitFault.drawn((int) (bits >>> 40 & 0xFFFF)) : UnitFault.NONE;
    }

    /**
     * Tells whether the unit cools.
     *
     * @param second s since 1970
     * @return false in cool weather
     */
    public boolean runs(long second) {
        return outdoorC(second) > COOLS_FROM_C;
    }

    /**
     * Reads all sensors.
     *
     * @param second s since 1970
     * @param noise how much of the noise of single readings; 1 for one reading, less for the mean of several
     * @return values in the order of {@link Channel}
     */
    public float[] values(long second, double noise) {
        double[] answers = new double[ResponseTable.ANSWERS];
        long day = Math.floorDiv(second, (long) DAY);
        double outdoor = outdoorC(second);
        double wetBulb = 18.5 + 1.2 * Draw.normal(plan.seed(), unit, day, ROOM);
        responses.sound(charge(second), outdoor, wetBulb, answers);
        UnitFault fault = fault(day);
        if (fault != UnitFault.NONE) {
            responses.add(fault, severity(day), outdoor, answers);
        }
        float[] values = new float[Channel.COUNT];
        if (!runs(second)) {
            double standing = 0.5 * (answers[0] + answers[1]);
            answers[0] = standing;
            answers[1] = standing;
            Arrays.fill(answers, 2, ResponseTable.ANSWERS, outdoor);
        }
        disturb(answers, second, day, outdoor);
        double[] exact = {
            answers[0],
            answers[2],
            answers[1],
            answers[3],
            answers[4],
            ResponseTable.RETURN_C,
            wetBulb,
            answers[5],
            outdoor
        };
        for (int i = 0; i < exact.length; i++) {
            double size = i == 0 || i == 2 ? 0.001 * exact[i] : i == 1 || i == 3 ? 0.15 : 0.25;
            values[i] = (float) (exact[i] + noise * size * Draw.normal(plan.seed(), unit, second, NOISE + i));
        }
        return values;
    }

    /**
     * Offsets, drifts, what weather does to this unit beyond its model, and a start of the compressor within the
     * window.
     */
    private void disturb(double[] answers, long second, long day, double outdoor) {
        double years = (second - (long) plan.firstDay() * DAY) / YEAR_S;
        double[] error = new double[4];
        for (int i = 0; i < 4; i++) {
            error[i] = offsetsK[i] + driftsKPerYear[i] * years;
        }
        answers[0] *= 1 + 0.005 * error[0];
        answers[1] *= 1 + 0.005 * error[1];
        answers[2] += error[2];
        double unexplained = 0.3 * Draw.normal(plan.seed(), unit, day, UNEXPLAINED)
                + 0.15 * Math.sin(2 * Math.PI * (years + 0.1 * unit));
        answers[3] += error[3] + weatherSlope * (outdoor - 30) + unexplained;
        long window = Math.floorDiv(second, 60L * WindowReadings.MINUTES);
        if (Draw.uniform(plan.seed(), unit, window, STARTING) < 0.2) {
            double into = Math.floorMod(second, 60L * WindowReadings.MINUTES);
            answers[2] += 8 * Math.exp(-into / 240);
        }
    }

    private double severity(long day) {
        long half = Math.floorDiv(day - plan.firstDay(), (long) HALF_YEAR_D);
        return Draw.between(0.4, 1, Draw.uniform(plan.seed(), unit, half, FAULTS + 2));
    }

    private double outdoorC(long second) {
        long day = Math.floorDiv(second, (long) DAY);
        double hour = Math.floorMod(second, (long) DAY) / 3600.0;
        long region = Math.floorMod(unit, 4L);
        return 24
                + region
                + 7 * Math.sin(2 * Math.PI * (day - 20_563) / 365.0)
                + 4.5 * Math.sin(2 * Math.PI * (hour - 9) / 24)
                + 2 * Draw.normal(plan.seed(), region, day, WEATHER);
    }

    private double once(int salt) {
        return Draw.normal(plan.seed(), unit, -1, salt);
    }

    private double uniform(int salt) {
        return Draw.uniform(plan.seed(), unit, -1, salt);
    }
}
