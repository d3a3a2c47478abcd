package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.satline.charge.margin.MeteringDevice;
import org.satline.ledger.Ledger;
import org.satline.ledger.LedgerEntry;
import org.satline.ledger.Party;
import org.satline.quantity.MassDifference;

/**
 * A day at a unit that holds too much, through the program: hook up, a step out, a second one too large, over to the source, back in on a
 * zeroed scale and too much again, back to the recovery cylinder, until it is done and everything comes off. The unit is simulated, so that
 * its readings answer to what moved.
 */
class TechnicianStoryTest {
    /** Nobody works for longer than this. */
    private static final int MOST_PAGES = 30;

    private static final Party UNIT = Party.system("unit on the roof");
    private static final Instant DAY = Instant.parse("2026-07-14T10:00:00Z");

    /** How far off the charge is at first, and after a step too large, as a share. */
    private static final double OFF = 0.12;

    @TempDir
    Path folder;

    /**
     * A job.
     *
     * @param refrigerant its designation
     * @param metering the metering device
     * @param evacuated whether the recovery cylinder is new and evacuated
     * @param systemEnd the end of the hose at the manifold
     * @param cylinderEnd the end of the hose at the cylinder
     * @param pump whether a vacuum pump and a manifold with four valves are there
     * @param flammable whether the gas is
     */
    record Job(
            String refrigerant,
            MeteringDevice metering,
            boolean evacuated,
            String systemEnd,
            String cylinderEnd,
            boolean pump,
            boolean flammable) {}

    static List<Job> jobs() {
        return List.of(
                new Job(
                        "R-410A",
                        MeteringDevice.EXPANSION_VALVE,
                        false,
                        "plain-flare",
                        "open-close-valve",
                        false,
                        false),
                new Job("R-410A", MeteringDevice.FIXED_ORIFICE, false, "plain-flare", "open-close-valve", false, false),
                new Job(
                        "R-407C",
                        MeteringDevice.EXPANSION_VALVE,
                        false,
                        "plain-flare",
                        "open-close-valve",
                        false,
                        false),
                new Job("R-32", MeteringDevice.EXPANSION_VALVE, false, "plain-flare", "open-close-valve", false, true),
                new Job("R-410A", MeteringDevice.EXPANSION_VALVE, true, "self-sealing", "self-sealing", true, false));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void theDayEndsWithTheRightChargeAndEveryGramBooked(Job job) {
        StoryUnit unit = new StoryUnit(job.refrigerant(), job.metering(), 1 + OFF);
        Technician technician = new Technician(folder, unit, job);
        Ledger ledger = opened(technician, unit, job);
        double held = unit.chargeKg();
        List<String> day = new ArrayList<>();
        technician.arrives();
        JsonNode page = technician.readsThePage();
        for (int i = 0; i < MOST_PAGES && !page.path("action").asText().equals("done"); i++) {
            String action = page.path("action").asText();
            day.add(action);
            assertThat(page.path("plan")).as("%s of %s: %s", action, day, page).isNotEmpty();
            switch (action) {
                case "prepare" -> technician.carriesOut(page.path("plan"));
                case "takeOut", "putIn" -> {
                    boolean out = action.equals("takeOut");
                    long before = day.stream().filter(action::equals).count();
                    double amount = page.path("amountKg").asDouble();
                    double tooMuch = Math.abs(unit.chargeKg() - unit.ratedKg() * (out ? 1 - OFF : 1 + OFF));
                    boolean over = before == (out ? 2 : 1);
                    double shows = technician.scaleShows();
                    double moved =
                            technician.moves((over ? tooMuch : before == 1 ? amount / 4 : amount) * (out ? 1 : -1));
                    assertThat(Math.abs(technician.scaleShows() - shows)).isCloseTo(Math.abs(moved), within(1e-9));
                    if (!over && before > 1) {
                        stopsWhereThePageSays(page, out, technician.scaleShows());
                    }
                    Party cylinder = Party.cylinder(out ? Technician.RECEIVER : Technician.SOURCE);
                    move(ledger, out ? UNIT : cylinder, out ? cylinder : UNIT, job, Math.abs(moved));
                }
                default -> throw new AssertionError(day + " " + page);
            }
            page = technician.readsAgain();
        }
        assertThat(page.path("action").asText()).as("%s: %s", day, page).isEqualTo("done");
        assertThat(day).containsSubsequence("prepare", "takeOut", "takeOut", "prepare", "putIn", "prepare", "takeOut");
        assertThat(page.path("plan").findValuesAsText("phase")).isNotEmpty().containsOnly("takeOff");
        assertThat(unit.chargeKg() / unit.ratedKg()).isBetween(0.95, 1.05);
        accounts(technician, ledger, held);
    }

    /** The step ends no later than at the reading that the page gives, and less than two steps of the scale before. */
    private static void stopsWhereThePageSays(JsonNode page, boolean out, double shows) {
        double stop = page.path("stopReadingKg").asDouble();
        assertThat(out ? stop - shows : shows - stop).isBetween(-1e-9, 2 * Technician.STEP_KG);
    }

    /** Both cylinders with what is in them on arrival. */
    private static Ledger opened(Technician technician, StoryUnit unit, Job job) {
        Ledger ledger = new Ledger();
        technician.before.forEach((name, gross) -> {
            double tare = technician.tare(name);
            entered(ledger, new LedgerEntry.EmptyCylinder(name, milligrams(tare), DAY, ""));
            if (gross > tare) {
                move(ledger, Party.outside("wholesaler"), Party.cylinder(name), job, gross - tare);
            }
        });
        move(ledger, Party.outside("factory"), UNIT, job, unit.chargeKg());
        return ledger;
    }

    private static void move(Ledger ledger, Party from, Party to, Job job, double kilograms) {
        entered(
                ledger,
                new LedgerEntry.Transfer(from, to, job.refrigerant(), milligrams(kilograms), 0, "the bakery", DAY, ""));
    }

    private static void entered(Ledger ledger, LedgerEntry entry) {
        assertThat(ledger.enter(entry)).isInstanceOf(Ledger.Decision.Entered.class);
    }

    private static long milligrams(double kilograms) {
        return Math.round(kilograms * 1e6);
    }

    /** Scale, ledger and file say the same, to the gram; the file keeps a tenth of one. */
    private static void accounts(Technician technician, Ledger ledger, double heldKg) {
        double net = 0;
        for (String name : List.of(Technician.RECEIVER, Technician.SOURCE)) {
            double gross = Technician.weight(technician.gross, name);
            entered(ledger, new LedgerEntry.Weighing(name, milligrams(gross), 0, DAY, ""));
            assertThat(ledger.balance(Party.cylinder(name)).kilograms())
                    .isCloseTo(gross - technician.tare(name), within(0.0005));
            net -= gross - Technician.weight(technician.before, name);
        }
        assertThat(ledger.balance(UNIT).kilograms()).isCloseTo(heldKg + net, within(0.0005));
        assertThat(MassDifference.parse(technician.netByTheFile()).kilograms()).isCloseTo(net, within(0.0005));
    }
}
