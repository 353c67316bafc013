package org.oldwood.facts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oldwood.garden.EntryKind;

/**
 * How much of a task to do.
 *
 * @param unit its unit: {@code stems}, {@code g}, {@code l}, {@code cuttings}
 * @param worth what it is worth, by which a part of it is told from the whole; the value where nothing else is known
 * @param due the same with all that is to follow it
 * @param words the amount for people, {@code 3 of the 4+ class and 1 weak one}
 * @param lines further lines for the task's text; may be empty
 * @param arithmetic how it was worked out, step by step
 * @param cautions caution ids beyond the rule's own
 * @param tags of the material, for keep-apart
 * @param minutes how long it should take, where figures say
 * @param buys the materials that it takes
 * @param lacks what it wants that no material at hand brings
 * @param noted the entries that it comes to where it is done as planned; empty where only the grower can tell
 */
public record Amount(double value, String unit, double worth, double due, String words, List<String> lines,
        List<String> arithmetic, List<String> sources, List<String> cautions, List<String> tags,
        Optional<Double> minutes, List<Purchase> buys, List<String> lacks, List<Noted> noted) {

    public Amount {
        lines = List.copyOf(lines);
        arithmetic = List.copyOf(arithmetic);
        sources = List.copyOf(sources);
        cautions = List.copyOf(cautions);
        tags = List.copyOf(tags);
        buys = List.copyOf(buys);
        lacks = List.copyOf(lacks);
        noted = List.copyOf(noted);
    }

    /** An amount with its words, arithmetic and sources only. */
    public static Amount of(double value, String unit, String words, List<String> arithmetic, List<String> sources) {
        return new Amount(value, unit, value, value, words, List.of(), arithmetic, sources, List.of(), List.of(),
                Optional.empty(), List.of(), List.of(), List.of());
    }

    public Amount withWorth(double one, double all) {
        return new Amount(value, unit, one, all, words, lines, arithmetic, sources, cautions, tags, minutes, buys,
                lacks, noted);
    }

    public Amount withArithmetic(List<String> now) {
        return new Amount(value, unit, worth, due, words, lines, now, sources, cautions, tags, minutes, buys, lacks,
                noted);
    }

    public Amount withLines(List<String> now) {
        return new Amount(value, unit, worth, due, words, now, arithmetic, sources, cautions, tags, minutes, buys,
                lacks, noted);
    }

    /** With what follows from the material that it takes. */
    public Amount withMaterial(List<String> itsCautions, List<String> itsTags, List<Purchase> bought) {
        return new Amount(value, unit, worth, due, words, lines, arithmetic, sources, itsCautions, itsTags, minutes,
                bought, lacks, noted);
    }

    public Amount withMinutes(Optional<Double> now) {
        return new Amount(value, unit, worth, due, words, lines, arithmetic, sources, cautions, tags, now, buys, lacks,
                noted);
    }

    public Amount withLacks(List<String> now) {
        return new Amount(value, unit, worth, due, words, lines, arithmetic, sources, cautions, tags, minutes, buys,
                now, noted);
    }

    public Amount withNoted(List<Noted> now) {
        return new Amount(value, unit, worth, due, words, lines, arithmetic, sources, cautions, tags, minutes, buys,
                lacks, now);
    }

    /**
     * What a journal entry would say of a piece of work that was done as planned.
     *
     * @param says its values as one would type them, without the plant or bed: {@code material}, {@code grams}
     */
    public record Noted(EntryKind kind, Map<String, String> says) {
        public Noted {
            says = Map.copyOf(says);
        }
    }
}
