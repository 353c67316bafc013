package org.oldwood.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.Bounds;
import org.oldwood.calendar.LoopbackServer;
import org.oldwood.cli.command.Cli;

/**
 * Damaged files of every kind that the program reads, and command lines made at random: each ends in a result or a
 * message, never in a fault of the program, and in bounded time. {@code -Dinputs=100000} makes the long run whose
 * figures stand in {@code docs/validation.md}; it asks for {@code -Xmx256m}.
 */
class FuzzTest {
    private static final int INPUTS = Integer.getInteger("inputs", 800);
    private static final long SEED = Long.getLong("seed", 20261125L);
    private static final Path DATA = Path.of("src/main/resources/org/oldwood");
    private static final List<String> READING = List.of("check", "tasks", "tasks --json", "stages", "water", "cuttings",
            "prune", "ledger", "shopping", "calendar --out=out --quiet", "sheet --quiet",
            "note watered --bed=blackcurrant-bed --litres=20", "why --not winter-cut blackcurrant-1");

    @TempDir
    Path scratch;

    private final Map<String, Integer> faults = new TreeMap<>();
    private final Map<Integer, Integer> exits = new TreeMap<>();
    private final Bounds bounds = new Bounds(INPUTS > 3000);

    /** A garden of a few bushes, which costs a fifth of a demo garden's time; every eighth input is of a demo garden. */
    private Path few() throws IOException {
        Path few = Files.createDirectories(scratch.resolve("few"));
        if (Files.exists(few.resolve("garden.json"))) { return few; }
        List<String> start = List.of(
                "start . --name=Few --at=52,-2 --plants=blackcurrant=2,gooseberry=1,summer-raspberry=6",
                "--planted=2021 --zone=Europe/London --today=2026-03-01");
        assertThat(Cli.in(few).run(String.join(" ", start).split(" ")).exit()).isZero();
        Files.writeString(few.resolve("notes.csv"),
                "date,entry,plant,bed,crop,stage,material,grams,kg,litres,depthCm,stems,cut,lot,method,number,parent\n"
                        + "2026-03-10,fed,,blackcurrant-bed,,,ammonium-sulphate,90,,,,,,,,,\n"
                        + "2026-03-20,mulched,,gooseberry-bed,,,straw,,,,8,,,,,,\n"
                        + "2026-04-18,seen,,,gooseberry,full-flower,,,,,,,,,,,\n"
                        + "2026-06-20,watered,,blackcurrant-bed,,,,,,60,,,,,,,\n"
                        + "2026-07-10,picked,blackcurrant-1,,,,,,2.5,,,,,,,,\n"
                        + "2026-10-30,limed,,gooseberry-bed,,,ground-limestone,900,,,,,,,,,\n"
                        + "2026-11-10,struck,,blackcurrant-bed,,,,,,,,,,bc-2026,hardwood,6,blackcurrant-1\n"
                        + "2026-11-12,counted,blackcurrant-1,,,,,,,,,\"1=5,2=4,3=4\",,,,,\n"
                        + "2026-11-14,pruned,blackcurrant-2,,,,,,,,,4=3,winter,,,,\n");
        Cli.Result noted = Cli.in(few).run("note", "--csv=notes.csv", "--today=2026-11-20");
        assertThat(noted.exit()).as(noted.err()).isZero();
        Files.delete(few.resolve("notes.csv"));
        return few;
    }

    @Test
    void damaged_gardens_and_journals() throws IOException {
        List<Path> gardens = List.of(few(), Path.of("demo-data/terrace-school"),
                Path.of("demo-data/fire-station-hedges"));
        for (Path good : gardens) {
            for (String name : List.of("garden.json", "journal.jsonl")) {
                int times = good.endsWith("few") ? INPUTS * 7 / 64 : INPUTS / 128;
                damaged(good, List.of(good.resolve(name)), name, READING, times);
            }
        }
        nothingFailed();
    }

    @Test
    void damaged_data_of_ones_own() throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.walk(DATA)) {
            all = files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
        List<String> commands = new ArrayList<>(READING);
        commands.addAll(List.of("check", "check", "check", "sources", "lime", "mulch"));
        damaged(few(), all, "", commands, INPUTS * 7 / 32);
        damaged(Path.of("demo-data/terrace-school"), all, "", commands, INPUTS / 32);
        nothingFailed();
    }

    @Test
    void damaged_weather() throws IOException {
        Path good = Files.createDirectories(scratch.resolve("good"));
        copy(few(), good);
        Files.writeString(good.resolve("weather.csv"), weather());
        Files.writeString(good.resolve("ghcn.csv"), ghcn());
        List<String> own = List.of("water", "stages", "chill", "heat", "tasks", "et0 weather.csv", "check");
        damaged(good, List.of(good.resolve("weather.csv")), "weather.csv", own, INPUTS / 8);
        damaged(good, List.of(good.resolve("ghcn.csv")), "ghcn.csv",
                List.of("weather add ghcn.csv --replace", "chill ghcn.csv", "heat ghcn.csv"), INPUTS / 16);
        nothingFailed();
    }

    @Test
    void damaged_calendars_tables_and_memories() throws IOException {
        Path good = Files.createDirectories(scratch.resolve("good"));
        copy(few(), good);
        assertThat(Cli.in(good).run("calendar", "--out=.", "--today=2026-11-25").exit()).isZero();
        Path todos;
        try (Stream<Path> files = Files.list(good)) {
            todos = files.filter(file -> file.toString().endsWith("todos.ics")).findFirst().orElseThrow();
        }
        String text = Files.readString(todos).replace("STATUS:NEEDS-ACTION", "STATUS:COMPLETED");
        int some = text.indexOf("END:VTODO", text.length() / 10) + "END:VTODO\r\n".length();
        Files.writeString(todos, text.substring(0, some) + "END:VCALENDAR\r\n");
        String name = todos.getFileName().toString();
        damaged(good, List.of(todos), name, List.of("calendar read " + name, "calendar read " + name + " --yes",
                "calendar --out=. --adopt=" + name), INPUTS / 8);
        damaged(good, List.of(good.resolve("calendar-state.jsonl")), "calendar-state.jsonl",
                List.of("calendar --out=."), INPUTS / 32);
        Files.writeString(good.resolve("notes.csv"),
                "date,entry,plant,stems,bed,litres,note\n2026-01-05,counted,blackcurrant-1,\"1=5,2=4,3=4\",,,after\n"
                        + "2026-06-20,watered,,,blackcurrant-bed,60,\n");
        Files.writeString(good.resolve("stock.csv"),
                "crop,number,bed,cultivar,form\nblackcurrant,4,top,,\nredcurrant,2,wall,,cordon\n");
        damaged(good, List.of(good.resolve("notes.csv"), good.resolve("stock.csv")), "", List.of("note --csv=notes.csv",
                "start new --name=N --at=52,-2 --stock=stock.csv --planted=2021 --zone=UTC"), INPUTS / 16);
        nothingFailed();
    }

    /** What lies beside the record or stands in its place: strays, links, folders, other encodings, endless nesting. */
    @Test
    void folders_with_strays_and_hostile_files() throws IOException {
        List<String> commands = new ArrayList<>(READING);
        commands.addAll(List.of("pack --out=../p.zip", "calendar --feed=../f.ics", "sheet --out=../s.html", "sources"));
        Path folder = scratch.resolve("garden");
        for (int i = 0; i < INPUTS / 8; i++) {
            empty(folder);
            copy(i % 8 == 0 ? Path.of("demo-data/terrace-school") : few(), folder);
            Random random = new Random(SEED + i);
            int strays = 1 + random.nextInt(3);
            for (int j = 0; j < strays; j++) {
                HostileFile.lay(folder, random);
            }
            run(folder, commands.get(i % commands.size()).split(" "), "hostile seed " + (SEED + i));
        }
        nothingFailed();
    }

    /** Statuses, tags, XML and objects of a server, damaged at any answer; nothing of the journal is touched. */
    @Test
    void servers_with_damaged_answers() throws IOException {
        Path folder = Files.createDirectories(scratch.resolve("garden"));
        copy(few(), folder);
        List<Integer> statuses = List.of(200, 201, 204, 207, 301, 302, 401, 403, 404, 409, 412, 423, 500, 503, 507);
        try (LoopbackServer server = new LoopbackServer()) {
            byte[] journal = Files.readAllBytes(folder.resolve("journal.jsonl"));
            for (int i = 0; i < INPUTS / 32; i++) {
                Random random = new Random(SEED + i);
                server.onItsWay = reply -> random.nextInt(6) > 0 ? reply
                        : new LoopbackServer.Reply(
                                random.nextInt(3) == 0 ? statuses.get(random.nextInt(statuses.size())) : reply.status(),
                                random.nextInt(5) == 0 ? "" : reply.etag(),
                                new String(new Damage(random.nextLong()).of(reply.body().getBytes(UTF_8)), UTF_8));
                String command = random.nextInt(3) == 0 ? "calendar read " : "calendar publish ";
                run(folder, (command + server.address() + " --quiet").split(" "), "server seed " + (SEED + i));
            }
            assertThat(Files.readAllBytes(folder.resolve("journal.jsonl"))).startsWith(journal);
        }
        nothingFailed();
    }

    @Test
    void command_lines_made_at_random() throws IOException {
        Random random = new Random(SEED);
        CommandLines lines = new CommandLines(random);
        Path folder = Files.createDirectories(scratch.resolve("a/b/c"));
        for (int i = 0; i < INPUTS / 4; i++) {
            if (i % 50 == 0) {
                empty(folder);
                copy(i % 400 == 0 ? Path.of("demo-data/terrace-school") : few(), folder);
            }
            String[] line = lines.next();
            // the page for the phone stays open until somebody closes it
            if (!line[0].equals("walk")) { run(folder, line, "line " + i); }
        }
        nothingFailed();
    }

    /**
     * Lays a damaged copy of one of the files over a good garden, and runs one of the commands on it. The name is that
     * in the garden; empty for a data file's own.
     */
    private void damaged(Path good, List<Path> files, String name, List<String> commands, int times)
            throws IOException {
        Path folder = scratch.resolve("garden");
        for (int i = 0; i < times; i++) {
            empty(folder);
            copy(good, folder);
            Path file = files.get(i % files.size());
            String own = name.isEmpty() ? relative(file, good) : name;
            Path to = folder.resolve(own);
            Files.createDirectories(to.getParent());
            Files.write(to, new Damage(SEED + i).of(Files.readAllBytes(file)));
            String command = commands.get((i / files.size() + i) % commands.size());
            run(folder, command.split(" "), own + " seed " + (SEED + i));
        }
    }

    private static String relative(Path file, Path good) {
        Path root = file.startsWith(DATA) ? DATA : good;
        return root.relativize(file).toString();
    }

    private void run(Path folder, String[] words, String what) {
        String[] dated = java.util.Arrays.copyOf(words, words.length + 1);
        dated[words.length] = "--today=2026-11-25";
        bounds.begin();
        Cli.Result result = Cli.in(folder).reading("y\n1\n").run(dated);
        Duration took = bounds.end();
        exits.merge(result.exit(), 1, Integer::sum);
        String said = result.err().replaceAll("\\s+", " ");
        boolean failed = said.contains("fault of the program") || said.contains("cannot be understood")
                || (result.exit() == 3 && !isDisk(said, what)) || took.compareTo(Bounds.LONGEST) > 0;
        if (failed) {
            String fault = said.replaceAll(".*(this is a fault of the program.*|cannot be understood.*)", "$1");
            faults.merge(cut(fault) + "  <- " + String.join(" ", words) + ", " + what, 1, Integer::sum);
        }
    }

    private static String cut(String text) { return text.substring(0, Math.min(text.length(), 500)); }

    private void nothingFailed() {
        System.out.printf("%s: exits %s, longest %d ms%n", this, exits, bounds.longest().toMillis());
        assertThat(faults).isEmpty();
    }

    @Override
    public String toString() { return "damaged inputs"; }

    private static String weather() {
        StringBuilder text = new StringBuilder("date,tmin,tmax,rain\n");
        java.time.LocalDate day = java.time.LocalDate.of(2025, 9, 1);
        for (int i = 0; i < 440; i++) {
            double warmth = 10 + 8 * Math.sin((i - 30) / 58.0);
            text.append(day.plusDays(i)).append(',').append(Math.round(warmth - 5)).append(',');
            text.append(Math.round(warmth + 5)).append(',').append(i % 3).append('\n');
        }
        return text.toString();
    }

    /** A link that leads to itself is the disk's to refuse, with its name; so is what a random line names. */
    private static boolean isDisk(String said, String what) {
        return what.startsWith("line")
                || (what.startsWith("hostile") && said.contains("a file could not be read or written: /"));
    }

    private static String ghcn() {
        StringBuilder text = new StringBuilder();
        for (int i = 1; i < 29; i++) {
            String day = "UK000047811,202607" + (i < 10 ? "0" : "") + i;
            text.append(day).append(",TMAX,189,,,E,\n").append(day).append(",TMIN,101,,,E,\n");
            text.append(day).append(",PRCP,25,,,E,\n");
        }
        return text.toString();
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.createDirectories(to);
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.write(to.resolve(file.getFileName().toString()), Files.readAllBytes(file));
            }
        }
    }

    private static void empty(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
