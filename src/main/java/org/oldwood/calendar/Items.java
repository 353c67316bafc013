package org.oldwood.calendar;

import java.util.ArrayList;
import java.util.List;
import org.oldwood.calendar.format.Text;

/**
 * A plan's items, each made when it is asked for and not kept: the texts of a large garden's tasks would fill the
 * memory. Items are numbered from 0; the same number always gives an equal item.
 */
public interface Items {
    int count();

    /** The {@link Item#identity} of an item. */
    String identity(int number);

    /** The {@link Item#days} of an item. */
    Item.Days days(int number);

    /** The {@link Item#progress} of an item. */
    Item.Progress progress(int number);

    /** An item, with or without its text. */
    Item item(int number);

    /** What an item says beneath its title. */
    Text text(int number);

    /** How sure the days of an item are, in days to either side. */
    default int plusMinusDays(int number) {
        return 0;
    }

    /** Whether the journal has it as done, be it in the plan or not. */
    default boolean isDone(String identity) {
        return false;
    }

    /** All items with their texts. */
    default List<Item> all() {
        List<Item> all = new ArrayList<>(count());
        for (int i = 0; i < count(); i++) {
            Item item = item(i);
            Item.Words words = item.words();
            all.add(new Item(
                    item.identity(),
                    new Item.Words(words.title(), text(i).toString(), words.category(), words.place()),
                    item.bed(),
                    item.days(),
                    item.progress()));
        }
        return all;
    }

    /** Items that are there already. */
    static Items of(List<Item> items) {
        return new Items() {
            @Override
            public int count() {
                return items.size();
            }

            @Override
            public String identity(int number) {
                return item(number).identity();
            }

            @Override
            public Item.Days days(int number) {
                return item(number).days();
            }

            @Override
            public Item.Progress progress(int number) {
                return item(number).progress();
            }

            @Override
            public Item item(int number) {
                return items.get(number);
            }

            @Override
            public Text text(int number) {
                return Text.of(item(number).words().text());
            }
        };
    }
}
