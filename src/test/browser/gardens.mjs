// Gardens to draw: the demo gardens, and some made here to be small, large, or hard to show.
import { execFileSync } from 'node:child_process';
import { appendFileSync, cpSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
export const root = process.env.OLDWOOD_HOME ?? resolve(here, '../../..');
export const program = process.env.OLDWOOD ?? join(root, 'target/oldwood/bin/oldwood');
export const today = '2026-11-25';
export const work = mkdtempSync(join(tmpdir(), 'oldwood-sheets-'));

/** Runs the program and gives what it printed. */
export function oldwood(...args) {
  return execFileSync(program, args.includes('--today') ? args : [...args, '--today', today], { encoding: 'utf8', maxBuffer: 1 << 28, stdio: ['ignore', 'pipe', 'pipe'] });
}

function demo(name) {
  const folder = join(work, name);
  cpSync(join(root, 'demo-data', name), folder, { recursive: true });
  return folder;
}

/** One bush of which nothing is noted but that it stands. */
function oneBush() {
  const folder = join(work, 'one-bush');
  oldwood('start', folder, '--name', 'One bush', '--at', '52,-2', '--plants', 'blackcurrant=1', '--planted', '2021', '--quiet');
  return folder;
}

/** Six bushes that were counted and cut a year ago, as the record still expects them. */
export function sixBushes(name) {
  const folder = join(work, name);
  oldwood('start', folder, '--name', 'Six bushes', '--at', '52,-2', '--plants', 'blackcurrant=6', '--planted', '2019', '--quiet');
  const notes = [1, 2, 3, 4, 5, 6].flatMap((it) => [
    `2025-11-20,counted,blackcurrant-${it},"1=5,2=4,3=3,4=2"`, `2025-11-20,pruned,blackcurrant-${it},"1=1,3=1,4=2"`]);
  writeFileSync(join(work, `${name}.csv`), ['date,entry,plant,stems', ...notes].join('\n'));
  oldwood('note', '--csv', join(work, `${name}.csv`), '--garden', folder, '--quiet');
  return folder;
}

const crops = ['blackcurrant', 'redcurrant', 'gooseberry', 'jostaberry', 'blueberry'];

/** A garden of so many bushes, most of them counted and picked, in beds of fifteen. */
function many(name, bushes) {
  const folder = join(work, name);
  mkdirSync(folder, { recursive: true });
  const beds = Array.from({ length: Math.ceil(bushes / 15) }, (none, i) => ({ id: `bed-${i + 1}`, name: `bed ${i + 1}`, areaM2: 30, texture: 'loam' }));
  writeFileSync(join(folder, 'garden.json'), JSON.stringify({
    format: 1, name: `A garden of ${bushes}`, id: '5d0f4a1e-6e0c-4ad8-9a55-0c7b1a1f3b10',
    site: { latitude: 52.1, longitude: -2.3, zone: 'Europe/London' }, beds }, null, 1));
  const lines = [];
  const note = (date, entry) => lines.push({ id: `e-${String(lines.length + 1).padStart(5, '0')}`, date, ...entry });
  for (let i = 0; i < bushes; i++) {
    note('2019-11-16', { entry: 'planted', plant: `b-${i + 1}`, crop: crops[Math.floor(i / 15) % crops.length], bed: `bed-${Math.floor(i / 15) + 1}` });
  }
  for (let i = 0; i < bushes; i++) {
    if (i % 4 !== 3) {
      note('2026-11-10', { entry: 'counted', plant: `b-${i + 1}`, stems: { 1: 3 + i % 5, 2: 2 + i % 3, 3: 2 + i % 4, '4+': i % 5 } });
    }
  }
  writeFileSync(join(folder, 'journal.jsonl'), lines.map((it) => JSON.stringify(it)).join('\n') + '\n');
  return folder;
}

export const hostile = '<script>window.ran = 1</script><img src=x onerror="window.ran=1">';

/** Words that a page must show as they are: markup, quotes, other scripts, signs beyond the basic plane. */
function hostileWords() {
  const folder = join(work, 'hostile-words');
  cpSync(join(root, 'demo-data/terrace-school'), folder, { recursive: true });
  const file = join(folder, 'garden.json');
  const garden = JSON.parse(readFileSync(file, 'utf8'));
  garden.name = `${hostile} "Quoted" & 'single' </style></title>`;
  garden.beds[0].name = `שָׁלוֹם bed "${hostile}`;
  garden.beds[1].name = '🫐 حديقة التوت';
  garden.beds[2].name = 'Averyverylongbednamewithoutanyspaceinitthatcannotbebrokenanywhere';
  writeFileSync(file, JSON.stringify(garden));
  appendFileSync(join(folder, 'journal.jsonl'), [
    { id: 'x-1', date: '2024-11-20', entry: 'planted', plant: 'odd-1', crop: 'blackcurrant', bed: 'upper-terrace', cultivar: `${hostile}&lt;i&gt; {{x}} \${y}` },
    { id: 'x-2', date: '2026-04-20', entry: 'fed', bed: 'upper-terrace', material: 'blood-fish-bone', grams: 500, note: hostile },
  ].map((it) => JSON.stringify(it)).join('\n') + '\n');
  return folder;
}

export const gardens = {
  'terrace-school': () => demo('terrace-school'),
  'fire-station-hedges': () => demo('fire-station-hedges'),
  'one-bush': oneBush,
  'forty-bushes': () => many('forty-bushes', 40),
  'three-hundred-bushes': () => many('three-hundred-bushes', 300),
  'hostile-words': hostileWords,
};

/** Gardens whose pages of rounds are looked at: small and large, and both halves of the earth. */
export const roundGardens = {
  'terrace-school': gardens['terrace-school'],
  'fire-station-hedges': gardens['fire-station-hedges'],
  'one-bush': oneBush,
  'sixty-bushes': () => many('sixty-bushes', 60),
  'two-hundred-bushes': () => many('two-hundred-bushes', 200),
  'hostile-words': hostileWords,
};

/** Writes a garden's sheet and gives its path. */
export function sheet(folder, name, ...args) {
  const file = join(work, `${name}.html`);
  oldwood('sheet', '--garden', folder, '--out', file, '--quiet', ...args);
  return file;
}

const told = new Map();

/** What the program tells of a garden as JSON; asked once. */
export function json(folder, ...args) {
  const key = [folder, ...args].join(' ');
  if (!told.has(key)) told.set(key, JSON.parse(oldwood(...args, '--garden', folder, '--json', '--quiet')));
  return told.get(key);
}
