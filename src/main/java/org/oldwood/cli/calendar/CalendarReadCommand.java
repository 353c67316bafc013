package org.oldwood.cli.calendar;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.calendar.Answer;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.server.Session;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.record.Draft;
import org.oldwood.cli.record.Noting;
import org.oldwood.cli.record.Ticking;
import org.oldwood.facts.Amount;
import org.oldwood.garden.Entries;
import org.oldwood.garden.Entry;
import org.oldwood.garden.EntryKind;
import org.oldwood.plan.Booking;
import org.oldwood.plan.Task;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes into the journal what was ticked off in a calendar, once the user agrees. */
@Command(name = "read")
final class CalendarReadCommand extends GardenCommand {
    private static final String FROM_A_CALENDAR = "from a calendar";

    private final GardenCommand parent;

    @Parameters(arity = "1..*", paramLabel = "FILE|URL")
    List<String> from = new ArrayList<>();

    @Option(names = "--yes")
    boolean yes;

    @Mixin
    ServerAccess access = new ServerAccess();

    @Mixin
    CalendarLooks looks = new CalendarLooks();

    CalendarReadCommand(GardenCommand parent) { this.parent = parent; }

    /** An answer to note, and the amount done where it was not the planned one. */
    private record Chosen(Answer answer, Optional<Double> amount) {}

    @Override
    public int run() throws IOException {
        takeFrom(parent);
        CalendarItems calendar = CalendarItems.of(this, looks.each);
        ReadBack.Result result = read(calendar);
        List<Answer> news = result.answers().stream().filter(answer -> isNew(answer, calendar)).toList();
        answer(() -> new Told(news.stream().map(OneAnswer::of).toList(), result.notices()),
                () -> news.forEach(this::print));
        result.problems().list().forEach(problem -> tell("Note: " + problem.inWords()));
        result.notices().forEach(notice -> tell("Note: " + notice));
        if (news.isEmpty()) {
            tell("There is nothing new to note.");
        } else {
            note(calendar, news);
        }
        return 0;
    }

    /** What was noted for some of it leaves the rest to be ticked off. */
    private static boolean isNew(Answer answer, CalendarItems calendar) {
        if (answer.what() == Answer.What.NOT_DONE) { return !ticks(answer, calendar).isEmpty(); }
        return !open(answer, calendar).isEmpty();
    }

    /** The tasks that an answer settles: those still open, and those that the plan no longer has and nobody noted. */
    private static List<String> open(Answer answer, CalendarItems calendar) {
        return answer.tasks().stream()
                .filter(id -> calendar.plan().find(id).map(task -> task.state() == Task.State.OPEN)
                        .orElse(!calendar.state().finished().containsKey(id)))
                .filter(id -> answer.what() != Answer.What.UNDER_WAY || !isBegun(id, answer, calendar)).toList();
    }

    private static boolean isBegun(String task, Answer answer, CalendarItems calendar) {
        Entry begun = calendar.state().begun().get(task);
        return begun != null && begun.count("percent").orElse(0) == answer.percent();
    }

    /** The ticks of earlier readings that a calendar takes back, by their first note, which may be set right since. */
    private static List<Entry> ticks(Answer answer, CalendarItems calendar) {
        return answer.tasks().stream()
                .flatMap(task -> calendar.state().finished().getOrDefault(task, List.of()).stream())
                .filter(entry -> entry.kind() == EntryKind.DONE
                        && Entries.first(entry, calendar.journal()).note().equals(FROM_A_CALENDAR))
                .filter(entry -> !entry.date().isAfter(answer.day())).toList();
    }

    private ReadBack.Result read(CalendarItems calendar) throws IOException {
        ReadBack back = new ReadBack(calendar.garden(), calendar.known(), looks.layout(calendar.state().garden()),
                today());
        Optional<Session> session = from.stream().anyMatch(ServerAccess::isAddress) ? Optional.of(access.session(this))
                : Optional.empty();
        for (String name : from) {
            if (session.isPresent() && ServerAccess.isAddress(name)) {
                URI address = ServerAccess.address(this, name);
                for (String object : session.get().fetch(address, calendar.garden(), calendar.known())) {
                    back.read(object, name);
                }
            } else {
                try (InputStream in = Files.newInputStream(readable(name))) {
                    back.read(in, name);
                }
            }
        }
        return back.result();
    }

    private void print(Answer answer) {
        String said = switch (answer.what()) {
            case DONE -> "done";
            case SKIPPED -> "skipped";
            case UNDER_WAY -> "begun";
            case NOT_DONE -> "not done";
        };
        String more = answer.what() == Answer.What.UNDER_WAY
                ? " (" + percent(answer) + "it stays open; " + answer.basis() + ")"
                : answer.what() == Answer.What.NOT_DONE
                        ? " after all (the tick and what it booked are taken back; " + answer.basis() + ")"
                        : " (" + answer.basis() + ")";
        out().hanging(answer.day() + "  " + said + " ".repeat(9 - said.length()), 21, answer.title() + more);
    }

    private static String percent(Answer answer) { return answer.percent() > 0 ? answer.percent() + " %; " : ""; }

    private void note(CalendarItems calendar, List<Answer> answers) throws IOException {
        List<Chosen> chosen = new ArrayList<>();
        if (yes) {
            answers.forEach(answer -> chosen.add(new Chosen(answer, Optional.empty())));
        } else if (!json) { chosen.addAll(ask(calendar, answers)); }
        if (chosen.isEmpty()) {
            tell("Nothing was noted. Add --yes to note it all.");
            return;
        }
        new Noting(this, new Problems()).noteActs(() -> {
            Ticking ticking = new Ticking(this);
            return chosen.stream().map(one -> drafts(one, calendar, ticking)).toList();
        });
    }

    private List<Chosen> ask(CalendarItems calendar, List<Answer> answers) throws IOException {
        List<Chosen> chosen = new ArrayList<>();
        Optional<String> agreed = ask("Note these in the journal? (y or n)");
        if (agreed.isEmpty()) { tell("Nobody is there to answer; --yes notes it without a question."); }
        if (!agreed.orElse("").equals("y")) { return chosen; }
        for (Answer answer : answers) {
            Optional<Amount> planned = answer.what() == Answer.What.DONE && answer.tasks().size() == 1
                    ? calendar.plan().find(answer.tasks().get(0))
                            .filter(task -> Booking.of(task).isEmpty() || Booking.scales(task)).flatMap(Task::amount)
                    : Optional.empty();
            chosen.add(new Chosen(answer, planned.isEmpty() ? Optional.empty() : other(answer, planned.get())));
        }
        return chosen;
    }

    /** What was done where it was not what was planned. */
    private Optional<Double> other(Answer answer, Amount planned) throws IOException {
        return ask(answer.title() + ": planned " + planned.words() + ". How much was it, in " + planned.unit()
                + "? (nothing: as planned)").filter(text -> !text.isEmpty())
                .map(text -> text.matches("\\d+(\\.\\d+)?") ? Double.parseDouble(text)
                        : Ticking.measured(this, text, planned.unit()));
    }

    /** A tick books what the task stands for. */
    private static List<Draft> drafts(Chosen chosen, CalendarItems calendar, Ticking ticking) {
        Answer answer = chosen.answer;
        if (answer.what() == Answer.What.NOT_DONE) {
            return ticks(answer, calendar).stream()
                    .map(tick -> Draft.withdrawal(answer.day(), tick.id(), "", Place.of("calendar"))).toList();
        }
        Stream<Draft> said = open(answer, calendar).stream().map(task -> draft(chosen, task));
        return answer.what() != Answer.What.DONE ? said.toList()
                : said.flatMap(draft -> ticking.booked(draft, List.of()).stream()).toList();
    }

    private static Draft draft(Chosen chosen, String task) {
        Place place = Place.of("calendar");
        Map<String, Json> values = new LinkedHashMap<>();
        values.put("task", new Json.Text(place.at("task"), task));
        chosen.amount
                .ifPresent(amount -> values.put("amount", new Json.Num(place.at("amount"), amount, amount.toString())));
        values.put("note", new Json.Text(place.at("note"), FROM_A_CALENDAR));
        int percent = chosen.answer.percent();
        if (chosen.answer.what() == Answer.What.UNDER_WAY && percent > 0) {
            values.put("percent", new Json.Num(place.at("percent"), percent, Integer.toString(percent)));
        }
        EntryKind kind = chosen.answer.what() == Answer.What.DONE ? EntryKind.DONE
                : chosen.answer.what() == Answer.What.SKIPPED ? EntryKind.SKIPPED : EntryKind.BEGUN;
        return new Draft(chosen.answer.day(), kind, values, place);
    }

    private record Told(List<OneAnswer> answers, List<String> notices) {}

    private record OneAnswer(String item, List<String> tasks, String title, String said, LocalDate day, int percent,
            String basis) {
        static OneAnswer of(Answer answer) {
            return new OneAnswer(answer.identity(), answer.tasks(), answer.title(),
                    answer.what().name().toLowerCase(Locale.ROOT), answer.day(), answer.percent(), answer.basis());
        }
    }
}
