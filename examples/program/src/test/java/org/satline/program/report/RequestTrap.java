package org.satline.program.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Stands between the browser and the network: writes down the first line of each request and answers none. */
final class RequestTrap implements AutoCloseable {
    private final ServerSocket server;
    private final List<String> requests = new CopyOnWriteArrayList<>();

    private RequestTrap(ServerSocket server) {
        this.server = server;
    }

    static RequestTrap opened() throws IOException {
        RequestTrap trap = new RequestTrap(new ServerSocket(0, 50, InetAddress.getLoopbackAddress()));
        Thread thread = new Thread(trap::run, "request-trap");
        thread.setDaemon(true);
        thread.start();
        return trap;
    }

    int port() {
        return server.getLocalPort();
    }

    List<String> requests() {
        return List.copyOf(requests);
    }

    private void run() {
        while (!server.isClosed()) {
            try (Socket socket = server.accept();
                    BufferedReader reader = new BufferedReader(
                            new InputStreamReader(socket.getInputStream(), StandardCharsets.ISO_8859_1))) {
                String line = reader.readLine();
                if (line != null) {
                    requests.add(line);
                }
                socket.getOutputStream()
                        .write("HTTP/1.1 502 Bad Gateway\r\nContent-Length: 0\r\nConnection: close\r\n\r\n"
                                .getBytes(StandardCharsets.ISO_8859_1));
            } catch (IOException e) {
                if (!server.isClosed()) {
                    throw new UncheckedIOException(e);
                }
            }
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
    }
}
