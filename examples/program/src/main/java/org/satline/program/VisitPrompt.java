package org.satline.program;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.satline.program.ask.Kit;
import org.satline.program.ask.LinePrompt;
import org.satline.program.ask.VisitAsk;
import org.satline.program.ask.VisitStore;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.wording.Wording;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The part of the command {@code visit} that fills in the file before it is read: at the prompt, from a kit, with the next readings. */
final class VisitPrompt {
    private static final Path USUAL_FILE = Path.of("visit.json");

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--ask",
            description =
                    "Ask at the prompt for what FILE lacks (visit.json where none is named), and keep the answers in it.")
    private boolean ask;

    @Option(
            names = "--kit",
            paramLabel = "KIT.json",
            description = "With --ask: what stays the same, your instruments, hoses, manifold and cylinders.")
    private Optional<Path> kit = Optional.empty();

    @Option(
            names = "--next",
            description =
                    "Put new readings and the scale on top of FILE: asked at the prompt, or from the file of --with.")
    private boolean next;

    @Option(
            names = "--with",
            paramLabel = "NEW.json",
            description = "With --next: a file with the fields that are new, in place of the prompt.")
    private Optional<Path> with = Optional.empty();

    /** Made by the command line library. */
    VisitPrompt() {}

    /** The file that is whole now; nothing where the person broke off. */
    Optional<Path> readied(Path named, Wording words) {
        boolean unnamed = named.toString().isEmpty();
        if ((ask && next) || (with.isPresent() && !next)) {
            throw new ParameterException(
                    spec.commandLine(), "--ask and --next exclude each other, and --with belongs to --next");
        }
        if (unnamed && !ask) {
            throw new ParameterException(spec.commandLine(), "Missing required parameter: 'FILE'");
        }
        Path file = unnamed ? USUAL_FILE : named;
        if (!ask && !next) {
            kitDifference(file, words);
            return Optional.of(file);
        }
        VisitAsk.Ended ended =
                with.map(readings -> VisitAsk.next(file, readings, words)).orElseGet(() -> asked(file, words));
        ended.notes().forEach(note -> spec.commandLine().getErr().println("satline: " + Shown.line(note)));
        return ended.whole() ? Optional.of(file) : Optional.empty();
    }

    private VisitAsk.Ended asked(Path file, Wording words) {
        Optional<Kit> own = kit.map(Kit::read);
        try (LinePrompt prompt = LinePrompt.ofThisTerminal()) {
            LocalDateTime now = LocalDateTime.now(ZoneId.systemDefault());
            return next ? VisitAsk.next(file, prompt, now, words) : VisitAsk.ask(file, own, prompt, now, words);
        }
    }

    /** A visit that cannot be read says so by itself later. */
    private void kitDifference(Path file, Wording words) {
        try {
            Kit.difference(VisitStore.read(file), file, kit.map(Kit::read), words)
                    .ifPresent(note -> spec.commandLine().getErr().println("satline: " + Shown.line(note)));
        } catch (BadInputException unreadable) {
            if (kit.isPresent()) {
                throw unreadable;
            }
        }
    }
}
