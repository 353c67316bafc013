package org.oldwood.cli.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.oldwood.cli.Main;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.season.Hemisphere;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.RecordException;
import org.oldwood.store.Text;
import org.oldwood.words.Units;
import org.oldwood.words.Wording;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/**
 * What all commands have in common. A command prints results to {@link #out()}, everything else to {@link #tell}; it
 * lets {@link RecordException} through, and {@link Main} words it.
 */
public abstract class GardenCommand implements Callable<Integer> {
    @Option(names = "--garden", paramLabel = "DIR")
    public Optional<Path> gardenDir = Optional.empty();

    @Option(names = "--today", paramLabel = "DATE")
    public Optional<LocalDate> givenToday = Optional.empty();

    @Option(names = "--units", paramLabel = "UNITS")
    public Optional<String> givenUnits = Optional.empty();

    @Option(names = "--json")
    public boolean json;

    @Option(names = "--quiet")
    public boolean quiet;

    private final Set<String> told = new HashSet<>();

    @Option(names = {"-h", "--help"}, usageHelp = true)
    boolean help;

    private @Nullable CommandLine line;
    private @Nullable BufferedReader answers;
    private @Nullable Surroundings surroundings;
    private @Nullable Out out;
    private @Nullable Out err;
    private Optional<GardenFolder> opened = Optional.empty();
    private Optional<Path> found = Optional.empty();
    private Wording wording = Wording.METRIC;

    /** Does the work; returns 0, or 1 where the records have problems. */
    public abstract int run() throws IOException;

    public final void attach(Surroundings around, Out stdout, Out stderr) {
        surroundings = around;
        out = stdout;
        err = stderr;
    }

    /** Takes what was given to the command that this one belongs to. */
    public final void takeFrom(GardenCommand parent) {
        attach(parent.around(), parent.out(), parent.err());
        gardenDir = gardenDir.or(() -> parent.gardenDir);
        givenToday = givenToday.or(() -> parent.givenToday);
        givenUnits = givenUnits.or(() -> parent.givenUnits);
        json |= parent.json;
        quiet |= parent.quiet;
        tellIn(Wording.METRIC);
    }

    /** How the command line reads this command; one that has commands of its own adds them. */
    public CommandLine commandLine() {
        line = new CommandLine(this);
        return line;
    }

    public final CommandSpec spec() { return attached(line).getCommandSpec(); }

    /** An id on the command line that is not known: exit code 2, with the nearest or those known, if they are few. */
    public final ParameterException noSuch(String what, String id, Collection<String> known) {
        return usage("there is no %s \"%s\". %s".formatted(what, id, Nearest.hint(id, known)));
    }

    /** Stops as {@link #noSuch} does where an id was given that is not among those known. */
    public final void mustKnow(String what, Optional<String> id, Collection<String> known) {
        if (id.isPresent() && !known.contains(id.get())) { throw noSuch(what, id.get(), known); }
    }

    /** Answers as JSON where that was asked for, else in words; returns exit code 0. */
    public final int answer(Supplier<? extends Record> asJson, Runnable inWords) {
        if (json) {
            out().json(asJson.get());
        } else {
            inWords.run();
        }
        return 0;
    }

    @Override
    public final Integer call() throws IOException {
        try {
            if (surroundings != null && opened.isEmpty()) { tellIn(Wording.METRIC); }
            return run();
        } catch (RecordException | ParameterException e) {
            throw e;
        } catch (RuntimeException e) {
            // what bad data leads to is not our fault, and was told when the data were read
            opened.ifPresent(this::stopOnProblems);
            throw e;
        }
    }

    public final Out out() { return attached(out); }

    /** Standard error; prefer {@link #tell} for what {@code --quiet} silences. */
    public final Out err() {
        return attached(err);
    }

    public final Surroundings around() { return attached(surroundings); }

    private static <T> T attached(@Nullable T part) {
        if (part == null) { throw new IllegalStateException("the command was not attached to its surroundings"); }
        return part;
    }

    /** Says something on standard error, once, unless {@code --quiet} was given. */
    public final void tell(String text) {
        if (!quiet && told.add(text)) { err().paragraph(0, text); }
    }

    /** A file or folder named on the command line. */
    public final Path path(Path named) {
        return around().folder().resolve(named).normalize();
    }

    /**
     * A file named on the command line, to be read.
     *
     * @throws RecordException where it is no file, may not be read, or no file can have that name
     */
    public final Path readable(String named) {
        try {
            Path file = path(Path.of(named));
            if (Files.isRegularFile(file) && Files.isReadable(file)) { return file; }
        } catch (InvalidPathException e) {
            // a name that the system does not take is a name of no file
        }
        throw new RecordException(Problem.of("unreadable-file named", Place.of(named)));
    }

    /** The text of a table named on the command line, or of standard input where that is {@code -}. */
    public final String text(String named) throws IOException {
        return named.equals("-") ? Text.of(around().in().readAllBytes(), "standard input")
                : Text.of(Files.readAllBytes(readable(named)), named);
    }

    /** What the person answers, asked on standard error; nothing where nobody is there. */
    public final Optional<String> ask(String question) throws IOException {
        out().flush();
        err().line(question);
        err().flush();
        if (answers == null) {
            answers = new BufferedReader(new InputStreamReader(around().in(), StandardCharsets.UTF_8));
        }
        return Optional.ofNullable(answers.readLine()).map(String::strip);
    }

    /**
     * The folder that {@code --garden} names, by its path or by the name that the person gave it; else the current one,
     * if it is a garden or nobody has a usual one; else the usual one. Whether or not it is a garden.
     */
    public final Path gardenPath() {
        if (found.isEmpty()) {
            Path here = gardenDir.map(this::path).orElse(around().folder());
            boolean isHere = Files.exists(here.resolve(GardenFolder.GARDEN_FILE));
            Optional<Path> known = isHere || makesGarden() ? Optional.empty()
                    : KnownGardens.folder(around().environment(), gardenDir);
            known.ifPresent(folder -> tell("Garden: " + folder));
            found = Optional.of(known.orElse(here.toString().isEmpty() ? Path.of(".") : here));
        }
        return found.get();
    }

    /** Whether it makes a garden, so that no other one counts. */
    protected boolean makesGarden() { return false; }

    /**
     * The garden's folder, opened once.
     *
     * @throws RecordException where there is no garden, or its files have problems
     */
    public final GardenFolder folder() {
        if (opened.isEmpty()) {
            GardenFolder folder = GardenFolder.open(gardenPath());
            opened = Optional.of(folder);
            tellIn(folder.garden().wishes().wording().inSouth(folder.garden().hemisphere() == Hemisphere.SOUTH));
            tellNotices(folder);
        }
        return opened.get();
    }

    private void tellIn(Wording own) {
        wording = givenUnits.map(key -> Units.of(key).orElseThrow(() -> noSuch("system of units", key, Units.keys())))
                .map(own::in).orElse(own);
        out().tellIn(wording);
        err().tellIn(wording);
    }

    public final Wording wording() { return wording; }

    /** The units in which the person thinks. */
    public final Units units() {
        if (opened.isEmpty() && givenUnits.isPresent()) {
            tellIn(Wording.METRIC);
        } else if (!makesGarden() && Files.exists(gardenPath().resolve(GardenFolder.GARDEN_FILE))) { folder(); }
        return wording.units();
    }

    /** What is to be known of a folder before anything is made of it. */
    public void tellNotices(GardenFolder folder) {
        folder.notices().forEach(notice -> tell("Note: " + notice.inWords()));
    }

    /** The garden's folder for a command that works without one too; a named one must be there. */
    public final Optional<GardenFolder> folderIfAny() {
        boolean there = gardenDir.isPresent() || Files.exists(gardenPath().resolve(GardenFolder.GARDEN_FILE));
        return there ? Optional.of(folder()) : Optional.empty();
    }

    /** The garden's data, or where there is none those of the program alone. */
    public final Documents documents() {
        return folderIfAny().map(GardenFolder::documents).orElseGet(Documents::bundled);
    }

    /**
     * The garden as on {@link #today()}.
     *
     * @throws RecordException where the records have problems
     */
    public final GardenState state() {
        GardenFolder folder = folder();
        GardenState state = folder.on(today());
        stopOnProblems(folder);
        return state;
    }

    /** Stops with all the problems met so far, if there are any. */
    public final void stopOnProblems(GardenFolder folder) {
        if (!folder.problems().isEmpty()) { throw new RecordException(folder.problems().list()); }
    }

    /** The day to work as on, in the garden's own time zone. */
    public final LocalDate today() {
        return givenToday.orElseGet(
                () -> Today.of(around().environment(), opened.map(folder -> folder.garden().site().zoneName())));
    }

    /** A paragraph of the answer; every line begins with so many blanks. */
    @SuppressWarnings("AnnotateFormatMethod") // its annotation would be a library for this alone
    public final void say(int indent, String words, Object... said) { out().paragraph(indent, words.formatted(said)); }

    /** Stops with exit code 2 and these words where that holds. */
    @SuppressWarnings("AnnotateFormatMethod") // as above
    public final void refuseIf(boolean holds, String words, Object... said) {
        if (holds) { throw usage(words.formatted(said)); }
    }

    /** Exit code 2. */
    public final ParameterException usage(String message) {
        return new ParameterException(attached(line), message);
    }
}
