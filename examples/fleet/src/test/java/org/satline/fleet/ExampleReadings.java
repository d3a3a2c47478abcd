package org.satline.fleet;

/** Readings of a unit at its rated charge in common weather, without noise. */
final class ExampleReadings {
    private ExampleReadings() {}

    static float[] steady(UnitModel model) {
        double[] answers = new double[ResponseTable.ANSWERS];
        ResponseTable.of(model).sound(1, 30, 18.5, answers);
        return new float[] {
            (float) answers[0],
            (float) answers[2],
            (float) answers[1],
            (float) answers[3],
            (float) answers[4],
            (float) ResponseTable.RETURN_C,
            18.5f,
            (float) answers[5],
            30
        };
    }
}
