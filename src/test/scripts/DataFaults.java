import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;

/**
 * Runs test classes on changed data, all in one process: each change gets a class loader of its own, which finds the
 * changed document before the bundled one. Started by {@code mutate-data.py}, which writes one line for each run:
 * the folder with the changed document, then the classes. The answer is {@code ok}, or the class that failed.
 */
class DataFaults {
    private DataFaults() {}

    public static void main(String[] args) throws Exception {
        List<URL> own = Stream.of(args[0].split(":")).map(DataFaults::url).toList();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] words = line.split(" ");
                System.out.println("= " + firstFailure(words, own));
                System.out.flush();
            }
        }
    }

    private static String firstFailure(String[] words, List<URL> own) throws Exception {
        URL[] urls = Stream.concat(Stream.of(url(words[0])), own.stream()).toArray(URL[]::new);
        ClassLoader before = Thread.currentThread().getContextClassLoader();
        try (URLClassLoader loader = new URLClassLoader(urls, before)) {
            Thread.currentThread().setContextClassLoader(loader);
            for (int at = 1; at < words.length; at++) {
                SummaryGeneratingListener heard = new SummaryGeneratingListener();
                LauncherFactory.create()
                        .execute(
                                LauncherDiscoveryRequestBuilder.request()
                                        .selectors(DiscoverySelectors.selectClass(loader.loadClass(words[at])))
                                        .build(),
                                heard);
                if (heard.getSummary().getTotalFailureCount() > 0) {
                    return words[at];
                }
            }
            return "ok";
        } finally {
            Thread.currentThread().setContextClassLoader(before);
        }
    }

    private static URL url(String path) {
        try {
            return Path.of(path).toUri().toURL();
        } catch (java.net.MalformedURLException e) {
            throw new IllegalArgumentException(path, e);
        }
    }
}
