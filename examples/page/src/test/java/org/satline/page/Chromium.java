package org.satline.page;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * A chromium without a screen, driven over its DevTools protocol (https://chromedevtools.github.io/devtools-protocol). Where none can be
 * started this fails and says so; it never skips.
 */
final class Chromium implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Duration PATIENCE = Duration.ofMinutes(2);
    private static final Path TARGET = Path.of("target", "profiles");
    private static final String LISTENING = "DevTools listening on ws://";

    private final Process process;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> waiting = new ConcurrentHashMap<>();
    private final ConcurrentLinkedQueue<JsonNode> events = new ConcurrentLinkedQueue<>();
    private int sent;

    Chromium() {
        try {
            Files.createDirectories(TARGET);
            Path profile = Files.createTempDirectory(TARGET.toAbsolutePath(), "profile");
            process = new ProcessBuilder(
                            "chromium",
                            "--headless=new",
                            "--no-sandbox",
                            "--disable-gpu",
                            "--disable-dev-shm-usage",
                            "--no-first-run",
                            "--disable-background-networking",
                            "--disable-component-update",
                            "--user-data-dir=" + profile,
                            "--remote-debugging-port=0",
                            "about:blank")
                    .redirectErrorStream(true)
                    .start();
        } catch (IOException e) {
            throw new UncheckedIOException("chromium could not be started; install the package chromium", e);
        }
        String address = address();
        HttpClient client = HttpClient.newHttpClient();
        socket = client.newWebSocketBuilder()
                .buildAsync(URI.create(pageAddress(client, address)), new Listener())
                .join();
        for (String domain : List.of("Page", "Runtime", "Network", "Log")) {
            send(domain + ".enable", Map.of());
        }
    }

    private String address() {
        try {
            BufferedReader out =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            List<String> said = new ArrayList<>();
            for (String line = out.readLine(); line != null; line = out.readLine()) {
                said.add(line);
                if (line.startsWith(LISTENING)) {
                    Thread drain = new Thread(() -> out.lines().forEach(each -> {}));
                    drain.setDaemon(true);
                    drain.start();
                    return line.substring(LISTENING.length(), line.indexOf("/devtools"));
                }
            }
            throw new IllegalStateException("chromium ended before it listened: " + said);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String pageAddress(HttpClient client, String address) {
        try {
            HttpRequest list = HttpRequest.newBuilder(URI.create("http://" + address + "/json/list"))
                    .build();
            JsonNode pages = JSON.readTree(
                    client.send(list, HttpResponse.BodyHandlers.ofString()).body());
            for (JsonNode page : pages) {
                if (page.path("type").asText().equals("page")) {
                    return page.path("webSocketDebuggerUrl").asText();
                }
            }
            throw new IllegalStateException("chromium shows no page: " + pages);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private final class Listener implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence data, boolean last) {
            text.append(data);
            if (last) {
                try {
                    JsonNode message = JSON.readTree(text.toString());
                    CompletableFuture<JsonNode> asked =
                            waiting.remove(message.path("id").asInt(-1));
                    if (asked == null) {
                        events.add(message);
                    } else {
                        asked.complete(message);
                    }
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
                text.setLength(0);
            }
            from.request(1);
            return CompletableFuture.completedStage(null);
        }
    }

    /** Sends a command and waits for its answer. */
    JsonNode send(String method, Map<String, ?> parameters) {
        ObjectNode message = JSON.createObjectNode().put("id", ++sent).put("method", method);
        message.set("params", JSON.valueToTree(parameters));
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        waiting.put(sent, answer);
        socket.sendText(message.toString(), true).join();
        try {
            JsonNode result = answer.get(PATIENCE.toSeconds(), TimeUnit.SECONDS);
            if (result.has("error")) {
                throw new IllegalStateException(method + ": " + result.path("error"));
            }
            return result.path("result");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException | TimeoutException e) {
            throw new IllegalStateException(method + " was not answered", e);
        }
    }

    /** Runs a script in the page and returns its value; what it throws is thrown here. */
    JsonNode run(String script) {
        JsonNode result =
                send("Runtime.evaluate", Map.of("expression", script, "returnByValue", true, "awaitPromise", true));
        if (result.has("exceptionDetails")) {
            throw new IllegalStateException(script + ": " + result.path("exceptionDetails"));
        }
        return result.path("result").path("value");
    }

    /** Waits until a script yields true. */
    void until(String script) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!run(script).asBoolean()) {
            if (System.nanoTime() > end) {
                throw new IllegalStateException("never came true: " + script);
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(20);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /**
     * A finger on the element that a script yields, scrolled into sight; it must be as large as a gloved finger asks.
     */
    void touch(String element) {
        JsonNode at = run("(function() { const e = " + element + "; if (!e) { throw new Error('not there'); }"
                + " e.scrollIntoView({block: 'center'}); const r = e.getBoundingClientRect();"
                + " return [r.x + r.width / 2, r.y + r.height / 2]; })()");
        Map<String, Object> point =
                Map.of("x", at.path(0).asDouble(), "y", at.path(1).asDouble());
        send("Input.dispatchTouchEvent", Map.of("type", "touchStart", "touchPoints", List.of(point)));
        send("Input.dispatchTouchEvent", Map.of("type", "touchEnd", "touchPoints", List.of()));
    }

    void type(String text) {
        send("Input.insertText", Map.of("text", text));
    }

    void key(String name, int code) {
        Map<String, Object> key =
                new java.util.HashMap<>(Map.of("key", name, "code", name, "windowsVirtualKeyCode", code));
        if (name.equals("Enter")) {
            key.put("text", "\r");
        }
        for (String type : List.of("keyDown", "keyUp")) {
            java.util.HashMap<String, Object> event = new java.util.HashMap<>(key);
            event.put("type", type);
            send("Input.dispatchKeyEvent", event);
        }
    }

    /** A phone of 360 by 740 with fingers. */
    void beAPhone() {
        send(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", 360, "height", 740, "deviceScaleFactor", 2, "mobile", true));
        send("Emulation.setTouchEmulationEnabled", Map.of("enabled", true));
    }

    void open(Path page) {
        run("globalThis.before = true");
        send("Page.navigate", Map.of("url", page.toUri().toString()));
        until("globalThis.before === undefined && document.documentElement?.dataset.ready !== undefined");
    }

    /** A picture of the whole page, for people to look at. */
    void picture(Path file) {
        String png = send("Page.captureScreenshot", Map.of("format", "png"))
                .path("data")
                .asText();
        try {
            Files.createDirectories(file.getParent());
            Files.write(file, java.util.Base64.getDecoder().decode(png));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Requests to anything but the page itself and what it made up on its own. */
    List<String> requests() {
        return events.stream()
                .filter(event -> event.path("method").asText().equals("Network.requestWillBeSent"))
                .map(event -> event.path("params").path("request").path("url").asText())
                .filter(url -> !url.startsWith("file:")
                        && !url.startsWith("blob:")
                        && !url.startsWith("data:")
                        && !url.equals("about:blank"))
                .toList();
    }

    /** Errors of scripts and of the console. */
    List<String> errors() {
        return events.stream().filter(Chromium::isError).map(JsonNode::toString).toList();
    }

    private static boolean isError(JsonNode event) {
        JsonNode parameters = event.path("params");
        return switch (event.path("method").asText()) {
            case "Runtime.exceptionThrown" -> true;
            case "Log.entryAdded" ->
                parameters.path("entry").path("level").asText().equals("error");
            case "Runtime.consoleAPICalled" -> parameters.path("type").asText().equals("error");
            default -> false;
        };
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        try {
            if (!process.waitFor(10, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
