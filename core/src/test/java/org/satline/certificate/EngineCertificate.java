package org.satline.certificate;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Certifies the solving engine and writes {@code CERTIFICATE.md}: states solved and failures for every refrigerant, computed against
 * published boiling points, computed against measured equilibria. Run by the Maven profile {@code certify}; exits with status 1 if any
 * state failed.
 */
public final class EngineCertificate {
    private EngineCertificate() {}

    /**
     * Writes the certificate.
     *
     * @param args the file to write
     * @throws IOException if it cannot be written
     */
    public static void main(String[] args) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("# Certificate of the solving engine");
        lines.add("");
        lines.add(
                "Written by `mvn -B verify -P certify -pl core`; do not edit. Fixed seeds; the figures repeat on the same JDK ("
                        + System.getProperty("java.version") + " here).");
        SolvedStates solved = SolvedStates.ofAllRefrigerants();
        lines.addAll(solved.report());
        FlashesAndEnds flashes = FlashesAndEnds.ofEverything();
        lines.addAll(flashes.report());
        lines.addAll(PublishedBoilingPoints.report());
        lines.addAll(MeasuredEquilibria.report());
        Files.write(Path.of(args[0]), lines);
        System.out.println(String.format(
                Locale.ROOT,
                "%d states solved, %d failures, %d faults of flashes; certificate written",
                solved.states(),
                solved.failures(),
                flashes.faults()));
        if (solved.failures() + flashes.faults() > 0) {
            System.exit(1);
        }
    }
}
