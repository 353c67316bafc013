package org.oldwood.facts.feeding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.feeding.Balance;
import org.oldwood.craft.feeding.Choice;
import org.oldwood.craft.feeding.Feed;
import org.oldwood.craft.feeding.FeedPlan;
import org.oldwood.craft.feeding.FeedYear;
import org.oldwood.craft.feeding.FeedingProfile;
import org.oldwood.craft.feeding.Need;
import org.oldwood.craft.feeding.NeedCase;
import org.oldwood.craft.feeding.SoilClasses;
import org.oldwood.crop.Crop;
import org.oldwood.facts.Situation;
import org.oldwood.facts.record.Choices;
import org.oldwood.garden.BedState;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.PlantState;
import org.oldwood.season.Season;

/**
 * The food of one stand in one season: what it needs, what it was given, what is due, and of what.
 *
 * @param crop the crop
 * @param profile what the crop asks for
 * @param year need, balance, dressings and materials on its share of the bed
 * @param given all that was given, oldest first
 * @param assumed what was taken for want of knowing
 */
public record StandFeed(
        Crop crop, FeedingProfile profile, FeedYear year, List<Applications.Given> given, List<String> assumed) {
    private static final String LIGHT = "light-sand";

    /** The food of the subject; empty where it stands in no bed or no figures are known of it. */
    public static Optional<StandFeed> of(FeedingBooks books, Situation s) {
        if (s.subject().bed().isEmpty() || s.subject().crop().isEmpty()) {
            return Optional.empty();
        }
        BedState bed = s.subject().bed().get();
        Crop crop = s.subject().crop().get();
        return books.profile(crop).map(profile -> of(books, s, bed, crop, profile));
    }

    private static StandFeed of(FeedingBooks books, Situation s, BedState bed, Crop crop, FeedingProfile profile) {
        List<PlantState> plants = s.subject().plants();
        NeedCase.Ground ground = Grounds.of(bed, plants, s.world().crops());
        StandAsking asking = new StandAsking(books, s, bed);
        NeedCase asked = asking.about(plants, ground);
        FeedingProfile.School school = Optional.ofNullable(
                        s.world().state().garden().choices().get(Choices.FEEDING))
                .flatMap(profile::school)
                .orElseGet(() -> profile.schools().get(0));
        Need need = asking.withMulch(Need.of(books.tables(), profile, school, asked), ground, crop);
        Applications applications = new Applications(books);
        List<Applications.Given> given = new ArrayList<>(applications.toBed(bed));
        for (PlantState plant : plants) {
            given.addAll(applications.toPlants(bed, plant.entries(), ground.areaM2()));
        }
        Balance balance = Balance.of(need.gPerM2(), Applications.counting(given, s.season()));
        FeedingBooks.Kept<Feed> kept = books.feeds(s.world().state().garden().materials(), profile.acidSoil());
        Choice choice = Choice.of(kept.materials(), profile, need.gPerM2().k2o(), asking.ph());
        return new StandFeed(
                crop,
                profile,
                new FeedYear(
                        need,
                        balance,
                        books.tables().timing(profile.timing()),
                        sand(books, bed),
                        begun(given, s.season()),
                        choice,
                        ground),
                List.copyOf(given),
                asking.assumed(kept.named()));
    }

    /** The same where a later dressing is not to suppose that an earlier one will be given. */
    StandFeed asBegun() {
        FeedYear begun = new FeedYear(
                year.need(), year.balance(), year.timing(), year.sand(), true, year.choice(), year.ground());
        return new StandFeed(crop, profile, begun, given, assumed);
    }

    private static boolean sand(FeedingBooks books, BedState bed) {
        return bed.bed()
                .texture()
                .flatMap(books.tables().soils()::of)
                .map(SoilClasses.Row::nitrogen)
                .map(LIGHT::equals)
                .orElse(false);
    }

    private static boolean begun(List<Applications.Given> given, Season season) {
        return given.stream().anyMatch(each -> each.kind() == EntryKind.FED && season.contains(each.date()));
    }

    /** Need against what counts in the season, g/m². */
    public Balance balance() {
        return year.balance();
    }

    /** The need of the season. */
    public Need need() {
        return year.need();
    }

    /** The dressing of that place, 0 for the first, ready to weigh out. */
    public FeedPlan dressing(FeedingBooks books, int which) {
        return year.dressing(books.tables(), which);
    }

    /** Need, given and due, a line each. */
    public List<String> lines(Season season) {
        List<String> lines = new ArrayList<>(need().lines());
        lines.add(
                "need by " + need().school() + ": " + FeedPlan.inWords(balance().need()) + " g/m²");
        for (Applications.Given each : given) {
            if (season.contains(each.date()) && each.now().sum() > 0) {
                lines.add("given " + each.inWords());
            } else if (season.plus(-1).contains(each.date()) && each.next().sum() > 0) {
                lines.add(
                        "left of " + each.date() + " " + each.name() + ": " + FeedPlan.inWords(each.next()) + " g/m²");
            }
        }
        lines.add("due: " + FeedPlan.inWords(balance().due()) + " g/m²");
        if (balance().surplus().sum() > 0) {
            lines.add("more than needed: " + FeedPlan.inWords(balance().surplus()) + " g/m²");
        }
        return lines;
    }
}
