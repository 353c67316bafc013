package org.oldwood.craft.pruning;

import java.util.List;
import org.oldwood.crop.Key;
import org.oldwood.crop.Seen;

/**
 * How wood of one kind looks.
 *
 * @param of {@code spent}, {@code bearing} or {@code new}
 */
public record WoodLook(
        @Key(words = {"spent", "bearing", "new"}) String of, String words, List<String> sources, Seen seen) {}
