package org.satline.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.satline.json.JsonFields;
import org.satline.visit.VisitReport;
import org.satline.visit.VisitReporter;
import org.satline.visit.file.FieldValue;
import org.satline.visit.file.VisitFile;

/**
 * Trial visits with one field taken away or changed to another word that is allowed there: nothing moves without an order of valves, and
 * what is not said lets nothing move that did not move before.
 */
class MutatedTrialsTest {
    private static final long SEED = 10;
    /** Of all files with one field less, so many are tried; {@code -Dsatline.mutations=100000} tries all. */
    private static final int TRIED = Integer.getInteger("satline.mutations", 400);

    private static final Map<String, List<String>> WORDS = Map.of(
            "valve", List.of("recovery-vapour", "recovery-liquid", "source-vapour", "source-liquid"),
            "metering", List.of("expansion-valve", "fixed-orifice"),
            "mode", List.of("cooling", "heating"),
            "port", List.of("high-side-liquid", "high-side-vapour", "low-side", "centre"),
            "systemEnd", List.of("open-close-valve", "self-sealing", "plain-flare"),
            "cylinderEnd", List.of("open-close-valve", "self-sealing", "plain-flare"),
            "holds", List.of("air", "vapour", "liquid", "evacuated"),
            "contentsFrom", List.of("system", "source", "recovered"),
            "provenance", List.of("new", "reclaimed", "recovered", "mixed-recovered"),
            "fitting", List.of("valve-core", "core-tool", "stem"));

    /** A visit with one field less or otherwise. */
    private record Mutant(VisitTrial trial, String path, FieldValue.Fields fields) {}

    @Test
    void whatIsNotSaidLetsNothingMove() {
        List<String> wrong = new ArrayList<>();
        List<Mutant> all = new ArrayList<>();
        Map<VisitTrial, Boolean> moved = new LinkedHashMap<>();
        for (VisitTrial trial : VisitTrial.all()) {
            fields(trial).ifPresent(fields -> {
                moved.put(
                        trial,
                        report(fields).filter(each -> each.action().movesNow()).isPresent());
                less("", fields, less -> all.add(new Mutant(trial, less.path(), less.fields())));
            });
        }
        assertThat(all).hasSizeGreaterThan(2000);
        for (Mutant each : some(all)) {
            Optional<VisitReport> report = report(each.fields());
            boolean moves = report.filter(it -> it.action().movesNow()).isPresent();
            if (moves && report.orElseThrow().actsNow().isEmpty()) {
                wrong.add(each.trial() + " moves without an order of valves, without " + each.path());
            }
            boolean before = moved.getOrDefault(each.trial(), false);
            if (moves && !before) {
                wrong.add(each.trial() + " moves without " + each.path());
            }
        }
        assertThat(wrong).as(String.join("\n", wrong)).isEmpty();
    }

    @Test
    void nothingMovesWithoutAnOrderOfValvesWhateverIsSaid() {
        List<String> wrong = new ArrayList<>();
        List<Mutant> all = new ArrayList<>();
        for (VisitTrial trial : VisitTrial.all()) {
            fields(trial)
                    .ifPresent(fields ->
                            otherwise("", fields, other -> all.add(new Mutant(trial, other.path(), other.fields()))));
        }
        assertThat(all).hasSizeGreaterThan(2000);
        for (Mutant each : some(all)) {
            Optional<VisitReport> report = report(each.fields());
            if (report.filter(it -> it.action().movesNow()).isPresent()
                    && report.orElseThrow().actsNow().isEmpty()) {
                wrong.add(each.trial() + " with another " + each.path());
            }
        }
        assertThat(wrong).as(String.join("\n", wrong)).isEmpty();
    }

    private static List<Mutant> some(List<Mutant> all) {
        List<Mutant> drawn = new ArrayList<>(all);
        Collections.shuffle(drawn, new Random(SEED));
        return drawn.subList(0, Math.min(TRIED, drawn.size()));
    }

    private static Optional<FieldValue.Fields> fields(VisitTrial trial) {
        try {
            return Optional.of(JsonFields.read(trial.text()));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    /** Nothing where the file is refused. */
    private static Optional<VisitReport> report(FieldValue.Fields fields) {
        try {
            return Optional.of(VisitReporter.report(VisitFile.read(fields)));
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private record Changed(String path, FieldValue.Fields fields) {}

    private static void less(String at, FieldValue.Fields fields, Consumer<Changed> taken) {
        fields.values().forEach((name, value) -> {
            Map<String, FieldValue> kept = new LinkedHashMap<>(fields.values());
            kept.remove(name);
            taken.accept(new Changed(at + name, new FieldValue.Fields(kept)));
            inside(at, name, value, MutatedTrialsTest::less, part -> put(fields, name, part, taken));
        });
    }

    private static void otherwise(String at, FieldValue.Fields fields, Consumer<Changed> taken) {
        fields.values().forEach((name, value) -> {
            for (FieldValue other : others(name, value)) {
                put(fields, name, new Part(at + name, other), taken);
            }
            inside(at, name, value, MutatedTrialsTest::otherwise, part -> put(fields, name, part, taken));
        });
    }

    private static List<FieldValue> others(String name, FieldValue value) {
        if (value instanceof FieldValue.Flag flag) {
            return List.of(new FieldValue.Flag(!flag.value()));
        }
        if (!(value instanceof FieldValue.Text text)) {
            return List.of();
        }
        return WORDS.getOrDefault(name, List.of()).stream()
                .filter(word -> !word.equals(text.value()))
                .<FieldValue>map(FieldValue.Text::new)
                .toList();
    }

    private record Part(String path, FieldValue value) {}

    private interface Walk {
        void of(String at, FieldValue.Fields fields, Consumer<Changed> taken);
    }

    private static void inside(String at, String name, FieldValue value, Walk walk, Consumer<Part> taken) {
        if (value instanceof FieldValue.Fields object) {
            walk.of(at + name + ".", object, changed -> taken.accept(new Part(changed.path(), changed.fields())));
        } else if (value instanceof FieldValue.Items items) {
            for (int i = 0; i < items.values().size(); i++) {
                int index = i;
                if (items.values().get(i) instanceof FieldValue.Fields object) {
                    walk.of(at + name + "[" + i + "].", object, changed -> {
                        List<FieldValue> all = new ArrayList<>(items.values());
                        all.set(index, changed.fields());
                        taken.accept(new Part(changed.path(), new FieldValue.Items(all)));
                    });
                }
            }
        }
    }

    private static void put(FieldValue.Fields fields, String name, Part part, Consumer<Changed> taken) {
        Map<String, FieldValue> all = new LinkedHashMap<>(fields.values());
        all.put(name, part.value());
        taken.accept(new Changed(part.path(), new FieldValue.Fields(all)));
    }
}
