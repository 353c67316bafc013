// Opens year sheets in a real browser. The page is held against what the program tells by other ways: tasks, stages,
// prune and cuttings as JSON.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { after, before, describe, test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { browse } from './browse.mjs';
import { gardens, hostile, json, root, roundGardens, sheet, work } from './gardens.mjs';
import { make, shown, sumOf } from './picture.mjs';
import { bars, bushes, marks, textFaults } from './page-checks.mjs';

const require = createRequire(import.meta.url);
const axeSource = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const validator = join(dirname(require.resolve('vnu-jar/package.json')), 'build/dist/vnu.jar');
const DAY = 86_400_000;
// What A4 and Letter leave between the margins of the print style, in pixels of 1/96 inch.
const papers = { A4: 695, Letter: 718 };

const widths = [360, 768, 1280];

/** The pages are made of the same parts: the northern demo garden is looked at from every side, with OLDWOOD_LOOK=all the others too. */
const all = process.env.OLDWOOD_LOOK === 'all';
const looks = all ? {} : {
  'fire-station-hedges': { marksAt: [768], textAt: [360, 1280], on: ['A4'], schemes: ['light'] },
  'one-bush': { marksAt: [768], textAt: [360], on: ['Letter'], schemes: ['light'] },
  'hostile-words': { marksAt: [], textAt: [360, 1280], on: ['A4'], schemes: ['light'] },
};

let browser;
before(async () => {
  browser = await browse();
});
after(async () => {
  await browser?.close();
  rmSync(work, { recursive: true, force: true });
});

/** Gardens that are looked at from every side, and in three seasons. */
const busy = new Set(['terrace-school', 'fire-station-hedges']);

/** A sheet in letters of twice the size. */
function large(file, name) {
  const path = join(work, `${name}-large.html`);
  writeFileSync(path, readFileSync(file, 'utf8').replace('html { font-size: 100%;', 'html { font-size: 200%;'));
  return path;
}

const days = (from, to) => (Date.parse(to) - Date.parse(from)) / DAY;
const plus = (date, number) => new Date(Date.parse(date) + number * DAY).toISOString().slice(0, 10);
const close = (seen, wanted, what) => assert.ok(Math.abs(seen - wanted) <= 1, `${what}: at ${seen} px, wanted ${wanted} px`);

/** A page that keeps account of everything it asks for and complains of. */
async function open(file, width, { media = 'screen', scheme = 'light' } = {}) {
  const page = await browser.newPage();
  page.asked = [];
  page.said = [];
  page.on('request', (it) => page.asked.push(it.url()));
  page.on('console', (it) => page.said.push(it.text()));
  page.on('pageerror', (it) => page.said.push(String(it)));
  await page.setViewport({ width, height: 900 });
  // Both in one message: each of two messages would take the other back.
  const devtools = await page.createCDPSession();
  await devtools.send('Emulation.setEmulatedMedia', { media, features: [{ name: 'prefers-color-scheme', value: scheme }] });
  await page.goto(pathToFileURL(file).href, { waitUntil: 'load', timeout: 120_000 });
  assert.ok(await page.evaluate((it) => matchMedia(it).matches, media), `the page is not shown for ${media}`);
  return page;
}

/** The first day of a season by its label: 1 November in the north, 1 May in the south. */
const opens = (label) => (label.includes('-') ? `${label.slice(0, 4)}-05-01` : `${Number(label) - 1}-11-01`);

const across = (row, first, end, date) => {
  const share = Math.max(0, Math.min(1, days(first, date) / days(first, end)));
  return row.lane.left + share * (row.lane.right - row.lane.left);
};

function chartOf(charts, task) {
  const key = `${task.rule}@${task.subject.bed ?? ''}`;
  for (const chart of charts) {
    const row = chart.first === opens(task.season) && chart.rows.find((it) => it.key === key);
    if (row) return { chart, row };
  }
  assert.fail(`no row for ${task.id}`);
}

function checkTask(charts, task) {
  const { chart, row } = chartOf(charts, task);
  const end = `${Number(chart.first.slice(0, 4)) + 1}${chart.first.slice(4)}`;
  const { first, last } = task.window;
  const span = row.spans.find((it) => it.kind === 'window' && it.first === first && it.last === last);
  assert.ok(span, `no span of ${task.id}`);
  close(span.left, across(row, chart.first, end, first), `${task.id} begins`);
  close(span.right, across(row, chart.first, end, plus(last, 1)), `${task.id} ends`);
  if (task.day >= chart.first && task.day < end) {
    const kind = task.state === 'open' ? 'day' : 'done';
    const point = row.points.find((it) => it.kind === kind && it.day === task.day);
    assert.ok(point, `no mark for the day of ${task.id}`);
    close(point.middle, (across(row, chart.first, end, task.day) + across(row, chart.first, end, plus(task.day, 1))) / 2, `${task.id} on its day`);
  }
}

function checkStages(charts, stages) {
  for (const crop of stages.crops) {
    const found = charts.flatMap((chart) => chart.rows.filter((row) => row.key === `stages@${crop.crop}`).map((row) => ({ chart, row })));
    assert.equal(found.length, 1, `stages of ${crop.crop}`);
    const { chart, row } = found[0];
    assert.equal(chart.first, opens(stages.season));
    for (const [stage, kind] of [['bud-burst', 'bud'], ['ripe', 'ripe']]) {
      const { date } = crop.stages.find((it) => it.stage === stage);
      const middle = (across(row, chart.first, chart.end, date) + across(row, chart.first, chart.end, plus(date, 1))) / 2;
      close(row.points.find((it) => it.kind === kind).middle, middle, `${crop.crop} ${stage}`);
    }
  }
}

/** Each bar against the numbers written beside it: they are rounded, so the bar may lie off by as much. */
function checkBars(all) {
  for (const bar of all) {
    const numbers = bar.words.match(/\d+(\.\d+)?/g).map(Number);
    const [is, low = is, high = is] = numbers;
    const pixel = bar.width / bar.most;
    const near = (seen, kg, what) => {
      const rounding = (kg < 1 ? 0.005 : 0.05) * pixel;
      assert.ok(Math.abs(seen - Math.min(bar.width, kg * pixel)) <= 1 + rounding, `${bar.words}: ${what} at ${seen} px of ${bar.width}`);
    };
    near(bar.low, low, 'least');
    near(bar.dot, is, 'expected');
    near(bar.high, high, 'most');
  }
}

const counts = (text) => Object.fromEntries(text.split(',').map((it) => it.split('=')).map(([age, n]) => [age, Number(n)]).filter(([, n]) => n > 0));

/** Each drawn card against the cut that the program tells of each of its plants. */
function checkBushes(cards, folder) {
  const told = new Map(json(folder, 'prune').plants.filter((it) => it.before).map((it) => [it.plant.split(' ').at(-1), it]));
  for (const card of cards) {
    for (const id of card.plants) {
      const plant = told.get(id);
      if (!plant || Math.max(1, ...Object.values(counts(plant.before))) > 28) continue; // one stroke for several stems
      const out = {};
      plant.takeOut.forEach((it) => { out[it.age] = (out[it.age] ?? 0) + it.number; });
      const [now, then] = card.pictures;
      const of = (picture, number) => Object.fromEntries(Object.entries(picture).map(([age, it]) => [age, it[number]]).filter(([, it]) => it > 0));
      assert.deepEqual(of(now, 'strokes'), counts(plant.before), `${id} before`);
      assert.deepEqual(of(now, 'hollow'), out, `${id} comes out`);
      assert.deepEqual(of(then, 'strokes'), counts(plant.after), `${id} after`);
    }
  }
}

function checkTicks(charts) {
  for (const chart of charts.filter((it) => it.ticks.length === 12)) {
    for (let i = 0; i < 12; i++) {
      const month = new Date(Date.UTC(Number(chart.first.slice(0, 4)), Number(chart.first.slice(5, 7)) - 1 + i, 1)).toISOString().slice(0, 10);
      const share = days(chart.first, month) / days(chart.first, chart.end);
      close(chart.ticks[i], chart.grid.left + share * (chart.grid.right - chart.grid.left), `the line of ${month}`);
    }
  }
}

async function noFaults(file, width, options, what) {
  const page = await open(file, width, options);
  const { faults, lines } = await page.evaluate(textFaults);
  assert.ok(lines > 10, `${what}: only ${lines} lines of text`);
  assert.deepEqual(faults.slice(0, 10), [], `${what}: ${faults.length} faults`);
  assert.deepEqual(page.said, [], what);
  assert.deepEqual(page.asked, [pathToFileURL(file).href], what);
  await page.close();
}

async function noViolation(file, scheme) {
  const page = await open(file, 1280, { scheme });
  await page.evaluate(axeSource);
  const found = await page.evaluate(async () => {
    const result = await globalThis.axe.run(document, { resultTypes: ['violations'] });
    return result.violations.map((it) => `${it.id}: ${it.help} (${it.nodes.length}) ${it.nodes[0].html.slice(0, 200)} ${it.nodes[0].failureSummary}`);
  });
  assert.deepEqual(found, [], scheme);
  await page.close();
}

/** Files that the last test holds against HTML: a validator takes seconds to start, so it starts once. */
const written = new Set();

function validate(files) {
  try {
    execFileSync('java', ['-jar', validator, '--format', 'gnu', ...files], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  } catch (e) {
    assert.fail(`not valid:\n${String(e.stderr).slice(0, 3000)}`);
  }
}

// The largest take as long as five others; the pages of rounds have gardens of sixty and two hundred.
const long = ['forty-bushes', 'three-hundred-bushes'];
const looked = Object.entries(gardens).filter(([name]) => all || !long.includes(name));
for (const [name, make] of looked) {
  describe(name, () => {
    let folder;
    let file;
    let tasks;
    before(() => {
      folder = make();
      file = sheet(folder, name, '--full');
      written.add(file);
      tasks = json(folder, 'tasks').tasks;
    });

    const { marksAt = widths, textAt = widths, on = Object.keys(papers), schemes = ['light', 'dark'] } = looks[name] ?? {};
    for (const width of marksAt) {
      test(`marks lie where the data say at ${width} px`, async () => {
        const page = await open(file, width);
        const charts = await page.evaluate(marks);
        tasks.forEach((task) => checkTask(charts, task));
        checkStages(charts, json(folder, 'stages'));
        checkTicks(charts);
        checkBars(await page.evaluate(bars));
        checkBushes(await page.evaluate(bushes), folder);
        await page.close();
      });
    }

    for (const width of textAt) {
      test(`no text overlaps or is cut at ${width} px`, () => noFaults(file, width, {}, `${width} px`));
    }

    for (const paper of on) {
      test(`no text overlaps or is cut on ${paper}`, () => noFaults(file, papers[paper], { media: 'print' }, paper));
    }

    if (busy.has(name)) {
      test('can be read in print, on small screens and in large letters', async () => {
        await sizes(file);
        const paper = await open(file, papers.A4, { media: 'print' });
        const charts = await paper.evaluate(() => [...document.querySelectorAll('.chart')].map((it) => [it.getBoundingClientRect().height, getComputedStyle(it).breakInside]));
        charts.forEach(([height, breaks]) => assert.ok(height < 1000 && breaks === 'avoid', `a chart of ${height} px stands apart from its months`));
        await paper.close();
        await noFaults(file, 320, {}, '320 px');
        await noFaults(large(file, name), 390, {}, '200 %');
      });
    }

    for (const scheme of schemes) {
      test(`axe finds nothing in ${scheme} mode`, () => noViolation(file, scheme));
    }
  });
}

describe('words of the user', () => {
  test('are shown as they are and run nothing', async () => {
    const folder = join(work, 'hostile-words');
    const page = await open(join(work, 'hostile-words.html'), 1280);
    const text = await page.evaluate(() => document.body.innerText);
    assert.ok(text.includes(`${hostile} "Quoted" & 'single' </style></title>`), 'the name of the garden');
    assert.ok(text.includes(`שָׁלוֹם bed "${hostile}`), 'the name of a bed');
    assert.ok(text.includes('🫐 حديقة التوت'), 'another script');
    assert.ok(text.includes(`${hostile}&lt;i&gt; {{x}} \${y}`), 'a variety');
    assert.equal(await page.evaluate(() => globalThis.ran), undefined);
    assert.equal(await page.evaluate(() => document.querySelectorAll('script, img, iframe, object, embed, link').length), 0);
    assert.ok((await page.title()).includes(hostile));
    assert.ok(folder);
    await page.close();
  });
});

/** How many sheets of A4 each page of a file takes; no letter but at stems is under 8 points. */
async function sizes(file) {
  const paper = await open(file, 703, { media: 'print' });
  const heights = await paper.evaluate(() => [...document.querySelectorAll('.page')].map((it) => it.getBoundingClientRect().height));
  // where rounds go on overleaf, the months of their strip stand there too
  assert.deepEqual(await paper.evaluate(() => [...document.querySelectorAll('.axis')].map((it) => getComputedStyle(it).display).filter((it) => it !== 'table-header-group')), []);
  const small = await paper.evaluate(() => [...document.querySelectorAll('body *')]
    .filter((it) => it.checkVisibility() && !it.closest('.wood, defs, style') && [...it.childNodes].some((text) => text.nodeType === 3 && text.data.trim()))
    .map((it) => [parseFloat(getComputedStyle(it).fontSize), it.textContent.trim().slice(0, 40)])
    .filter(([size]) => size < 8 * 96 / 72 - 0.01));
  await paper.close();
  assert.deepEqual(small.slice(0, 5), [], 'text under 8 pt');
  return heights.map((it) => it / 1039);
}

for (const [name, make] of Object.entries(roundGardens)) {
  describe(`rounds of ${name}`, () => {
    let folder;
    let now;
    let year;
    before(() => {
      folder = existsSync(join(work, name)) ? join(work, name) : make();
      now = sheet(folder, `${name}-now`);
      year = sheet(folder, `${name}-year`, '--month', 'year');
      written.add(now).add(year);
    });

    const huge = /hundred/.test(name);

    test('take few sheets of paper, in letters one can read', async () => {
      for (const day of busy.has(name) && (all || name === 'terrace-school') ? ['2027-01-10', '2027-03-15', '2027-08-15'] : ['2027-03-15']) {
        if (!huge) {
          const [sheets] = await sizes(sheet(folder, `${name}-now-${day}`, '--today', day));
          assert.ok(sheets <= 6, `${sheets} sheets for now on ${day}`);
        }
        const months = await sizes(sheet(folder, `${name}-year-${day}`, '--month', 'year', '--today', day));
        assert.equal(months.length, 12);
        // two hundred bushes, or names of sixty letters and more, may take a second sheet
        months.forEach((it, i) => assert.ok(it <= (huge || name === 'hostile-words' ? 2 : 1), `${it} sheets for month ${i + 1} from ${day}`));
      }
    });

    test('take few screens of a phone', async () => {
      const page = await open(year, 390);
      const screens = await page.evaluate(() => [...document.querySelectorAll('.page')].map((it) => it.getBoundingClientRect().height / 844));
      screens.forEach((it, i) => assert.ok(it <= 4, `${it} screens for month ${i + 1}`));
      await page.close();
      const start = await open(now, 390);
      const end = await start.evaluate(() => (document.querySelector('.cuts, .ends-of-page') ?? document.querySelector('footer')).getBoundingClientRect().top / 844);
      assert.ok(end <= 4, `${end} screens to the cards`);
      await start.close();
    });

    if (huge) return;

    test('show the most urgent round on the first screen', async () => {
      const page = await open(now, 390);
      const urgent = json(folder, 'now').due[0]?.id;
      if (urgent) {
        const first = await page.evaluate(() => {
          const it = document.querySelector('[data-round]');
          return { id: it.dataset.round, top: it.getBoundingClientRect().top };
        });
        assert.equal(first.id, urgent);
        assert.ok(first.top < 600, `${first.top} px down`);
      }
      await page.close();
    });

    test('do not run over at 320 px, nor with letters of twice the size', async () => {
      for (const [what, file] of Object.entries(all || busy.has(name) || name === 'hostile-words' ? { now, year } : { now })) {
        await noFaults(file, 320, {}, `${what} at 320 px`);
        await noFaults(large(file, `${name}-${what}`), 390, {}, `${what} at 200 %`);
        await noFaults(file, 703, { media: 'print' }, `${what} on A4`);
      }
    });

    for (const scheme of all || name === 'terrace-school' ? ['light', 'dark'] : ['light']) {
      test(`axe finds nothing in ${scheme} mode`, async () => {
        await noViolation(now, scheme);
        if (scheme === 'light') await noViolation(year, scheme);
      });
    }
  });
}

describe('smaller sheets', () => {
  const scopes = [['--bed', 'upper-terrace', '--full'], ['--bed', 'upper-terrace'], ['--plant', 'bc-1'], ['--bed', 'upper-terrace', '--month', '2']];
  for (const scope of scopes) {
    test(scope.join(' '), async () => {
      const file = sheet(join(work, 'terrace-school'), `small${scope.join('')}`, ...scope);
      written.add(file);
      for (const width of all ? [360, 1280] : [360]) await noFaults(file, width, {}, `${width} px`);
      await noFaults(file, papers.A4, { media: 'print' }, 'A4');
      await noViolation(file, 'light');
    });
  }
});

test('the picture in README shows the sheet of the demo garden as it is', async () => {
  const folder = existsSync(join(work, 'terrace-school')) ? join(work, 'terrace-school') : gardens['terrace-school']();
  const file = sheet(folder, 'picture');
  const picture = join(root, 'docs/sheet.png');
  if (process.env.OLDWOOD_PICTURE === 'yes') await make(browser, file, picture);
  assert.equal(shown(picture), await sumOf(browser, file), 'OLDWOOD_PICTURE=yes src/test/browser/run.sh makes it anew');
});

test('a garden of forty bushes takes less than 500 KB', () => {
  const { size } = statSync(sheet(gardens['forty-bushes'](), 'forty-bushes', '--full'));
  assert.ok(size < 500_000, `${size} bytes`);
});

test('the same record and day give the same bytes', () => {
  const again = sheet(join(work, 'terrace-school'), 'again', '--full');
  assert.ok(readFileSync(again).equals(readFileSync(join(work, 'terrace-school.html'))));
});

test('every sheet is valid HTML', () => {
  assert.ok(written.size > 15, `${written.size} sheets`);
  validate(written);
});
