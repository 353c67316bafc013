package org.oldwood.store;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** The records have problems that stop the work. Carries all of them; a command ends with exit code 1. */
public final class RecordException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<Problem> problems;

    public RecordException(List<Problem> problems) {
        super(problems.stream().map(Problem::inWords).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** That a document of data has nothing of that name, for which another asks. */
    public static RecordException lacks(String document, String what, String name, Collection<String> known) {
        return new RecordException(Problem.of("lacks-name", Place.of(document), what, name, Nearest.hint(name, known)));
    }

    public RecordException(Problem problem) { this(List.of(problem)); }

    public List<Problem> problems() { return problems; }
}
