package org.oldwood.plan;

import java.util.List;

/**
 * One fact that made a rule fire, or not fire.
 *
 * @param holds whether it spoke for the task
 */
public record Reason(boolean holds, String words, List<String> sources) {}
