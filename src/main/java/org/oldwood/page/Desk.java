package org.oldwood.page;

import java.io.IOException;
import java.util.List;
import java.util.Map;

/** Who answers for the garden: shows it, notes what the phone sends, and takes back what was noted by mistake. */
public interface Desk {
    /** What the page shows, as a record that becomes JSON. */
    Object view() throws IOException;

    /** Changes whenever what the page shows may have changed; quickly told. */
    String stamp() throws IOException;

    /** The year sheet as one HTML page. */
    String sheet() throws IOException;

    /**
     * Notes all of the rows or none.
     *
     * @param key what the phone calls them: sent again under the same key they are noted once
     */
    Reply note(String key, List<Map<String, String>> rows) throws IOException;

    /** Takes back an entry; {@code whole} with all that was noted at once with it. */
    Reply takeBack(String entry, boolean whole) throws IOException;

    /**
     * What came of it; of a note that was accepted, what is asked or warned of.
     *
     * @param accepted whether it stands in the journal now
     */
    record Reply(boolean accepted, List<String> said) {}
}
