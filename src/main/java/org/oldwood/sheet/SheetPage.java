package org.oldwood.sheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oldwood.garden.Garden;
import org.oldwood.sheet.round.RoundPage;
import org.oldwood.words.Safe;
import org.oldwood.words.Texts;

/** Writes a year sheet as one HTML page that needs nothing else: no network, no script. */
public final class SheetPage {
    private static final int HEAD = 2000;

    private SheetPage() {}

    /**
     * Rounds to pin up, a page for each of {@code pages}; then, for the scope of a full sheet, the year's charts,
     * outlooks, ledgers and sources. The same ground, pages and scope give the same text.
     */
    public static String of(Ground ground, List<RoundPage> pages, String title, Optional<Scope> full) {
        Map<String, Object> said = Map.of("pages", pages, "garden", ground.state().garden().name(), "title", title,
                "more", full.map(scope -> Sheet.of(ground, scope)), "style",
                Texts.resource(SheetPage.class, "sheet.css"), "maker", mark(ground.state().garden()));
        return withoutEmptyLines(Safe.text(render("pages.jte", said)));
    }

    /** Fills a template; those of the phone's page lie here too, since they share the drawings of stems. */
    public static String render(String template, Map<String, Object> said) {
        StringOutput page = new StringOutput();
        TemplateEngine.createPrecompiled(null, ContentType.Html, SheetPage.class.getClassLoader(),
                SheetPage.class.getPackageName()).render(template, said, page);
        return page.toString();
    }

    /** Whether a file is a sheet of that garden as it was written here. */
    public static boolean isOf(Garden garden, Path file) throws IOException {
        if (!Files.isRegularFile(file)) { return false; }
        byte[] head = new byte[HEAD];
        try (InputStream in = Files.newInputStream(file)) {
            String text = new String(head, 0, in.readNBytes(head, 0, HEAD), StandardCharsets.UTF_8);
            return text.contains(mark(garden));
        }
    }

    /** What the page's head says of its maker; known again when the page is written anew. */
    static String mark(Garden garden) {
        return "Oldwood, for garden " + garden.id();
    }

    /** Lines that held nothing but a template's own words are empty, and are left out. */
    private static String withoutEmptyLines(String page) {
        return Stream.of(page.split("\n", -1)).filter(line -> !line.isBlank())
                .collect(Collectors.joining("\n", "", "\n"));
    }
}
