package org.oldwood.cli.command;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.oldwood.words.Typed;
import org.oldwood.words.Units;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;

/**
 * Options that take a measure: with its unit as typed, {@code --area "12 sq yd"}, or a bare number in the garden's own
 * units. Commands themselves are given metric numbers.
 */
public final class Measured {
    /** By what the help calls the option's value. */
    private static final Map<String, String> METRIC = Map.of("M2", "m²", "CM", "cm", "M", "m", "KG", "kg", "C", "°C",
            "M/S", "m/s");

    /** Their names say what a bare number is. */
    private static final Set<String> NAMED = Set.of("--want-kg", "--metres");

    private Measured() {}

    /** The command line with metric numbers in place of measures. */
    public static List<String> inMetric(GardenCommand command, CommandLine line, List<String> args) {
        List<String> metric = new ArrayList<>();
        for (int i = 0; i < args.size(); i++) {
            String arg = args.get(i);
            int sign = arg.indexOf('=');
            @Nullable
            OptionSpec option = line.getCommandSpec().findOption(sign < 0 ? arg : arg.substring(0, sign));
            String unit = option == null || !arg.startsWith("--") ? "" : METRIC.getOrDefault(option.paramLabel(), "");
            if (unit.isEmpty() || (sign < 0 && i + 1 == args.size())) {
                metric.add(arg);
            } else {
                String name = sign < 0 ? arg : arg.substring(0, sign);
                String typed = sign < 0 ? args.get(++i) : arg.substring(sign + 1);
                metric.add(name + "=" + inMetric(command, line, name, typed, unit, args));
            }
        }
        return metric;
    }

    /** Those that the command line names, which is not read yet; else the garden's. */
    private static Units units(GardenCommand command, List<String> args) {
        command.gardenDir = valueOf("--garden", args).flatMap(Measured::path);
        command.givenUnits = valueOf("--units", args);
        command.quiet = args.contains("--quiet");
        Units units = command.units();
        command.quiet = false;
        return units;
    }

    /** A name that the system does not take is told when the line is read. */
    private static Optional<Path> path(String named) {
        try {
            return Optional.of(Path.of(named));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static Optional<String> valueOf(String option, List<String> args) {
        int at = args.indexOf(option);
        return at >= 0 && at + 1 < args.size() ? Optional.of(args.get(at + 1))
                : args.stream().filter(arg -> arg.startsWith(option + "="))
                        .map(arg -> arg.substring(option.length() + 1)).findFirst();
    }

    private static String inMetric(GardenCommand command, CommandLine line, String name, String typed, String unit,
            List<String> args) {
        Units units = units(command, args);
        boolean bare = typed.matches("[−-]?[0-9.]+");
        if (bare && (units == Units.METRIC || NAMED.contains(name))) { return typed; }
        try {
            double value = Typed.of(typed, unit, NAMED.contains(name) ? unit : Typed.own(unit, units), units);
            return Double.toString(Math.rint(value * 1e6) / 1e6);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(line, name + " " + e.getMessage());
        }
    }
}
