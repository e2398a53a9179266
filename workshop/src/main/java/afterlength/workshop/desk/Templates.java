package afterlength.workshop.desk;

import gg.jte.Content;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;

/**
 * Shows a page record through the template that has its name and lies beside it: {@code examination.ExaminationPage} through
 * {@code examination/ExaminationPage.jte}, whose one parameter is called {@code page}. Templates are compiled with the program.
 */
public final class Templates {
    private static final TemplateEngine ENGINE =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "afterlength");
    private static final String ROOT = "afterlength.";

    private Templates() {}

    public static void show(Context context, Record page) {
        context.contentType("text/html; charset=utf-8").result(text(page));
    }

    /** The page or part as text, for a paper or a part of a page. */
    public static String text(Record page) {
        StringOutput output = new StringOutput();
        ENGINE.render(nameOf(page.getClass()), page, output);
        return output.toString();
    }

    /** The part as content that another template can place. */
    public static Content part(Record page) {
        return output -> ENGINE.render(nameOf(page.getClass()), page, output);
    }

    static String nameOf(Class<?> page) {
        return page.getName().substring(ROOT.length()).replace('.', '/') + ".jte";
    }
}
