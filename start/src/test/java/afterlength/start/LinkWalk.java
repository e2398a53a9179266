package afterlength.start;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;

/**
 * Walks a shop from Today and its first instrument along every link of every page, breadth first. Of pages that differ by numbers only, the first few are
 * looked at; papers, pictures and files are not pages.
 */
final class LinkWalk {
    private static final int OF_EACH_KIND = 2;
    private static final String NO_PAGE =
            ".*(\\.pdf|\\.csv|\\.json|\\.jsonld|\\.svg|\\.png|\\.jpg|\\.ics|\\.vcf)(\\?.*)?|/photographs/\\d+(/small)?(\\?.*)?";

    private final Page page;
    private final String root;
    private final Deque<String> ahead = new ArrayDeque<>(List.of("/", "/instruments/1"));
    private final Set<String> known = new HashSet<>(ahead);
    private final Map<String, Integer> seenOfKind = new HashMap<>();

    private LinkWalk(Page page, String root) {
        this.page = page;
        this.root = root;
    }

    /**
     * Walks.
     *
     * @param root the address of the desk, with a slash at its end
     * @param look is shown the kind of each page, such as "/visits/#/work", while the browser stands on it
     * @return the kinds that were seen
     */
    static Set<String> of(Page page, String root, BiConsumer<String, Page> look) {
        LinkWalk walk = new LinkWalk(page, root.substring(0, root.length() - 1));
        while (!walk.ahead.isEmpty()) {
            walk.walk(walk.ahead.poll(), look);
        }
        return walk.seenOfKind.keySet();
    }

    private void walk(String path, BiConsumer<String, Page> look) {
        String kind = kind(path);
        if (seenOfKind.merge(kind, 1, Integer::sum) > OF_EACH_KIND) {
            return;
        }
        APIResponse answer = page.request().get(root + path);
        if (answer.status() >= 400) {
            throw new AssertionError(path + " answers " + answer.status());
        }
        if (!answer.headers().getOrDefault("content-type", "").startsWith("text/html")) {
            seenOfKind.remove(kind);
            return;
        }
        page.navigate(root + path);
        look.accept(kind, page);
        links().stream()
                .filter(link -> link.startsWith("/") && !link.matches(NO_PAGE))
                .filter(known::add)
                .forEach(ahead::add);
    }

    @SuppressWarnings("unchecked")
    private List<String> links() {
        return (List<String>) page.evaluate("Array.from(document.querySelectorAll('a[href]:not([download])'),"
                + " a => a.getAttribute('href').replace(/#.*/, ''))");
    }

    /** Numbers and names of treatments are left out, and of a question behind the address only its names stay. */
    private static String kind(String path) {
        return path.replaceAll("(?<=/shelf/times/)[a-z-]+", "-")
                .replaceAll("\\d+", "#")
                .replaceAll("=[^&]*", "");
    }
}
