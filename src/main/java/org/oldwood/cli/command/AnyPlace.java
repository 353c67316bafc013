package org.oldwood.cli.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oldwood.craft.cuttings.Setting;
import org.oldwood.crop.Crop;
import org.oldwood.season.Climate;
import org.oldwood.season.GardenClimate;
import org.oldwood.season.Hemisphere;
import org.oldwood.season.ModelledStages;
import org.oldwood.season.Sightings;
import org.oldwood.season.Stages;
import org.oldwood.season.place.PlaceClimate;
import org.oldwood.season.place.Spot;
import org.oldwood.season.weather.Weather;
import org.oldwood.store.Documents;
import org.oldwood.store.Nearest;
import picocli.CommandLine.Option;

/** A place without a garden: where, and which bundled climate stands for it. */
public final class AnyPlace {
    @Option(names = "--at", paramLabel = "LAT,LON[,M]")
    public Optional<String> at = Optional.empty();

    @Option(names = "--climate", paramLabel = "NAME")
    public Optional<String> climate = Optional.empty();

    public boolean isGiven() { return at.isPresent() || climate.isPresent(); }

    /** The crop's stage dates there, as of a day. */
    public Setting setting(Crop crop, LocalDate day, GardenCommand command) {
        Optional<Climate> chosen = climate.map(name -> climate(name, command));
        double latitude = at.map(text -> spot(text, command).latitude()).or(() -> chosen.flatMap(Climate::latitude))
                .orElseThrow(() -> command.usage(
                        "There is no garden here: say where with --at LAT,LON, 52,-2 for example, or with --climate NAME"));
        chosen.flatMap(Climate::latitude).filter(its -> its * latitude < 0).ifPresent(its -> {
            throw command.usage(
                    "--climate %s lies in the other half of the earth: at latitude %s, and --at says %s. South is negative."
                            .formatted(climate.orElse(""), its, latitude));
        });
        Stages stages = stages(chosen.or(() -> around(command).map(PlaceClimate::climate)), latitude);
        return new Setting(Hemisphere.of(latitude), (season, stage) -> stages.date(crop, season, stage), day);
    }

    private static Stages stages(Optional<Climate> chosen, double latitude) {
        Documents documents = Documents.bundled();
        return new ModelledStages(
                chosen.map(climate -> new GardenClimate(latitude, climate, Weather.none(), documents)),
                Sightings.none(), documents);
    }

    private Optional<PlaceClimate> around(GardenCommand command) {
        return at.flatMap(text -> PlaceClimate.at(spot(text, command), Documents.bundled()));
    }

    /** What the days were made from. */
    public String basis(GardenCommand command) {
        if (climate.isPresent()) {
            String name = Climate.bundled(climate.get(), Documents.bundled()).name();
            return "Days are modelled from the mean climate of %s.".formatted(name);
        }
        return around(command)
                .map(place -> "Days are modelled from the climate of %s. %s"
                        .formatted(place.climate().name(), place.warning().orElse("")).strip())
                .orElseGet(() -> "Days are by the calendar, for any place in this half of the earth. "
                        + PlaceClimate.whyNot(spot(at.orElse(""), command), Documents.bundled()));
    }

    private static List<String> known() { return Documents.bundled().names("climates"); }

    private static Climate climate(String name, GardenCommand command) {
        command.refuseIf(!known().contains(name), "There is no climate \"%s\". %s", name, Nearest.hint(name, known()));
        return Climate.bundled(name, Documents.bundled());
    }

    /** The place that {@code LAT,LON} or {@code LAT,LON,METRES} says; at the sea's level where it gives no height. */
    public static Spot spot(String text, GardenCommand command) {
        String[] parts = text.split(",", -1);
        double latitude = number(parts[0], 90, "N", "S");
        double longitude = parts.length > 1 ? number(parts[1], 180, "E", "W") : Double.NaN;
        double heightM = parts.length > 2 ? number(parts[2], 6000, "M", "-") : 0;
        if (parts.length > 3 || Double.isNaN(latitude + longitude + heightM)) {
            boolean turned = Double.isNaN(latitude) && !Double.isNaN(longitude + number(parts[0], 180, "E", "W"));
            throw command.usage(
                    "--at must be latitude -90 to 90, a comma, longitude -180 to 180, and if you like a comma and the height in metres, but is \"%s\". %s"
                            .formatted(text, turned ? "Are latitude and longitude swapped?"
                                    : "Write for example: --at 52.1,-2.3,78"));
        }
        return new Spot(latitude, longitude, heightM);
    }

    /** A number that may have a letter behind it: {@code 41.5 N}, {@code 81.7° W}, {@code 78 m}. */
    private static double number(String text, double most, String plus, String minus) {
        String plain = text.strip().toUpperCase(Locale.ROOT).replaceFirst("^([0-9.]+)°? ?" + plus + "$", "$1")
                .replaceFirst("^([0-9.]+)°? ?" + minus + "$", "-$1");
        if (!plain.matches("[+-]?[0-9]{1,4}(\\.[0-9]{1,10})?")) { return Double.NaN; }
        double value = Double.parseDouble(plain);
        return Math.abs(value) <= most ? value : Double.NaN;
    }
}
