package org.oldwood.cli.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.oldwood.craft.cuttings.Setting;
import org.oldwood.crop.Crop;
import org.oldwood.season.CalendarStages;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.ModelledStages;
import org.oldwood.season.Sightings;
import org.oldwood.season.Stages;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Option;

/** A place without a garden: where, and which bundled climate stands for it. */
public final class AnyPlace {
    @Option(
            names = "--at",
            paramLabel = "LAT,LON",
            description = "where, without a garden: 52,-2; south and west are negative")
    public Optional<String> at = Optional.empty();

    @Option(
            names = "--climate",
            paramLabel = "NAME",
            description = {
                "without a garden: the bundled climate that stands for the place, oxford for",
                "example; the calendar otherwise"
            })
    public Optional<String> climate = Optional.empty();

    public boolean isGiven() {
        return at.isPresent() || climate.isPresent();
    }

    /** The crop's stage dates there, as of a day. */
    public Setting setting(Crop crop, LocalDate day, GardenCommand command) {
        Optional<Climate> chosen = climate.map(name -> climate(name, command));
        double latitude = at.map(text -> latitude(text, command))
                .or(() -> chosen.flatMap(Climate::latitude))
                .orElseThrow(() -> command.usage("There is no garden here: say where with --at"
                        + " LAT,LON, 52,-2 for example, or with"
                        + " --climate NAME"));
        chosen.flatMap(Climate::latitude).filter(its -> its * latitude < 0).ifPresent(its -> {
            throw command.usage("--climate "
                    + climate.orElse("")
                    + " lies in the other half of the earth: at latitude "
                    + its
                    + ", and --at says "
                    + latitude
                    + ". South is negative.");
        });
        Stages stages = stages(chosen, latitude);
        return new Setting(Hemisphere.of(latitude), (season, stage) -> stages.date(crop, season, stage), day);
    }

    private static Stages stages(Optional<Climate> chosen, double latitude) {
        if (chosen.isEmpty()) {
            return new CalendarStages();
        }
        Documents documents = Documents.bundled();
        return new ModelledStages(
                new GardenClimate(latitude, chosen.get(), Weather.none(), documents), Sightings.none(), documents);
    }

    /** What the days were made from. */
    public String basis() {
        return climate.map(name -> "Days are modelled from the mean climate of "
                        + Climate.bundled(name, Documents.bundled()).name()
                        + ".")
                .orElse("Days are by the calendar, for any place in this half of the earth. For"
                        + " days that follow a climate name one with --climate ("
                        + String.join(", ", known())
                        + "), or start a garden that declares its own.");
    }

    private static List<String> known() {
        return Documents.bundled().names("climates");
    }

    private static Climate climate(String name, GardenCommand command) {
        if (!known().contains(name)) {
            throw command.usage("There is no climate \"" + name + "\". " + Nearest.hint(name, known()));
        }
        return Climate.bundled(name, Documents.bundled());
    }

    private static double latitude(String text, GardenCommand command) {
        String[] parts = text.split(",", -1);
        try {
            double latitude = Double.parseDouble(parts[0].strip());
            double longitude = parts.length == 2 ? Double.parseDouble(parts[1].strip()) : 999;
            if (Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180) {
                return latitude;
            }
        } catch (NumberFormatException e) {
            // told below, with the range
        }
        throw command.usage("--at must be latitude -90 to 90, a comma, longitude -180 to 180, 52,-2 for"
                + " example, but is "
                + text);
    }
}
