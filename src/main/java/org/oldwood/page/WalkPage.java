package org.oldwood.page;

import java.util.List;
import java.util.Map;
import org.oldwood.sheet.Label;
import org.oldwood.sheet.SheetPage;
import org.oldwood.words.Texts;

/** The page's own files, which hold nothing of any garden and are the same for everybody; and labels for its bushes. */
public final class WalkPage {
    private WalkPage() {}

    /** Labels to print: no script, no address. */
    public static String labels(String garden, List<Label> labels) {
        return SheetPage.render("labels.jte", Map.of("garden", garden, "labels", labels));
    }

    static String html() { return SheetPage.render("walk.jte", Map.of()); }

    static String resource(String name) { return Texts.resource(WalkPage.class, name); }
}
