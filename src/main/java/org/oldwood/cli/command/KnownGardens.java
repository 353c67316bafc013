package org.oldwood.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.oldwood.store.Fields;
import org.oldwood.store.Json;
import org.oldwood.store.JsonReader;
import org.oldwood.store.JsonText;
import org.oldwood.store.Output;
import org.oldwood.store.Place;
import org.oldwood.store.Problem;
import org.oldwood.store.Problems;
import org.oldwood.store.RecordException;

/**
 * The gardens that a person has named, in {@code oldwood/gardens.json} of the folder for settings
 * ({@code XDG_CONFIG_HOME}, else {@code .config} in the home folder). Nothing else is kept there, and nothing is lost
 * with it.
 *
 * @param usual the name of the one meant where none is given
 */
public record KnownGardens(Optional<String> usual, Map<String, Path> folders) {
    private static final KnownGardens NONE = new KnownGardens(Optional.empty(), Map.of());

    /** Where they are kept; empty where a system tells no home folder. */
    public static Optional<Path> file(Map<String, String> environment) {
        return Optional.ofNullable(environment.get("XDG_CONFIG_HOME")).filter(folder -> Path.of(folder).isAbsolute())
                .map(Path::of)
                .or(() -> Optional.ofNullable(environment.get("HOME"))
                        .or(() -> Optional.ofNullable(environment.get("USERPROFILE"))).filter(home -> !home.isBlank())
                        .map(home -> Path.of(home).resolve(".config")))
                .map(folder -> folder.resolve("oldwood").resolve("gardens.json"));
    }

    /**
     * Those of a person.
     *
     * @throws RecordException where the file is damaged
     */
    public static KnownGardens of(Map<String, String> environment) throws IOException {
        Optional<Path> file = file(environment).filter(Files::isRegularFile);
        if (file.isEmpty()) { return NONE; }
        Problems problems = new Problems();
        Optional<Json> json = read(file.get(), problems);
        Optional<String> usual = Optional.empty();
        Map<String, Path> folders = new TreeMap<>();
        if (json.isPresent()) {
            Fields fields = Fields.of(json.get(), problems);
            usual = fields.optionalText("usual");
            fields.object("gardens")
                    .ifPresent(named -> named.keys().forEach(name -> folders.put(name, Path.of(named.text(name)))));
            fields.done();
        }
        if (!problems.isEmpty()) { throw new RecordException(problems.list()); }
        return new KnownGardens(usual.filter(folders::containsKey), folders);
    }

    /** The folder of the garden with that name; without one, of the usual garden. */
    static Optional<Path> folder(Map<String, String> environment, Optional<Path> name) {
        try {
            KnownGardens known = of(environment);
            return name.map(Path::toString).or(() -> known.usual).map(known.folders::get);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<Json> read(Path file, Problems problems) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return JsonReader.read(in, file.toString(), problems);
        }
    }

    /** With one more; the first one is the usual one. */
    public KnownGardens with(String name, Path folder) {
        Map<String, Path> more = new TreeMap<>(folders);
        more.put(name, folder);
        return new KnownGardens(usual.or(() -> Optional.of(name)), more);
    }

    /** Without one; its folder stays as it is. */
    public KnownGardens without(String name) {
        Map<String, Path> fewer = new TreeMap<>(folders);
        fewer.remove(name);
        return new KnownGardens(usual.filter(fewer::containsKey), fewer);
    }

    /** Keeps them; returns where. */
    public Path keep(Map<String, String> environment) throws IOException {
        Path file = file(environment)
                .orElseThrow(() -> new RecordException(Problem.of("no-settings", Place.of("XDG_CONFIG_HOME"))));
        Files.createDirectories(file.resolveSibling(""));
        Map<String, String> named = new TreeMap<>();
        folders.forEach((name, folder) -> named.put(name, folder.toString()));
        Output.write(file, JsonText.indented(new Kept(usual, named)) + "\n");
        return file;
    }

    public List<String> names() { return List.copyOf(folders.keySet()); }

    private record Kept(Optional<String> usual, Map<String, String> gardens) {}
}
