package afterlength.start.document;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/** Bytes to text and answers to text; the same answer is the same text, byte for byte, on every machine. */
final class JsonText {
    private static final DefaultIndenter LINES = new DefaultIndenter("  ", "\n");

    private static final ObjectWriter WRITER = JsonMapper.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build()
            .writer()
            .with(new DefaultPrettyPrinter()
                    .withSeparators(Separators.createDefaultInstance()
                            .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                            .withArrayEmptySeparator("")
                            .withObjectEmptySeparator(""))
                    .withObjectIndenter(LINES)
                    .withArrayIndenter(LINES));

    private JsonText() {}

    /** The text, or nothing where the bytes are not UTF-8. A byte order mark at the start is dropped. */
    static Optional<String> findText(byte[] bytes) {
        try {
            // A new decoder reports what is broken; the String constructor would repair it silently.
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException broken) {
            return Optional.empty();
        }
    }

    static String write(Object document) {
        return WRITER.writeValueAsString(document) + "\n";
    }
}
