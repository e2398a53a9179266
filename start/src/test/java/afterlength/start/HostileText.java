package afterlength.start;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Text that would act if it were taken for more than text, and the signs that it was. */
final class HostileText {
    /** Short, so that it fits where only a few letters do, and long for the rest. */
    static final List<String> ALL = List.of(
            "<xss-probe>",
            "\"><xss-probe>",
            "'><xss-probe x='",
            "</textarea></title></script><xss-probe>",
            "<script>hostile()</script><xss-probe>",
            "<img src=x onerror=hostile()>",
            "\" onfocus=\"hostile()\" x=\"",
            "javascript:hostile()",
            "=HYPERLINK(\"http://evil.example\")",
            "@SUM(1)",
            "+1+cmd|' /C calc'!A0",
            "-2+3",
            "\t=1+1",
            "' OR 1=1 --",
            "'; DROP TABLE finding; --",
            "${7*7} #{7*7} {{7*7}}",
            "../../../../etc/passwd",
            "..\\..\\windows",
            "\u202Egnp.exe",
            "\uD83C\uDFBB Zażółć ﷽ \u202E \u0000",
            "a\r\nSet-Cookie: x=1");

    private static final List<String> ADDRESSES = List.of("href", "src", "action", "formaction", "hx-get", "hx-post");

    private HostileText() {}

    /** What stands on a page although text must not have made it. */
    static List<String> faults(String path, String raw, Document page) {
        List<String> faults = new ArrayList<>();
        if (!page.select("xss-probe").isEmpty()) {
            faults.add(path + ": text became an element: "
                    + page.select("xss-probe").parents().eachText());
        }
        // The owner's story is a file of its own that carries its style in it, once and at its head.
        String styles = path.contains("/story.html") ? "body style, style + style" : "style";
        for (Element script : page.select("script:not([src]), iframe, object, embed, base, " + styles)) {
            faults.add(path + ": " + script.outerHtml());
        }
        page.getAllElements()
                .forEach(element -> element.attributes().forEach(attribute -> look(path, attribute, faults)));
        if (raw.contains("49 #{") || raw.contains("root:x:0")) {
            faults.add(path + ": text was carried out");
        }
        return faults;
    }

    private static void look(String path, Attribute attribute, List<String> faults) {
        String name = attribute.getKey().toLowerCase(java.util.Locale.ROOT);
        if (name.startsWith("on") || name.equals("style")) {
            faults.add(path + ": attribute " + attribute);
        }
        if (ADDRESSES.contains(name) && attribute.getValue().strip().startsWith("javascript:")) {
            faults.add(path + ": address " + attribute);
        }
    }
}
