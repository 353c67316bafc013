package org.oldwood.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** The page's own files: they hold nothing of any garden, and are the same for everybody. */
final class WalkPage {
    private WalkPage() {}

    static String html() {
        // the templates of page and sheet are generated into one package, since they share the drawings of stems
        TemplateEngine engine = TemplateEngine.createPrecompiled(
                null, ContentType.Html, WalkPage.class.getClassLoader(), "org.oldwood.sheet");
        StringOutput page = new StringOutput();
        engine.render("walk.jte", Map.of(), page);
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
