// Writes so many all-day events with ical.js, as org.oldwood.calendar.ManyEvents does with ours, to be timed as a whole
// process. Usage, in a folder where "npm install ical.js" was run: node many_events.mjs 100000 events.ics
import { writeFileSync } from 'node:fs';
import { randomUUID } from 'node:crypto';
import ICAL from 'ical.js';

const [number, file] = [Number(process.argv[2]), process.argv[3]];
const calendar = new ICAL.Component('vcalendar');
calendar.updatePropertyWithValue('version', '2.0');
calendar.updatePropertyWithValue('prodid', '-//many events//EN');
const stamp = ICAL.Time.fromString('2026-11-25T00:00:00Z');
for (let i = 0; i < number; i++) {
  const event = new ICAL.Component('vevent');
  const day = ICAL.Time.fromString('2026-11-25');
  day.adjust(i % 365, 0, 0, 0);
  const next = day.clone();
  next.adjust(1, 0, 0, 0);
  event.updatePropertyWithValue('uid', randomUUID());
  event.updatePropertyWithValue('dtstamp', stamp);
  event.updatePropertyWithValue('last-modified', stamp);
  event.updatePropertyWithValue('sequence', 0);
  event.updatePropertyWithValue('dtstart', day);
  event.updatePropertyWithValue('dtend', next);
  event.updatePropertyWithValue('summary', `Task ${i}`);
  event.updatePropertyWithValue('description', 'Cut out two old stems; leave eight, well spread, and note it.');
  event.updatePropertyWithValue('categories', 'pruning');
  event.updatePropertyWithValue('location', `bed ${i % 100}`);
  event.updatePropertyWithValue('color', 'green');
  event.updatePropertyWithValue('status', 'CONFIRMED');
  event.updatePropertyWithValue('transp', 'TRANSPARENT');
  calendar.addSubcomponent(event);
}
writeFileSync(file, calendar.toString());
