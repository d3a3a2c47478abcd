package org.satline.transfer.transition;

import java.util.Arrays;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.VolumeContent;

/** How things stand in the numbers of {@link PlanParts}: a row of them. Changed only while it is made; then a key of the search. */
public final class PlanState {
    static final byte AIR = 0;
    static final byte NOTHING = 1;
    static final byte VAPOUR = 2;
    /** A part of it liquid, with room to expand. */
    static final byte PARTLY = 3;

    static final byte LIQUID = 4;

    /** At a loose joint at the pressure of the air, for one act. */
    static final byte EXPOSED = 1;
    /** Colder than its surroundings. */
    static final byte COLD = 2;
    /** Full of liquid and shut: the next act opens it. */
    static final byte SHUT_IN = 4;

    /** Whose refrigerant; the later in this order prevails where two meet. */
    static final int GAS_NONE = 0;

    static final int GAS_SOURCE = 1;
    static final int GAS_SYSTEM = 2;
    static final int GAS_RECOVERED = 3;
    static final int GAS_UNKNOWN = 4;

    /** Liquid went out. */
    public static final byte OUT_LIQUID = 1;
    /** Vapour went out. */
    public static final byte OUT_VAPOUR = 2;
    /** Liquid went in. */
    public static final byte IN_LIQUID = 4;
    /** Vapour went in. */
    public static final byte IN_VAPOUR = 8;

    /** Numbers for each volume or cylinder. */
    static final int OF_VOLUME = 4;

    final PlanParts parts;
    final byte[] row;
    /** Refrigerant lost so far, g; no part of the key. */
    double ventedGrams;

    private PlanState(PlanParts parts, byte[] row) {
        this.parts = parts;
        this.row = row;
    }

    static PlanState blank(PlanParts parts) {
        return new PlanState(parts, new byte[parts.rowLength]);
    }

    private static int code(VolumeContent content) {
        return switch (content) {
            case AIR -> 0;
            case NOTHING -> 1;
            case VAPOUR -> 2;
            case LIQUID -> 3;
        };
    }

    /** {@return a state that may be changed} */
    public PlanState copy() {
        PlanState copy = new PlanState(parts, row.clone());
        copy.ventedGrams = ventedGrams;
        return copy;
    }

    /**
     * {@return the connection to which it is joined, or {@link PlanParts#NONE}}
     *
     * @param end a hose end
     */
    public int at(int end) {
        return (row[end] >> 1) - 1;
    }

    /**
     * {@return whether its joint is tight}
     *
     * @param end a hose end
     */
    public boolean tight(int end) {
        return (row[end] & 1) == 1;
    }

    void join(int end, int connection, boolean tight) {
        row[end] = (byte) ((connection + 1) << 1 | (tight ? 1 : 0));
    }

    void part(int end) {
        row[end] = 0;
    }

    /**
     * {@return the hose end at it, or {@link PlanParts#NONE}}
     *
     * @param connection a connection
     */
    public int endAt(int connection) {
        for (int end = 0; end < parts.valve0; end++) {
            if (at(end) == connection) {
                return end;
            }
        }
        return PlanParts.NONE;
    }

    Opening opening(int valve) {
        return switch (row[parts.valve0 + valve]) {
            case 0 -> Opening.SHUT;
            case 1 -> Opening.CRACKED;
            default -> Opening.OPEN;
        };
    }

    /**
     * {@return whether it lets anything through}
     *
     * @param valve a valve
     */
    public boolean isOpen(int valve) {
        return row[parts.valve0 + valve] != 0;
    }

    boolean cracked(int valve) {
        return row[parts.valve0 + valve] == 1;
    }

    void open(int valve, Opening opening) {
        row[parts.valve0 + valve] = (byte) (opening == Opening.SHUT ? 0 : opening == Opening.CRACKED ? 1 : 2);
    }

    byte content(int volume) {
        return row[parts.volume0 + OF_VOLUME * volume];
    }

    int level(int volume) {
        return row[parts.volume0 + OF_VOLUME * volume + 1];
    }

    int origin(int volume) {
        return row[parts.volume0 + OF_VOLUME * volume + 2];
    }

    boolean has(int volume, byte flag) {
        return (row[parts.volume0 + OF_VOLUME * volume + 3] & flag) != 0;
    }

    void flag(int volume, byte flag, boolean on) {
        int at = parts.volume0 + OF_VOLUME * volume + 3;
        row[at] = (byte) (on ? row[at] | flag : row[at] & ~flag);
    }

    void set(int volume, byte content, int level, int origin) {
        int at = parts.volume0 + OF_VOLUME * volume;
        row[at] = content;
        row[at + 1] = (byte) level;
        row[at + 2] = (byte) (content == NOTHING ? 0 : origin);
        if (content != LIQUID) {
            flag(volume, COLD, false);
        }
    }

    /**
     * {@return whether there is air in it}
     *
     * @param volume a volume
     */
    public boolean air(int volume) {
        return content(volume) == AIR;
    }

    /**
     * {@return whether it holds vapour that condenses in air as cold as it is}
     *
     * @param volume a volume
     */
    public boolean condenses(int volume) {
        return content(volume) == VAPOUR && parts.levels[level(volume)] > parts.ambientPa;
    }

    /**
     * {@return whether it is full of liquid}
     *
     * @param volume a volume
     */
    public boolean full(int volume) {
        return content(volume) == LIQUID;
    }

    /**
     * {@return whether there is liquid in it}
     *
     * @param volume a volume
     */
    public boolean liquid(int volume) {
        return content(volume) >= PARTLY;
    }

    /**
     * {@return whether it holds refrigerant}
     *
     * @param volume a volume
     */
    public boolean holdsRefrigerant(int volume) {
        return origin(volume) != 0;
    }

    /**
     * {@return whether nothing in it is recovered or unknown}
     *
     * @param volume a volume
     */
    public boolean clean(int volume) {
        return origin(volume) < GAS_RECOVERED;
    }

    /**
     * {@return whether nobody knows what it holds}
     *
     * @param volume a volume
     */
    public boolean unknown(int volume) {
        return origin(volume) == GAS_UNKNOWN;
    }

    VolumeContent cylinderHolds(int cylinder) {
        return switch (row[parts.cylinder0 + OF_VOLUME * cylinder]) {
            case 0 -> VolumeContent.AIR;
            case 1 -> VolumeContent.NOTHING;
            case 2 -> VolumeContent.VAPOUR;
            default -> VolumeContent.LIQUID;
        };
    }

    /**
     * {@return the level of its pressure}
     *
     * @param cylinder a cylinder
     */
    public int cylinderLevel(int cylinder) {
        return row[parts.cylinder0 + OF_VOLUME * cylinder + 1];
    }

    int cylinderOrigin(int cylinder) {
        return row[parts.cylinder0 + OF_VOLUME * cylinder + 2];
    }

    /**
     * {@return whether what it holds is recovered or unknown}
     *
     * @param cylinder a cylinder
     */
    public boolean cylinderMixed(int cylinder) {
        return cylinderOrigin(cylinder) >= GAS_RECOVERED;
    }

    /**
     * {@return whether it holds what this system may take}
     *
     * @param cylinder a cylinder
     */
    public boolean cylinderClean(int cylinder) {
        return cylinderOrigin(cylinder) != GAS_NONE && !cylinderMixed(cylinder);
    }

    /** {@return the parts} */
    public PlanParts parts() {
        return parts;
    }

    /** {@return refrigerant lost so far, g} */
    public double ventedGrams() {
        return ventedGrams;
    }

    /**
     * {@return whether it is upside down}
     *
     * @param cylinder a cylinder
     */
    public boolean inverted(int cylinder) {
        return (row[parts.cylinder0 + OF_VOLUME * cylinder + 3] & 1) != 0;
    }

    void invert(int cylinder, boolean on) {
        int at = parts.cylinder0 + OF_VOLUME * cylinder + 3;
        row[at] = (byte) (on ? row[at] | 1 : row[at] & ~1);
    }

    /** Its pressure may be anything up to its level: nobody knows how far what came in has filled it. */
    boolean isUnsure(int cylinder) {
        return (row[parts.cylinder0 + OF_VOLUME * cylinder + 3] & 2) != 0;
    }

    void unsure(int cylinder) {
        row[parts.cylinder0 + OF_VOLUME * cylinder + 3] |= 2;
    }

    void cylinder(int cylinder, VolumeContent content, int level, int origin) {
        int at = parts.cylinder0 + OF_VOLUME * cylinder;
        row[at] = (byte) code(content);
        row[at + 1] = (byte) level;
        row[at + 2] = (byte) origin;
    }

    boolean turned(int hose) {
        return row[parts.turned0 + hose] != 0;
    }

    void turn(int hose) {
        row[parts.turned0 + hose] ^= 1;
    }

    /** Whether air stands between a hose end and what it is joined to. */
    boolean couplingAir(int end) {
        return row[parts.coupling0 + end] != 0;
    }

    void couplingAir(int end, boolean on) {
        row[parts.coupling0 + end] = (byte) (on ? 1 : 0);
    }

    /**
     * {@return whether it is capped}
     *
     * @param connection a connection
     */
    public boolean capped(int connection) {
        return row[parts.cap0 + connection] != 0;
    }

    void cap(int connection, boolean on) {
        row[parts.cap0 + connection] = (byte) (on ? 1 : 0);
    }

    /**
     * {@return whether it runs}
     *
     * @param which 0 the pump, 1 the machine
     */
    public boolean runs(int which) {
        return row[parts.run0 + which] != 0;
    }

    void run(int which, boolean on) {
        row[parts.run0 + which] = (byte) (on ? 1 : 0);
    }

    /** {@return what went out or in since the step began: flags of this class} */
    public byte moved() {
        return row[parts.run0 + 2];
    }

    void moved(byte way) {
        row[parts.run0 + 2] |= way;
    }

    /** A step begins. */
    public void forgetMoved() {
        row[parts.run0 + 2] = 0;
    }

    /** {@return whether liquid is shut in anywhere} */
    public boolean anyShutIn() {
        for (int i = 0; i < parts.volumes.size(); i++) {
            if (has(i, SHUT_IN)) {
                return true;
            }
        }
        return false;
    }

    /**
     * {@return its fitting as the hose hangs now}
     *
     * @param end a hose end
     */
    public EndFitting fitting(int end) {
        return parts.fitting(end, turned(end / 2));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PlanState state && Arrays.equals(row, state.row);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(row);
    }
}
