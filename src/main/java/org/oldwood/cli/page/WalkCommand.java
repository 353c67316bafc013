package org.oldwood.cli.page;

import java.io.IOException;
import java.net.BindException;
import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.crop.Crops;
import org.oldwood.garden.GardenState;
import org.oldwood.garden.RecordFiles;
import org.oldwood.page.PageServer;
import org.oldwood.sheet.SheetPage;
import org.oldwood.store.Output;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the garden's page for the phone, until it is stopped. */
@Command(name = "walk")
public final class WalkCommand extends GardenCommand {
    private static final int PORT = 8417;

    @Option(names = "--lan", arity = "0..1", paramLabel = "ADDRESS", fallbackValue = "")
    Optional<String> lan = Optional.empty();

    @Option(names = "--port", paramLabel = "PORT", description = "the port; " + PORT + " otherwise")
    int port = PORT;

    @Option(names = "--labels", paramLabel = "FILE")
    Optional<Path> labels = Optional.empty();

    @Option(names = "--replace")
    boolean replace;

    @Override
    public int run() throws IOException {
        refuseIf(json, "the page is for people and has no --json; oldwood now --json tells the rounds");
        GardenState state = state();
        if (labels.isPresent()) {
            Path out = path(labels.get());
            RecordFiles.mayReplace(gardenPath(), out, replace);
            Output.write(out, labels(state));
            tell("Wrote " + out);
            return 0;
        }
        if (port < 0 || port > 65_535) { throw usage("--port must be from 0 to 65535 but is " + port); }
        try (PageServer page = open(address())) {
            out().line("The garden's page is open at " + page.address());
            out().line();
            out().line("On the phone, point the camera here, or type the whole link:");
            QrText.lines(page.link()).forEach(line -> out().line(line));
            out().line(page.link());
            out().line();
            out().paragraph(0,
                    lan.isPresent()
                            ? "Every device in this network that knows the link can read and note. It is plain"
                                    + " HTTP: others in the network could overhear it. Ctrl-C stops it."
                            : "Only this machine reaches it; --lan opens it in the home network. Ctrl-C stops it.");
            out().flush();
            untilStopped();
        }
        return 0;
    }

    /** Labels to print: no script, no address. */
    private String labels(GardenState state) {
        Crops crops = folder().crops();
        return SheetPage.render("labels.jte", Map.of("garden", state.garden().name(), "labels", state.walked().stream()
                .map(plant -> QrText.label(plant.plant().id(), PageData.name(crops.get(plant.plant().crop()), plant)))
                .toList()));
    }

    private PageServer open(InetAddress address) throws IOException {
        try {
            GardenDesk desk = new GardenDesk(this);
            desk.view(); // what is wrong with the record is told here, and the first look need not wait
            return PageServer.open(address, port, desk);
        } catch (BindException e) {
            throw usage(
                    "nothing can be opened at %s, port %s: it is in use, or not an address of this machine. Another port: --port 0"
                            .formatted(address.getHostAddress(), port));
        }
    }

    private static void untilStopped() {
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private InetAddress address() throws IOException {
        if (lan.isEmpty()) { return InetAddress.getByAddress("localhost", new byte[]{127, 0, 0, 1}); }
        List<InetAddress> own = ownAddresses();
        String named = lan.get();
        if (!named.isEmpty()) {
            return own.stream().filter(each -> each.getHostAddress().equals(named)).findFirst().orElseThrow(() -> usage(
                    "\"" + named + "\" is not an address of this machine in a home network. " + listed(own)));
        }
        if (own.size() != 1) { throw usage("say which address: --lan ADDRESS. " + listed(own)); }
        return own.get(0);
    }

    private static String listed(List<InetAddress> own) {
        return own.isEmpty() ? "It has none: is it connected?"
                : "It has " + String.join(", ", own.stream().map(InetAddress::getHostAddress).toList()) + ".";
    }

    /** Addresses for private networks (RFC 1918) only: the page is never opened towards the internet. */
    private static List<InetAddress> ownAddresses() throws IOException {
        List<InetAddress> own = new ArrayList<>();
        for (NetworkInterface network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(network.getInetAddresses())) {
                if (address instanceof Inet4Address && address.isSiteLocalAddress() && network.isUp()) {
                    own.add(address);
                }
            }
        }
        return own;
    }
}
