package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The tables in {@code docs/dependencies.md} are made from the libraries on the class path and what their own project
 * files say of licences. {@code -Dgolden.update=true} writes them anew.
 */
class DependenciesDocTest {
    private static final Path PAGE = Path.of("docs/dependencies.md");
    private static final String MARK = "<!-- made by DependenciesDocTest -->\n";

    /** Licences that ask for no more than keeping their notice. */
    private static final String PERMISSIVE = "(?i).*(apache|mit\\b|bsd|ical4j - license).*";

    /** A library: where its files lie. */
    private record Library(String name, String version, Path project) {}

    @Test
    void the_page_is_true() throws Exception {
        String page = Files.readString(PAGE);
        int start = page.indexOf(MARK) + MARK.length();
        String made = page.substring(0, start) + tables();
        if (Boolean.getBoolean("golden.update")) { Files.writeString(PAGE, made); }
        assertThat(Files.readString(PAGE)).isEqualTo(made);
    }

    @Test
    void what_runs_with_the_program_is_under_permissive_licences() throws Exception {
        for (Library library : running(all())) {
            assertThat(licence(library)).as(library.name()).matches(PERMISSIVE);
        }
    }

    private static String tables() throws Exception {
        Map<String, Library> all = all();
        StringBuilder text = new StringBuilder("\n## Run with the program\n\n");
        table(text, running(all));
        return text.toString();
    }

    private static void table(StringBuilder text, List<Library> libraries) throws Exception {
        Map<String, List<String>> byLicence = new TreeMap<>();
        for (Library one : libraries) {
            byLicence.computeIfAbsent(licence(one), key -> new ArrayList<>()).add(one.name() + ":" + one.version());
        }
        byLicence.forEach((licence, names) -> text.append("- %s: %s\n".formatted(licence, String.join(", ", names))));
    }

    /** Every library on the class path, by name. */
    private static Map<String, Library> all() throws Exception {
        Map<String, Library> all = new TreeMap<>();
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        for (String entry : path.split(File.pathSeparator, -1)) {
            Path jar = Path.of(entry);
            Path project = jar.resolveSibling(String.valueOf(jar.getFileName()).replace(".jar", ".pom"));
            if (entry.endsWith(".jar") && Files.isRegularFile(project)) {
                String group = inherited(root(project), "groupId").orElseThrow();
                String artifact = child(root(project), "artifactId").orElseThrow();
                String version = jar.getParent().getFileName().toString();
                all.put(group + ":" + artifact, new Library(group + ":" + artifact, version, project));
            }
        }
        assertThat(all).as("libraries with their project files").hasSizeGreaterThan(10);
        return all;
    }

    /** Those of ours that are no test's, and what they need in turn. */
    private static List<Library> running(Map<String, Library> all) throws Exception {
        Set<String> names = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(needed(root(Path.of("pom.xml"))));
        while (!open.isEmpty()) {
            String name = open.remove(0);
            Library library = all.get(name);
            if (library != null && names.add(name)) { open.addAll(needed(root(library.project()))); }
        }
        return all.values().stream().filter(one -> names.contains(one.name())).toList();
    }

    private static List<String> needed(Element project) {
        List<String> needed = new ArrayList<>();
        for (Element list : children(project, "dependencies")) {
            for (Element one : children(list, "dependency")) {
                String scope = child(one, "scope").orElse("compile");
                boolean isOptional = child(one, "optional").orElse("false").equals("true");
                if ((scope.equals("compile") || scope.equals("runtime")) && !isOptional) {
                    String group = child(one, "groupId").orElseThrow();
                    boolean isOwn = group.equals("${project.groupId}");
                    needed.add((isOwn ? inherited(project, "groupId").orElseThrow() : group) + ":"
                            + child(one, "artifactId").orElseThrow());
                }
            }
        }
        return needed;
    }

    /** As the library's own project file, or the one that it builds upon, names it. */
    private static String licence(Library library) throws Exception {
        Path project = library.project();
        for (int up = 0; up < 6; up++) {
            List<String> names = new ArrayList<>();
            Element root = root(project);
            for (Element list : children(root, "licenses")) {
                for (Element licence : children(list, "license")) {
                    child(licence, "name").ifPresent(names::add);
                }
            }
            if (!names.isEmpty()) { return String.join("; ", names).replaceAll("\\s+", " ").strip(); }
            List<Element> parent = children(root, "parent");
            if (parent.isEmpty()) { break; }
            project = inRepository(library, parent.get(0));
        }
        return "not told";
    }

    private static Path inRepository(Library library, Element parent) {
        String group = child(parent, "groupId").orElseThrow();
        String artifact = child(parent, "artifactId").orElseThrow();
        String version = child(parent, "version").orElseThrow();
        Path repository = library.project();
        String[] parts = library.name().split(":", -1);
        int depth = parts[0].split("\\.", -1).length + 3;
        for (int i = 0; i < depth; i++) {
            repository = repository.getParent();
        }
        return repository.resolve(group.replace('.', '/')).resolve(artifact).resolve(version)
                .resolve(artifact + "-" + version + ".pom");
    }

    private static Element root(Path project) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(project.toFile()).getDocumentElement();
    }

    private static Optional<String> inherited(Element project, String name) {
        return child(project, name)
                .or(() -> children(project, "parent").stream().findFirst().flatMap(p -> child(p, name)));
    }

    private static Optional<String> child(Element of, String name) {
        return children(of, name).stream().map(Element::getTextContent).map(String::strip).findFirst();
    }

    private static List<Element> children(Element of, String name) {
        List<Element> found = new ArrayList<>();
        for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && element.getNodeName().equals(name)) { found.add(element); }
        }
        return found;
    }
}
