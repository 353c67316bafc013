'use strict';
/* The garden's page: shows what the program says and sends what was noted. Plain script, one page, no other host. */
const KEPT = 'oldwood-unsent';
const token = new URLSearchParams(location.hash.slice(1)).get('t') ?? '';
const main = document.getElementById('main');
const state = document.getElementById('state');
let garden = null;
let show = () => rounds();
let sending = false;

/* ---- making elements: text is always text ---- */
function make(kind, options = {}, ...inside) {
  const element = document.createElement(kind);
  for (const [name, value] of Object.entries(options)) {
    if (name === 'class') element.className = value;
    else if (name === 'tap') element.addEventListener('click', value);
    else element.setAttribute(name, value);
  }
  element.append(...inside.filter((it) => it !== null && it !== undefined));
  return element;
}
const button = (words, tap, options = {}) => make('button', { type: 'button', tap, ...options }, words);
const day = (iso) => new Date(`${iso}T12:00:00`).toLocaleDateString('en-GB', { weekday: 'short', day: 'numeric', month: 'short' });

function page(title, ...inside) {
  main.replaceChildren(make('h2', {}, title), ...inside.filter((it) => it !== null));
  scrollTo(0, 0);
}

/* ---- what is kept on this phone until the program answers ---- */
function kept() {
  try { return JSON.parse(localStorage.getItem(KEPT)) ?? []; } catch { return []; }
}
function keep(list) { localStorage.setItem(KEPT, JSON.stringify(list)); }
function key() { return [...crypto.getRandomValues(new Uint8Array(16))].map((it) => it.toString(16).padStart(2, '0')).join(''); }

async function ask(path, body) {
  const answer = await fetch(path, {
    method: body === undefined ? 'GET' : 'POST', cache: 'no-store', headers: { 'X-Oldwood-Token': token },
    body: body === undefined ? undefined : JSON.stringify(body),
  });
  return { status: answer.status, body: await answer.json() };
}

function say(words) { state.textContent = words; }
function tellKept(more = '') {
  const number = kept().length;
  say([more, number === 0 ? '' : `${number} kept on this phone; they are sent when the program answers.`].filter(Boolean).join(' '));
}

/** Notes at once, or keeps the note: what was tapped is never lost. */
async function note(rows, words) {
  const dated = rows.map((row) => ({ date: garden.today, ...row }));
  keep([...kept(), { key: key(), words, rows: dated }]);
  await send();
}

async function send() {
  if (sending) return;
  sending = true;
  try {
    let said = '';
    let noted = false;
    while (kept().length > 0) {
      const first = kept()[0];
      const answer = await ask('notes', { key: first.key, rows: first.rows });
      if (answer.status === 401 || answer.status === 403 || answer.status === 429) {
        tellKept('The program was started anew: open the page by its new link.');
        return;
      }
      if (answer.status >= 500) break;
      // what the program refused is told in its own words and not sent again
      keep(kept().filter((it) => it.key !== first.key));
      noted ||= answer.status === 200;
      said = answer.status === 200 ? `Noted: ${first.words}.` : `Not noted (${first.words}): ${answer.body.said.join(' ')}`;
    }
    tellKept(said);
    if (noted) await look();
  } catch {
    tellKept('The program does not answer.');
  } finally {
    sending = false;
  }
}

async function look() {
  const answer = await ask('garden');
  if (answer.status !== 200) { say(answer.body.said.join(' ')); return; }
  garden = answer.body;
  document.getElementById('garden').textContent = `${garden.garden}, ${day(garden.today)}`;
  show();
}

/* ---- parts ---- */
function turn(to, part) {
  for (const id of ['to-rounds', 'to-bushes', 'to-noted']) document.getElementById(id).setAttribute('aria-pressed', String(id === to));
  show = part;
  if (garden) show();
}

function rounds() {
  page('To do now', garden.rounds.length === 0 ? make('p', {}, 'Nothing is due in the next days.') : null,
    make('div', { class: 'list' }, ...garden.rounds.map((round, at) => button(
      `${round.title}: ${round.lines.length === 1 ? '1 job' : `${round.lines.length} jobs`}${round.minutes ? `, ${round.minutes} min` : ''}, until ${day(round.until)}`,
      () => open(at)))));
}

function open(at) {
  show = () => (garden.rounds[at] ? open(at) : turn('to-rounds', rounds));
  const round = garden.rounds[at];
  page(round.title,
    make('p', {}, `Until ${day(round.until)}.`),
    round.caution ? make('p', { class: 'warn' }, round.caution) : null,
    ...round.lines.map((line) => job(line)),
    button('Back', () => turn('to-rounds', rounds)));
}

function job(line) {
  const bush = garden.bushes.find((it) => it.id === line.plant);
  const tick = (row, words) => note([row], `${words}: ${line.title}`);
  const cut = Object.keys(line.planned).length > 0;
  return make('section', { class: 'card', 'aria-label': line.title },
    make('h2', {}, line.title), line.amount ? make('p', {}, line.amount) : null,
    bush ? drawing(bush) : null, ...line.how.map((words) => make('p', { class: 'soft' }, words)),
    make('div', { class: 'row' },
      button('Done as planned', () => tick({ entry: 'done', task: line.task }, 'done'), { class: 'main' }),
      cut ? button('Done, other numbers', () => count(bush, line.planned, 'Cut out', (stems) => tick({ entry: 'pruned', plant: bush.id, stems }, 'cut'))) : null,
      bush && !bush.row ? button('Count first', () => counted(bush)) : null,
      button('Half', () => tick({ entry: 'begun', task: line.task, percent: '50' }, 'half done')),
      button('Later', () => tick({ entry: 'later', task: line.task }, 'put off')),
      button('Not this year', () => tick({ entry: 'skipped', task: line.task }, 'not this year'))));
}

function drawing(bush) {
  if (bush.wood.length === 0) return make('p', { class: 'soft' }, 'Its stems were not counted.');
  const svg = (age) => {
    const picture = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    picture.setAttribute('width', age.width);
    picture.setAttribute('height', '72');
    picture.setAttribute('aria-hidden', 'true');
    for (const stroke of age.strokes) {
      const use = document.createElementNS('http://www.w3.org/2000/svg', 'use');
      use.setAttribute('href', `#${stroke.drawing}`);
      use.setAttribute('x', stroke.x);
      picture.append(use);
    }
    return picture;
  };
  return make('ul', { class: 'wood' }, ...bush.wood.map((age) => make('li', {}, svg(age),
    `age ${age.label}: ${age.total}${age.out > 0 ? `, ${age.out} out` : ''}`)));
}

/** Steppers by age; a tap on the number opens all numbers, so that any is two taps away. */
function count(bush, start, title, done) {
  const numbers = { ...start };
  const draw = () => page(`${title}: ${bush.name}, ${bush.id}`, ...Object.keys(numbers).map((age) => make('div', { class: 'step' },
    make('b', {}, `age ${age}`),
    button('−', () => { numbers[age] = Math.max(0, numbers[age] - 1); draw(); }, { 'aria-label': `one less of age ${age}` }),
    button(String(numbers[age]), () => pick(age), { class: 'many', 'aria-label': `${numbers[age]} of age ${age}; choose a number` }),
    button('+', () => { numbers[age] += 1; draw(); }, { 'aria-label': `one more of age ${age}` }))),
  make('div', { class: 'row' },
    button('Note it', () => done(Object.entries(numbers).map(([age, many]) => `${age}=${many}`).join(',')), { class: 'main' }),
    button('Back', () => show())));
  const pick = (age) => page(`How many of age ${age}?`, make('div', { class: 'grid' },
    ...Array.from({ length: 31 }, (none, many) => button(String(many), () => { numbers[age] = many; draw(); }))));
  draw();
}
const counted = (bush) => count(bush, bush.expected, 'Counted', (stems) => note([{ entry: 'counted', plant: bush.id, stems }], `counted ${bush.id}`));

function bushes() {
  const find = make('input', { id: 'find', type: 'search', autocomplete: 'off' });
  const list = make('div', { class: 'list' });
  const draw = () => list.replaceChildren(...garden.bushes
    .filter((bush) => `${bush.id} ${bush.name} ${bush.bedName}`.toLowerCase().includes(find.value.trim().toLowerCase()))
    .map((bush) => button(`${bush.id}: ${bush.name}, ${bush.bedName}`, () => of(bush.id))));
  find.addEventListener('input', draw);
  // a label's code holds the bush's id: pasted or typed in full it opens the bush
  find.addEventListener('change', () => { if (garden.bushes.some((it) => it.id === find.value.trim())) of(find.value.trim()); });
  page('Bushes, as one walks', make('p', {}, make('label', { for: 'find' }, 'Find, by name or label: '), find), list);
  draw();
}

function of(id) {
  show = () => of(id);
  const bush = garden.bushes.find((it) => it.id === id);
  if (!bush) { turn('to-bushes', bushes); return; }
  const choose = (title, choices, done) => page(title, make('div', { class: 'list' }, ...choices.map((it) => button(it.words, () => done(it)))), button('Back', () => show()));
  const amount = (title, unit, sizes, done) => {
    let sum = 0;
    const draw = () => page(`${title}: ${bush.name}, ${bush.id}`, make('p', { role: 'status' }, `${Number(sum.toFixed(1))} ${unit}`),
      make('div', { class: 'row' }, ...sizes.map((size) => button(`+ ${size}`, () => { sum += size; draw(); })), button('0', () => { sum = 0; draw(); })),
      make('div', { class: 'row' }, button('Note it', () => (sum > 0 ? done(String(Number(sum.toFixed(1)))) : say('Tap an amount first.')), { class: 'main' }), button('Back', () => show())));
    draw();
  };
  page(`${bush.name}, ${bush.id}`, make('p', {}, bush.bedName), drawing(bush), bush.taken ? make('p', {}, `To take out: ${bush.taken}.`) : null,
    make('div', { class: 'row' },
      bush.row ? null : button('Counted', () => counted(bush)),
      bush.row ? null : button('Cut', () => count(bush, Object.fromEntries(Object.keys(bush.expected).map((age) => [age, 0])), 'Cut out', (stems) => note([{ entry: 'pruned', plant: id, stems }], `cut ${id}`))),
      button('Picked', () => amount('Picked', 'kg', [0.1, 0.5, 1], (kg) => note([{ entry: 'picked', plant: id, kg }], `picked ${kg} kg of ${id}`))),
      button('Soil felt', () => choose('How does the soil feel, a hand deep?', garden.feels, (it) => note([{ entry: 'moisture', bed: bush.bed, feel: it.key }], `${bush.bedName} is ${it.words}`))),
      button('Watered', () => amount('Watered', 'litres', [1, 5, 10], (litres) => note([{ entry: 'watered', plant: id, litres }], `watered ${id}`))),
      button('Seen', () => choose('Which stage?', garden.stages, (it) => note([{ entry: 'seen', plant: id, stage: it.key }], `${id}: ${it.words}`))),
      button('Looks ill', () => choose('What was found?', garden.findings, (it) => note([{ entry: 'inspected', plant: id, finding: it.key }], `${id}: ${it.words}`))),
      button('Fed', () => choose('What was given?', garden.materials.fed, (it) => amount(it.words, 'g', [10, 50, 100], (grams) => note([{ entry: 'fed', plant: id, material: it.key, grams }], `fed ${id}`)))),
      button('Bed mulched', () => choose('With what?', garden.materials.mulched, (it) => amount(it.words, 'cm deep', [1, 5], (depthCm) => note([{ entry: 'mulched', bed: bush.bed, material: it.key, depthCm }], `mulched ${bush.bedName}`))))),
    button('Back', () => turn('to-bushes', bushes)));
}

function noted() {
  page('Noted today',
    ...kept().map((it) => make('p', {}, `Kept on this phone: ${it.words}`)),
    garden.noted.length === 0 ? make('p', {}, 'Nothing yet.') : null,
    ...garden.noted.map((it) => make('div', { class: 'card' }, make('p', {}, `${it.kind}: ${it.words}`), button('Take back', async () => {
      try {
        const answer = await ask('back', { key: key(), entry: it.id });
        say(answer.status === 200 ? 'Taken back.' : answer.body.said.join(' '));
        await look();
      } catch { say('The program does not answer; try again at home.'); }
    }))));
}

/* ---- start ---- */
document.getElementById('to-rounds').addEventListener('click', () => turn('to-rounds', rounds));
document.getElementById('to-bushes').addEventListener('click', () => turn('to-bushes', bushes));
document.getElementById('to-noted').addEventListener('click', () => turn('to-noted', noted));
document.getElementById('sheet').addEventListener('click', async () => {
  try {
    const answer = await ask('sheet', {});
    if (answer.status === 200) location.assign(answer.body.at); else say(answer.body.said.join(' '));
  } catch { say('The program does not answer.'); }
});
document.getElementById('copy').addEventListener('click', () => {
  const rows = kept().flatMap((it) => it.rows);
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const table = [columns, ...rows.map((row) => columns.map((name) => row[name] ?? ''))]
    .map((line) => line.map((cell) => `"${String(cell).replaceAll('"', '""')}"`).join(',')).join('\n');
  page('Unsent notes', rows.length === 0 ? make('p', {}, 'There are none.') : make('p', {}, 'Copy this table and give it to: oldwood note --csv FILE'),
    make('pre', {}, rows.length === 0 ? '' : table), button('Back', () => show()));
});
addEventListener('online', send);
setInterval(() => { if (kept().length > 0) send(); }, 5000);
addEventListener('focus', () => { if (garden && kept().length === 0 && show === rounds) look().catch(() => {}); });
(async () => {
  if (token === '') { say('Open this page by the link that the program printed: it holds a key.'); return; }
  try { await look(); await send(); } catch { tellKept('The program does not answer.'); }
})();
