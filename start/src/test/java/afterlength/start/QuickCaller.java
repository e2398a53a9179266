package afterlength.start;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Asks a shop over one connection that is kept, with as little work as can be; for thousands of requests in a row. Unlike
 * {@link Caller} it never sends anything a second time: a connection that is closed unannounced is seen.
 */
final class QuickCaller implements AutoCloseable {
    private static final int LONGEST_MS = 30_000;

    private final URI address;
    private @Nullable Socket socket;
    private @Nullable BufferedInputStream in;

    QuickCaller(String address) {
        this.address = URI.create(address);
    }

    Caller.Answer get(String path) throws IOException {
        return send("GET " + path, "", new byte[0]);
    }

    Caller.Answer post(String path, String kind, byte[] body) throws IOException {
        return send("POST " + path, "Content-Type: " + kind + "\r\nContent-Length: " + body.length + "\r\n", body);
    }

    private Caller.Answer send(String request, String headers, byte[] body) throws IOException {
        Socket open = socket == null ? connect() : socket;
        try {
            byte[] head = (request + " HTTP/1.1\r\nHost: " + address.getAuthority() + "\r\n" + headers + "\r\n")
                    .getBytes(StandardCharsets.ISO_8859_1);
            byte[] all = new byte[head.length + body.length];
            System.arraycopy(head, 0, all, 0, head.length);
            System.arraycopy(body, 0, all, head.length, body.length);
            open.getOutputStream().write(all);
            return read();
        } catch (IOException broken) {
            close();
            throw broken;
        }
    }

    private Socket connect() throws IOException {
        Socket open = new Socket(InetAddress.getByName(address.getHost()), address.getPort());
        open.setTcpNoDelay(true);
        open.setSoTimeout(LONGEST_MS);
        socket = open;
        in = new BufferedInputStream(open.getInputStream(), 1 << 16);
        return open;
    }

    private Caller.Answer read() throws IOException {
        String[] status = line().split(" ", 3);
        Map<String, String> headers = new HashMap<>();
        for (String line = line(); !line.isEmpty(); line = line()) {
            int colon = line.indexOf(':');
            headers.put(
                    line.substring(0, colon).toLowerCase(Locale.ROOT),
                    line.substring(colon + 1).strip());
        }
        int code = Integer.parseInt(status[1]);
        byte[] body = code == 204 || code == 304 ? new byte[0] : body(headers);
        if (headers.getOrDefault("connection", "").equalsIgnoreCase("close")) {
            close();
        }
        return new Caller.Answer(
                code,
                headers.getOrDefault("content-type", ""),
                headers.getOrDefault("location", "").replaceFirst("^https?://[^/]+", ""),
                new String(body, StandardCharsets.UTF_8));
    }

    private byte[] body(Map<String, String> headers) throws IOException {
        if (headers.containsKey("content-length")) {
            return bytes(Integer.parseInt(headers.getOrDefault("content-length", "0")));
        }
        if (!headers.getOrDefault("transfer-encoding", "").equals("chunked")) {
            throw new IOException("an answer without a length: " + headers);
        }
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (int length = Integer.parseInt(line(), 16); length > 0; length = Integer.parseInt(line(), 16)) {
            all.write(bytes(length));
            line();
        }
        line();
        return all.toByteArray();
    }

    private byte[] bytes(int length) throws IOException {
        byte[] bytes = open().readNBytes(length);
        if (bytes.length < length) {
            throw new EOFException("the answer ends after " + bytes.length + " of " + length + " bytes");
        }
        return bytes;
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int c = open().read(); c != '\n'; c = open().read()) {
            if (c < 0) {
                throw new EOFException("the connection was closed without an answer");
            }
            if (c != '\r') {
                line.append((char) c);
            }
        }
        return line.toString();
    }

    private BufferedInputStream open() throws IOException {
        if (in == null) {
            throw new IOException("not connected");
        }
        return in;
    }

    @Override
    public void close() throws IOException {
        if (socket != null) {
            socket.close();
        }
        socket = null;
        in = null;
    }
}
