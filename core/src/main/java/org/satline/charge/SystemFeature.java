package org.satline.charge;

import java.util.Objects;
import java.util.Optional;
import org.satline.charge.margin.MeteringDevice;
import org.satline.explanation.Coded;
import org.satline.quantity.Parts;
import org.satline.quantity.TemperatureDifference;

/**
 * What a system has that decides by what its charge may be judged. Read from {@code judging.csv}, where each answer has its basis. Where
 * nobody publishes a criterion the answer is to weigh the charge in, or the maker's method, and never a judgement.
 */
public enum SystemFeature implements Coded {
    /** A liquid receiver behind the condenser. */
    RECEIVER,
    /** A valve or fan control that holds the condensing pressure up. */
    HEAD_PRESSURE_CONTROL,
    /** An accumulator ahead of the compressor. */
    SUCTION_ACCUMULATOR,
    /** A compressor whose speed or stage follows the load. */
    VARIABLE_SPEED_COMPRESSOR,
    /** An expansion valve that a controller drives. */
    ELECTRONIC_VALVE,
    /** More than one indoor unit on one outdoor unit. */
    SEVERAL_INDOOR_UNITS,
    /** Lines longer than the charge of the plate covers. */
    LONG_LINES,
    /** A condenser of flat multiport tubes. */
    MICROCHANNEL_CONDENSER,
    /** Rejects heat above the critical point, as carbon dioxide does. */
    TRANSCRITICAL,
    /** Cools water or brine. */
    CHILLER,
    /** A walk-in room below freezing. */
    LOW_TEMPERATURE_ROOM;

    /** By what a charge is judged, the method that bars most last. */
    public enum Method implements Coded {
        /** Superheat or subcooling as usual, with something to heed. */
        WITH_CARE,
        /** Superheat or subcooling while the maker's test mode holds the system, against the maker's target. */
        MAKERS_TEST_MODE,
        /** A clear sight glass under the maker's conditions. */
        SIGHT_GLASS,
        /** The maker's own method. */
        MAKERS_METHOD,
        /** Recover, evacuate and weigh in. */
        WEIGH_IN
    }

    /**
     * By what the charge is judged.
     *
     * @param method the method
     * @param basis why
     * @param source where it is published, or that it is common practice
     */
    public record Judged(Method method, String basis, String source) {
        /** {@inheritDoc} */
        public Judged {
            Objects.requireNonNull(method, "method");
            Parts.required("basis source", basis, source);
        }
    }

    /**
     * Superheat at the outlet of the evaporator that is usual for an application. It tells the setting of the valve, never the charge.
     *
     * @param low least
     * @param high most, not below least
     * @param source where it is published, or that it is common practice
     */
    public record UsualSuperheat(TemperatureDifference low, TemperatureDifference high, String source) {
        /** {@inheritDoc} */
        public UsualSuperheat {
            Parts.required("low high source", low, high, source);
            if (!(high.kelvins() >= low.kelvins())) {
                throw new IllegalArgumentException("most " + high + " is below least " + low);
            }
        }
    }

    /**
     * By what the charge of a system with it is judged.
     *
     * @param metering what meters its refrigerant
     * @return the method with its basis
     */
    public Judged judged(MeteringDevice metering) {
        return JudgingTable.of(this, metering);
    }

    /**
     * The superheat that is usual for it.
     *
     * @return the range; empty where it is no application of its own
     */
    public Optional<UsualSuperheat> usualSuperheat() {
        return JudgingTable.usualSuperheat(this);
    }
}
