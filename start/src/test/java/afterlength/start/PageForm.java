package afterlength.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;

/**
 * A form as it stands on a page.
 *
 * @param address where it leads, with its query
 * @param uploads the name of its file field, or empty
 */
record PageForm(String address, boolean posts, String uploads, List<Field> fields) {

    /**
     * One field.
     *
     * @param value as the page fills it
     * @param choices what may be chosen; empty where anything may be typed
     */
    record Field(String name, String kind, String value, List<String> choices) {
        boolean written() {
            return choices.isEmpty() && !kind.equals("hidden") && !kind.equals("submit");
        }
    }

    /** Every form of a page, one for each button that says something of its own. */
    static List<PageForm> of(Document page) {
        List<PageForm> forms = new ArrayList<>();
        for (Element form : page.select("form")) {
            List<Element> inside = new ArrayList<>(form.select("input, textarea, select"));
            if (!form.id().isEmpty()) {
                inside.addAll(page.select("[form=" + form.id() + "]:not(button)"));
            }
            List<Element> buttons = form.select("button[name]");
            addWith(form, inside, null, forms);
            buttons.forEach(button -> addWith(form, inside, button, forms));
        }
        return forms;
    }

    private static void addWith(Element form, List<Element> inside, @Nullable Element button, List<PageForm> forms) {
        List<Field> fields = new ArrayList<>();
        String uploads = "";
        for (Element each : inside) {
            if (each.attr("type").equals("file")) {
                uploads = each.attr("name");
            } else if (!each.attr("name").isEmpty()) {
                add(each, inside, fields);
            }
        }
        if (button != null) {
            fields.add(new Field(button.attr("name"), "submit", button.attr("value"), List.of()));
        }
        String address =
                button != null && button.hasAttr("formaction") ? button.attr("formaction") : form.attr("action");
        forms.add(new PageForm(address, form.attr("method").equalsIgnoreCase("post"), uploads, fields));
    }

    private static void add(Element each, List<Element> inside, List<Field> fields) {
        String name = each.attr("name");
        if (each.tagName().equals("select")) {
            List<String> choices = each.select("option").eachAttr("value");
            fields.add(new Field(name, "select", each.select("option[selected]").attr("value"), choices));
        } else if (each.tagName().equals("textarea")) {
            fields.add(new Field(name, "text", each.wholeText(), List.of()));
        } else if (!each.attr("type").equals("radio") && !each.attr("type").equals("checkbox")) {
            boolean number = each.attr("inputmode").equals("decimal")
                    || each.attr("inputmode").equals("numeric");
            fields.add(new Field(name, number ? "number" : each.attr("type"), each.attr("value"), List.of()));
        } else if (fields.stream().noneMatch(field -> field.name().equals(name))) {
            List<Element> all =
                    inside.stream().filter(one -> one.attr("name").equals(name)).toList();
            String chosen = all.stream()
                    .filter(one -> one.hasAttr("checked"))
                    .map(one -> one.attr("value"))
                    .findFirst()
                    .orElse("");
            fields.add(new Field(
                    name,
                    each.attr("type"),
                    chosen,
                    all.stream().map(one -> one.attr("value")).toList()));
        }
    }

    /** What is sent when each field that can be written holds what the writer says; choices are the first when none is made. */
    List<Map.Entry<String, String>> filled(UnaryOperator<Field> writer) {
        return fields.stream()
                .map(writer)
                .filter(field ->
                        !field.kind().equals("checkbox") || !field.value().isEmpty())
                .map(field -> Map.entry(
                        field.name(),
                        field.value().isEmpty() && !field.choices().isEmpty()
                                ? field.choices().get(0)
                                : field.value()))
                .toList();
    }

    /** The kind of form, whatever the row: numbers in the address stand for any. */
    String kind() {
        return (posts ? "POST " : "GET ") + address.replaceAll("\\?.*", "").replaceAll("/\\d+", "/N");
    }
}
