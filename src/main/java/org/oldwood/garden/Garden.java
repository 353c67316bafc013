package org.oldwood.garden;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.oldwood.season.Hemisphere;
import org.oldwood.store.Json;

/**
 * What is declared of a holding in {@code garden.json}.
 *
 * @param id random, never changed: the tasks' identities are made from it
 * @param since the day from which on its work was recorded, where it is declared
 * @param site where it lies
 * @param climate twelve monthly means, or the name of a bundled climate; read by the season engine
 * @param beds the beds, in the order of the file
 * @param workDays the days of the week on which one works; never empty
 * @param minutesPerDay how long one works on such a day at most; 0 for no limit
 * @param wishes what the grower wants of the program
 * @param choices named schools and variants chosen for the whole garden, {@code renewal → gentle} for example
 */
public record Garden(String name, UUID id, Optional<LocalDate> since, Site site, Optional<Json> climate, List<Bed> beds,
        Set<DayOfWeek> workDays, int minutesPerDay, List<String> materials, Wishes wishes,
        Map<String, String> choices) {

    public Hemisphere hemisphere() { return site.hemisphere(); }
}
