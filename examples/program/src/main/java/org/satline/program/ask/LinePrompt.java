package org.satline.program.ask;

import java.io.IOError;
import java.io.IOException;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.satline.program.file.BadInputException;

/** Asks at a terminal, with its line editing. For one thread. */
public final class LinePrompt implements Prompt, AutoCloseable {
    private final Terminal terminal;
    private final LineReader reader;
    private final AtomicBoolean interrupted = new AtomicBoolean();

    /**
     * Asks at a given terminal.
     *
     * @param terminal closed with the prompt
     */
    public LinePrompt(Terminal terminal) {
        this.terminal = Objects.requireNonNull(terminal, "terminal");
        if (terminal.getWidth() <= 0) {
            // a terminal that does not know its size would shorten every line to nothing
            terminal.setSize(new Size(80, 24));
        }
        // between two questions Ctrl-C must not end the process before it says where the answers are
        terminal.handle(Terminal.Signal.INT, signal -> interrupted.set(true));
        this.reader = LineReaderBuilder.builder()
                .terminal(terminal)
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .variable(LineReader.BELL_STYLE, "none")
                .build();
    }

    /**
     * Asks at the terminal in which the program runs.
     *
     * @return the prompt
     * @throws BadInputException if it runs in none
     */
    public static LinePrompt ofThisTerminal() {
        try {
            return new LinePrompt(
                    TerminalBuilder.builder().system(true).dumb(false).build());
        } catch (IOException | IllegalStateException e) {
            throw new BadInputException(
                    "there is no terminal to ask at; run it in a terminal, or write the file (examples/program/README.md"
                            + " describes it) and run visit FILE");
        }
    }

    @Override
    public void say(String line) {
        terminal.writer().println(line);
        terminal.flush();
    }

    @Override
    public String ask(String question) {
        try {
            say(question.strip());
            if (interrupted.get()) {
                throw new BrokenOffException(BrokenOffException.How.BROKEN);
            }
            String typed = reader.readLine("> ").strip();
            if (interrupted.get()) {
                throw new BrokenOffException(BrokenOffException.How.BROKEN);
            }
            return typed;
        } catch (UserInterruptException e) {
            throw new BrokenOffException(BrokenOffException.How.BROKEN);
        } catch (EndOfFileException e) {
            throw new BrokenOffException(BrokenOffException.How.INPUT);
        } catch (IOError e) {
            throw new BrokenOffException(BrokenOffException.How.TERMINAL);
        }
    }

    @Override
    public void close() {
        try {
            terminal.close();
        } catch (IOException e) {
            throw new BadInputException("the terminal cannot be closed");
        }
    }
}
