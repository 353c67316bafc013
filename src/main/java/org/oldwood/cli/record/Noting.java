package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.facts.feeding.NoteWarnings;
import org.oldwood.facts.record.Unlikely;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryReader;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.EntryWriter;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.StateBuilder;
import org.oldwood.store.Journal;
import org.oldwood.store.Json;
import org.oldwood.store.JsonText;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import org.oldwood.words.Words;

/**
 * Adds entries to a garden's journal, all of them or none. They are checked against the journal as it stands, under the
 * journal's lock; problems that the journal had before do not stop them, so that a wrong entry can be taken back.
 */
public final class Noting {
    private static final String JSON_REMEDY = "Write for example: \"";
    private static final Pattern DECIMAL_COMMA = Pattern.compile("\"(\\d+),(\\d+)\"");

    private final GardenCommand command;
    private final Problems problems;
    private final List<Json.Obj> objects = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private Optional<String> key = Optional.empty();
    private boolean sure = true;

    /** {@code problems} are those met while reading the drafts; any of them stops all. */
    public Noting(GardenCommand command, Problems problems) {
        this.command = command;
        this.problems = problems;
    }

    /** What the sender calls these entries: sent again under the same key, nothing more is noted. */
    public Noting once(Optional<String> sent) {
        key = sent;
        return this;
    }

    /** Whether a stage seen on a day that cannot be is noted all the same; else it stops all, unless noted before. */
    Noting sure(boolean isSure) {
        sure = isSure;
        return this;
    }

    /** The drafts are asked for once the garden has been read; they are one act, which one undo takes back. */
    public void note(Supplier<List<Draft>> drafts) throws IOException {
        noteActs(() -> List.of(drafts.get()));
    }

    /** The same of several acts. */
    public void noteActs(Supplier<List<List<Draft>>> acts) throws IOException {
        if (!Files.isRegularFile(command.gardenPath().resolve(GardenFolder.GARDEN_FILE))) { command.folder(); }
        Journal journal = new Journal(command.gardenPath().resolve(GardenFolder.JOURNAL_FILE));
        try (Journal.Writing writing = journal.begin()) {
            GardenFolder folder = command.folder();
            Optional<String> first = key.map(sent -> EntryWriter.idOfKey(sent + "/0"));
            if (first.isPresent() && folder.journal().stream().anyMatch(entry -> entry.id().equals(first.get()))) {
                command.tell("noted already, as " + first.get());
                return;
            }
            acts.get().forEach(drafts -> read(folder, drafts));
            check(folder);
            writing.append(objects.stream().map(JsonText::line).toList());
            report(folder);
        }
    }

    private void read(GardenFolder folder, List<Draft> drafts) {
        List<Entry> before = entries.isEmpty() ? folder.journal() : entries;
        String previous = before.isEmpty() ? "" : before.get(before.size() - 1).id();
        Map<String, Entry> known = folder.journal().stream()
                .collect(Collectors.toMap(Entry::id, entry -> entry, (a, b) -> a));
        List<Draft> fresh = new ArrayList<>();
        for (Draft draft : drafts) {
            draft.id().map(known::get).ifPresentOrElse(same -> mustAgree(draft, same), () -> fresh.add(draft));
        }
        String content = fresh.stream()
                .map(draft -> EntryWriter.line(draft.date(), draft.kind(), draft.values(), draft.place()))
                .collect(Collectors.joining("\n"));
        String act = key.map(sent -> EntryWriter.idOfKey(sent + "/0")).orElse(EntryWriter.id(previous, content));
        String tick = "";
        int number = 0;
        for (Draft draft : fresh) {
            Map<String, Json> values = new LinkedHashMap<>(draft.values());
            if (draft.booked()) { values.put("tick", new Json.Text(draft.place().at("tick"), tick)); }
            number += draft.id().isPresent() ? 0 : 1;
            String id = draft.id().orElse(Entries.inAct(act, number));
            tick = draft.booked() ? tick : id;
            Json.Obj object = EntryWriter.entry(id, draft.date(), draft.kind(), values, draft.place());
            objects.add(object);
            sure |= draft.id().isPresent();
            EntryReader.read(object, problems).ifPresent(entries::add);
            if (draft.date().isAfter(command.today())) {
                problems.tell("future-entry new", draft.place().at("date"), draft.date(), command.today());
            }
        }
    }

    /** A line that was written out of this journal and comes back: noted already, unless somebody changed it. */
    private void mustAgree(Draft draft, Entry entry) {
        boolean agrees = draft.date().equals(entry.date()) && draft.kind() == entry.kind()
                && EntryText.cells(draft.kind(), draft.values()).equals(EntryText.cells(entry));
        if (!agrees) {
            problems.tell("entry-differs", draft.place(), entry.id(), entry.date(), entry.kind().key(),
                    EntryText.inWords(entry), entry.id());
        }
    }

    private void check(GardenFolder folder) {
        List<Entry> all = new ArrayList<>(folder.journal());
        all.addAll(entries);
        Added before = added(folder, folder.journal());
        Added after = added(folder, all);
        if (entries.stream().anyMatch(entry -> entry.values().containsKey("material"))) {
            new KnownNames(folder.documents(), problems).check(entries);
        }
        after.problems.list().stream().filter(problem -> !before.problems.list().contains(problem))
                .forEach(problems::add);
        if (!problems.isEmpty()) { throw new RecordException(problems.list().stream().map(Noting::asTyped).toList()); }
        Set<String> asked = new HashSet<>(before.state.questions());
        after.state.questions().stream().filter(question -> !asked.contains(question)).forEach(command::tell);
        doubt(folder, before.state, after.state);
        warn(folder, before.state, after.state);
    }

    /** Stages that cannot be seen on their day are asked about before they are kept. */
    private void doubt(GardenFolder folder, GardenState before, GardenState after) {
        List<Entry> seen = entries.stream().filter(entry -> entry.kind() == EntryKind.SEEN).toList();
        if (seen.isEmpty()) { return; }
        List<String> questions = new ArrayList<>(Planning.doubts(folder, after));
        questions.removeAll(Planning.doubts(folder, before));
        if (!sure && !questions.isEmpty()) {
            throw new RecordException(questions.stream()
                    .map(question -> Problem.of("sighting-that-cannot-be", seen.get(0).place(), question)).toList());
        }
        questions.forEach(command::tell);
    }

    /** What was given too soon or by mistake is noted all the same, with a warning at once. */
    private void warn(GardenFolder folder, GardenState before, GardenState after) {
        entries.stream().filter(entry -> entry.text("tick").isEmpty())
                .forEach(entry -> before.entries().stream()
                        .filter(old -> old.date().equals(entry.date())
                                && old.kind() == entry.kind() && EntryText.cells(old).equals(EntryText.cells(entry)))
                        .findFirst()
                        .ifPresent(old -> command.tell(
                                "The same %s of %s was noted before, as %s. If it is no second one: oldwood undo %s"
                                        .formatted(entry.kind().key(), entry.date(), old.id(), entry.id()))));
        Unlikely unlikely = new Unlikely(after, folder.crops(), () -> Planning.stages(folder, after),
                folder.documents());
        entries.forEach(entry -> unlikely.about(entry, command.today()).ifPresent(command::tell));
        if (entries.stream().noneMatch(NoteWarnings::concerns)) { return; }
        NoteWarnings warnings = new NoteWarnings(before, folder.crops(), folder.documents());
        entries.forEach(entry -> warnings.about(entry).forEach(command::tell));
    }

    /** Remedies show what to write in a file of JSON; here something else is typed. */
    private static Problem asTyped(Problem problem) {
        String option = problem.place().path();
        String remedy = problem.remedy();
        if (!remedy.isEmpty() && !remedy.startsWith(JSON_REMEDY)) { return problem; }
        Matcher comma = DECIMAL_COMMA.matcher(problem.message());
        remedy = option.startsWith("stems") ? "Write for example: 1=5,2=4,3=4,4+=3"
                : option.equals("date") ? "Write for example: 2026-11-20"
                        : comma.find() ? "Write it with a point: %s.%s".formatted(comma.group(1), comma.group(2)) : "";
        String message = problem.message().replace("an object {…}", "counted by age");
        return new Problem(problem.name(), problem.place(), message, remedy);
    }

    private record Added(GardenState state, Problems problems) {}

    private static Added added(GardenFolder folder, List<Entry> journal) {
        Problems problems = new Problems();
        return new Added(new StateBuilder(folder.garden(), folder.crops(), problems).on(LocalDate.MAX, journal),
                problems);
    }

    private void report(GardenFolder folder) {
        if (entries.isEmpty()) {
            command.tell("nothing new: all of it is noted in " + folder.journalPath());
            return;
        }
        command.answer(() -> new Answer(objects),
                () -> entries.forEach(entry -> command.out().hanging("", 2, entry.id() + " " + said(entry, folder))));
        boolean isUndone = entries.stream().allMatch(entry -> entry.kind() == EntryKind.WITHDRAWN);
        long ticks = entries.stream().filter(entry -> isUndone || entry.kind() != EntryKind.WITHDRAWN)
                .map(entry -> entry.text("tick").orElse(entry.id())).distinct().count();
        String them = ticks == 1 ? "it" : "them";
        String booked = ticks == entries.size() ? "" : ", and %s with %s,".formatted(entries.size() - ticks, them);
        String noted = entries.size() == 1 ? "noted in"
                : "%s%s noted in".formatted(Words.count(ticks, "entry", "entries"), booked);
        List<String> acts = entries.stream().map(entry -> Entries.act(entry.id())).distinct().toList();
        String back = isUndone
                ? "; oldwood undo %s%s undoes that".formatted(String.join(" ", acts),
                        acts.size() == entries.size() ? "" : " --whole")
                : entries.size() == 1 ? ""
                        : "; oldwood undo%s takes %s back".formatted(acts.size() == 1 ? "" : " --last " + ticks, them);
        command.tell("%s %s%s".formatted(noted, folder.journalPath(), back));
    }

    /** What an entry says; of one that takes another back, what that said, and how much goes with it. */
    private static String said(Entry entry, GardenFolder folder) {
        String says = "%s %s: %s".formatted(entry.date(), entry.kind().key(), EntryText.inWords(entry));
        if (entry.kind() != EntryKind.WITHDRAWN) { return says; }
        String wrong = entry.needed("wrong");
        long with = StateBuilder.counting(folder.journal(), Set.of()).stream().filter(each -> each.names("tick", wrong))
                .count();
        return folder
                .journal().stream().filter(each -> each.id().equals(wrong)).findFirst().map(each -> "%s (%s%s)"
                        .formatted(says, said(each, folder), with == 0 ? "" : ", and %s with it".formatted(with)))
                .orElse(says);
    }

    private record Answer(List<Json.Obj> noted) {}
}
