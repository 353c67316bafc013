package org.oldwood.calendar.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.calendar.Answer;
import org.oldwood.calendar.CalendarState;
import org.oldwood.calendar.Item;
import org.oldwood.calendar.Layout;
import org.oldwood.calendar.LoopbackServer;
import org.oldwood.calendar.Plans;
import org.oldwood.calendar.ReadBack;
import org.oldwood.calendar.Uids;

/**
 * Plans that change, people who tick, move, word, delete and import, and state that is lost, in random order: nothing
 * that a person wrote vanishes unsaid, nothing stands twice, a tick is read back with its day, strangers are untouched.
 * With {@code -Dsequences=N} as many sequences as one likes.
 */
class PublishModelTest {
    private static final int SEQUENCES = Integer.getInteger("sequences", 60);
    private static final List<String> TASKS = List.of("cut", "feed", "net");
    private static final String STRANGER = LoopbackServer.COLLECTION + "x.ics";
    private static final String THEIRS =
            "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:x\r\nSUMMARY:Dentist\r\nEND:VEVENT\r\nEND:VCALENDAR";
    private static final Uids UIDS = new Uids(Plans.GARDEN, Map.of());

    @TempDir
    Path root;

    @Test
    void nothing_of_the_persons_is_lost_in_any_order() throws IOException {
        try (LoopbackServer server = new LoopbackServer()) {
            for (int seed = 0; seed < SEQUENCES; seed++) {
                Path folder = Files.createDirectories(root.resolve("g" + seed));
                server.objects.clear();
                server.put(STRANGER, THEIRS);
                new Sequence(server, folder, new Random(seed), "sequence " + seed).run();
            }
        }
    }

    /** One garden, its server, and what a person may expect of it. */
    private static final class Sequence {
        final LoopbackServer server;
        final Path folder;
        final Random random;
        final String name;
        final Map<String, Item> plan = new TreeMap<>();
        final Map<String, String> titles = new TreeMap<>();
        final Map<String, String> words = new TreeMap<>();
        final Map<String, LocalDate> ticks = new TreeMap<>();
        final Set<String> deleted = new TreeSet<>();
        LocalDate today = LocalDate.of(2027, 1, 1);
        int step;

        Sequence(LoopbackServer server, Path folder, Random random, String name) {
            this.server = server;
            this.folder = folder;
            this.random = random;
            this.name = name;
        }

        void run() throws IOException {
            TASKS.forEach(this::plan);
            publish();
            for (step = 1; step <= 8; step++) {
                today = today.plusDays(1);
                for (int i = 0; i <= random.nextInt(3); i++) {
                    change(TASKS.get(random.nextInt(TASKS.size())));
                }
                publish();
                check();
            }
            readBack();
        }

        private void plan(String task) {
            LocalDate first = LocalDate.of(2027, 2, 1).plusDays(random.nextInt(20));
            plan.put(
                    task,
                    new Item(
                            task,
                            new Item.Words(
                                    "Do " + task + random.nextInt(3),
                                    "Take " + (1 + random.nextInt(90)) + " g, " + task + "; at the base.",
                                    "feeding",
                                    "Row A"),
                            "row-a",
                            new Item.Days(first, first.plusDays(10), first),
                            Item.Progress.OPEN));
        }

        private void change(String task) throws IOException {
            String uid = UIDS.todo(task);
            Optional<String> path = where(uid);
            switch (random.nextInt(9)) {
                case 0, 1 -> plan(task);
                case 2 -> path.ifPresent(at -> tick(at, task));
                case 3 ->
                    path.ifPresent(at -> {
                        titles.put(task, "Mine " + step);
                        edit(at, "(?m)^SUMMARY:.*$", "SUMMARY:Mine " + step);
                    });
                case 4 ->
                    path.ifPresent(at -> {
                        words.put(task, "my words " + step);
                        edit(at, "(?m)^DESCRIPTION:(.*)$", "DESCRIPTION:my words " + step + "\\\\n$1");
                    });
                case 5 ->
                    path.ifPresent(at -> {
                        server.objects.remove(at);
                        List.of(titles, words, ticks).forEach(map -> map.remove(task));
                        deleted.add(task);
                    });
                case 6 ->
                    path.ifPresent(at -> server.put(
                            LoopbackServer.COLLECTION + "import-" + task + ".ics", server.objects.remove(at)));
                case 7 -> Files.deleteIfExists(folder.resolve(CalendarState.FILE));
                default -> {
                    int[] lost = {1};
                    server.beforePut = put -> {
                        if (lost[0]-- > 0 && server.objects.containsKey(put)) {
                            server.put(put, server.objects.get(put));
                        }
                    };
                }
            }
        }

        private void tick(String at, String task) {
            if (ticks.putIfAbsent(task, today) == null) {
                String day = today.toString().replace("-", "");
                edit(at, "(?m)^STATUS:.*$", "STATUS:COMPLETED\r\nCOMPLETED:" + day + "T110000Z");
            }
        }

        private void edit(String at, String from, String to) {
            String text = server.objects.get(at).replace("\r\n ", "").replace("\r\n", "\n");
            server.put(at, text.replaceFirst(from, to).replace("\r\n", "\n").replace("\n", "\r\n"));
        }

        private Optional<String> where(String uid) {
            return server.objects.entrySet().stream()
                    .filter(object -> object.getValue().contains("UID:" + uid))
                    .map(Map.Entry::getKey)
                    .findFirst();
        }

        private void publish() throws IOException {
            Publish.Result result = new Publish(Plans.garden(folder), Layout.usual(), today, false)
                    .to(target(), new ArrayList<>(plan.values()));
            assertThat(result.refused()).as(name).isEmpty();
            server.beforePut = path -> {};
        }

        private Target target() {
            return new Target(server.address(), server.address(), Optional.empty(), false);
        }

        private void check() {
            assertThat(server.objects).as(name).containsEntry(STRANGER, THEIRS);
            for (String task : TASKS) {
                String uid = UIDS.todo(task);
                List<String> all = server.objects.values().stream()
                        .filter(text -> text.contains("UID:" + uid))
                        .map(text -> text.replace("\r\n ", ""))
                        .toList();
                assertThat(all).as(name + ", step " + step + ", " + task).hasSize(deleted.contains(task) ? 0 : 1);
                if (!all.isEmpty()) {
                    String text = all.get(0);
                    assertThat(text).as(name).contains(titles.getOrDefault(task, ""), words.getOrDefault(task, ""));
                    assertThat(text.contains("STATUS:COMPLETED")).as(name).isEqualTo(ticks.containsKey(task));
                }
            }
        }

        private void readBack() throws IOException {
            List<Item> items = new ArrayList<>(plan.values());
            ReadBack back = new ReadBack(Plans.garden(folder), items, Layout.usual(), today.plusDays(1));
            for (String object : target().fetch(Plans.garden(folder), items)) {
                back.read(object, "server");
            }
            Map<String, LocalDate> heard = new TreeMap<>();
            for (Answer answer : back.result().answers()) {
                assertThat(heard.put(answer.identity(), answer.day())).as(name).isNull();
            }
            assertThat(heard).as(name).isEqualTo(ticks);
            assertThat(back.result().notices()).as(name).noneMatch(notice -> notice.contains("other dates"));
        }
    }
}
