package afterlength.workshop.invoice;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Tax;
import afterlength.workshop.desk.MoneyText;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No amount ever passes through floating point: the compiled code of everything that reckons, reads or writes money is taken apart,
 * and no instruction, field or parameter in it may be a {@code float} or a {@code double}. Minutes are simulated in floating
 * point and become whole before they meet a rate; that code has no part in this list.
 */
class MoneyWithoutFloatingPointTest {
    /** Instructions on floating point numbers, and their letters in descriptors. */
    private static final Pattern FLOATING = Pattern.compile(
            "\\b([fd](add|sub|mul|div|rem|neg|cmp[lg]|const_\\d|load(_\\d)?|store(_\\d)?|return|aload|astore)"
                    + "|[ilfd]2[fd]|[fd]2[il])\\b|\\b(double|float)\\b|java/lang/(Double|Float)|descriptor: .*[(;)][ZBCSIJ]*[DF]");

    private static final List<String> OF_AGREEMENT = List.of(
            "Tax",
            "PriceSpan",
            "Reckoning",
            "Agreement",
            "AgreementLine",
            "Agreed",
            "ConsentForm",
            "Offers",
            "SinceAgreed");

    @TempDir
    Path aside;

    private List<Path> moneyClasses() throws IOException {
        List<Path> classes = new ArrayList<>();
        try (Stream<Path> invoice = Files.list(home(Invoice.class))) {
            invoice.filter(file -> file.toString().endsWith(".class")).forEach(classes::add);
        }
        OF_AGREEMENT.forEach(name -> classes.add(home(Tax.class).resolve(name + ".class")));
        classes.add(copyOf(Money.class));
        classes.add(home(MoneyText.class).resolve("MoneyText.class"));
        return classes;
    }

    /** A class of another module may lie in a jar. */
    private Path copyOf(Class<?> of) throws IOException {
        Path file = aside.resolve(of.getSimpleName() + ".class");
        try (InputStream in = of.getResourceAsStream(of.getSimpleName() + ".class")) {
            Files.copy(Objects.requireNonNull(in), file);
        }
        return file;
    }

    private static Path home(Class<?> of) {
        URI place = URI.create(
                of.getProtectionDomain().getCodeSource().getLocation().toString());
        Path root = Path.of(place);
        return root.resolve(of.getPackageName().replace('.', '/'));
    }

    private static String takenApart(Path file) {
        StringWriter out = new StringWriter();
        ToolProvider javap = ToolProvider.findFirst("javap").orElseThrow();
        int code = javap.run(new PrintWriter(out), new PrintWriter(out), "-p", "-c", "-s", file.toString());
        assertThat(code).as(out.toString()).isZero();
        return out.toString();
    }

    @Test
    void noInstructionOnMoneyIsFloatingPoint() throws Exception {
        List<Path> classes = moneyClasses();
        assertThat(classes).hasSizeGreaterThan(30);
        for (Path file : classes) {
            assertThat(FLOATING.matcher(takenApart(file)).results().map(hit -> hit.group()))
                    .as(file.getFileName().toString())
                    .isEmpty();
        }
    }

    /** The check sees what it looks for. */
    @Test
    void theCheckFindsFloatingPoint() throws Exception {
        Path sinner = home(MoneyWithoutFloatingPointTest.class).resolve("MoneyWithoutFloatingPointTest$Sinner.class");
        assertThat(FLOATING.matcher(takenApart(sinner)).results().map(hit -> hit.group()))
                .contains("dmul", "l2d", "d2l");
    }

    /** What nobody here may do. */
    @SuppressWarnings("unused")
    private static final class Sinner {
        static long taxed(long minor) {
            return (long) (minor * 1.19);
        }
    }
}
