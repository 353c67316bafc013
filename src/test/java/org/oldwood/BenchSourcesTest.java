package org.oldwood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oldwood.crop.Seen;

/**
 * The sources that measure speed are compiled by a profile alone, with JMH, which the tests go without: what they use
 * of it stands here in its place.
 */
class BenchSourcesTest {
    private static final Map<String, String> JMH = Map.ofEntries(Map.entry("Benchmark", "@interface Benchmark {}"),
            Map.entry("BenchmarkMode", "@interface BenchmarkMode { Mode[] value(); }"),
            Map.entry("Fork", "@interface Fork { int value(); String[] jvmArgsAppend(); }"),
            Map.entry("Measurement", "@interface Measurement { int iterations(); int time(); }"),
            Map.entry("Mode", "enum Mode { AverageTime }"),
            Map.entry("OperationsPerInvocation", "@interface OperationsPerInvocation { int value(); }"),
            Map.entry("OutputTimeUnit", "@interface OutputTimeUnit { java.util.concurrent.TimeUnit value(); }"),
            Map.entry("Param", "@interface Param { String[] value(); }"), Map.entry("Scope", "enum Scope { Thread }"),
            Map.entry("State", "@interface State { Scope value(); }"),
            Map.entry("Warmup", "@interface Warmup { int iterations(); int time(); }"));

    @TempDir
    Path classes;

    @Test
    void they_compile_against_the_program_as_it_is() throws IOException {
        StringWriter told = new StringWriter();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null);
                Stream<Path> found = Files.walk(Path.of("src/bench/java"))) {
            List<Path> paths = found.filter(path -> path.toString().endsWith(".java")).toList();
            assertThat(paths).isNotEmpty();
            List<JavaFileObject> sources = JMH.entrySet().stream().map(part -> jmh(part.getKey(), part.getValue()))
                    .collect(Collectors.toList());
            files.getJavaFileObjectsFromPaths(paths).forEach(sources::add);
            boolean compiled = compiler.getTask(told, files, null,
                    List.of("-proc:none", "-d", classes.toString(), "-cp",
                            "%s%s%s".formatted(place(Seen.class), File.pathSeparator, place(BenchSourcesTest.class))),
                    null, sources).call();

            assertThat(compiled).as(told.toString()).isTrue();
        }
    }

    private static String place(Class<?> compiled) {
        return Path.of(URI.create(compiled.getProtectionDomain().getCodeSource().getLocation().toString())).toString();
    }

    private static JavaFileObject jmh(String name, String body) {
        return new SimpleJavaFileObject(URI.create("jmh:///%s.java".formatted(name)), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreErrors) {
                return "package org.openjdk.jmh.annotations; public %s".formatted(body);
            }
        };
    }
}
