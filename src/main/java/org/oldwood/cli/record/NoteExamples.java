package org.oldwood.cli.record;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.cli.command.Out;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryKind;

/** An example command line for each kind of entry, made from the kind's fields. */
final class NoteExamples {
    private NoteExamples() {}

    /** A line that gives every field that is needed, and one of those of which one is needed. */
    static List<String> of(EntryKind kind) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder("  oldwood note ").append(kind.key());
        for (EntryField field : kind.fields()) {
            boolean one = !kind.oneNeeded().isEmpty() && kind.oneNeeded().get(0).equals(field.key());
            if (field.required() || one || telling(kind, field)) {
                String option = " --" + field.key() + " " + value(kind, field);
                if (line.length() + option.length() > Out.WIDTH - 3) {
                    lines.add(line + " \\");
                    line = new StringBuilder("     ");
                }
                line.append(option);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** A loss tells most with its number and cause, and a watering with its bed. */
    private static boolean telling(EntryKind kind, EntryField field) {
        return (kind == EntryKind.WATERED && field.key().equals("bed"))
                || (kind == EntryKind.LOST && List.of("number", "cause").contains(field.key()));
    }

    private static String value(EntryKind kind, EntryField field) {
        return switch (field.type()) {
            case NEW_ID -> field.key().equals("lot") ? "lot-2" : "blackcurrant-5";
            case NEW_IDS, PLANTS -> "blackcurrant-6,blackcurrant-7";
            case PLANT -> "blackcurrant-1";
            case LOT -> "lot-1";
            case BED -> "blackcurrant-bed";
            case CROP -> "blackcurrant";
            case STAGE -> "leaf-fall-done";
            case MATERIAL -> material(kind);
            case STEMS -> "1=5,2=4,3=4,4+=3";
            case SOME_STEMS -> "4+=1";
            case NUMBER, COUNT ->
                field.key().equals("grams") ? "2000" : Integer.toString((int) Math.max(field.least(), 5));
            case WORD -> field.words().get(0);
            case FLAG -> "true";
            case TASK -> "soil-test@blackcurrant-bed@2027";
            case ENTRY -> "e-0123456789ab";
            case TEXT -> field.key().equals("kind") ? "tips" : "drought";
        };
    }

    private static String material(EntryKind kind) {
        return switch (kind) {
            case LIMED -> "ground-limestone";
            case ACIDIFIED -> "sulphur";
            default -> "garden-compost";
        };
    }
}
