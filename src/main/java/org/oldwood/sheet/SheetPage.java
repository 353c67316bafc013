package org.oldwood.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Writes a year sheet as one HTML page that needs nothing else: no network, no script. */
public final class SheetPage {
    private static final String STYLE = "sheet.css";

    private SheetPage() {}

    /** The page. The same ground and scope give the same text. */
    public static String of(Ground ground, Scope scope) {
        TemplateEngine engine = TemplateEngine.createPrecompiled(
                null, ContentType.Html, SheetPage.class.getClassLoader(), SheetPage.class.getPackageName());
        StringOutput page = new StringOutput();
        engine.render(
                "sheet.jte", java.util.Map.of("sheet", new SheetMaker(ground, scope).make(), "style", style()), page);
        return withoutEmptyLines(page.toString());
    }

    /** Lines that held nothing but a template's own words are empty, and are left out. */
    private static String withoutEmptyLines(String page) {
        StringBuilder kept = new StringBuilder(page.length());
        for (String line : page.split("\n", -1)) {
            if (!line.isBlank()) {
                kept.append(line).append('\n');
            }
        }
        return kept.toString();
    }

    private static String style() {
        try (InputStream in = SheetPage.class.getResourceAsStream(STYLE)) {
            if (in == null) {
                throw new IllegalStateException("the style sheet is missing from the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
