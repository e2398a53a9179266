package afterlength.workshop.tablet;

import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/**
 * The shop's own certificate, made by the Java platform's {@code keytool} and kept in the shop's folder, readable to its owner alone.
 * Nobody vouches for it: the tablet warns once, and the fingerprint on the shop's screen tells whether it is this one.
 */
final class TabletKey {
    private static final String ALIAS = "tablet";

    /** The file is guarded by who may read it; a password beside it would guard nothing. */
    private static final String PASSWORD = "afterlength";

    private final Path file;

    TabletKey(ShopFolder shop) {
        file = shop.root().resolve("tablet-key.p12");
    }

    /** The key, made when there is none yet. */
    SslContextFactory.Server open(List<String> addresses) throws IOException {
        if (!Files.exists(file)) {
            make(addresses);
        }
        SslContextFactory.Server tls = new SslContextFactory.Server();
        tls.setKeyStorePath(file.toUri().toString());
        tls.setKeyStoreType("PKCS12");
        tls.setKeyStorePassword(PASSWORD);
        tls.setSniRequired(false);
        return tls;
    }

    /** SHA-256 of the certificate, in pairs, as browsers show it. */
    String fingerprint() throws IOException {
        try (InputStream stored = Files.newInputStream(file)) {
            KeyStore keys = KeyStore.getInstance("PKCS12");
            keys.load(stored, PASSWORD.toCharArray());
            byte[] certificate = keys.getCertificate(ALIAS).getEncoded();
            return HexFormat.ofDelimiter(":")
                    .withUpperCase()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(certificate));
        } catch (GeneralSecurityException broken) {
            throw new IOException("the certificate in " + file + " cannot be read", broken);
        }
    }

    private void make(List<String> addresses) throws IOException {
        Path part = file.resolveSibling("tablet-key.part");
        Files.deleteIfExists(part);
        String names = addresses.stream().map(address -> "ip:" + address).collect(Collectors.joining(","));
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                ALIAS,
                "-keyalg",
                "EC",
                "-groupname",
                "secp256r1",
                "-validity",
                "3650",
                "-dname",
                "CN=Afterlength shop",
                "-ext",
                "SAN=ip:127.0.0.1" + (names.isEmpty() ? "" : "," + names),
                "-storetype",
                "PKCS12",
                "-keystore",
                part.toString(),
                "-storepass",
                PASSWORD);
        Process keytool = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(keytool.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        try {
            if (keytool.waitFor() != 0) {
                throw new IOException("no certificate could be made: " + said.strip());
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IOException(stopped);
        }
        ownerAlone(part);
        Files.move(part, file);
    }

    private static void ownerAlone(Path file) throws IOException {
        if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }
}
