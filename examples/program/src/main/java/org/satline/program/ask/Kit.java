package org.satline.program.ask;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.satline.explanation.Figure;
import org.satline.json.JsonFields;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.quantity.Parts;
import org.satline.visit.file.FieldValue;
import org.satline.wording.Wording;

/**
 * What stays the same from visit to visit: instruments, hoses, manifold, own cylinders. Immutable.
 *
 * @param file where it was read
 * @param digest SHA-256 of the file, hexadecimal
 * @param fields what it holds
 */
public record Kit(Path file, String digest, FieldValue.Fields fields) {
    private static final List<String> NAMES = List.of("name", "instruments", "hoses", "manifold", "cylinders");

    /** {@inheritDoc} */
    public Kit {
        Parts.required("file digest fields", file, digest, fields);
    }

    /**
     * Reads a kit.
     *
     * @param file a JSON file
     * @return the kit
     * @throws BadInputException if it cannot be used
     */
    public static Kit read(Path file) {
        byte[] bytes = VisitStore.bytes(file);
        FieldValue.Fields fields;
        try {
            fields = JsonFields.read(VisitStore.text(file, bytes));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
        for (String name : fields.values().keySet()) {
            if (!NAMES.contains(name)) {
                throw new BadInputException(file + ": " + Shown.quoted(name) + " is no field of a kit; allowed: "
                        + String.join(", ", NAMES));
            }
        }
        Kit kit = new Kit(file, VisitStore.digest(bytes), fields);
        kit.check();
        return kit;
    }

    /** Its parts must be what a visit file takes. */
    private void check() {
        try {
            Draft.check(applied(FieldTree.EMPTY));
            for (FieldValue cylinder : items("cylinders")) {
                Draft.check(FieldTree.put(applied(FieldTree.EMPTY), "cylinder", cylinder));
            }
            for (FieldValue hose : items("hoses")) {
                FieldValue.Fields held = FieldTree.put(FieldTree.EMPTY, "name", "a cylinder");
                Draft.check(FieldTree.put(
                        applied(FieldTree.EMPTY),
                        "cylinder",
                        FieldTree.put(held, "hoses", new FieldValue.Items(List.of(hose)))));
            }
        } catch (IllegalArgumentException e) {
            throw new BadInputException(file + ": " + e.getMessage());
        }
    }

    /** A visit that is done with this kit: its instruments and manifold where the visit has none, and which kit it was. */
    FieldValue.Fields applied(FieldValue.Fields visit) {
        FieldValue.Fields all = visit;
        for (String part : new String[] {"instruments", "manifold"}) {
            Optional<FieldValue> own = FieldTree.get(fields, part);
            if (own.isPresent() && !FieldTree.has(all, part)) {
                all = FieldTree.put(all, part, own.get());
            }
        }
        all = FieldTree.put(all, "kit.file", String.valueOf(file.getFileName()));
        return FieldTree.put(all, "kit.sha256", digest);
    }

    /** What the kit says of a field, as the default of its question. */
    Optional<String> standing(String path) {
        String hose = "cylinder.hoses[0].";
        return path.startsWith(hose)
                ? FieldTree.text(fields, "hoses[0]." + path.substring(hose.length()))
                : Optional.empty();
    }

    /** Its cylinder of a name. */
    Optional<FieldValue> cylinder(String name) {
        return items("cylinders").stream()
                .filter(each -> each instanceof FieldValue.Fields one
                        && FieldTree.text(one, "name").equals(Optional.of(name)))
                .findFirst();
    }

    /** Names of its cylinders. */
    List<String> cylinders() {
        List<String> names = new ArrayList<>();
        items("cylinders")
                .forEach(
                        each -> FieldTree.text((FieldValue.Fields) each, "name").ifPresent(names::add));
        return names;
    }

    private List<FieldValue> items(String name) {
        return FieldTree.get(fields, name).orElse(null) instanceof FieldValue.Items items ? items.values() : List.of();
    }

    /**
     * What to say of the kit that a visit was done with.
     *
     * @param visit fields of the visit
     * @param beside the visit file, beside which the kit is looked for
     * @param given the kit of this run, where one was given
     * @param words in which language
     * @return one line where the kit is missing or has changed
     */
    public static Optional<String> difference(
            FieldValue.Fields visit, Path beside, Optional<Kit> given, Wording words) {
        Optional<String> name = FieldTree.text(visit, "kit.file");
        Optional<String> recorded = FieldTree.text(visit, "kit.sha256");
        if (name.isEmpty() || recorded.isEmpty()) {
            return Optional.empty();
        }
        Path path = given.map(Kit::file).orElse(beside.resolveSibling(name.get()));
        if (given.isEmpty() && !java.nio.file.Files.isRegularFile(path)) {
            return Optional.of(words.message("kitNote.missing", Figure.of("kit", Shown.quoted(name.get()))));
        }
        String now = given.map(Kit::digest).orElseGet(() -> VisitStore.digest(VisitStore.bytes(path)));
        return now.equals(recorded.get())
                ? Optional.empty()
                : Optional.of(words.message(
                        "kitNote.changed",
                        Figure.of("kit", Shown.quoted(String.valueOf(path.getFileName()))),
                        Figure.of("now", now.substring(0, 12)),
                        Figure.of(
                                "recorded",
                                recorded.get()
                                        .substring(
                                                0, Math.min(12, recorded.get().length())))));
    }
}
