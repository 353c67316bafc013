package org.oldwood.cli.record;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.oldwood.cli.command.Failures;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.Planning;
import org.oldwood.cli.command.ProblemWords;
import org.oldwood.facts.feeding.FeedingBooks;
import org.oldwood.facts.feeding.SharedBed;
import org.oldwood.facts.record.Choices;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.SecondCopies;
import org.oldwood.garden.StateBuilder;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;
import picocli.CommandLine.Command;

/**
 * Reads everything in a garden's folder and shows all that is wrong with it; silent when all is well. Questions (things
 * noted that do not fit together) are shown too, but stop nothing.
 */
@Command(name = "check")
public final class CheckCommand extends GardenCommand {
    @Override
    public int run() throws IOException {
        Problems problems = new Problems();
        Optional<GardenFolder> opened = open(problems);
        List<String> questions = opened.map(folder -> adding(folder, problems)).orElse(List.of());
        new OwnData(gardenPath(), problems).check();
        List<Problem> notices = new ArrayList<>(opened.map(CheckCommand::notices).orElse(List.of()));
        notices.addAll(OwnData.strays(gardenPath()));
        if (json) {
            out().json(new Answer(problems, notices, questions));
            return problems.isEmpty() ? 0 : Failures.RECORD_PROBLEMS;
        }
        ProblemWords words = new ProblemWords(gardenPath());
        notices.forEach(notice -> words.print(err(), notice));
        questions.forEach(question -> err().hanging("", 2, question));
        if (!problems.isEmpty()) { throw new RecordException(problems.list()); }
        return 0;
    }

    /** Told with their places, below. */
    @Override
    public void tellNotices(GardenFolder folder) {}

    private static List<Problem> notices(GardenFolder folder) {
        Map<String, Problem> byFile = new LinkedHashMap<>();
        folder.notices().forEach(notice -> byFile.put(notice.place().file(), notice));
        SecondCopies.in(folder.path()).forEach(copy -> byFile.put(copy.name(), SecondCopies.compared(copy, folder)));
        return List.copyOf(byFile.values());
    }

    /** A garden that cannot be opened has said why; the other files are looked at all the same. */
    private Optional<GardenFolder> open(Problems problems) {
        try {
            return Optional.of(folder());
        } catch (RecordException e) {
            if (!Files.isRegularFile(gardenPath().resolve(GardenFolder.GARDEN_FILE))) { throw e; }
            e.problems().forEach(problems::add);
            return Optional.empty();
        }
    }

    /** Adds the journal up; returns the questions. */
    private List<String> adding(GardenFolder folder, Problems problems) {
        GardenState state = folder.on(LocalDate.MAX);
        new Choices(state, folder.crops(), problems).check(folder.documents());
        problems.addAll(folder.problems());
        future(folder, problems);
        KnownNames names = new KnownNames(folder.documents(), problems);
        names.check(state.entries());
        folder.documents().read(GardenFolder.GARDEN_FILE).ifPresent(names::check);
        List<String> questions = new ArrayList<>(state.questions());
        questions.addAll(doubts(folder, state, today()));
        questions.addAll(SharedBed.of(folder.on(today()), folder.crops(), new FeedingBooks(folder.documents())));
        return questions;
    }

    /** None where the weather cannot be read, which is told by itself. */
    private static List<String> doubts(GardenFolder folder, GardenState state, LocalDate today) {
        try {
            List<String> doubts = new ArrayList<>(Planning.doubts(folder, state));
            doubts.addAll(Planning.weather(folder, today).lacks(today.minusDays(365), today));
            return doubts;
        } catch (RecordException e) {
            return List.of();
        }
    }

    private void future(GardenFolder folder, Problems problems) {
        LocalDate today = today();
        StateBuilder.counting(folder.journal(), Set.of()).stream().filter(entry -> entry.date().isAfter(today))
                .forEach(entry -> problems.tell("future-entry", entry.place(), entry.date(), today, entry.id()));
    }

    private record Answer(List<Told> problems, List<Told> notices, List<String> questions) {
        Answer(Problems problems, List<Problem> notices, List<String> questions) {
            this(problems.list().stream().map(Told::of).toList(), notices.stream().map(Told::of).toList(), questions);
        }
    }

    private record Told(String name, String file, int line, int column, String path, String message, String remedy) {
        static Told of(Problem problem) {
            Place at = problem.place();
            return new Told(problem.name(), at.file(), at.line(), at.column(), at.path(), problem.message(),
                    problem.remedy());
        }
    }
}
