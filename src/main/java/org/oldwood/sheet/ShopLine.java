package org.oldwood.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.oldwood.facts.Purchase;
import org.oldwood.plan.ShoppingList;
import org.oldwood.words.Dates;

/**
 * One material to have at hand.
 *
 * @param name the material
 * @param amount how much, with packs where it is sold in them
 * @param day the first day on which some is needed
 * @param dayWords the same for people
 * @param where how much goes to which bed
 * @param kept whether the garden names it among its materials
 * @param notRead figures behind the amount that were never read in print
 */
record ShopLine(
        String name, String amount, String day, String dayWords, String where, boolean kept, List<String> notRead) {

    static ShopLine of(ShoppingList.Item item) {
        String packs = item.total().packsInWords();
        return new ShopLine(
                item.total().name(),
                Purchase.measured(item.total().amount(), item.total().unit()) + (packs.isEmpty() ? "" : ", " + packs),
                item.neededBy().toString(),
                Dates.shortDay(item.neededBy()),
                where(item),
                item.kept(),
                item.total().notRead());
    }

    private static String where(ShoppingList.Item item) {
        Map<String, Double> sums = new LinkedHashMap<>();
        item.uses().forEach(use -> sums.merge(use.bed(), use.amount(), Double::sum));
        return sums.entrySet().stream()
                .map(each -> each.getKey()
                        + " "
                        + Purchase.measured(each.getValue(), item.total().unit()))
                .collect(Collectors.joining(", "));
    }
}
