package org.oldwood.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.oldwood.sheet.Label;

/** The page's own files, which hold nothing of any garden and are the same for everybody; and labels for its bushes. */
public final class WalkPage {
    private WalkPage() {}

    /** Labels to print: no script, no address. */
    public static String labels(String garden, List<Label> labels) {
        return render("labels.jte", Map.of("garden", garden, "labels", labels));
    }

    static String html() {
        return render("walk.jte", Map.of());
    }

    private static String render(String template, Map<String, Object> said) {
        // the templates of page and sheet are generated into one package, since they share the drawings of stems
        TemplateEngine engine = TemplateEngine.createPrecompiled(
                null, ContentType.Html, WalkPage.class.getClassLoader(), "org.oldwood.sheet");
        StringOutput page = new StringOutput();
        engine.render(template, said, page);
        return page.toString();
    }

    static String resource(String name) {
        try (InputStream in = WalkPage.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the page's " + name + " is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
