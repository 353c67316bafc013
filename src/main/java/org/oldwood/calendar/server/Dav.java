package org.oldwood.calendar.server;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * The XML of WebDAV (RFC 4918, 14.16) and CalDAV (RFC 4791, 9) as far as it is needed. Replies are read without
 * document types or entities, to a bounded depth and number.
 */
final class Dav {
    private static final int DEEPEST = 40;
    private static final int MOST_RESPONSES = 200_000;
    private static final String DAV = "DAV:";
    private static final String CALDAV = "urn:ietf:params:xml:ns:caldav";

    static final String DESCRIBE = "<?xml version=\"1.0\" encoding=\"utf-8\"?><D:propfind xmlns:D=\"DAV:\" xmlns:C=\""
            + CALDAV + "\"><D:prop><D:resourcetype/><C:supported-calendar-component-set/></D:prop></D:propfind>";

    static final String LIST = "<?xml version=\"1.0\" encoding=\"utf-8\"?><D:propfind xmlns:D=\"DAV:\">"
            + "<D:prop><D:getetag/></D:prop></D:propfind>";

    private static final XMLInputFactory FACTORY = XMLInputFactory.newDefaultFactory();

    static {
        FACTORY.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        FACTORY.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    }

    private Dav() {}

    static final class Resource {
        String href = "";
        String etag = "";
        String data = "";
        boolean isCalendar;
        final Set<String> components = new TreeSet<>();

        /** RFC 4791, 5.2.3: without the property, all kinds are taken. */
        boolean takes(String component) {
            return components.isEmpty() || components.contains(component);
        }
    }

    /** Asks for several objects at once (RFC 4791, 7.9). */
    static String multiget(List<String> hrefs) {
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"utf-8\"?>");
        xml.append("<C:calendar-multiget xmlns:D=\"DAV:\" xmlns:C=\"").append(CALDAV);
        xml.append("\"><D:prop><D:getetag/><C:calendar-data/></D:prop>");
        hrefs.forEach(href -> xml.append("<D:href>").append(escaped(href)).append("</D:href>"));
        return xml.append("</C:calendar-multiget>").toString();
    }

    /** Asks where a UID lives (RFC 4791, 7.8.6). */
    static String find(String component, String uid) {
        return "<?xml version=\"1.0\" encoding=\"utf-8\"?><C:calendar-query xmlns:D=\"DAV:\" xmlns:C=\"" + CALDAV
                + "\"><D:prop><D:getetag/><C:calendar-data/></D:prop><C:filter>"
                + "<C:comp-filter name=\"VCALENDAR\"><C:comp-filter name=\"" + component
                + "\"><C:prop-filter name=\"UID\"><C:text-match collation=\"i;octet\">" + escaped(uid)
                + "</C:text-match></C:prop-filter></C:comp-filter></C:comp-filter></C:filter></C:calendar-query>";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** The resources of a multistatus reply. */
    static List<Resource> resources(String reply) throws XMLStreamException {
        XMLStreamReader xml = FACTORY.createXMLStreamReader(new StringReader(reply));
        Reading reading = new Reading();
        while (xml.hasNext()) {
            reading.take(xml, xml.next());
        }
        if (!reading.isReply) { throw new XMLStreamException("it is no multistatus reply"); }
        return reading.all;
    }

    /** A reply half read. */
    private static final class Reading {
        final List<Resource> all = new ArrayList<>();
        boolean isReply;
        private Resource now = new Resource();
        private final StringBuilder text = new StringBuilder();
        private int depth;

        void take(XMLStreamReader xml, int event) throws XMLStreamException {
            switch (event) {
                case XMLStreamConstants.START_ELEMENT -> start(xml);
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> text.append(xml.getText());
                case XMLStreamConstants.END_ELEMENT -> {
                    depth--;
                    end(xml, now, text.toString());
                    text.setLength(0);
                }
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw new XMLStreamException("it declares a document type or entities");
                default -> {
                    // comments and processing instructions say nothing
                }
            }
        }

        private void start(XMLStreamReader xml) throws XMLStreamException {
            text.setLength(0);
            isReply |= is(xml, DAV, "multistatus");
            if (++depth > DEEPEST || all.size() > MOST_RESPONSES) {
                throw new XMLStreamException("it is nested too deep or too long");
            }
            if (is(xml, DAV, "response")) {
                now = new Resource();
                all.add(now);
            }
            begin(xml, now);
        }
    }

    private static void begin(XMLStreamReader xml, Resource now) {
        if (is(xml, CALDAV, "calendar")) {
            now.isCalendar = true;
        } else if (is(xml, CALDAV, "comp")) {
            String name = xml.getAttributeValue(null, "name");
            if (name != null) { now.components.add(name.toUpperCase(Locale.ROOT)); }
        }
    }

    private static void end(XMLStreamReader xml, Resource now, String text) {
        if (is(xml, DAV, "href") && now.href.isEmpty()) {
            now.href = text.strip();
        } else if (is(xml, DAV, "getetag")) {
            now.etag = text.strip();
        } else if (is(xml, CALDAV, "calendar-data")) { now.data = text; }
    }

    private static boolean is(XMLStreamReader xml, String namespace, String name) {
        return name.equals(xml.getLocalName()) && namespace.equals(xml.getNamespaceURI());
    }
}
