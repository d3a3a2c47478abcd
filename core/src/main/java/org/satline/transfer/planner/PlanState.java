package org.satline.transfer.planner;

import java.util.Arrays;
import org.satline.transfer.hookup.EndFitting;
import org.satline.transfer.hookup.GasOrigin;
import org.satline.transfer.hookup.HookUp;
import org.satline.transfer.hookup.HookUpState;
import org.satline.transfer.hookup.Opening;
import org.satline.transfer.hookup.VolumeContent;
import org.satline.transfer.hookup.VolumeState;

/** How things stand, as the planner sees them: a row of small numbers. Changed only while it is made; then a key of the search. */
final class PlanState {
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

    static final byte OUT_LIQUID = 1;
    static final byte OUT_VAPOUR = 2;
    static final byte IN_LIQUID = 4;
    static final byte IN_VAPOUR = 8;

    private static final int OF_VOLUME = 4;

    final PlanParts parts;
    final byte[] row;
    /** Refrigerant lost so far, g; no part of the key. */
    double ventedGrams;

    private final int valve0;
    private final int volume0;
    private final int cylinder0;
    private final int turned0;
    private final int coupling0;
    private final int cap0;
    private final int run0;

    private PlanState(PlanParts parts, byte[] row) {
        this.parts = parts;
        valve0 = parts.ends.size();
        volume0 = valve0 + parts.valves.size();
        cylinder0 = volume0 + OF_VOLUME * parts.volumes.size();
        turned0 = cylinder0 + OF_VOLUME * parts.cylinders.size();
        coupling0 = turned0 + parts.hoses.size();
        cap0 = coupling0 + parts.ends.size();
        run0 = cap0 + parts.connections.size();
        this.row = row.length == 0 ? new byte[run0 + 3] : row;
    }

    static PlanState of(PlanParts parts, HookUpState state) {
        PlanState made = new PlanState(parts, new byte[0]);
        for (int end = 0; end < parts.ends.size(); end++) {
            int at = end;
            state.joint(parts.ends.get(end))
                    .ifPresent(joint -> made.join(at, parts.connections.indexOf(joint.at()), joint.tight()));
        }
        for (int i = 0; i < parts.valves.size(); i++) {
            made.open(i, state.valve(parts.valves.get(i)));
        }
        for (int i = 0; i < parts.volumes.size(); i++) {
            String name = parts.volumes.get(i);
            VolumeState volume = state.volume(name);
            double full = volume.refrigerant().kilograms()
                    / parts.hookUp
                            .gas()
                            .properties()
                            .liquidDensity(volume.temperature().kelvins())
                    / parts.litres[i]
                    * 1000;
            // what fills more than three quarters has no room worth counting on
            byte content = switch (volume.content()) {
                case AIR -> AIR;
                case NOTHING -> NOTHING;
                case VAPOUR -> VAPOUR;
                case LIQUID -> full > 0.75 ? LIQUID : PARTLY;
            };
            boolean cold = volume.temperature().compareTo(parts.hookUp.ambient()) < 0;
            made.set(i, content, parts.level(volume.pressure().pascals()), code(volume.origin()));
            made.flag(i, COLD, cold && content == LIQUID);
            made.flag(i, SHUT_IN, state.liquidShutIn().contains(name));
        }
        for (int i = 0; i < parts.cylinders.size(); i++) {
            String name = parts.cylinders.get(i).name();
            VolumeState held = state.volume(name);
            int at = made.cylinder0 + OF_VOLUME * i;
            made.row[at] = (byte) code(held.content());
            made.row[at + 1] = (byte) parts.level(held.pressure().pascals());
            made.row[at + 2] = (byte) code(held.origin());
            made.row[at + 3] = (byte) (state.inverted().contains(name) ? 1 : 0);
        }
        for (int i = 0; i < parts.hoses.size(); i++) {
            made.row[made.turned0 + i] =
                    (byte) (state.turned().contains(parts.hoses.get(i).name()) ? 1 : 0);
        }
        for (int i = 0; i < parts.connections.size(); i++) {
            made.row[made.cap0 + i] = (byte) (state.capped().contains(parts.connections.get(i)) ? 1 : 0);
        }
        made.run(0, state.running().contains(HookUp.PUMP));
        made.run(1, state.running().contains(HookUp.MACHINE));
        return made;
    }

    private static int code(GasOrigin origin) {
        return switch (origin) {
            case NONE -> GAS_NONE;
            case SOURCE -> GAS_SOURCE;
            case SYSTEM -> GAS_SYSTEM;
            case RECOVERED -> GAS_RECOVERED;
            case UNKNOWN -> GAS_UNKNOWN;
        };
    }

    private static int code(Opening opening) {
        return switch (opening) {
            case SHUT -> 0;
            case CRACKED -> 1;
            case OPEN -> 2;
        };
    }

    private static int code(VolumeContent content) {
        return switch (content) {
            case AIR -> 0;
            case NOTHING -> 1;
            case VAPOUR -> 2;
            case LIQUID -> 3;
        };
    }

    PlanState copy() {
        PlanState copy = new PlanState(parts, row.clone());
        copy.ventedGrams = ventedGrams;
        return copy;
    }

    int at(int end) {
        return (row[end] >> 1) - 1;
    }

    boolean tight(int end) {
        return (row[end] & 1) == 1;
    }

    void join(int end, int connection, boolean tight) {
        row[end] = (byte) ((connection + 1) << 1 | (tight ? 1 : 0));
    }

    void part(int end) {
        row[end] = 0;
    }

    /** The hose end at a connection, or {@link PlanParts#NONE}. */
    int endAt(int connection) {
        for (int end = 0; end < valve0; end++) {
            if (at(end) == connection) {
                return end;
            }
        }
        return PlanParts.NONE;
    }

    Opening opening(int valve) {
        return switch (row[valve0 + valve]) {
            case 0 -> Opening.SHUT;
            case 1 -> Opening.CRACKED;
            default -> Opening.OPEN;
        };
    }

    boolean isOpen(int valve) {
        return row[valve0 + valve] != 0;
    }

    boolean cracked(int valve) {
        return row[valve0 + valve] == 1;
    }

    void open(int valve, Opening opening) {
        row[valve0 + valve] = (byte) code(opening);
    }

    byte content(int volume) {
        return row[volume0 + OF_VOLUME * volume];
    }

    int level(int volume) {
        return row[volume0 + OF_VOLUME * volume + 1];
    }

    int origin(int volume) {
        return row[volume0 + OF_VOLUME * volume + 2];
    }

    boolean has(int volume, byte flag) {
        return (row[volume0 + OF_VOLUME * volume + 3] & flag) != 0;
    }

    void flag(int volume, byte flag, boolean on) {
        int at = volume0 + OF_VOLUME * volume + 3;
        row[at] = (byte) (on ? row[at] | flag : row[at] & ~flag);
    }

    void set(int volume, byte content, int level, int origin) {
        int at = volume0 + OF_VOLUME * volume;
        row[at] = content;
        row[at + 1] = (byte) level;
        row[at + 2] = (byte) (content == NOTHING ? 0 : origin);
        if (content != LIQUID) {
            flag(volume, COLD, false);
        }
    }

    boolean liquid(int volume) {
        return content(volume) >= PARTLY;
    }

    boolean holdsRefrigerant(int volume) {
        return origin(volume) != 0;
    }

    boolean clean(int volume) {
        return origin(volume) < GAS_RECOVERED;
    }

    boolean unknown(int volume) {
        return origin(volume) == GAS_UNKNOWN;
    }

    VolumeContent cylinderHolds(int cylinder) {
        return switch (row[cylinder0 + OF_VOLUME * cylinder]) {
            case 0 -> VolumeContent.AIR;
            case 1 -> VolumeContent.NOTHING;
            case 2 -> VolumeContent.VAPOUR;
            default -> VolumeContent.LIQUID;
        };
    }

    int cylinderLevel(int cylinder) {
        return row[cylinder0 + OF_VOLUME * cylinder + 1];
    }

    int cylinderOrigin(int cylinder) {
        return row[cylinder0 + OF_VOLUME * cylinder + 2];
    }

    boolean inverted(int cylinder) {
        return row[cylinder0 + OF_VOLUME * cylinder + 3] != 0;
    }

    void invert(int cylinder, boolean on) {
        row[cylinder0 + OF_VOLUME * cylinder + 3] = (byte) (on ? 1 : 0);
    }

    void cylinder(int cylinder, VolumeContent content, int level, int origin) {
        int at = cylinder0 + OF_VOLUME * cylinder;
        row[at] = (byte) code(content);
        row[at + 1] = (byte) level;
        row[at + 2] = (byte) origin;
    }

    boolean turned(int hose) {
        return row[turned0 + hose] != 0;
    }

    void turn(int hose) {
        row[turned0 + hose] ^= 1;
    }

    /** Whether air stands between a hose end and what it is joined to. */
    boolean couplingAir(int end) {
        return row[coupling0 + end] != 0;
    }

    void couplingAir(int end, boolean on) {
        row[coupling0 + end] = (byte) (on ? 1 : 0);
    }

    boolean capped(int connection) {
        return row[cap0 + connection] != 0;
    }

    void cap(int connection, boolean on) {
        row[cap0 + connection] = (byte) (on ? 1 : 0);
    }

    /** 0 the pump, 1 the machine. */
    boolean runs(int which) {
        return row[run0 + which] != 0;
    }

    void run(int which, boolean on) {
        row[run0 + which] = (byte) (on ? 1 : 0);
    }

    byte moved() {
        return row[run0 + 2];
    }

    void moved(byte way) {
        row[run0 + 2] |= way;
    }

    void forgetMoved() {
        row[run0 + 2] = 0;
    }

    boolean anyShutIn() {
        for (int i = 0; i < parts.volumes.size(); i++) {
            if (has(i, SHUT_IN)) {
                return true;
            }
        }
        return false;
    }

    EndFitting fitting(int end) {
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
