package org.oldwood.store;

import java.util.ArrayList;
import java.util.List;

/** Gathers the problems of one run, in the order in which they are met. Not thread-safe. */
public final class Problems {
    private final List<Problem> found = new ArrayList<>();

    public void add(Problem problem) { found.add(problem); }

    public void add(String name, Place place, String message, String remedy) {
        found.add(new Problem(name, place, message, remedy));
    }

    public void tell(String words, Place place, Object... said) { found.add(Problem.of(words, place, said)); }

    public void addAll(Problems others) { found.addAll(others.found); }

    public boolean isEmpty() { return found.isEmpty(); }

    public int count() { return found.size(); }

    /** All problems so far, each once, in the order met. */
    public List<Problem> list() {
        return found.stream().distinct().toList();
    }
}
