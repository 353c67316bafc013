package org.oldwood.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oldwood.garden.EntryField;
import org.oldwood.garden.EntryField.Holds;
import org.oldwood.garden.EntryKind;
import org.oldwood.garden.EntryText;
import org.oldwood.store.Json;
import org.oldwood.store.Place;
import org.oldwood.store.Problems;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;

/**
 * Notes one entry of one kind. Its options are the kind's fields, so a new kind of entry needs no
 * command of its own.
 */
@Command
final class NoteKindCommand extends GardenCommand {
    private static final Place PLACE = Place.of(ProblemWords.COMMAND_LINE);

    private final EntryKind kind;
    private final NoteCommand parent;

    @Option(
            names = "--date",
            paramLabel = "DATE",
            description = "the day it happened, year-month-day; today otherwise")
    Optional<LocalDate> date = Optional.empty();

    @Option(names = "--note", paramLabel = "WORDS", description = "what else there is to say")
    Optional<String> note = Optional.empty();

    NoteKindCommand(EntryKind kind, NoteCommand parent) {
        this.kind = kind;
        this.parent = parent;
    }

    @Override
    CommandLine commandLine(List<String> arguments) {
        CommandSpec fields = CommandSpec.forAnnotatedObject(this);
        fields.usageMessage().description(kind.meaning());
        for (EntryField field : kind.fields()) {
            fields.addOption(option(field));
        }
        List<String> footer = new ArrayList<>(List.of("", "Example:"));
        footer.addAll(NoteExamples.of(kind));
        fields.usageMessage().footer(footer.toArray(String[]::new));
        return new CommandLine(fields);
    }

    private static OptionSpec option(EntryField field) {
        boolean flag = field.type() == Holds.FLAG;
        return OptionSpec.builder("--" + field.key())
                .type(String.class)
                .arity(flag ? "0..1" : "1")
                .fallbackValue(flag ? "true" : "")
                .paramLabel(label(field))
                .required(field.required())
                .description(help(field))
                .build();
    }

    private static String label(EntryField field) {
        return switch (field.type()) {
            case NEW_ID, PLANT, BED, LOT, CROP, MATERIAL, TASK, ENTRY -> "ID";
            case NEW_IDS -> "ID,ID";
            case STEMS -> "AGE=N,AGE=N";
            case SOME_STEMS -> "N|AGE=N,AGE=N";
            case NUMBER, COUNT -> "N";
            case STAGE -> "STAGE";
            case FLAG -> "true|false";
            case WORD, TEXT -> "WORD";
        };
    }

    private static String help(EntryField field) {
        String words = field.words().isEmpty() ? "" : ": " + String.join(", ", field.words());
        return (field.help() + words).replace("%", "%%");
    }

    @Override
    int run() throws IOException {
        takeFrom(parent);
        Map<String, Json> values = new LinkedHashMap<>();
        for (EntryField field : kind.fields()) {
            given(field)
                    .ifPresent(
                            text -> values.put(field.key(), EntryText.value(field, text, PLACE)));
        }
        note.ifPresent(words -> values.put("note", new Json.Text(PLACE.at("note"), words)));
        new Noting(this, new Problems())
                .note(() -> List.of(new Draft(date.orElseGet(this::today), kind, values, PLACE)));
        return 0;
    }

    private Optional<String> given(EntryField field) {
        @Nullable String value = commandSpec().findOption("--" + field.key()).getValue();
        return Optional.ofNullable(value);
    }
}
