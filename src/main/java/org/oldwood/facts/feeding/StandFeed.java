package org.oldwood.facts.feeding;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.oldwood.craft.feeding.Budget;
import org.oldwood.craft.feeding.Choice;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.NeedCase;
import org.oldwood.craft.feeding.Nutrients;
import org.oldwood.craft.feeding.Timing;
import org.oldwood.craft.feeding.TubFeed;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Stage;
import org.oldwood.facts.KeepApart;
import org.oldwood.facts.Situation;
import org.oldwood.facts.record.Choices;
import org.oldwood.garden.BedState;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;

/**
 * The food of one stand in one season: what it needs, what counts of that already, and of what the rest is given.
 *
 * @param school the school by which its need is reckoned
 * @param asked what the need depends on
 * @param choice the materials that it may get
 * @param tub whether it stands in tubs
 * @param timing when it is given
 * @param tests when the soil was tested and how old that is; empty where it never was
 * @param given all that was given, oldest first
 * @param assumed what was taken for want of knowing
 */
public record StandFeed(Crop crop, FeedingProfile profile, FeedingProfile.School school, NeedCase asked, Need need,
        Budget.Counting counting, Choice choice, boolean tub, Timing timing, List<String> tests,
        List<Applications.Given> given, List<String> assumed) {
    /** The food of the subject; empty where it stands in no bed or no figures are known of it. */
    public static Optional<StandFeed> of(FeedingBooks books, Situation s) {
        if (s.subject().bed().isEmpty() || s.subject().crop().isEmpty()) { return Optional.empty(); }
        BedState bed = s.subject().bed().get();
        Crop crop = s.subject().crop().get();
        return books.profile(crop).map(profile -> of(books, s, bed, crop, profile));
    }

    private static StandFeed of(FeedingBooks books, Situation s, BedState bed, Crop crop, FeedingProfile profile) {
        List<PlantState> plants = s.subject().plants();
        NeedCase.Ground ground = Grounds.of(bed, plants, s.world().crops());
        StandAsking asking = new StandAsking(books, s, bed, new LinkedHashSet<>());
        NeedCase asked = asking.about(plants, ground);
        FeedingProfile.School school = Optional.ofNullable(s.world().state().garden().choices().get(Choices.FEEDING))
                .flatMap(profile::school).orElseGet(() -> profile.schools().get(0));
        OptionalDouble litres = bed.bed().tubLitres();
        Need need = litres.isPresent()
                ? Need.inTub(books.tables(), litres.getAsDouble() * ground.areaM2() / bed.bed().areaM2(), ground)
                : asking.withMulch(Need.of(books.tables(), profile, school, asked), ground, crop);
        Applications applications = new Applications(books, s.season().hemisphere());
        List<Applications.Given> given = new ArrayList<>(applications.toBed(bed));
        plants.forEach(plant -> given.addAll(applications.toPlants(bed, plant.entries(), ground.areaM2())));
        Budget.Counting counting = new Budget.Counting(applications.left(given, s.season(), need, asking.tested()),
                BedMulch.brings(books, s), Applications.given(given, s.season()),
                Applications.materials(given, s.season()));
        FeedingBooks.Kept kept = books.feeds(s.world().state().garden().materials(), profile.acidSoil());
        return new StandFeed(crop, profile, school, asked, need, counting,
                fitting(books, s, bed, profile,
                        Choice.of(kept.feeds(), profile, need.gPerM2().k2o(), asking.ph(), books.liming().neverFrom())),
                litres.isPresent(), timing(books, s, crop, litres.isPresent() ? "tub" : profile.timing()),
                asking.tests(), List.copyOf(given), asking.assumed(kept.named()));
    }

    /** Where flowering ends after the last day for nitrogen the first dressing gives all. */
    private static Timing timing(FeedingBooks books, Situation s, Crop crop, String id) {
        Timing timing = books.tables().timing(id);
        LocalDate last = s.season().day(timing.latestQuick());
        return s.world().stages().day(crop, s.season(), Stage.PETAL_FALL).isAfter(last) ? timing.inOne() : timing;
    }

    /** Without what noted lime or ash keeps away until it is too late, where another form brings the nitrogen. */
    private static Choice fitting(FeedingBooks books, Situation s, BedState bed, FeedingProfile profile,
            Choice choice) {
        LocalDate last = s.season().day(books.tables().timing(profile.timing()).latestSlow());
        boolean limed = bed.entries().stream().filter(entry -> entry.date().isAfter(s.season().plus(-1).start()))
                .anyMatch(entry -> entry.kind() == EntryKind.LIMED
                        || entry.text("material").filter(id -> books.materials().tags(id).contains("ash")).isPresent());
        if (!limed || s.day().isAfter(last)) { return choice; }
        KeepApart apart = KeepApart.read(s.world().documents(), List.of(bed));
        return choice.without(feed -> apart.clash(bed.bed().id(), s.day(), Set.copyOf(feed.tags()))
                .filter(clash -> clash.from().isAfter(last))
                .map(clash -> "%s; it must wait until %s.".formatted(clash.other(), clash.from())));
    }

    /** Whether anything was fed in the season's time of feeding; what was given before winter is no dressing of it. */
    public boolean begun(FeedingBooks books, Season season) {
        return given.stream().anyMatch(each -> each.kind() == EntryKind.FED && season.equals(each.season())
                && books.tables().winter().isOver(each.date(), season));
    }

    /** Whether a dressing of the season is not given yet, but in the plan. */
    boolean planned(Season season, LocalDate today) {
        return given.stream().anyMatch(each -> each.kind() == EntryKind.FED && season.equals(each.season())
                && !each.date().isBefore(today) && each.amount().contains(Applications.AS_PLANNED));
    }

    /** The season's budget, with the dressings from number {@code from} on. */
    public Budget budget(FeedingBooks books, int from) {
        if (tub) { return TubFeed.budget(books.tables(), need, counting, choice, timing, asked.ground()); }
        return Budget.of(books.tables(), need, counting, timing, asked.soil().texture(), from, choice, asked.ground());
    }

    /** The season's budget, with the dressings that are still to come. */
    public Budget budget(FeedingBooks books, Season season) {
        return budget(books, begun(books, season) ? 1 : 0);
    }

    /** What other published schools ask for here, a line each. */
    public List<String> otherSchools(FeedingBooks books) {
        return tub ? List.of() : Need.others(books.tables(), profile, school, asked);
    }

    /** The need, and each thing that counts towards it, a line each. */
    public List<String> lines(Season season) {
        List<String> lines = new ArrayList<>(tests);
        lines.addAll(need.lines());
        lines.add("need by " + need.school() + ": " + FeedPlan.inWords(need.gPerM2()) + " g/m²");
        for (Applications.Given each : given) {
            if (season.equals(each.season()) && each.now().sum() > 0) {
                lines.add("given " + each.inWords());
            } else if (season.plus(-1).equals(each.season()) && each.next().n() > 0) {
                lines.add("left of " + each.date() + " " + each.name() + ": "
                        + FeedPlan.inWords(Nutrients.NONE.withN(each.next().n())) + " g/m²");
            }
        }
        return lines;
    }
}
