package org.oldwood.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.cli.command.Cli;
import org.oldwood.cli.record.NotingChild;
import org.oldwood.garden.GardenFolder;
import org.oldwood.store.Archive;

/** The record as one archive, and back. */
class PackTest {
    private static final String ARCHIVE = "terrace-2026-11-25.zip";

    @TempDir
    Path scratch;

    private Path garden;

    @BeforeEach
    void begin() throws IOException {
        garden = NotingChild.garden(Files.createDirectory(scratch.resolve("garden")));
        Files.writeString(garden.resolve("weather.csv"), "date,tmin,tmax,rain\n2026-11-24,1,6,0\n");
        Files.createDirectories(garden.resolve("rules"));
        Files.writeString(garden.resolve("rules/ours.json"), "{\"rules\": []}");
        Files.writeString(garden.resolve("README.txt"), "grün");
        run("calendar");
        run("sheet");
    }

    @Test
    void the_archive_holds_the_whole_record_and_opens_as_a_garden() throws IOException {
        Cli.Result result = run("pack");
        assertThat(result.exit()).as(result.err()).isZero();
        assertThat(result.err().replace('\n', ' ')).contains("read again and the same");
        Map<String, byte[]> files = contents(scratch.resolve(ARCHIVE));

        assertThat(files).containsOnlyKeys("ABOUT-THIS-ARCHIVE.txt", "README.txt", "SHA256SUMS", "calendar-state.jsonl",
                "garden.json", "journal.jsonl", "rules/ours.json", "weather.csv");
        Path anew = scratch.resolve("anew");
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path to = anew.resolve(file.getKey());
            Files.createDirectories(to.getParent());
            Files.write(to, file.getValue());
        }
        assertThat(GardenFolder.open(anew).journal()).hasSize(2);
        assertThat(Files.mismatch(anew.resolve("journal.jsonl"), garden.resolve("journal.jsonl"))).isEqualTo(-1);
        assertThat(Cli.in(anew).run("check", "--today=2026-11-25")).isEqualTo(new Cli.Result(0, "", ""));
    }

    @Test
    void the_same_record_and_day_are_the_same_bytes_anywhere() throws IOException {
        run("pack");
        byte[] first = Files.readAllBytes(scratch.resolve(ARCHIVE));
        TimeZone zone = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
            assertThat(run("pack", "--out=second.zip").exit()).isZero();
        } finally {
            TimeZone.setDefault(zone);
        }
        Cli.Result dated = Cli.in(scratch).with("SOURCE_DATE_EPOCH", "1795564800").run("pack", "--garden=garden",
                "--out=third.zip");

        assertThat(dated.exit()).as(dated.err()).isZero();
        assertThat(Files.readAllBytes(scratch.resolve("second.zip"))).isEqualTo(first);
        assertThat(Files.readAllBytes(scratch.resolve("third.zip"))).isEqualTo(first);
        assertThat(run("pack").err()).contains("Unchanged");
    }

    @Test
    void other_programs_read_it() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/python3")), "a second reader of archives");
        run("pack");
        String check = "import zipfile,hashlib,sys\nz=zipfile.ZipFile(sys.argv[1])\nassert z.testzip() is None\n"
                + "for line in z.read('SHA256SUMS').decode().splitlines():\n"
                + "    s,n=line.split('  ',1)\n    assert hashlib.sha256(z.read(n)).hexdigest()==s,n\n"
                + "print(len(z.namelist()))";
        Process python = new ProcessBuilder("/usr/bin/python3", "-c", check, scratch.resolve(ARCHIVE).toString())
                .redirectErrorStream(true).start();

        String said = new String(python.getInputStream().readAllBytes());
        assertThat(python.waitFor()).as(said).isZero();
        assertThat(said.strip()).isEqualTo("8");
    }

    @Test
    void a_large_file_is_never_held_whole() throws IOException {
        try (RandomAccessFile large = new RandomAccessFile(garden.resolve("photo.jpg").toFile(), "rw")) {
            large.setLength(64 << 20);
        }
        Archive archive = new Archive();
        archive.add("photo.jpg", garden.resolve("photo.jpg"));
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();

        archive.write(scratch.resolve("large.zip"), LocalDateTime.of(2026, 11, 25, 0, 0));

        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(16 << 20);
        assertThat(Files.size(scratch.resolve("large.zip"))).isGreaterThan(64 << 20);
    }

    @Test
    void a_broken_record_is_packed_as_it_is() throws IOException {
        Files.writeString(garden.resolve("garden.json"), "{broken");

        Cli.Result result = run("pack");

        assertThat(result.exit()).isZero();
        assertThat(result.err()).contains("has problems, and is packed as it is");
        assertThat(contents(scratch.resolve("garden-2026-11-25.zip")).get("garden.json"))
                .isEqualTo("{broken".getBytes());
    }

    @Test
    void a_folder_that_is_no_garden_is_refused() {
        assertThat(Cli.in(scratch).run("pack", "--today=2026-11-25").exit()).isEqualTo(1);
    }

    private Cli.Result run(String... args) {
        String[] all = java.util.Arrays.copyOf(args, args.length + 2);
        all[args.length] = "--garden=garden";
        all[args.length + 1] = "--today=2026-11-25";
        return Cli.in(scratch).run(all);
    }

    private static Map<String, byte[]> contents(Path archive) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        try (InputStream in = Files.newInputStream(archive); ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        return files;
    }
}
