package org.oldwood.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What is read without picocli is read as picocli reads it, and nothing that picocli refuses. */
class PlainLineTest {
    /** Each is an option, a value of one, or something that is neither. */
    private static final List<String> TOKENS = List.of(
            "--bed",
            "--bed=top",
            "--bed=",
            "--bed=a=b",
            "--dir",
            "--dir=here",
            "--day",
            "--day=2026-02-30",
            "--day=2026-11-25",
            "--part",
            "--part=leaf",
            "--part=LEAF",
            "--file",
            "--file=x",
            "--warm",
            "--warm=-4.5",
            "--warm=x",
            "--quiet",
            "--quiet=true",
            "--quie",
            "-q",
            "-",
            "--",
            "top",
            "2026-11-25",
            "leaf",
            "bark",
            "4.5",
            "-4.5",
            "",
            "@file",
            "\"top\"",
            "'top'",
            "--help",
            "-h",
            "a b",
            "read");

    /** What was taken, in the order in which it was. */
    private final List<String> taken = new ArrayList<>();

    private final List<Path> files = new ArrayList<>();

    private enum Part {
        leaf,
        bark
    }

    private Spelled spelled() {
        return Spelled.command("try", "a command for tests", "oldwood try")
                .value("--bed", "BED", "", String.class, given -> taken.add("bed " + given))
                .value("--dir", "DIR", "", Path.class, given -> taken.add("dir " + given))
                .value("--day", "DAY", "", LocalDate.class, given -> taken.add("day " + given))
                .value("--part", "PART", "", Part.class, given -> taken.add("part " + given))
                .value("--warm", "C", "", Double.class, given -> taken.add("warm " + given))
                .values("--file", "FILE", "", Path.class, files)
                .flag("--quiet", "", given -> taken.add("quiet " + given))
                .word("WORD", "", given -> taken.add("word " + given));
    }

    private Optional<List<String>> plainly(List<String> arguments) {
        taken.clear();
        files.clear();
        if (!PlainLine.read(spelled().parts(), arguments)) {
            assertThat(taken).as("taken although refused: %s", arguments).isEmpty();
            assertThat(files).as("taken although refused: %s", arguments).isEmpty();
            return Optional.empty();
        }
        return Optional.of(all());
    }

    private Optional<List<String>> byPicocli(List<String> arguments) {
        taken.clear();
        files.clear();
        CommandLine line = Settings.plain(
                new CommandLine(spelled().addTo(CommandSpec.create().name("try"))));
        try {
            line.parseArgs(arguments.toArray(String[]::new));
        } catch (ParameterException e) {
            return Optional.empty();
        }
        return Optional.of(all());
    }

    /** Words come where picocli puts them, options in their order. */
    private List<String> all() {
        List<String> all = new ArrayList<>(taken);
        all.sort(null);
        files.forEach(file -> all.add("file " + file));
        return all;
    }

    @Test
    void takes_what_is_plainly_right() {
        assertThat(plainly(List.of(
                        "--dir",
                        "here",
                        "--day=2026-11-25",
                        "--quiet",
                        "top",
                        "--part",
                        "leaf",
                        "--file",
                        "b",
                        "--file",
                        "a",
                        "--warm",
                        "4.5")))
                .contains(List.of(
                        "day 2026-11-25",
                        "dir here",
                        "part leaf",
                        "quiet true",
                        "warm 4.5",
                        "word top",
                        "file b",
                        "file a"));
    }

    @Test
    void leaves_to_picocli_what_it_is_not_sure_of() {
        for (String arguments : List.of(
                "--help",
                "-h",
                "--bed",
                "--bed --quiet",
                "--bed=",
                "--bed a --bed b",
                "a b",
                "--quiet=true",
                "--quiet --quiet",
                "--unknown",
                "--day 2026-02-30",
                "--part LEAF",
                "--warm warm",
                "--",
                "--warm -4.5")) {
            assertThat(plainly(List.of(arguments.split(" ")))).as(arguments).isEmpty();
        }
    }

    @Test
    void agrees_with_picocli_on_whatever_it_takes() {
        Random random = new Random(9);
        int agreed = 0;
        for (int i = 0; i < 20_000; i++) {
            List<String> arguments = new ArrayList<>();
            for (int length = random.nextInt(6); length > 0; length--) {
                arguments.add(TOKENS.get(random.nextInt(TOKENS.size())));
            }
            Optional<List<String>> plain = plainly(arguments);
            if (plain.isPresent()) {
                assertThat(plain).as("%s", arguments).isEqualTo(byPicocli(arguments));
                agreed++;
            }
        }
        assertThat(agreed).isGreaterThan(1_000);
    }

    @Test
    void a_command_read_without_picocli_words_wrong_use_as_one_read_with_it(
            @org.junit.jupiter.api.io.TempDir Path folder) {
        Cli.Result plain = Cli.in(folder).run("water", "--crop", "redcurrant");
        Cli.Result byPicocli = Cli.in(folder).run("water", "--crop", "redcurrant", "--json=true");

        assertThat(plain.exit()).isEqualTo(2);
        assertThat(plain.err()).contains("--crop goes with --compare").contains("Usage: oldwood water");
        assertThat(byPicocli.err()).isEqualTo(plain.err());
    }
}
