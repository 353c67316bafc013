package org.oldwood.cli.record;

import java.io.IOException;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.oldwood.cli.command.GardenCommand;
import org.oldwood.cli.command.GardenPlan;
import org.oldwood.cli.command.Out;
import org.oldwood.cli.command.ProblemWords;
import org.oldwood.cli.command.ShownList;
import org.oldwood.cli.water.FeelWords;
import org.oldwood.garden.BedState;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryField.Holds;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.garden.GardenState;
import org.oldwood.plan.TaskIds;
import org.oldwood.plan.round.Rounds;
import org.oldwood.store.IsoDate;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * Notes one entry of one kind. Its options are the kind's fields, so a new kind of entry needs no command of its own.
 */
@Command
final class NoteKindCommand extends GardenCommand {
    private static final Place PLACE = Place.of(ProblemWords.COMMAND_LINE);
    private static final String FEEL = "feel";
    private static final String EXCEPT = "except";
    private static final String UNTIL = "until";
    private static final String YES = "yes";
    private static final Set<Holds> SUBJECTS = EnumSet.of(Holds.PLANT, Holds.BED, Holds.LOT, Holds.TASK, Holds.ENTRY,
            Holds.NEW_ID);

    private final EntryKind kind;
    private final NoteCommand parent;

    @Option(names = "--date", paramLabel = "DATE")
    Optional<LocalDate> date = Optional.empty();

    @Parameters(arity = "0..1", paramLabel = "ID")
    Optional<String> which = Optional.empty();

    @Option(names = "--note", paramLabel = "WORDS")
    Optional<String> note = Optional.empty();

    @Option(names = "--once", paramLabel = "KEY")
    Optional<String> once = Optional.empty();

    NoteKindCommand(EntryKind kind, NoteCommand parent) {
        this.kind = kind;
        this.parent = parent;
    }

    @Override
    public CommandLine commandLine() {
        CommandLine line = super.commandLine();
        CommandSpec fields = line.getCommandSpec();
        fields.usageMessage().description(kind.meaning());
        kind.fields().forEach(field -> fields.addOption(option(field, !subject().filter(field::equals).isPresent())));
        if (kind == EntryKind.DONE) {
            fields.addOption(OptionSpec.builder("--" + EXCEPT).type(String.class).paramLabel("ID,ID")
                    .description("the plants it was not done to, with commas between").build());
        }
        if (kind == EntryKind.LATER) {
            fields.addOption(OptionSpec.builder("--" + UNTIL).type(String.class).paramLabel("DATE")
                    .description("until when, year-month-day; two weeks otherwise").build());
        }
        if (kind == EntryKind.SEEN) {
            fields.addOption(OptionSpec.builder("--" + YES).type(String.class).arity("0").fallbackValue("true")
                    .description("note it, however unlikely the day").build());
        }
        fields.usageMessage().footer("", "Example:", example());
        return line;
    }

    /** The kind's example as a command, on as many lines as it needs. */
    private String example() {
        StringBuilder lines = new StringBuilder();
        StringBuilder line = new StringBuilder("  oldwood note ").append(kind.key());
        for (String option : kind.example().split(" (?=--)", -1)) {
            if (line.length() + option.length() + 1 > Out.WIDTH - 3) {
                lines.append(line).append(" \\%n");
                line = new StringBuilder("     ");
            }
            line.append(' ').append(option);
        }
        return lines.append(line).toString();
    }

    /** What the entry is about: the field that the argument without an option fills. */
    private Optional<EntryField> subject() {
        return kind.fields().stream().filter(EntryField::required)
                .filter(field -> SUBJECTS.contains(field.type()) || kind == EntryKind.NEVER).findFirst();
    }

    private static OptionSpec option(EntryField field, boolean needed) {
        boolean flag = field.type() == Holds.FLAG;
        return OptionSpec.builder("--" + field.key()).type(String.class).arity(flag ? "0..1" : "1")
                .fallbackValue(flag ? "true" : "").paramLabel(field.type().typed()).required(needed && field.required())
                .description(help(field)).build();
    }

    private static String help(EntryField field) {
        String words = field.words().isEmpty() ? "" : ": " + String.join(", ", field.words());
        String more = field.key().equals(FEEL) ? "; ? shows how each feels" : "";
        return (field.help() + words + more).replace("%", "%%");
    }

    @Override
    public int run() throws IOException {
        takeFrom(parent);
        if (given(FEEL).filter("?"::equals).isPresent()) { return feel(); }
        Map<String, Json> values = new LinkedHashMap<>();
        kind.fields().forEach(
                field -> given(field.key()).ifPresent(text -> values.put(field.key(), Draft.typed(this, field, text))));
        takeSubject(values);
        given(UNTIL).ifPresent(day -> values.put("days", days(day)));
        if (kind == EntryKind.NEVER) { takeKind(values); }
        note.ifPresent(words -> values.put("note", new Json.Text(PLACE.at("note"), words)));
        new Noting(this, new Problems()).once(once).sure(kind != EntryKind.SEEN || given(YES).isPresent())
                .note(() -> new Ticking(this).booked(new Draft(date.orElseGet(this::today), kind, values, PLACE),
                        given(EXCEPT).map(TaskIds::listed).orElse(List.of())));
        return 0;
    }

    private Json days(String until) {
        LocalDate end = IsoDate.find(until)
                .orElseThrow(() -> usage("--until must be %s, but is \"%s\"".formatted(IsoDate.RULE, until)));
        long days = ChronoUnit.DAYS.between(date.orElseGet(this::today), end);
        refuseIf(days < 1, "--until must be a later day than the one it is put off on, but is %s", until);
        return new Json.Num(PLACE.at("days"), days, Long.toString(days));
    }

    /** The kind of round, or the rule, that is never wanted, by its name or by the number of such a round. */
    private void takeKind(Map<String, Json> values) {
        String named = values.get("kind") instanceof Json.Text text ? text.value() : "";
        Rounds rounds = Rounds.read(folder().documents());
        GardenPlan planned = GardenPlan.of(this, folder());
        String id = ShownList.find(this, rounds.of(planned.plan(), planned.state()), named)
                .map(round -> round.kind().id()).orElse(named);
        if (!rounds.kinds().contains(id) && planned.planner().rules().find(id).isEmpty()) {
            throw noSuch("kind of round", id, List.copyOf(rounds.kinds()));
        }
        values.put("kind", new Json.Text(PLACE.at("kind"), id));
    }

    private void takeSubject(Map<String, Json> values) {
        if (which.isPresent()) {
            EntryField field = subject().isPresent() ? subject().get() : byName(which.get());
            refuseIf(values.containsKey(field.key()), "give %s or --%s, not both", which.get(), field.key());
            values.put(field.key(), EntryText.value(field, which.get(), PLACE));
        }
        Optional<EntryField> missing = subject().filter(field -> !values.containsKey(field.key()));
        if (missing.isPresent()) {
            throw usage("say which: --" + missing.get().key() + " ID, " + missing.get().help());
        }
        boolean nowhere = !values.containsKey("bed") && !values.containsKey("plant");
        refuseIf(kind == EntryKind.WATERED && nowhere, "say which bed or plant: --bed ID or --plant ID");
    }

    /** Of a kind that may be about several, by what the garden has under that name. */
    private EntryField byName(String id) {
        GardenState garden = folder().on(today());
        Optional<EntryField> crop = kind.field("crop");
        if (crop.isPresent() && garden.plant(id).isEmpty() && folder().crops().ids().contains(id)) {
            return crop.get();
        }
        boolean either = kind.field("plant").isPresent() && kind.field("bed").isPresent();
        if (either && garden.plant(id).isEmpty() && garden.bed(id).isEmpty()) {
            List<String> known = new ArrayList<>(garden.beds().keySet());
            known.addAll(garden.plants().keySet());
            throw noSuch("bed or plant", id, known);
        }
        if (kind.field("lot").isPresent() && garden.lots().containsKey(id)) { return kind.field("lot").get(); }
        boolean plant = kind.field("plant").isPresent() && garden.plant(id).isPresent();
        return kind.field(plant ? "plant" : "bed").or(() -> kind.field("plant"))
                .orElseThrow(() -> usage("what \"" + id + "\" is cannot be told; give it with its option"));
    }

    /** Notes nothing, but shows how each class feels in that bed. */
    private int feel() {
        String id = which.or(() -> given("bed")).orElse("");
        BedState bed = folder().on(today()).bed(id)
                .orElseThrow(() -> usage(id.isEmpty() ? "say which bed: --bed ID" : "there is no bed \"" + id + "\""));
        FeelWords.of(out(), bed, folder());
        return 0;
    }

    private Optional<String> given(String key) {
        OptionSpec option = spec().findOption("--" + key);
        @Nullable
        String value = option == null ? null : option.getValue();
        return Optional.ofNullable(value);
    }
}
