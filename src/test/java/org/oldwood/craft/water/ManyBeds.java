package org.oldwood.craft.water;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Writes a garden of many beds with many years of daily weather, for benchmarks: the same for the same seed.
 * {@code beds.txt} beside it tells {@link PlainAccount} what the garden tells Oldwood.
 *
 * <p>Arguments: folder, beds, years.
 */
public final class ManyBeds {
    private static final int FIRST_YEAR = 1996;
    private static final List<String> TEXTURES = List.of("sand", "sandy-loam", "loam", "clay-loam");

    private ManyBeds() {}

    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), Integer.parseInt(args[1]), Integer.parseInt(args[2]));
    }

    /** Writes the garden into a folder, which is made where it is missing. */
    public static void write(Path folder, int beds, int years) throws IOException {
        Files.createDirectories(folder);
        Random random = new Random(7);
        StringBuilder garden = new StringBuilder();
        StringBuilder journal = new StringBuilder();
        StringBuilder plain = new StringBuilder();
        garden.append("""
                {"format": 1, "name": "Many beds", "id": "3a1f0d52-93a5-4c9e-8f51-0c2f6f0a1b2c",
                 "site": {"latitude": 52.2, "longitude": 0.1, "heightM": 20, "zone": "Europe/London"},
                 "climate": "cambridge",
                 "beds": [
                """);
        for (int i = 0; i < beds; i++) {
            String texture = TEXTURES.get(random.nextInt(TEXTURES.size()));
            int area = 3 + random.nextInt(12);
            int roof = random.nextInt(4) == 0 ? 10 + random.nextInt(20) : 0;
            double shade = random.nextInt(5) / 10.0;
            double competing = random.nextInt(4) / 10.0;
            garden.append(bed(i, texture, area, roof, shade, competing)).append(i + 1 < beds ? ",\n" : "]}\n");
            journal.append(
                    String.format(Locale.ROOT,
                            "{\"id\":\"e%d\",\"date\":\"2015-11-15\",\"entry\":\"planted\","
                                    + "\"plant\":\"p%d\",\"crop\":\"blackcurrant\",\"bed\":\"b%d\",\"bushes\":3}%n",
                            i, i, i));
            plain.append(
                    String.format(Locale.ROOT, "b%d %s %d %d %.1f %.1f%n", i, texture, area, roof, shade, competing));
        }
        put(folder.resolve("garden.json"), garden);
        put(folder.resolve("journal.jsonl"), journal);
        put(folder.resolve("beds.txt"), plain);
        put(folder.resolve("weather.csv"), weather(random, years));
    }

    private static String bed(int i, String texture, int area, int roof, double shade, double competing) {
        return String.format(Locale.ROOT,
                "  {\"id\": \"b%d\", \"name\": \"Bed %d\", \"areaM2\": %d, \"texture\": \"%s\","
                        + " \"shade\": %.1f, \"competing\": %.1f%s}",
                i, i, area, texture, shade, competing,
                roof == 0 ? "" : ", \"roof\": {\"areaM2\": " + roof + ", \"surface\": \"tiles\"}");
    }

    private static StringBuilder weather(Random random, int years) {
        StringBuilder days = new StringBuilder("date,tmin,tmax,rain\n");
        LocalDate last = LocalDate.of(FIRST_YEAR + years - 1, 12, 31);
        LocalDate day = LocalDate.of(FIRST_YEAR, 1, 1);
        for (; !day.isAfter(last); day = day.plusDays(1)) {
            double mean = 10 - 7 * Math.cos(2 * Math.PI * (day.getDayOfYear() - 20) / 365);
            double warm = mean + 3 * random.nextGaussian();
            double rain = random.nextInt(3) == 0 ? -4.5 * Math.log(1 - random.nextDouble()) : 0;
            days.append(String.format(Locale.ROOT, "%s,%.1f,%.1f,%.1f%n", day, warm - 2 - 4 * random.nextDouble(),
                    warm + 2 + 5 * random.nextDouble(), rain));
        }
        return days;
    }

    private static void put(Path file, StringBuilder text) throws IOException {
        Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    }
}
