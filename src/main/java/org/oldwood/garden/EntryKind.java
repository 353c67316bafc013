package org.oldwood.garden;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.Documents;
import org.oldwood.store.Fields;

/**
 * The kinds of journal entry and what each says, as {@code entries.json} lists them. Everything that reads, writes,
 * asks for or describes an entry works from that table, so a new kind of entry is its lines there and its name here.
 */
public enum EntryKind {
    PLANTED,
    COUNTED,
    CANES,
    PRUNED,
    STRUCK,
    CHECKED,
    LIFTED,
    PLANTED_OUT,
    LOST,
    GRUBBED,
    INSPECTED,
    VIGOUR,
    FED,
    LIMED,
    ACIDIFIED,
    MULCHED,
    WATERED,
    MOISTURE,
    SOIL_TEST,
    SEEN,
    PICKED,
    BEGUN,
    DONE,
    SKIPPED,
    LATER,
    NEVER,
    WITHDRAWN;

    private static final class Table {
        static final Fields ALL = Documents.bundled().fields("entries.json");
    }

    private static final Map<String, EntryKind> BY_NAME = new HashMap<>();

    static {
        for (EntryKind kind : values()) {
            kind.keysInJournals().forEach(name -> BY_NAME.put(name, kind));
        }
    }

    private final String key;
    private final Optional<String> formerly;
    private final String meaning;
    private final String example;

    @SuppressWarnings("ImmutableEnumChecker") // never changed
    private final List<String> oneNeeded;

    @SuppressWarnings("ImmutableEnumChecker") // never changed
    private final List<EntryField> fields;

    EntryKind() {
        this.key = name().toLowerCase(Locale.ROOT).replace('_', '-');
        Fields kind = Table.ALL.object(key).orElseThrow();
        this.formerly = kind.optionalText("formerly");
        this.meaning = kind.text("meaning");
        this.example = kind.text("example");
        this.oneNeeded = List.copyOf(kind.texts("oneOf"));
        this.fields = kind.objects("says").stream().map(EntryField::read).toList();
        kind.done();
        if (!Table.ALL.problems().isEmpty()) {
            throw new IllegalStateException("entries.json: " + Table.ALL.problems().list());
        }
    }

    /** What happened, as the end of a sentence. */
    public String meaning() { return meaning; }

    /** What one might type to note it. */
    public String example() { return example; }

    /** What an entry of this kind says, in the order in which it is written. */
    public List<EntryField> fields() {
        return fields;
    }

    public Optional<EntryField> field(String key) {
        return fields.stream().filter(known -> known.key().equals(key)).findFirst();
    }

    /** As it stands in the journal: {@code planted-out}. */
    public String key() { return key; }

    public static List<String> keys() { return Table.ALL.keys(); }

    /** The names that journals may hold: the kind's own, and one it had before. */
    public List<String> keysInJournals() {
        return formerly.map(old -> List.of(key, old)).orElse(List.of(key));
    }

    public static Optional<EntryKind> find(String key) { return Optional.ofNullable(BY_NAME.get(key)); }

    /** Of these fields an entry must have at least one; empty where there is no such demand. */
    public List<String> oneNeeded() {
        return oneNeeded;
    }
}
