package org.oldwood.cli.calendar;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import org.oldwood.calendar.server.Publish;
import org.oldwood.cli.command.Failures;
import org.oldwood.cli.command.GardenCommand;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings a calendar on a CalDAV server up to the plan. */
@Command(name = "publish")
final class CalendarPublishCommand extends GardenCommand {
    private final GardenCommand parent;

    @Parameters(paramLabel = "URL")
    String url = "";

    @Option(names = "--todos", paramLabel = "URL")
    Optional<String> todos = Optional.empty();

    @Option(names = "--dry-run")
    boolean dryRun;

    @Option(names = "--restore")
    boolean restore;

    @Mixin
    ServerAccess access = new ServerAccess();

    @Mixin
    CalendarLooks looks = new CalendarLooks();

    CalendarPublishCommand(GardenCommand parent) { this.parent = parent; }

    @Override
    public int run() throws IOException {
        takeFrom(parent);
        CalendarItems calendar = CalendarItems.of(this, looks.each);
        URI events = ServerAccess.address(this, url);
        URI second = todos.map(given -> ServerAccess.address(this, given)).orElse(events);
        Publish.Result result = new Publish(calendar.garden(), looks.layout(calendar.state().garden()), today(), dryRun,
                restore).to(access.session(this), events, second, calendar.items());
        answer(() -> new Answer(dryRun, result), () -> print(result));
        return result.refused().isEmpty() ? 0 : Failures.RECORD_PROBLEMS;
    }

    private void print(Publish.Result result) {
        list("new", result.created());
        list("changed", result.changed());
        list("removed", result.removed());
        out().line((dryRun ? "Would write: " : "Written: ") + result.created().size() + " new, "
                + result.changed().size() + " changed, " + result.removed().size() + " removed; " + result.unchanged()
                + " left as they were.");
        result.notices().forEach(notice -> tell("Note: " + notice));
        result.refused().forEach(refusal -> err().paragraph(0, refusal));
    }

    private void list(String what, List<String> titles) {
        titles.forEach(title -> out().hanging(what + "  ", what.length() + 2, title));
    }

    private record Answer(boolean dryRun, @JsonUnwrapped Publish.Result result) {}
}
