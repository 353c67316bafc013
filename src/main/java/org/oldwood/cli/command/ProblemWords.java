package org.oldwood.cli.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.words.Words;

/** Words problems for a terminal: place, message, the line they stand in, what to do instead. */
public final class ProblemWords {
    /** Stands for a file's name where something was given on the command line itself. */
    public static final String COMMAND_LINE = "command line";

    private static final int SHOWN = 66;
    /** Enough to see what is wrong with a whole file. */
    private static final int MOST = 20;

    private final Path folder;
    private final Map<String, List<String>> files = new HashMap<>();

    /** Problems of files in that folder. */
    public ProblemWords(Path folder) { this.folder = folder; }

    /** Prints the first problems in the order given, and how many there are. */
    public void print(Out out, List<Problem> problems, String end) {
        inFileOrder(problems).stream().limit(MOST).forEach(problem -> print(out, problem));
        if (problems.size() > MOST) {
            out.line("… and %s more like these or later in the files.".formatted(problems.size() - MOST));
        }
        out.line(count(problems) + end);
    }

    /** The files in the order met, the problems of each by their places. */
    private static List<Problem> inFileOrder(List<Problem> problems) {
        List<String> files = problems.stream().map(problem -> problem.place().file()).distinct().toList();
        Comparator<Problem> order = Comparator.comparingInt(problem -> files.indexOf(problem.place().file()));
        return problems.stream().sorted(order.thenComparingInt(problem -> problem.place().line())
                .thenComparingInt(problem -> problem.place().column())).toList();
    }

    private static String count(List<Problem> problems) {
        String number = Words.count(problems.size(), "problem", "problems");
        long files = problems.stream().map(problem -> problem.place().file())
                .filter(file -> !file.startsWith("--") && !file.equals(COMMAND_LINE)).distinct().count();
        return files == 0 ? number : number + " in " + Words.count(files, "file", "files");
    }

    public void print(Out out, Problem problem) {
        Place place = problem.place();
        String key = place.path().isEmpty() ? "" : place.path() + " ";
        out.hanging("", 2, place + ": " + key + problem.message());
        excerpt(out, place);
        if (!problem.remedy().isEmpty()) { out.paragraph(2, problem.remedy()); }
    }

    private void excerpt(Out out, Place place) {
        Optional<String> found = line(place);
        if (found.isEmpty()) { return; }
        String line = found.get().replace('\t', ' ');
        int column = Math.max(0, Math.min(place.column() - 1, line.length()));
        int from = column < SHOWN - 10 ? 0 : column - SHOWN / 2;
        int to = Math.min(line.length(), from + SHOWN);
        String number = "  " + place.line() + " | ";
        out.line(number + (from > 0 ? "…" : "") + line.substring(from, to) + (to < line.length() ? "…" : ""));
        if (place.column() > 0) {
            int before = Wrap.width(line.substring(from, column)) + (from > 0 ? 1 : 0);
            out.line(" ".repeat(number.length() - 2) + "| " + " ".repeat(before) + "^");
        }
    }

    private Optional<String> line(Place place) {
        if (place.line() == 0) { return Optional.empty(); }
        List<String> lines = files.computeIfAbsent(place.file(), this::read);
        return place.line() <= lines.size() ? Optional.of(lines.get(place.line() - 1)) : Optional.empty();
    }

    private List<String> read(String file) {
        try {
            Path path = folder.resolve(file);
            return Files.isRegularFile(path) ? Files.readAllLines(path) : List.of();
        } catch (IOException | java.nio.file.InvalidPathException e) {
            return List.of();
        }
    }
}
