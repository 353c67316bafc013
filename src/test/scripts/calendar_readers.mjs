// Reads a calendar with ical.js or node-ical and prints the items as JSON.
// usage: node calendar_readers.mjs ical.js|node-ical FILE FOLDER_WITH_MODULES
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

process.env.TZ = 'UTC';
const [, , reader, file, folder] = process.argv;
const load = createRequire(join(folder, 'package.json'));
const text = new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(file));

function withIcalJs() {
  const ICAL = load('ical.js').default ?? load('ical.js');
  const items = [];
  for (const part of new ICAL.Component(ICAL.parse(text)).getAllSubcomponents()) {
    const get = (name) => {
      const value = part.getFirstPropertyValue(name);
      return value === null ? '' : String(value);
    };
    items.push({
      uid: get('uid'), kind: part.name, title: get('summary'), text: get('description'),
      status: get('status'), start: get('dtstart'), end: get(part.name === 'vevent' ? 'dtend' : 'due'),
      sequence: get('sequence'), alarms: part.getAllSubcomponents('valarm').length,
    });
  }
  return items;
}

function withNodeIcal() {
  const plain = (value) => (value && typeof value === 'object' && 'val' in value ? value.val : value ?? '');
  const day = (value) => (value instanceof Date ? value.toISOString().slice(0, 10) : String(plain(value)));
  const digits = (value) => (/^\d{8}$/.test(value) ? `${value.slice(0, 4)}-${value.slice(4, 6)}-${value.slice(6)}` : value);
  return Object.values(load('node-ical').sync.parseICS(text))
    .filter((part) => part.type === 'VEVENT' || part.type === 'VTODO')
    .map((part) => ({
      uid: part.uid, kind: part.type.toLowerCase(), title: plain(part.summary), text: plain(part.description),
      status: String(plain(part.status)), start: digits(day(part.start)),
      end: digits(day(part.type === 'VEVENT' ? part.end : part.due)),
    }));
}

console.log(JSON.stringify(reader === 'ical.js' ? withIcalJs() : withNodeIcal()));
