package afterlength.start;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** Walks through a shop along its links, some rows of each kind of page, and gathers the forms it meets. */
final class Crawl {
    private static final int ROWS_OF_A_KIND = 3;

    private final Caller caller;
    private final Map<String, Integer> seenOfKind = new HashMap<>();
    private final Set<String> seen = new TreeSet<>();
    private final Deque<String> waiting = new ArrayDeque<>();
    private final Map<String, List<PageForm>> forms = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();

    Crawl(Caller caller) {
        this.caller = caller;
    }

    /** Visits every page that can be reached. */
    Crawl walk() throws IOException {
        meet("/");
        while (!waiting.isEmpty()) {
            String path = waiting.removeFirst();
            look(path, caller.get(path));
        }
        return this;
    }

    /** Forms by kind, in the order they were met. */
    Map<String, List<PageForm>> forms() {
        return forms;
    }

    Set<String> pages() {
        return seen;
    }

    List<String> faults() {
        return faults;
    }

    /** Looks at an answer as at a page: what must not stand on it, and where it leads. */
    void look(String path, Caller.Answer answer) {
        if (answer.status() >= 500) {
            faults.add(path + " was answered with " + answer.status());
        }
        if (answer.kind().startsWith("text/csv")) {
            faults.addAll(CsvFaults.of(path, answer.text()));
        }
        if (answer.page()) {
            Document page = Jsoup.parse(answer.text());
            faults.addAll(HostileText.faults(path, answer.text(), page));
            page.select("a[href], link[href], img[src], script[src]").forEach(this::follow);
            PageForm.of(page).forEach(this::gather);
        }
    }

    private void gather(PageForm form) {
        List<PageForm> same = forms.computeIfAbsent(
                form.kind()
                        + form.fields().stream()
                                .filter(field -> field.kind().equals("submit"))
                                .map(field -> " " + field.name() + "=" + field.value())
                                .findFirst()
                                .orElse(""),
                kind -> new ArrayList<>());
        if (same.size() < ROWS_OF_A_KIND) {
            same.add(form);
        }
    }

    private void follow(Element element) {
        String address = element.hasAttr("href") ? element.attr("href") : element.attr("src");
        if (address.startsWith("/") && !address.startsWith("//")) {
            meet(address.replaceFirst("#.*", ""));
        }
    }

    private void meet(String path) {
        String kind = path.replaceAll("\\d+", "N").replaceAll("=[^&]*", "=");
        if (!seen.contains(path) && seenOfKind.merge(kind, 1, Integer::sum) <= ROWS_OF_A_KIND) {
            seen.add(path);
            waiting.addLast(path);
        }
    }
}
