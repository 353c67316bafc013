package org.oldwood.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The JSON documents that Oldwood works by: crops, rules, materials, climates, sources. A garden's own folder is looked
 * in first, then the bundled data; so a garden overrides or adds a document by laying a file of the same name in its
 * folder. Each document is read at most once.
 */
public final class Documents {
    private static final String BUNDLED = "/org/oldwood/";
    private static final String JSON = ".json";
    private static final String INDEX = "index.json";

    private final @Nullable Path folder;
    private final Problems problems;
    private final Map<String, Optional<Json>> cache = new HashMap<>();
    private final Map<String, Object> made = new HashMap<>();

    private Documents(@Nullable Path folder, Problems problems) {
        this.folder = folder;
        this.problems = problems;
    }

    /** The bundled documents alone. */
    public static Documents bundled() { return new Documents(null, new Problems()); }

    /** The bundled documents, with those in {@code folder} before them. Problems go to {@code problems}. */
    public static Documents with(Path folder, Problems problems) {
        return new Documents(folder, problems);
    }

    public Problems problems() { return problems; }

    /** The document of that name, {@code crops/blackcurrant/crop.json} for example, if there is one. */
    public Optional<Json> read(String name) {
        return cache.computeIfAbsent(name, this::load);
    }

    /** The keys of a document that must be there and be an object. */
    public Fields fields(String name) {
        Optional<Json> document = read(name);
        if (document.isEmpty() && problems.isEmpty()) { problems.tell("missing-document", Place.of(name)); }
        return Fields.of(document.orElse(new Json.Obj(Place.of(name), Map.of())), problems);
    }

    /** The keys of a document, if it is there. */
    public Optional<Fields> optionalFields(String name) {
        return read(name).map(json -> Fields.of(json, problems));
    }

    /**
     * What {@code reader} makes of a document, if it is there. Made once; {@code kind} is what is made of it, since
     * several may be made of one document.
     */
    public <T> Optional<T> made(String name, Class<T> kind, Function<Fields, T> reader) {
        String key = kind.getName() + " " + name;
        Object known = made.get(key);
        if (known != null) { return Optional.of(kind.cast(known)); }
        Optional<T> now = optionalFields(name).map(reader);
        now.ifPresent(it -> made.put(key, it));
        return now;
    }

    /**
     * The names listed in {@code <kind>/index.json}, then those that the garden's own folder adds: files without
     * {@code .json}, and folders.
     */
    public List<String> names(String kind) {
        String index = kind + "/" + INDEX;
        Json bundled = readBundled(index).orElseThrow(() -> new IllegalStateException("no bundled document " + index));
        return Stream.concat(Fields.of(bundled, problems).texts(kind).stream(), ownNames(kind).stream()).distinct()
                .toList();
    }

    /** The documents of a kind, in the order of their names. */
    public List<Fields> all(String kind) {
        return names(kind).stream().map(name -> fields("%s/%s.json".formatted(kind, name))).toList();
    }

    private List<String> ownNames(String kind) {
        if (folder == null || !Files.isDirectory(folder.resolve(kind))) { return List.of(); }
        try (Stream<Path> files = Files.list(folder.resolve(kind))) {
            return files.filter(path -> isDocument(path, kind)).map(path -> path.getFileName().toString())
                    .filter(file -> !file.equals(INDEX))
                    .map(file -> file.endsWith(JSON) ? file.substring(0, file.length() - JSON.length()) : file).sorted()
                    .toList();
        } catch (IOException e) {
            problems.tell("unreadable-folder", Place.of(kind), String.valueOf(e.getMessage()));
            return List.of();
        }
    }

    /**
     * Whether something in a folder for documents of a kind is one: a JSON file, or for crops a folder with some. What
     * editors and systems leave there is not.
     */
    public static boolean isDocument(Path path, String kind) {
        String name = path.getFileName().toString();
        if (name.startsWith(".")) { return false; }
        if (!kind.equals("crops") || name.equals(INDEX)) { return name.endsWith(JSON) && Files.isRegularFile(path); }
        String[] inside = path.toFile().list();
        return inside != null && Stream.of(inside).anyMatch(file -> file.endsWith(JSON));
    }

    private Optional<Json> load(String name) {
        if (!staysInside(name)) { return Optional.empty(); }
        if (folder != null) {
            Path own = folder.resolve(name);
            if (Files.isRegularFile(own)) { return readOwn(own, name); }
        }
        return readBundled(name);
    }

    private Optional<Json> readBundled(String name) {
        try (InputStream in = Documents.class.getResourceAsStream(BUNDLED + name)) {
            return in == null ? Optional.empty() : JsonReader.read(in, name, problems);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled document " + name + " cannot be read", e);
        }
    }

    /** Names are made from words of users' files, which must not lead to other places. */
    private static boolean staysInside(String name) {
        boolean hasStrange = name.chars().anyMatch(c -> c < ' ' || c == '\\' || c == ':' || c == 0x7F);
        return !hasStrange && !name.startsWith("/") && !("/" + name + "/").contains("/../") && !name.contains("//");
    }

    private Optional<Json> readOwn(Path own, String name) {
        try (InputStream in = Files.newInputStream(own)) {
            return JsonReader.read(in, name, problems);
        } catch (IOException e) {
            problems.tell("unreadable-file document", Place.of(name), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }
}
