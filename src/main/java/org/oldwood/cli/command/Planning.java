package org.oldwood.cli.command;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.crop.Crop;
import org.oldwood.crop.Crops;
import org.oldwood.facts.GardenStages;
import org.oldwood.facts.record.AllCrafts;
import org.oldwood.facts.water.GardenWater;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.GardenFolder;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.Planner;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Stages;
import org.oldwood.season.weather.Weather;
import org.oldwood.season.weather.WeatherFile;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/** Wires a garden's state to its stage dates, rules and crafts. */
public final class Planning {
    private Planning() {}

    public static Stages stages(GardenFolder folder, GardenState state) {
        return GardenStages.of(state, weather(folder, state.date()), folder.documents(), folder.problems());
    }

    /** What was noted as seen and can hardly be, as questions. */
    public static List<String> doubts(GardenFolder folder, GardenState state) {
        if (state.entries().stream().noneMatch(entry -> entry.kind() == EntryKind.SEEN)) { return List.of(); }
        Stages stages = stages(folder, state);
        return folder.crops().ids().stream().flatMap(id -> stages.doubts(folder.crops().get(id)).stream()).toList();
    }

    /**
     * The garden's weather.csv, read; none where there is no such file.
     *
     * @throws RecordException where it has problems
     */
    public static Weather weather(GardenFolder folder, LocalDate today) {
        Problems problems = new Problems();
        try {
            Weather weather = WeatherFile.read(folder.path(), today, problems);
            if (!problems.isEmpty()) { throw new RecordException(problems.list()); }
            return weather;
        } catch (IOException e) {
            throw new RecordException(Problem.of("unreadable-file", Place.of(WeatherFile.NAME)));
        }
    }

    /** The garden's climate, where it declares one. */
    public static Optional<GardenClimate> climate(GardenFolder folder, GardenState state) {
        return GardenStages.climate(state.garden(), weather(folder, state.date()), folder.documents(),
                folder.problems());
    }

    /** The water of the garden's beds, by its climate and weather as far as they are known. */
    public static GardenWater water(GardenFolder folder, GardenState state) {
        return new GardenWater(state, stages(folder, state), folder.crops(), folder.documents());
    }

    public static Planner planner(GardenFolder folder, GardenState state) {
        return new Planner(state, stages(folder, state), folder.crops(), folder.documents(), new AllCrafts());
    }

    /** The crop of an id; exit code 2 with the crops that people call so, or the nearest, where there is none. */
    public static Crop crop(String id, Crops crops, GardenCommand command) {
        return crops.find(id)
                .orElseThrow(() -> command.usage("there is no crop \"%s\". %s".formatted(id, crops.hint(id))));
    }

    /** Notices on standard error, one paragraph each; a long list is cut, and says so. */
    public static void tellNotices(GardenCommand command, List<String> notices) {
        int shown = Math.min(notices.size(), 12);
        notices.subList(0, shown).forEach(notice -> command.tell("Note: " + notice));
        if (shown < notices.size()) {
            command.tell("And " + (notices.size() - shown) + " more notes; oldwood tasks --json has them all.");
        }
    }
}
