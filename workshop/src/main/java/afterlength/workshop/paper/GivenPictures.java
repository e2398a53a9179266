package afterlength.workshop.paper;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import com.openhtmltopdf.extend.FSUriResolver;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The only place a paper's pictures come from: what was given with it, by name. Any other address, of a file or of the
 * network, resolves to nothing.
 */
final class GivenPictures implements FSUriResolver, FSStreamFactory {
    static final String PROTOCOL = "given";

    private static final String PREFIX = PROTOCOL + ":";

    private final Map<String, byte[]> pictures;

    GivenPictures(Map<String, byte[]> pictures) {
        this.pictures = pictures;
    }

    @Override
    public @Nullable String resolveURI(@Nullable String baseUri, String uri) {
        if (uri.startsWith(PREFIX)) {
            return uri;
        }
        return pictures.containsKey(uri) ? PREFIX + uri : null;
    }

    @Override
    public FSStream getUrl(String url) {
        byte[] picture = Objects.requireNonNull(pictures.get(url.substring(PREFIX.length())), url);
        return new FSStream() {
            @Override
            public InputStream getStream() {
                return new ByteArrayInputStream(picture);
            }

            @Override
            public Reader getReader() {
                return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
            }
        };
    }
}
