package org.satline.charge.belief;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/** The behaviour table is that of the simulated systems; it is written anew with {@code -Dsatline.behaviour.write}. */
class BehaviourTableTest {
    private static final int SYSTEMS = 120_000;
    private static final long SEED = 20_261;

    @Test
    @EnabledIfSystemProperty(named = "satline.behaviour.write", matches = ".*")
    void writesTheTable() throws IOException {
        List<String> lines = new ArrayList<>(List.of(
                "# Clues of simulated systems by what is wrong with them: charge error in steps of 0.05 of the right charge, with at most one other fault, mild or severe.",
                "# Made by BehaviourTableTest of the tests of this module: " + SYSTEMS + " drawn visits, seed " + SEED
                        + ".",
                "# mean at the usual surroundings, slopes with target, outdoor air, wet and dry bulb of the return air for each clue in turn, and the covariance over",
                "# systems (lower triangle). Clues: superheat, subcooling, condensing over its air, evaporating, discharge over ideal compression, air drop, excess at rest;",
                "# all in K. basis: org.satline.simulation; spread.csv adds what measured machines show beyond it.",
                "metering,fault,charge_error,share,mean,slopes,scatter"));
        lines.addAll(new BehaviourWriter(new DrawnSystems(SEED).draw(SYSTEMS)).rows());
        Files.write(Path.of("src/main/resources/org/satline/charge/belief/behaviour.csv"), lines);
    }
}
