package org.satline.program;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.satline.explanation.Figure;
import org.satline.program.exercise.Difficulty;
import org.satline.program.exercise.ExerciseSheet;
import org.satline.program.exercise.PageForm;
import org.satline.program.exercise.SheetOrder;
import org.satline.program.exercise.Topic;
import org.satline.program.file.BadInputException;
import org.satline.program.file.Shown;
import org.satline.program.file.WholeFile;
import org.satline.program.words.ProgramWording;
import org.satline.quantity.UnitSystem;
import org.satline.wording.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Draws exercises for teaching. */
@Command(
        name = "exercise",
        description = {
            "Draws exercises for teaching: a question sheet and an answer key with each step's formula and numbers. Without --sheet, --key and --gift the"
                    + " sheet goes to standard output.",
            "Topics: saturation, superheat-subcooling, glide, altitude, fill-limit, flow, purge, verdict, next-step."
        },
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        footer = {"", "Exercises do not replace training: local codes and licensed practice come first."})
final class ExerciseCommand implements Callable<Integer> {
    private static final String RISING = "rising";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--seed",
            defaultValue = "1",
            paramLabel = "N",
            description = "Same seed, same sheet; 1 by default.")
    private long seed;

    @Option(
            names = "--difficulty",
            defaultValue = RISING,
            paramLabel = "GRADE",
            description = "starting, practised, experienced, or rising through all three (default).")
    private String difficulty = RISING;

    @Option(
            names = "--count",
            paramLabel = "N",
            description = "How many exercises; one for each topic by default, 100 at most.")
    private @Nullable Integer count;

    @Option(
            names = "--topic",
            arity = "1..*",
            split = ",",
            paramLabel = "T",
            description = "Topics, taken in turn; all by default.")
    private List<String> topics = new ArrayList<>();

    @Option(
            names = "--units",
            paramLabel = "SYSTEM",
            description = "SI (degC, kPa, kg) or US (degF, psi, lb); drawn for each exercise by default.")
    private @Nullable UnitSystem units;

    @Option(
            names = "--sheet",
            paramLabel = "FILE",
            description = "Where the questions go: .md for Markdown, .html for a page to print.")
    private @Nullable Path sheet;

    @Option(names = "--key", paramLabel = "FILE", description = "Where the answers go, likewise.")
    private @Nullable Path key;

    @Option(
            names = "--gift",
            paramLabel = "FILE",
            description = "Where questions with answers go as GIFT text, which learning platforms import.")
    private @Nullable Path gift;

    @Option(
            names = "--versions",
            defaultValue = "1",
            paramLabel = "N",
            description =
                    "How many versions of the sheet, 1 to 4: same topics, other figures; each file's name then ends in -A, -B, ...")
    private int versions = 1;

    @Option(
            names = "--tick",
            description =
                    "Answers are ticked where enough usual mistakes are known to choose from; written out by default.")
    private boolean tick;

    @Mixin
    private LanguageOption language = new LanguageOption();

    /** Made by the command line library. */
    ExerciseCommand() {}

    @Override
    public Integer call() {
        try {
            PageForm sheetForm = form(sheet);
            PageForm keyForm = form(key);
            refuseOneFileForTwo();
            PrintWriter out = spec.commandLine().getOut();
            ExerciseSheet.Answering answering = tick ? ExerciseSheet.Answering.TICKED : ExerciseSheet.Answering.WRITTEN;
            List<SheetOrder> orders = orders();
            if (sheet == null && key == null && gift == null) {
                orders.forEach(order -> out.print(
                        ExerciseSheet.of(order, language.language()).questions(PageForm.MARKDOWN, answering)));
                out.flush();
                return ExitStatus.DONE;
            }
            Map<Path, String> pages = new LinkedHashMap<>();
            for (SheetOrder order : orders) {
                ExerciseSheet drawn = ExerciseSheet.of(order, language.language());
                if (sheet != null) {
                    pages.put(named(sheet, order), drawn.questions(sheetForm, answering));
                }
                if (key != null) {
                    pages.put(named(key, order), drawn.key(keyForm));
                }
                if (gift != null) {
                    pages.put(named(gift, order), drawn.gift());
                }
            }
            write(pages);
            Wording words = ProgramWording.of(language.language(), UnitSystem.US);
            pages.keySet()
                    .forEach(file -> out.println(
                            words.message("exercise.written", Figure.of("a", Shown.line(file.toString())))));
            return ExitStatus.DONE;
        } catch (IllegalArgumentException e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        }
    }

    private void refuseOneFileForTwo() {
        Set<Path> seen = new HashSet<>();
        for (Path file : Arrays.asList(sheet, key, gift)) {
            if (file != null && !seen.add(file.toAbsolutePath().normalize())) {
                throw new BadInputException(
                        file + ": sheet, key and GIFT text cannot go to the same file; name a file for each");
            }
        }
    }

    private List<SheetOrder> orders() {
        int most = SheetOrder.Version.values().length;
        if (versions < 1 || versions > most) {
            throw new BadInputException("--versions " + versions + " is outside [1, " + most + "]");
        }
        SheetOrder first = order();
        return Stream.of(SheetOrder.Version.values())
                .limit(versions)
                .map(first::as)
                .toList();
    }

    /** The file of a version; the name itself where there is one version only. */
    private Path named(Path file, SheetOrder order) {
        if (versions == 1) {
            return file;
        }
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        int end = dot > 0 ? dot : name.length();
        return file.resolveSibling(name.substring(0, end) + "-" + order.version() + name.substring(end));
    }

    private SheetOrder order() {
        List<Topic> wanted = topics.isEmpty()
                ? List.of(Topic.values())
                : topics.stream().map(Topic::ofLabel).toList();
        return new SheetOrder(seed, count == null ? wanted.size() : count, grade(), wanted, Optional.ofNullable(units));
    }

    private Optional<Difficulty> grade() {
        if (difficulty.equals(RISING)) {
            return Optional.empty();
        }
        try {
            return Optional.of(Difficulty.ofLabel(difficulty));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(e.getMessage() + ", " + RISING);
        }
    }

    private static PageForm form(@Nullable Path file) {
        return file == null ? PageForm.MARKDOWN : PageForm.ofFileName(file.toString());
    }

    /** Both drafts stand before either appears, so that a file that cannot be written leaves none behind. */
    private static void write(Map<Path, String> pages) {
        List<WholeFile> drafts = new ArrayList<>();
        try {
            try {
                for (Map.Entry<Path, String> page : pages.entrySet()) {
                    WholeFile draft = WholeFile.startedFor(page.getKey());
                    drafts.add(draft);
                    draft.stream().write(page.getValue().getBytes(StandardCharsets.UTF_8));
                }
                for (WholeFile draft : drafts) {
                    draft.commit();
                }
            } finally {
                for (WholeFile draft : drafts) {
                    draft.close();
                }
            }
        } catch (IOException e) {
            throw new BadInputException(pages.keySet() + ": cannot be written (" + e.getMessage() + ")");
        }
    }
}
