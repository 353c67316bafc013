package org.oldwood.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
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
    private static final List<String> READING = List.of("check", "stages", "water", "cuttings", "prune",
            "note watered --bed=blackcurrant-bed --litres=20", "why --not winter-cut blackcurrant-1");
    /** These make a plan of the year, which costs four times as much: one input in six. */
    private static final List<String> PLANNING = List.of("tasks", "tasks --json", "ledger", "shopping",
            "calendar --out=out --quiet", "sheet --quiet");

    @TempDir
    Path scratch;

    private final Map<String, Integer> faults = new TreeMap<>();
    private final Map<Integer, Integer> exits = new TreeMap<>();
    private final Bounds bounds = new Bounds(INPUTS > 3000);

    /**
     * The garden that an input damages: mostly one bush with an entry of every kind, whose year costs a sixth of a demo
     * garden's; sometimes a few bushes of three kinds, or a demo garden.
     */
    private Path garden(Random random) throws IOException {
        return switch (random.nextInt(16)) {
            case 0 -> Path.of(random.nextBoolean() ? "demo-data/terrace-school" : "demo-data/fire-station-hedges");
            case 1, 2 -> small("few", "blackcurrant=2,gooseberry=1,summer-raspberry=6", "gooseberry");
            default -> bush();
        };
    }

    private Path bush() throws IOException { return small("bush", "blackcurrant=1", "blackcurrant"); }

    private Path small(String name, String plants, String other) throws IOException {
        Path small = Files.createDirectories(scratch.resolve(name));
        if (Files.exists(small.resolve("garden.json"))) { return small; }
        String start = "start . --name=Few --at=52,-2 --plants=" + plants
                + " --planted=2021 --zone=Europe/London --today=2026-03-01";
        assertThat(Cli.in(small).run(start.split(" ")).exit()).isZero();
        Files.writeString(small.resolve("notes.csv"), """
                date,entry,plant,bed,crop,stage,material,grams,kg,litres,depthCm,stems,cut,lot,method,number,parent
                2026-03-10,fed,,blackcurrant-bed,,,ammonium-sulphate,90,,,,,,,,,
                2026-03-20,mulched,,OTHER-bed,,,straw,,,,8,,,,,,
                2026-04-18,seen,,,OTHER,full-flower,,,,,,,,,,,
                2026-06-20,watered,,blackcurrant-bed,,,,,,60,,,,,,,
                2026-07-10,picked,blackcurrant-1,,,,,,2.5,,,,,,,,
                2026-10-30,limed,,OTHER-bed,,,ground-limestone,900,,,,,,,,,
                2026-11-10,struck,,blackcurrant-bed,,,,,,,,,,bc-2026,hardwood,6,blackcurrant-1
                2026-11-12,counted,blackcurrant-1,,,,,,,,,"1=5,2=4,3=4",,,,,
                2026-11-14,pruned,blackcurrant-1,,,,,,,,,4=3,winter,,,,
                """.replace("OTHER", other));
        Cli.Result noted = Cli.in(small).run("note", "--csv=notes.csv", "--today=2026-11-20");
        assertThat(noted.exit()).as(noted.err()).isZero();
        Files.delete(small.resolve("notes.csv"));
        return small;
    }

    /** Neighbouring seeds give unlike draws, so that few inputs are spread as well as many. */
    private static Random random(int i) {
        return new Random(new SplittableRandom(SEED + i).nextLong());
    }

    private static <T> T any(List<T> among, Random random) { return among.get(random.nextInt(among.size())); }

    private static String command(Random random, List<String> reading, List<String> planning) {
        boolean plans = random.nextInt(6) == 0;
        List<String> more = plans ? planning : reading;
        int one = random.nextInt(more.size() + (plans ? PLANNING : READING).size());
        return one < more.size() ? more.get(one) : (plans ? PLANNING : READING).get(one - more.size());
    }

    @Test
    void damaged_gardens_and_journals() throws IOException {
        for (int i = 0; i < INPUTS / 4; i++) {
            Random random = random(i);
            Path good = garden(random);
            String name = random.nextBoolean() ? "garden.json" : "journal.jsonl";
            damaged(good, good.resolve(name), name, command(random, List.of(), List.of()), i);
        }
        nothingFailed();
    }

    @Test
    void damaged_data_of_ones_own() throws IOException {
        List<Path> all;
        try (Stream<Path> files = Files.walk(DATA)) {
            all = files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
        }
        List<String> reading = List.of("check", "check", "check", "sources");
        for (int i = 0; i < INPUTS / 4; i++) {
            Random random = random(i);
            Path file = any(all, random);
            damaged(garden(random), file, DATA.relativize(file).toString(),
                    command(random, reading, List.of("lime", "mulch")), i);
        }
        nothingFailed();
    }

    @Test
    void damaged_weather() throws IOException {
        Path good = Files.createDirectories(scratch.resolve("good"));
        copy(bush(), good);
        Files.writeString(good.resolve("weather.csv"), weather());
        Files.writeString(good.resolve("ghcn.csv"), ghcn());
        List<String> own = List.of("water", "stages", "chill", "heat", "tasks", "et0 weather.csv", "check");
        List<String> adding = List.of("weather add ghcn.csv --replace", "chill ghcn.csv", "heat ghcn.csv");
        damaged(good, List.of("weather.csv"), own, INPUTS / 8);
        damaged(good, List.of("ghcn.csv"), adding, INPUTS / 16);
        nothingFailed();
    }

    @Test
    void damaged_calendars_tables_and_memories() throws IOException {
        Path good = Files.createDirectories(scratch.resolve("good"));
        copy(bush(), good);
        assertThat(Cli.in(good).run("calendar", "--out=.", "--today=2026-11-25").exit()).isZero();
        Path todos;
        try (Stream<Path> files = Files.list(good)) {
            todos = files.filter(file -> file.toString().endsWith("todos.ics")).findFirst().orElseThrow();
        }
        String text = Files.readString(todos).replace("STATUS:NEEDS-ACTION", "STATUS:COMPLETED");
        int some = text.indexOf("END:VTODO", text.length() / 10) + "END:VTODO\r\n".length();
        Files.writeString(todos, text.substring(0, some) + "END:VCALENDAR\r\n");
        String name = todos.getFileName().toString();
        damaged(good, List.of(name), List.of("calendar read " + name, "calendar read " + name + " --yes",
                "calendar --out=. --adopt=" + name), INPUTS / 8);
        damaged(good, List.of("calendar-state.jsonl"), List.of("calendar --out=."), INPUTS / 32);
        Files.writeString(good.resolve("notes.csv"),
                "date,entry,plant,stems,bed,litres,note\n2026-01-05,counted,blackcurrant-1,\"1=5,2=4,3=4\",,,after\n"
                        + "2026-06-20,watered,,,blackcurrant-bed,60,\n");
        Files.writeString(good.resolve("stock.csv"),
                "crop,number,bed,cultivar,form\nblackcurrant,4,top,,\nredcurrant,2,wall,,cordon\n");
        damaged(good, List.of("notes.csv", "stock.csv"), List.of("note --csv=notes.csv",
                "start new --name=N --at=52,-2 --stock=stock.csv --planted=2021 --zone=UTC"), INPUTS / 16);
        nothingFailed();
    }

    /** What lies beside the record or stands in its place: strays, links, folders, other encodings, endless nesting. */
    @Test
    void folders_with_strays_and_hostile_files() throws IOException {
        List<String> planning = List.of("calendar --feed=../f.ics", "sheet --out=../s.html");
        Path folder = scratch.resolve("garden");
        for (int i = 0; i < INPUTS / 8; i++) {
            Random random = random(i);
            empty(folder);
            copy(garden(random), folder);
            int strays = 1 + random.nextInt(3);
            for (int j = 0; j < strays; j++) {
                HostileFile.lay(folder, random);
            }
            String command = command(random, List.of("pack --out=../p.zip", "sources"), planning);
            run(folder, command.split(" "), "hostile seed " + (SEED + i));
        }
        nothingFailed();
    }

    /** Statuses, tags, XML and objects of a server, damaged at any answer; nothing of the journal is touched. */
    @Test
    void servers_with_damaged_answers() throws IOException {
        Path folder = Files.createDirectories(scratch.resolve("garden"));
        copy(bush(), folder);
        List<Integer> statuses = List.of(200, 201, 204, 207, 301, 302, 401, 403, 404, 409, 412, 423, 500, 503, 507);
        try (LoopbackServer server = new LoopbackServer()) {
            byte[] journal = Files.readAllBytes(folder.resolve("journal.jsonl"));
            for (int i = 0; i < INPUTS / 32; i++) {
                Random random = random(i);
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
                copy(garden(random), folder);
            }
            String[] line = lines.next();
            // the page for the phone stays open until somebody closes it
            if (!line[0].equals("walk")) { run(folder, line, "line " + i); }
        }
        nothingFailed();
    }

    private void damaged(Path good, List<String> names, List<String> commands, int times) throws IOException {
        for (int i = 0; i < times; i++) {
            Random random = random(i);
            String name = any(names, random);
            damaged(good, good.resolve(name), name, any(commands, random), i);
        }
    }

    /** Lays a damaged copy of a file over a good garden, by that name in it, and runs a command there. */
    private void damaged(Path good, Path file, String name, String command, int i) throws IOException {
        Path folder = scratch.resolve("garden");
        empty(folder);
        copy(good, folder);
        Path to = folder.resolve(name);
        Files.createDirectories(to.getParent());
        Files.write(to, new Damage(random(i).nextLong()).of(Files.readAllBytes(file)));
        run(folder, command.split(" "), name + " seed " + (SEED + i));
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
