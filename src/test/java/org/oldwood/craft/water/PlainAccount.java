package org.oldwood.craft.water;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The yardstick of the water benchmark: the same comparison of beds over past summers in plain loops, in one file, with
 * its figures written in, no checks, and fixed days of the year for the stages. Reads what {@link ManyBeds} wrote and
 * prints a line for each bed: mean days short, the worst summer's, mean share held.
 *
 * <p>Uses no class of Oldwood, so that it is a floor and a second opinion in one.
 */
public final class PlainAccount {
    private static final double LATITUDE = Math.toRadians(52.2);
    // the mean days of the year of the modelled stages over the 30 generated seasons
    private static final int BEGINS = 101;
    private static final int FULL = 158;
    private static final int DECLINES = 262;
    private static final int ENDS = 312;

    private PlainAccount() {}

    public static void main(String[] args) throws IOException { System.out.print(of(Path.of(args[0]))); }

    /** A line for each bed: id, mean days short, most days short, mean share held. */
    public static String of(Path folder) throws IOException {
        byte[] text = Files.readAllBytes(folder.resolve("weather.csv"));
        int most = text.length / 16;
        int[] year = new int[most];
        int[] dayOfYear = new int[most];
        double[] et0 = new double[most];
        double[] rain = new double[most];
        int days = read(text, year, dayOfYear, et0, rain);
        double[] kc = new double[days];
        for (int i = 0; i < days; i++) {
            kc[i] = coefficient(dayOfYear[i]);
        }
        StringBuilder out = new StringBuilder();
        for (String line : Files.readAllLines(folder.resolve("beds.txt"), StandardCharsets.UTF_8)) {
            out.append(bed(line.split(" "), days, year, dayOfYear, et0, rain, kc)).append('\n');
        }
        return out.toString();
    }

    private static int read(byte[] text, int[] year, int[] dayOfYear, double[] et0, double[] rain) {
        int at = 0;
        while (text[at++] != '\n') {
            // the names of the columns
        }
        int day = 0;
        int before = 0;
        int count = 0;
        double[] cells = new double[3];
        while (at < text.length) {
            int y = digits(text, at, 4);
            at += 11;
            for (int cell = 0; cell < 3; cell++) {
                int sign = 1;
                double value = 0;
                double unit = 0;
                for (; text[at] != ',' && text[at] != '\n' && text[at] != '\r'; at++) {
                    if (text[at] == '-') {
                        sign = -1;
                    } else if (text[at] == '.') {
                        unit = 1;
                    } else {
                        value = 10 * value + text[at] - '0';
                        unit *= 10;
                    }
                }
                cells[cell] = sign * value / Math.max(1, unit);
                at++;
            }
            count = y == before ? count + 1 : 1;
            before = y;
            year[day] = y;
            dayOfYear[day] = count;
            et0[day] = thirst(count, cells[0], cells[1]);
            rain[day] = cells[2];
            day++;
        }
        return day;
    }

    private static int digits(byte[] text, int at, int count) {
        int number = 0;
        for (int i = at; i < at + count; i++) {
            number = 10 * number + text[i] - '0';
        }
        return number;
    }

    private static double saturation(double t) { return 0.6108 * Math.exp(17.27 * t / (t + 237.3)); }

    private static double thirst(int day, double tmin, double tmax) {
        double angle = 2 * Math.PI * day / 365;
        double declination = 0.409 * Math.sin(angle - 1.39);
        double sunset = Math.acos(-Math.tan(LATITUDE) * Math.tan(declination));
        double ra = 24 * 60 / Math.PI * 0.0820 * (1 + 0.033 * Math.cos(angle))
                * (sunset * Math.sin(LATITUDE) * Math.sin(declination)
                        + Math.cos(LATITUDE) * Math.cos(declination) * Math.sin(sunset));
        double clear = (0.75 + 2e-5 * 20) * ra;
        double solar = Math.min(clear, 0.16 * Math.sqrt(tmax - tmin) * ra);
        double ea = saturation(tmin);
        double t = (tmin + tmax) / 2;
        double slope = 4098 * saturation(t) / Math.pow(t + 237.3, 2);
        double gamma = 0.665e-3 * 101.3 * Math.pow((293 - 0.0065 * 20) / 293, 5.26);
        double glow = 4.903e-9 * (Math.pow(tmax + 273.16, 4) + Math.pow(tmin + 273.16, 4)) / 2;
        double lost = glow * (0.34 - 0.14 * Math.sqrt(ea)) * (1.35 * solar / clear - 0.35);
        double below = slope + gamma * (1 + 0.34 * 2);
        double deficit = (saturation(tmax) + ea) / 2 - ea;
        return Math.max(0, (0.408 * slope * (0.77 * solar - lost) + gamma * 900 / (t + 273) * 2 * deficit) / below);
    }

    private static double coefficient(int day) {
        if (day <= BEGINS || day > ENDS) { return 0.3; }
        if (day < FULL) { return 0.3 + 0.75 * (day - BEGINS) / (FULL - BEGINS); }
        return day <= DECLINES ? 1.05 : 1.05 - 0.55 * (day - DECLINES) / (ENDS - DECLINES);
    }

    private static double perMetre(String texture) {
        return switch (texture) {
            case "sand" -> 75;
            case "sandy-loam" -> 120;
            case "loam" -> 130;
            default -> 131;
        };
    }

    private static String bed(String[] bed, int days, int[] year, int[] dayOfYear, double[] et0, double[] rain,
            double[] kc) {
        double total = perMetre(bed[1]) * 0.9;
        double roof = Double.parseDouble(bed[3]) * 0.8 / Double.parseDouble(bed[2]);
        double light = 1 - 0.5 * Double.parseDouble(bed[4]);
        double own = 1 - Double.parseDouble(bed[5]);
        int first = year[0];
        int[] dry = new int[year[days - 1] - first + 1];
        double missing = 0;
        double sum = 0;
        int counted = 0;
        for (int i = 0; i < days; i++) {
            double demand = light * kc[i] * et0[i];
            double fraction = Math.max(0.1, Math.min(0.8, 0.5 + 0.04 * (5 - demand)));
            double stress = missing <= fraction * total ? 1 : (total - missing) / ((1 - fraction) * total);
            double used = Math.min(stress * demand / own, total - missing);
            double gain = (rain[i] < 0.2 * et0[i] ? 0 : rain[i]) + roof * Math.max(0, rain[i] - 0.5);
            missing = Math.max(0, Math.min(total, missing - gain + used));
            if (dayOfYear[i] >= BEGINS && dayOfYear[i] <= DECLINES) {
                dry[year[i] - first] += missing > fraction * total ? 1 : 0;
                sum += missing;
                counted++;
            }
        }
        List<String> words = new ArrayList<>();
        words.add(bed[0]);
        words.add(Double.toString(Arrays.stream(dry).average().orElse(0)));
        words.add(Integer.toString(Arrays.stream(dry).max().orElse(0)));
        words.add(Double.toString(1 - sum / counted / total));
        return String.join(" ", words);
    }
}
