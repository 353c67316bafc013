package org.oldwood.calendar.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.oldwood.calendar.Answer;
import org.oldwood.calendar.CalendarState;
import org.oldwood.calendar.DavStore;
import org.oldwood.calendar.Export;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.Plans;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.Uids;
import org.oldwood.store.RecordException;

/** One garden of three tasks, its server, and what a person may expect of them. */
final class ModelSequence {
    private static final List<String> TASKS = List.of("cut", "feed", "net");
    private static final String STRANGER = DavStore.COLLECTION + "x.ics";
    private static final String THEIRS = "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:x\r\nSUMMARY:Dentist\r\nEND:VEVENT\r\nEND:VCALENDAR";
    private static final URI ADDRESS = URI.create("http://127.0.0.1" + DavStore.COLLECTION);
    private static final Uids UIDS = new Uids(Plans.GARDEN, Map.of());
    private static final int STEPS = 8;

    private final Path folder;
    private final Random random;
    private final String name;
    private final DavStore store = new DavStore();
    private final ModelWire wire = new ModelWire(store);
    private final List<ModelObject> objects = new ArrayList<>();
    private final ModelPlan plan;
    private final Map<String, LocalDate> journal = new TreeMap<>();
    private final List<String> said = new ArrayList<>();
    private LocalDate today = LocalDate.of(2027, 1, 1);
    private int step;
    private boolean wasCutOff;

    /** What happened so far, for whoever looks for a fault. */
    private final List<String> log = new ArrayList<>();

    ModelSequence(Path folder, Random random, String name) {
        this.folder = folder;
        this.random = random;
        this.name = name;
        this.plan = new ModelPlan(TASKS, random);
        store.put(STRANGER, THEIRS);
        for (String task : TASKS) {
            objects.add(new ModelObject(store, task, UIDS.event(task), true));
            objects.add(new ModelObject(store, task, UIDS.todo(task), false));
        }
    }

    void run() throws IOException {
        settled();
        for (step = 1; step <= STEPS; step++) {
            today = today.plusDays(1);
            for (int i = random.nextInt(3); i >= 0; i--) {
                happens();
            }
            if (random.nextInt(3) == 0) {
                cutOff();
                kept();
            } else if (random.nextInt(6) == 0) {
                atOnce();
                kept();
            }
            if (random.nextInt(4) == 0) { readBack(); }
            settled();
        }
        readBack();
    }

    private String at() { return name + ", step " + step + log; }

    private void happens() throws IOException {
        String task = TASKS.get(random.nextInt(TASKS.size()));
        switch (random.nextInt(8)) {
            case 0, 1 -> log.add(step + " plan " + plan.change(task));
            case 2 -> {
                if (random.nextInt(3) == 0) { lose(); }
            }
            default -> log.add(step + " " + objects.get(random.nextInt(objects.size())).touch(random, step, today));
        }
    }

    /** The memory of what was published is lost: what was deleted may come back, what was withdrawn may stay. */
    private void lose() throws IOException {
        if (random.nextBoolean()) {
            Files.deleteIfExists(folder.resolve(CalendarState.FILE));
            plan.wasForgotten();
            log.add(step + " state lost");
        } else {
            Files.deleteIfExists(folder.resolve(Known.FILE));
            objects.forEach(object -> {
                object.isRemembered = false;
                object.isRecorded = false;
            });
            log.add(step + " servers lost");
        }
    }

    /** A run that dies, or whose connection does, anywhere. */
    private void cutOff() throws IOException {
        ModelWire.Fault[] faults = ModelWire.Fault.values();
        ModelWire.Fault fault = faults[1 + random.nextInt(faults.length - 1)];
        byte @Nullable [][] before = new byte @Nullable [2][];
        wire.atEach = () -> {
            before[0] = state(CalendarState.FILE);
            before[1] = state(Known.FILE);
        };
        log.add(step + " " + fault);
        wire.plan(fault, random.nextInt(14));
        try {
            said.addAll(publish(false).notices());
            if (fault != ModelWire.Fault.ANSWER_LOST && fault != ModelWire.Fault.GONE) {
                // it went through; now it dies before it could remember, or in between
                restore(Known.FILE, before[1]);
                if (random.nextBoolean()) { restore(CalendarState.FILE, before[0]); }
            }
        } catch (ModelWire.Killed | RecordException e) {
            // as it was meant
        }
        wire.plan(ModelWire.Fault.NONE, 0);
        wire.atEach = () -> {
        };
        wasCutOff = true;
        objects.forEach(
                object -> object.isRemembered &= !object.isDeleted || object.isRecorded || !plan.isAway(object.task));
    }

    /** Another run goes through, whole, at any request of the first. */
    private void atOnce() throws IOException {
        int[] before = {random.nextInt(14)};
        log.add(step + " two at once");
        wire.atEach = () -> {
            if (before[0]-- == 0) { said.addAll(publish(new ModelWire(store), false).notices()); }
        };
        Publish.Result first = publish(false);
        wire.atEach = () -> {
        };
        assertThat(first.refused()).as(at()).isEmpty();
        said.addAll(first.notices());
    }

    private byte @Nullable [] state(String file) throws IOException {
        Path path = folder.resolve(file);
        return Files.exists(path) ? Files.readAllBytes(path) : null;
    }

    private void restore(String file, byte @Nullable [] before) throws IOException {
        if (before == null) {
            Files.deleteIfExists(folder.resolve(file));
        } else {
            Files.write(folder.resolve(file), before);
        }
    }

    /** A trial, a run that goes through and does what the trial said, and one more that finds nothing to do. */
    private void settled() throws IOException {
        Optional<Publish.Result> trial = random.nextInt(3) == 0 ? Optional.of(tried()) : Optional.empty();

        Publish.Result result = publish(false);
        said.addAll(result.notices());
        trial.ifPresent(said -> assertThat(result).as(at()).isEqualTo(said));
        assertThat(result.refused()).as(at()).isEmpty();
        kept();
        objects.forEach(this::isAsPlanned);
        plan.wasPublished();

        if (random.nextInt(4) == 0) {
            Publish.Result again = publish(false);
            assertThat(List.of(again.created(), again.changed(), again.removed())).as(at()).allMatch(List::isEmpty);
        }
        for (ModelObject object : objects) {
            object.isRemembered |= object.path().isPresent();
            object.isRecorded |= object.isDeleted && object.isRemembered && !plan.isAway(object.task);
            // it may have been us, and whoever asks for it again sees it again
            object.isRemembered &= object.isRecorded || !object.isDeleted;
        }
    }

    private Publish.Result tried() throws IOException {
        Map<String, String> before = new TreeMap<>(store.objects);
        Publish.Result trial = publish(true);
        assertThat(store.objects).as(at()).isEqualTo(before);
        return trial;
    }

    /** What has to hold at any time. */
    private void kept() {
        assertThat(store.objects).as(at()).containsEntry(STRANGER, THEIRS);
        for (ModelObject object : objects) {
            long count = store.objects.values().stream().filter(text -> text.contains("UID:" + object.uid)).count();
            assertThat(count).as(at() + ", " + object.task).isLessThanOrEqualTo(1);
            if (object.isDeleted && count == 1) {
                assertThat(object.isRemembered).as(at() + ", deleted " + object.task).isFalse();
                object.isDeleted = false;
                object.isRecorded = false;
            }
            String text = object.text();
            object.wrote.forEach((what, line) -> {
                boolean isAway = what.equals("alarm") && plan.isAway(object.task);
                if (!isAway && !text.contains(line)) { isSaid(object, what, line); }
            });
        }
    }

    /** Only where nobody knows who wrote what, the plan's goes before; then it is said, unless the run was killed. */
    private void isSaid(ModelObject object, String what, String line) {
        String words = line.substring(line.indexOf(':') + 1);
        boolean isTold = wasCutOff || said.stream().anyMatch(one -> one.contains(words));
        assertThat(object.isUnmarked && isTold)
                .as(at() + ": the " + what + " of " + object.task + " is gone: " + line + "\n" + object.text())
                .isTrue();
    }

    private void isAsPlanned(ModelObject object) {
        Optional<Item> item = plan.item(object.task);
        String text = object.text();
        if (object.isDeleted) { return; }
        if (object.ticked.isPresent()) {
            assertThat(text).as(at()).isNotEmpty();
            return;
        }
        if (plan.isAway(object.task)) {
            // a reminder alone is no reason to keep what is not to be done
            object.wrote.remove("alarm");
            boolean stays = plan.mayStay(object.task) || object.isTouched() || object.isUnmarked;
            assertThat(text.isEmpty() || stays).as(at() + ", withdrawn " + object.task + text).isTrue();
            return;
        }
        String title = item.get().words().title();
        boolean isDone = item.get().progress().state() == Item.State.DONE;
        if (object.isEvent && text.isEmpty() && (isDone || isToldElsewhere(title))) { return; }
        assertThat(text).as(at() + ", " + object.task).isNotEmpty();
        // made anew after it was done: a completed item is left alone, whatever the plan calls the work later
        if (isDone && text.contains("STATUS:COMPLETED")) { return; }
        if (object.wrote.containsKey("title")) {
            boolean isNew = !object.titleBefore.endsWith(title);
            assertThat(!isNew || text.contains(title) || object.isUnmarked).as(at() + text).isTrue();
        } else {
            assertThat(object.value("SUMMARY")).as(at() + text).endsWith(title);
        }
        assertThat(text.contains("STATUS:COMPLETED")).as(at() + text).isEqualTo(isDone && !object.isEvent);
    }

    /**
     * A round without a day of its own is told in another's event; one that was done while away comes back as neither.
     */
    private boolean isToldElsewhere(String title) {
        return store.objects.values().stream().map(text -> text.replace("\r\n ", ""))
                .anyMatch(text -> text.contains("Also on this day:") && text.contains(title));
    }

    private Publish.Result publish(boolean isTrial) throws IOException { return publish(wire, isTrial); }

    private Publish.Result publish(ModelWire through, boolean isTrial) throws IOException {
        return new Publish(garden(), Layout.usual(), today, isTrial, false).to(session(through), ADDRESS, ADDRESS,
                plan.all());
    }

    private static Session session(ModelWire through) {
        Session.Limits limits = new Session.Limits(Duration.ofHours(1), 1 << 20, Duration.ofHours(1), 200);
        return new Session(Optional.empty(), false, new Progress(text -> {
        }), limits, through);
    }

    private Export.Garden garden() {
        Export.Garden garden = Plans.garden(folder);
        return new Export.Garden(garden.id(), garden.name(), garden.zone(), folder, plan.came());
    }

    /** Every tick is heard once, with its day; what was heard goes into the journal, and so into the plan. */
    private void readBack() throws IOException {
        ReadBack back = new ReadBack(Plans.garden(folder), plan.all(), Layout.usual(), today.plusDays(1));
        for (String object : session(wire).fetch(ADDRESS, Plans.garden(folder), plan.all())) {
            back.read(object, "server");
        }
        Map<String, LocalDate> heard = new TreeMap<>();
        for (Answer answer : back.result().answers()) {
            if (answer.what() == Answer.What.DONE && !journal.containsKey(answer.identity())) {
                assertThat(heard.put(answer.identity(), answer.day())).as(at()).isNull();
            }
        }
        Map<String, LocalDate> expected = new TreeMap<>();
        objects.forEach(object -> object.ticked.ifPresent(day -> {
            if (!journal.containsKey(object.task)
                    && (plan.item(object.task).isPresent() || heard.containsKey(object.task))) {
                expected.put(object.task, day);
            }
        }));
        assertThat(heard).as(at()).isEqualTo(expected);
        journal.putAll(heard);
        heard.forEach(plan::done);
    }
}
