package org.oldwood.garden;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Patterns of names, of no program in particular. */
class SecondCopiesTest {
    @ParameterizedTest
    @CsvSource({"journal (conflict 2026-11-20).jsonl, journal.jsonl",
            "journal (Ada's conflicted copy).jsonl, journal.jsonl",
            "journal.conflict-20261120-101500-AB12CD3.jsonl, journal.jsonl",
            "journal_conf(2026-11-20-10-15-00).jsonl, journal.jsonl", "journal (1).jsonl, journal.jsonl",
            "journal - Copy.jsonl, journal.jsonl", "journal~2.jsonl, journal.jsonl",
            "journal-Laptop.jsonl, journal.jsonl", "Journal (2).JSONL, journal.jsonl",
            "journal.jsonl (1), journal.jsonl", "journal.jsonl.conflict, journal.jsonl",
            "Copy of journal.jsonl, journal.jsonl", "garden (1).json, garden.json",
            "garden.conflict-1.json, garden.json", "weather (conflict).csv, weather.csv", "weather.csv.1, weather.csv"})
    void a_second_copy_is_seen(String name, String of) { assertThat(SecondCopies.copied(name)).contains(of); }

    @ParameterizedTest
    @ValueSource(strings = {"garden.json", "journal.jsonl", "weather.csv", ".journal.jsonl.lock", ".garden.json.new",
            "journal.jsonl.torn-line-7", "journal.jsonl.torn-line-7-2", "journal.jsonl.bak", "garden.json~",
            "garden.schema.json", "journal.schema.json", "calendar-state.jsonl", "weather-station.csv",
            "journals.jsonl", "gardening.json", "mygarden.json", "notes.csv", "crops"})
    void other_files_are_left_alone(String name) { assertThat(SecondCopies.copied(name)).isEmpty(); }
}
