package org.satline.program.ask;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jline.terminal.impl.ExternalTerminal;

/**
 * A person at a terminal without cursor keys, over pipes: for each question the first rule whose words stand in it types its answer;
 * without one the input ends.
 */
final class Typed implements AutoCloseable {
    /** What Ctrl-C sends. */
    static final String CTRL_C = "\u0003";

    private static final int MOST_TIMES = 20;

    private final Map<String, List<String>> rules;
    private final PipedOutputStream keys = new PipedOutputStream();
    private final ByteArrayOutputStream screen = new ByteArrayOutputStream();
    private final List<String> asked = new ArrayList<>();
    private final LinePrompt prompt;

    /** Answers by words of the question; the last answer of a list stays. */
    Typed(Map<String, List<String>> rules) {
        this.rules = rules;
        try {
            InputStream in = new PipedInputStream(keys, 65_536);
            prompt = new LinePrompt(new ExternalTerminal("test", "dumb", in, screen, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Prompt prompt() {
        return new Prompt() {
            @Override
            public void say(String line) {
                prompt.say(line);
            }

            @Override
            public String ask(String question) {
                type(question);
                return prompt.ask(question);
            }
        };
    }

    private void type(String question) {
        long before = asked.stream().filter(question::equals).count();
        asked.add(question);
        if (before > MOST_TIMES) {
            throw new AssertionError("asked again and again: " + question);
        }
        try {
            for (Map.Entry<String, List<String>> rule : rules.entrySet()) {
                if (question.contains(rule.getKey())) {
                    List<String> answers = rule.getValue();
                    String answer = answers.get((int) Math.min(before, answers.size() - 1L));
                    if (answer.equals(CTRL_C)) {
                        later(answer);
                    } else {
                        keys.write((answer + "\n").getBytes(StandardCharsets.UTF_8));
                        keys.flush();
                    }
                    return;
                }
            }
            keys.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A signal is heard only while a line is being read. */
    private void later(String answer) {
        Thread typist = new Thread(() -> {
            try {
                Thread.sleep(500);
                keys.write(answer.getBytes(StandardCharsets.UTF_8));
                keys.flush();
                // a pipe whose writer is gone counts as broken
                Thread.sleep(5000);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        });
        typist.setDaemon(true);
        typist.start();
    }

    /** All questions that were asked, in order. */
    List<String> asked() {
        return asked;
    }

    /** All that stood on the screen. */
    String screen() {
        return screen.toString(StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        prompt.close();
    }
}
