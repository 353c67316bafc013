package org.oldwood.calendar.server;

import static org.assertj.core.api.Assertions.assertThat;

import javax.xml.stream.XMLStreamException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Replies of RFC 4918, 14.16. */
class DavTest {
    /** 1,000 damaged replies. */
    @Property(tries = 1000)
    void no_damaged_reply_makes_reading_fail_otherwise(@ForAll @IntRange(max = 300) int at, @ForAll char other) {
        StringBuilder reply = new StringBuilder(
                "<D:multistatus xmlns:D=\"DAV:\" xmlns:C=\"urn:ietf:params:xml:ns:caldav\">"
                        + "<D:response><D:href>/a.ics</D:href><D:propstat><D:prop>"
                        + "<D:getetag>\"1\"</D:getetag><C:calendar-data>BEGIN:VCALENDAR"
                        + "</C:calendar-data></D:prop></D:propstat></D:response></D:multistatus>");
        reply.setCharAt(at % reply.length(), other);

        try {
            assertThat(Dav.resources(reply.toString()).size()).isLessThanOrEqualTo(1);
        } catch (XMLStreamException e) {
            assertThat(e).hasMessageNotContaining("Exception");
        }
    }
}
