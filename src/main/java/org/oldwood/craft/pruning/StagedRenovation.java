package org.oldwood.craft.pruning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.oldwood.crop.Checked;
import org.oldwood.crop.Figure;
import org.oldwood.store.Fields;

/**
 * How a plant that is so crowded that the limit of a season cannot bring it back in good time is brought back over some
 * winters: a first part of the surplus this winter, the rest in equal parts over those that follow. It takes more than
 * the limit of a season, so it is named to the grower with what it costs and what may be chosen instead.
 *
 * @param id short name, {@code half-first}
 * @param from from so many surplus and spent stems on
 * @param first share of the surplus that goes in the first of them, over 0 to 1
 * @param meanwhile what it costs, a sentence or two
 */
public record StagedRenovation(String id, String words, Figure from, Figure winters, Figure first, String meanwhile,
        List<Instead> instead) implements Checked {

    /** A way of pruning to choose instead. */
    public record Instead(String way, String words) {}

    /**
     * What of it falls to one winter.
     *
     * @param winter 1 in the first winter
     * @param due surplus and spent stems at the beginning of this winter
     * @param later in how many parts the others go in the winters after
     */
    public record Part(StagedRenovation renovation, int winter, int due, int now, List<Integer> later) {
        /** The renovation's next winter; 1 where nothing is left to do. */
        int next() {
            return later.isEmpty() ? 1 : winter + 1;
        }
    }

    @Override
    public void check(Fields fields) {
        boolean sound = from.is() >= 1 && number() >= 2 && number() <= 6 && first.is() > 0 && first.is() <= 1;
        fields.tellIf(!sound, "first", "staged-unclear");
    }

    /** Where its figures come from. */
    public List<String> sources() {
        return Stream.of(from, winters, first).flatMap(figure -> figure.sources().stream()).distinct().toList();
    }

    /** Over how many winters. */
    public int number() { return (int) winters.is(); }

    /**
     * How many of {@code due} stems may go this winter; empty where the plant is not, or no longer, so crowded. In the
     * first winter it is a third of the first share at the bound of crowding, and one more for each stem beyond it, up
     * to the whole share: one stem more on the bush is never many more on the list.
     *
     * @param renovationWinter 1 where none has begun
     * @param usual the limit of a season without it; the part is never less
     */
    Optional<Integer> part(int due, int renovationWinter, int usual) {
        int winter = winter(renovationWinter);
        if (winter == 1 ? due < from.is() : due == 0) { return Optional.empty(); }
        double share = winter == 1 ? first.is() : 1.0 / (number() - winter + 1);
        int part = (int) Math.ceil(share * due - 1e-9);
        int grown = (int) (first.is() * from.is() / 3) + due - (int) from.is();
        return Optional.of(Math.max(usual, winter == 1 ? Math.min(part, grown) : part));
    }

    /** What is told of this winter, where {@code now} of {@code due} stems come out. */
    Part told(int due, int renovationWinter, int now) {
        int winter = winter(renovationWinter);
        List<Integer> later = new ArrayList<>();
        int left = due - now;
        for (int winters = Math.max(1, number() - winter); left > 0; winters--) {
            int part = winters <= 1 ? left : (left + winters - 1) / winters;
            later.add(part);
            left -= part;
        }
        return new Part(this, winter, due, now, List.copyOf(later));
    }

    /** A renovation that should have ended begins anew. */
    private int winter(int renovationWinter) {
        return renovationWinter <= number() ? renovationWinter : 1;
    }
}
