package org.oldwood.cli.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.cli.command.ShownList;
import org.oldwood.facts.Amount;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.StateBuilder;
import org.oldwood.plan.Booking;
import org.oldwood.plan.Plan;
import org.oldwood.plan.Planner;
import org.oldwood.plan.Task;
import org.oldwood.plan.TaskIds;
import org.oldwood.plan.round.Round;
import org.oldwood.plan.round.Rounds;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.words.Dates;
import org.oldwood.words.Typed;

/**
 * Books tasks that were ticked off: the entry that says so, and those that the work comes to: materials and grams, the
 * stems planned to come out, litres, a depth. They are the plan's figures, and marked so.
 */
public final class Ticking {
    private final GardenCommand command;
    private final Map<LocalDate, Planned> plans = new HashMap<>();
    private final Set<String> told = new HashSet<>();

    /** Entries that said "skipped" of work that was done after all, or that are set right. */
    private final Set<String> setAside = new HashSet<>();

    private record Planned(Plan plan, TaskIds ids, List<Round> rounds) {}

    /** Work done so many days before its time is asked about; our own figure. */
    private static final int EARLY_DAYS = 45;

    public Ticking(GardenCommand command) { this.command = command; }

    /** Books as if the entry had not been noted. */
    Ticking without(String id) {
        setAside.add(id);
        return this;
    }

    /**
     * An entry that names a task, with those that it books; any other as it is. The task must be one that can be; a
     * round, by its id or its number in the list last shown, stands for all of its tasks whose time has come, and a
     * number of missed work for all of that kind.
     *
     * @param except the plants it was not done to
     */
    public List<Draft> booked(Draft draft, List<String> except) {
        if (!(draft.values().get("task") instanceof Json.Text task) || draft.kind().field("task").isEmpty()
                || draft.date().isAfter(command.today())) {
            // of a day to come there is no plan; that it lies ahead is told with the entry
            return List.of(draft);
        }
        List<Draft> all = new ArrayList<>();
        for (String missed : ShownList.missed(command, task.value())) {
            command.tell(missed);
            all.addAll(booked(draft.of(missed), except));
        }
        if (!all.isEmpty()) { return all; }
        List<String> only = only(draft);
        Optional<Round> round = ShownList.find(command, planned(draft.date()).rounds, task.value());
        for (Task each : round.map(asked -> part(asked, draft, only, except)).orElse(List.of())) {
            List<String> here = Booking.plants(each);
            Draft one = draft.of(each.id());
            one.values().remove("only");
            if (!only.isEmpty() && !only.containsAll(here)) {
                List<String> some = only.stream().filter(here::contains).toList();
                one.values().put("only", list(some, draft.place()));
            }
            all.addAll(booked(one, except.stream().filter(here::contains).toList()));
        }
        if (!all.isEmpty()) { return all; }
        if (draft.kind() != EntryKind.DONE) {
            Planned planned = planned(draft.date());
            known(task.value(), planned);
            Optional<Task> found = planned.plan.find(task.value());
            found.ifPresentOrElse(put -> inTime(draft, put.window().last()),
                    () -> command.tell("%s is not in the plan of %s.".formatted(task.value(), draft.date())));
            return List.of(draft);
        }
        return ticked(draft, task.value(), except);
    }

    /** How much was done, in the task's unit; it may be typed with one of the same kind. */
    private Optional<Double> amount(Draft draft, String task) {
        if (!(draft.values().get("amount") instanceof Json.Text typed)) {
            return draft.values().get("amount") instanceof Json.Num num ? Optional.of(num.value()) : Optional.empty();
        }
        Optional<Task> found = planned(draft.date()).plan.find(task);
        return Optional.of(measured(command, typed.value(), found.flatMap(Task::amount).map(Amount::unit).orElse("")));
    }

    /** An amount that was typed with a unit, in the task's own. */
    public static double measured(GardenCommand command, String text, String unit) {
        try {
            return Typed.of(text, unit, unit, command.units());
        } catch (IllegalArgumentException e) {
            throw command.usage("amount " + e.getMessage());
        }
    }

    /** Whether a round is still to be ticked off on a day: one that was on that day is not, but for what is due. */
    boolean isOpen(String round, LocalDate day) {
        List<Round> all = planned(day).rounds;
        Round found = ShownList.find(command, all, round)
                .orElseThrow(() -> command.noSuch("round", round, all.stream().map(Round::id).toList()));
        boolean ticked = found.finished().stream().anyMatch(task -> task.finished().filter(day::equals).isPresent());
        return ticked ? found.tasks().stream().anyMatch(task -> !task.window().first().isAfter(day)) : found.open();
    }

    private static List<String> only(Draft draft) {
        return draft.values().get("only") instanceof Json.Arr ids
                ? ids.items().stream().map(id -> ((Json.Text) id).value()).toList()
                : List.of();
    }

    /** The tasks of a round that an entry speaks of: of all its plants, of some, or of all but some. */
    private List<Task> part(Round round, Draft draft, List<String> only, List<String> except) {
        command.tell("%s: %s".formatted(round.id(), round.title()));
        List<Task> due = round.toDo();
        command.refuseIf(due.size() > 1 && draft.values().containsKey("amount"),
                "of a round of %s tasks say --amount task by task; oldwood tasks %s shows them", due.size(),
                round.id());
        Set<String> plants = new LinkedHashSet<>();
        due.forEach(task -> plants.addAll(plants(task)));
        for (String id : Stream.concat(only.stream(), except.stream()).toList()) {
            if (!plants.contains(id)) {
                throw command.noSuch("plant or bed in %s".formatted(round.id()), id, List.copyOf(plants));
            }
        }
        List<Task> part = due.stream().filter(task -> only.isEmpty() || plants(task).stream().anyMatch(only::contains))
                .filter(task -> !except.containsAll(plants(task))).toList();
        command.refuseIf(part.isEmpty(), "%s has nothing left to do", round.id());
        inTime(draft, round.lastGoodDay());
        return part;
    }

    /** The plants that a task goes to; the bed, cuttings or garden where it goes to no plant. */
    private static List<String> plants(Task task) {
        List<String> plants = Booking.plants(task);
        return plants.isEmpty() ? List.of(task.subject().id()) : plants;
    }

    /** Work may be put off past its time, but not unsaid. */
    private void inTime(Draft draft, LocalDate last) {
        if (draft.kind() != EntryKind.LATER) { return; }
        int days = draft.values().get("days") instanceof Json.Num num ? (int) num.value() : StateBuilder.PUT_OFF_DAYS;
        LocalDate until = draft.date().plusDays(days);
        if (until.isAfter(last) && told.add("late")) {
            command.tell("Put off until %s, but its last good day is %s: an earlier --until keeps it in time."
                    .formatted(Dates.shortDay(until), Dates.shortDay(last)));
        }
    }

    /** The entries of a tick, the one that says "done" first. */
    private List<Draft> ticked(Draft draft, String id, List<String> except) {
        Optional<Double> amount = amount(draft, id);
        command.refuseIf(amount.filter(all -> all <= 0).isPresent(),
                "--amount says how much was done, more than 0; what was left out is noted as skipped");
        Planned planned = planned(draft.date());
        Optional<Task> found = planned.plan.find(id);
        known(id, planned);
        List<String> only = found.map(task -> only(draft, except, task)).orElse(only(draft));
        if (found.filter(task -> task.state() == Task.State.SKIPPED).isPresent()) {
            return doneAfterAll(found.get(), draft, except);
        }
        List<Draft> all = new ArrayList<>(List.of(done(draft, only, amount)));
        found.filter(task -> task.state() == Task.State.OPEN).ifPresent(task -> book(task, draft, only, amount, all));
        found.flatMap(Task::finished).ifPresent(day -> command
                .tell("%s was done already on %s; nothing more is booked with it.".formatted(id, Dates.shortDay(day))));
        found.map(task -> task.window().first()).filter(first -> draft.date().plusDays(EARLY_DAYS).isBefore(first))
                .ifPresent(first -> command
                        .tell("The time of %s begins on %s; was it done on %s? oldwood undo takes it back."
                                .formatted(id, Dates.shortDay(first), Dates.shortDay(draft.date()))));
        if (found.isEmpty()) {
            command.tell("%s is not in the plan of %s, so nothing was booked with it; note what was given or cut out."
                    .formatted(id, draft.date()));
        }
        return all;
    }

    /** The entry that says "done", and to which plants; all for none. */
    private static Draft done(Draft draft, List<String> plants, Optional<Double> amount) {
        Place place = draft.place();
        Map<String, Json> values = new LinkedHashMap<>(draft.values());
        values.keySet().retainAll(List.of("task", "note"));
        values.values().removeIf(said -> said instanceof Json.Text text && text.value().isEmpty());
        amount.ifPresent(all -> values.put("amount", new Json.Num(place.at("amount"), all, all.toString())));
        if (!plants.isEmpty()) { values.put("only", list(plants, place)); }
        return new Draft(draft.date(), EntryKind.DONE, values, place);
    }

    private static Json list(List<String> ids, Place place) {
        Place here = place.at("only");
        return new Json.Arr(here, ids.stream().map(id -> (Json) new Json.Text(here, id)).toList());
    }

    /** What was skipped is planned anew, so that the tick books it. */
    private List<Draft> doneAfterAll(Task skipped, Draft draft, List<String> except) {
        List<Draft> all = new ArrayList<>();
        skipped.shares().stream().flatMap(share -> share.by().stream())
                .filter(entry -> entry.kind() == EntryKind.SKIPPED && setAside.add(entry.id())).forEach(entry -> all
                        .add(Draft.withdrawal(draft.date(), entry.id(), CorrectCommand.SET_RIGHT, draft.place())));
        plans.clear();
        all.addAll(ticked(draft, skipped.id(), except));
        return all;
    }

    /** Stops at an id that cannot be a task's. */
    private void known(String task, Planned planned) {
        List<String> ids = planned.plan.tasks().stream().map(Task::id).toList();
        if (!ids.contains(task)) {
            planned.ids.wrong(task, ids).ifPresent(wrong -> {
                throw command.usage("the task " + wrong);
            });
        }
    }

    private Planned planned(LocalDate day) {
        return plans.computeIfAbsent(day, date -> {
            GardenFolder folder = command.folder();
            GardenState state = folder.on(date, setAside);
            Planner planner = Planning.planner(folder, state);
            Plan plan = planner.plan();
            return new Planned(plan, planner.taskIds(), Rounds.read(folder.documents()).of(plan, state));
        });
    }

    private List<String> only(Draft draft, List<String> except, Task task) {
        List<String> only = only(draft);
        TaskIds.notOf(task, Stream.concat(only.stream(), except.stream()).toList()).ifPresent(wrong -> {
            throw command.usage(wrong);
        });
        return except.isEmpty() ? only
                : Booking.plants(task).stream().filter(plant -> !except.contains(plant)).toList();
    }

    private void book(Task task, Draft draft, List<String> only, Optional<Double> amount, List<Draft> all) {
        if (amount.isPresent() && !Booking.of(task).isEmpty() && !Booking.scales(task)) {
            throw command
                    .usage("how much of " + task.id() + " was done cannot be said by one amount; note it: oldwood note "
                            + Booking.of(task).get(0).kind().key());
        }
        for (Amount.Noted noted : Booking.of(task, only, amount)) {
            Map<String, Json> values = new LinkedHashMap<>();
            noted.kind().fields().forEach(field -> Optional.ofNullable(noted.says().get(field.key()))
                    .ifPresent(text -> values.put(field.key(), EntryText.value(field, text, draft.place()))));
            if (amount.isEmpty()) { values.put("planned", new Json.Bool(draft.place().at("planned"), true)); }
            all.add(new Draft(draft.date(), noted.kind(), values, draft.place(), true, Optional.empty()));
        }
        Booking.toNote(task).filter(told::add)
                .ifPresent(kind -> command.tell("What came of it only you can tell: oldwood %s.".formatted(kind)));
    }
}
