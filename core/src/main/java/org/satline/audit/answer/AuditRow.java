package org.satline.audit.answer;

import java.util.Optional;
import java.util.OptionalDouble;
import org.satline.quantity.Length;
import org.satline.quantity.Parts;

/**
 * One answer of another calculator, as it stands. Nothing is checked here: a row that cannot be compared is an outcome with a reason.
 * Immutable.
 *
 * @param id whatever tells the row from others; may be empty
 * @param refrigerant name of the refrigerant
 * @param quantity name of the quantity, as {@link AuditedQuantity#label()}
 * @param temperatureK the temperature that was asked, K; empty where none was
 * @param pressurePa the absolute pressure that was asked, Pa; empty where none was
 * @param answer the answer as printed: a decimal number with all its digits, since they say how it was rounded
 * @param unit unit of the answer, in any spelling that {@code org.satline.quantity} reads; gauge units count from the atmosphere at the
 *     altitude
 * @param altitude altitude of the place; empty for sea level
 * @param tolerance what the answer may differ, in its unit; empty for the stated uncertainty of our value and the rounding of the answer
 */
public record AuditRow(
        String id,
        String refrigerant,
        String quantity,
        OptionalDouble temperatureK,
        OptionalDouble pressurePa,
        String answer,
        String unit,
        Optional<Length> altitude,
        OptionalDouble tolerance) {
    /** {@inheritDoc} */
    public AuditRow {
        Parts.required("id refrigerant quantity temperatureK", id, refrigerant, quantity, temperatureK);
        Parts.required("pressurePa answer unit altitude tolerance", pressurePa, answer, unit, altitude, tolerance);
    }

    /**
     * Returns an answer to a question about a temperature, at sea level and without a tolerance of its own.
     *
     * @param id whatever tells the row from others
     * @param refrigerant name of the refrigerant
     * @param quantity the quantity
     * @param temperatureK the temperature, K
     * @param answer the answer as printed
     * @param unit its unit
     * @return the row
     */
    public static AuditRow atTemperature(
            String id, String refrigerant, AuditedQuantity quantity, double temperatureK, String answer, String unit) {
        Parts.required("quantity", quantity);
        return of(id, refrigerant, quantity, OptionalDouble.of(temperatureK), OptionalDouble.empty(), answer, unit);
    }

    /**
     * Returns an answer to a question about a pressure, at sea level and without a tolerance of its own.
     *
     * @param id whatever tells the row from others
     * @param refrigerant name of the refrigerant
     * @param quantity the quantity
     * @param pressurePa the absolute pressure, Pa
     * @param answer the answer as printed
     * @param unit its unit
     * @return the row
     */
    public static AuditRow atPressure(
            String id, String refrigerant, AuditedQuantity quantity, double pressurePa, String answer, String unit) {
        Parts.required("quantity", quantity);
        return of(id, refrigerant, quantity, OptionalDouble.empty(), OptionalDouble.of(pressurePa), answer, unit);
    }

    /**
     * Returns an answer to a question about a temperature and a pressure, at sea level and without a tolerance of its own.
     *
     * @param id whatever tells the row from others
     * @param refrigerant name of the refrigerant
     * @param quantity the quantity
     * @param temperatureK the temperature, K
     * @param pressurePa the absolute pressure, Pa
     * @param answer the answer as printed
     * @param unit its unit
     * @return the row
     */
    public static AuditRow atState(
            String id,
            String refrigerant,
            AuditedQuantity quantity,
            double temperatureK,
            double pressurePa,
            String answer,
            String unit) {
        Parts.required("quantity", quantity);
        return of(
                id,
                refrigerant,
                quantity,
                OptionalDouble.of(temperatureK),
                OptionalDouble.of(pressurePa),
                answer,
                unit);
    }

    private static AuditRow of(
            String id,
            String refrigerant,
            AuditedQuantity quantity,
            OptionalDouble temperatureK,
            OptionalDouble pressurePa,
            String answer,
            String unit) {
        return new AuditRow(
                id,
                refrigerant,
                quantity.label(),
                temperatureK,
                pressurePa,
                answer,
                unit,
                Optional.empty(),
                OptionalDouble.empty());
    }

    /**
     * Returns the same row at an altitude.
     *
     * @param place altitude of the place, within ISO 2533
     * @return the row
     */
    public AuditRow at(Length place) {
        return new AuditRow(
                id, refrigerant, quantity, temperatureK, pressurePa, answer, unit, Optional.of(place), tolerance);
    }

    /**
     * Returns the same row with a tolerance.
     *
     * @param width what the answer may differ, in its unit
     * @return the row
     */
    public AuditRow within(double width) {
        return new AuditRow(
                id, refrigerant, quantity, temperatureK, pressurePa, answer, unit, altitude, OptionalDouble.of(width));
    }
}
