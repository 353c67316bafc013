package org.oldwood.plan;

import java.util.List;

/**
 * One fact that made a rule fire, or not fire.
 *
 * @param holds whether it spoke for the task
 * @param words for people, with the values
 * @param sources source keys
 */
public record Reason(boolean holds, String words, List<String> sources) {
    public Reason {
        sources = List.copyOf(sources);
    }
}
