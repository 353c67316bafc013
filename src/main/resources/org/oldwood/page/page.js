'use strict';
/* The garden's page: shows what the program says and sends what was noted. Plain script, one page, no other host. */
const KEPT = 'oldwood-unsent';
const token = new URLSearchParams(location.hash.slice(1)).get('t') ?? '';
const main = document.getElementById('main');
const state = document.getElementById('state');
let garden = null;
let show = () => rounds();
let sending = false;
let editing = false; // numbers are being chosen: nothing is drawn over them
let stamp = ''; // what the program calls the garden as it is shown here
let barred = false;
const unfolded = new Map(); // by task, where somebody tapped: whether its job is open
const seen = new Set(); // the bushes, or other jobs, that something was noted of in this round, the last one last
const whose = (line) => line.plant ?? line.task;
let silent = false;

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
const far = (iso) => new Date(iso) - new Date(garden?.today) > 183 * 24 * 3600 * 1000;
const day = (iso) => new Date(`${iso}T12:00:00`).toLocaleDateString(garden?.monthFirst ? 'en-US' : 'en-GB', { weekday: 'short', day: 'numeric', month: 'short', ...(far(iso) ? { year: 'numeric' } : {}) });

/** Shows a part. Drawn anew it stays where it was read, and the keyboard where it was; another part begins at its head. */
function page(title, ...inside) {
  const again = main.dataset.title === title;
  const stops = () => [...main.querySelectorAll('button, input, summary')];
  const at = stops().indexOf(document.activeElement);
  main.replaceChildren(make('h2', {}, title), ...inside.filter((it) => it !== null));
  main.dataset.title = title;
  editing = false;
  if (!again) { main.focus({ preventScroll: true }); scrollTo(0, 0); } else if (at >= 0) stops()[at]?.focus({ preventScroll: true });
}
function edit(title, ...inside) { page(title, ...inside); editing = true; }

/* ---- what is kept on this phone until the program answers ---- */
let inHand = []; // where the phone stores nothing, as long as the page is open
function kept() {
  try { return JSON.parse(localStorage.getItem(KEPT)) ?? inHand; } catch { return inHand; }
}
function keep(list) {
  inHand = list;
  try { localStorage.setItem(KEPT, JSON.stringify(list)); } catch { say('This phone stores nothing: do not close the page before all is sent.'); }
}
const unsent = () => kept().filter((it) => !it.refused);
function key() { return [...crypto.getRandomValues(new Uint8Array(16))].map((it) => it.toString(16).padStart(2, '0')).join(''); }

async function ask(path, body) {
  const answer = await fetch(path, {
    method: body === undefined ? 'GET' : 'POST', cache: 'no-store', headers: { 'X-Oldwood-Token': token, ...(path === 'garden' ? { 'If-None-Match': stamp } : {}) },
    body: body === undefined ? undefined : JSON.stringify(body),
  });
  barred = [401, 403, 429].includes(answer.status);
  silent = false;
  return { status: answer.status, tag: answer.headers.get('ETag'), body: answer.status === 304 ? {} : await answer.json() };
}

/** The program's words tell what to type; here there are buttons. */
const here = (words) => words.replaceAll(/\s+/g, ' ').replaceAll(/oldwood undo( e-[0-9a-f-]+)?/g, '"Take back" under Noted')
  .replaceAll('an earlier --until keeps it in time', 'if that is too late, "Take back" under Noted')
  .replaceAll(/oldwood note (\S+) (\([^)]*\))/g, (all, kind) => (ways({})[kind] ? `under Bushes, "${ways({})[kind][0]}"` : `on the computer, ${all}`))
  .replaceAll(/([A-Z][^.]*\.)(?: \1)+/g, '$1')
  .replaceAll(/(under Bushes, "[^"]*")((?:\. [^."]*: under Bushes, "[^"]*")+)/g, (all, first, more) => first + more.replaceAll(/\. [^."]*: under Bushes/g, ''));
function say(words) { state.textContent = here(words); }
function tellKept(more = '') {
  const number = unsent().length;
  const refused = kept().length - number;
  say([more, number === 0 ? '' : `${number} kept on this phone, sent when the program answers.`, refused === 0 ? '' : `${refused} not accepted: see Noted.`].filter(Boolean).join(' '));
}

/** Notes at once, or keeps the note: what was tapped is never lost. `job` is the task that it is about, if any. */
async function note(rows, words, job) {
  keep([...kept(), { key: key(), words, job, rows: rows.map((row) => ({ date: garden.today, ...row })) }]);
  for (const line of garden.rounds.flatMap((it) => it.lines).filter((it) => [job].flat().includes(it.task))) {
    seen.delete(whose(line));
    seen.add(whose(line));
  }
  editing = false;
  show();
  await send();
}

async function send() {
  if (sending) return;
  sending = true;
  const said = [];
  try {
    while (unsent().length > 0) {
      const first = unsent()[0];
      const answer = await ask('notes', { key: first.key, rows: first.rows });
      if (barred) { said.push('The program was started anew: open the page by its new link.'); break; }
      if (answer.status >= 500) { said.push(answer.body.said.join(' ')); break; }
      // what the program refused stays here with its words, and is not sent again
      const good = answer.status === 200;
      keep(kept().flatMap((it) => (it.key !== first.key ? [it] : good ? [] : [{ ...it, refused: answer.body.said.join(' ') }])));
      said.push(good ? [`Noted: ${first.words}.`, ...answer.body.said].join(' ') : `Not noted (${first.words}): ${answer.body.said.join(' ')}`);
    }
    if (said.length > 0) await look();
  } catch {
    silent = true;
    said.push('The program does not answer.');
  } finally {
    sending = false;
  }
  if (said.length > 0) tellKept(said.slice(-3).join(' '));
}

/** Shows the garden as it is now, what others noted too. */
async function look() {
  const before = silent;
  const answer = await ask('garden');
  if (before) tellKept();
  if (answer.status === 304) return;
  if (answer.status !== 200) { say(answer.body.said.join(' ')); return; }
  garden = answer.body;
  stamp = answer.tag;
  document.getElementById('garden').textContent = `${garden.garden}, ${day(garden.today)}`;
  if (!editing) show();
}

/* ---- parts ---- */
function turn(to, part) {
  for (const id of ['to-rounds', 'to-bushes', 'to-noted']) document.getElementById(id).setAttribute('aria-pressed', String(id === to));
  show = part;
  if (garden) show();
}

function rounds() {
  page('To do now', garden.rounds.length === 0 ? make('p', {}, 'Nothing is due in the next days.') : null,
    make('div', { class: 'list' }, ...garden.rounds.map((round) => button(
      `${round.title} (${round.lines.length === 1 ? '1 job' : `${round.lines.length} jobs`}${round.minutes ? `, ${round.minutes} min` : ''}), until ${day(round.until)}`,
      () => { seen.clear(); open(round.id); }))));
}

function open(id) {
  show = () => open(id);
  const round = garden.rounds.find((it) => it.id === id);
  if (!round) { turn('to-rounds', rounds); return; }
  const said = new Set();
  // of many jobs those of the bush at hand and of the next are open, and what somebody opened
  const next = round.lines.find((line) => !seen.has(whose(line)));
  const at = [[...seen].at(-1), next && whose(next)];
  const isOpen = (line) => unfolded.get(line.task) ?? (round.lines.length < 3 || at.includes(whose(line)));
  const plain = round.lines.filter((line) => !ownNumbers(line) && !waiting(line));
  const twice = (line) => round.lines.some((it) => it !== line && it.title === line.title);
  page(round.title,
    make('p', {}, `Until ${day(round.until)}.`),
    round.caution ? make('p', { class: 'warn' }, round.caution) : null,
    plain.length > 2 ? make('div', { class: 'row' }, button(`All ${plain.length} done as planned`, () => all(round, plain))) : null,
    ...round.lines.map((line) => job(twice(line) ? { ...line, title: `${line.title}, until ${day(line.until)}` } : line, said, isOpen(line))),
    make('div', { class: 'row' }, button('Back', () => turn('to-rounds', rounds))));
}

function all(round, lines) {
  edit(`All ${lines.length} jobs done as planned?`, make('p', {}, round.title), make('div', { class: 'row' },
    button(`Yes, all ${lines.length}`, () => note(lines.map((line) => ({ entry: 'done', task: line.task })), `all done as planned: ${round.title}`, lines.map((line) => line.task)), { class: 'main' }),
    button('Back', () => show())));
}
const isCut = (line) => Object.keys(line.planned).length > 0;
const waiting = (line) => kept().find((it) => [it.job].flat().includes(line.task));
/** What is done with numbers of one's own alone. */
const ownNumbers = (line) => ['counted', 'canes', 'moisture'].includes(line.kind) && line.plant && !isCut(line);

/** `said` is what the open jobs before it told of how it is done: the same of each bush stands once. */
function job(line, said, isOpen) {
  const bush = garden.bushes.find((it) => it.id === line.plant);
  const tick = (words, entry, values = {}) => button(words, () => note([{ entry, task: line.task, ...values }], `${words.toLowerCase()}: ${line.title}`, line.task), entry === 'done' && !own ? { class: 'main' } : {});
  const way = bush ? ways(bush, line.task) : {};
  const cut = isCut(line);
  const own = !cut && way[line.kind];
  const waits = waiting(line);
  const begun = line.begun === null || line.begun === undefined ? '' : line.begun > 0 ? `${line.begun} % is done` : 'begun';
  const folded = waits ? 'kept on this phone' : begun || (line.amount ?? '').replaceAll(/ \([^)]*\)/g, '').split(/[:;]/)[0];
  const summary = make('summary', { tap: (event) => { event.preventDefault(); unfolded.set(line.task, !isOpen); show(); } }, make('h3', {}, line.title), folded ? make('p', { class: 'soft' }, folded) : null);
  return make('section', { class: 'card', 'aria-label': line.title }, make('details', isOpen ? { open: '' } : {}, summary,
    begun ? make('p', {}, `${begun}: note it done once all of it is.`) : null, line.amount ? make('p', {}, line.amount) : null,
    bush && bush.wood.length > 0 && (cut || line.kind === 'pruned') ? drawing(bush) : null, ...line.how.filter((words) => !isOpen || (!said.has(words) && said.add(words))).map((words) => make('p', { class: 'soft' }, words)),
    waits ? make('p', {}, `Kept on this phone: ${waits.words}. ${waits.refused ?? ''}`) : make('div', { class: 'row' },
      own ? button(own[0], () => own[1](), { class: 'main' }) : null,
      ownNumbers(line) ? null : tick('Done as planned', 'done'),
      cut && bush ? button('Done, other numbers', () => way.pruned[1](line.planned)) : null,
      cut && bush ? button('Count first', () => way.counted[1]()) : null,
      tick('Half', 'begun', { percent: '50' }), tick('Later', 'later'), tick('Not this year', 'skipped'))));
}

function drawing(bush) {
  if (bush.wood.length === 0) return make('p', { class: 'soft' }, 'Its stems were not counted.');
  const svg = (age) => {
    const picture = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    picture.setAttribute('width', age.width);
    picture.setAttribute('height', '72');
    picture.setAttribute('aria-hidden', 'true');
    for (const stroke of age.now) {
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

/** Numbers by age: one tap each up to nine; the number itself opens all that are more. */
function numbers(bush, start, title, done) {
  const them = { ...start };
  const of = (age) => (bush.row ? ['canes of this summer', 'canes that fruited'][age - 1] : `age ${age}`);
  const draw = () => edit(`${title}: ${bush.name}, ${bush.id}`, ...Object.keys(them).map((age) => {
    const set = (many) => { them[age] = Math.max(0, many); draw(); };
    return make('div', { role: 'group', 'aria-label': of(age) },
      make('div', { class: 'step' }, make('b', {}, `${of(age)}: ${them[age]}`),
        button('−', () => set(them[age] - 1), { 'aria-label': `one less, ${of(age)}` }),
        button('+', () => set(them[age] + 1), { 'aria-label': `one more, ${of(age)}` }),
        button('…', () => pick(age), { 'aria-label': `more numbers, ${of(age)}` })),
      make('div', { class: 'grid' }, ...Array.from({ length: 10 }, (none, many) => button(String(many), () => set(many),
        { 'aria-pressed': String(many === them[age]), 'aria-label': `${many}, ${of(age)}` }))));
  }),
  make('div', { class: 'row' },
    button('Note it', () => done(them), { class: 'main' }),
    button('Back', () => show())));
  const pick = (age) => edit(`How many, ${of(age)}?`, make('div', { class: 'grid' },
    ...Array.from({ length: 41 }, (none, at) => (at < 31 ? at : 30 + 10 * (at - 30))).map((many) => button(String(many), () => { them[age] = many; draw(); }))));
  draw();
}
const stems = (them) => Object.entries(them).map(([age, many]) => `${age}=${many}`).join(',');

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

/** What can be noted of a bush, by kind of entry; `job` is the task that it is noted for, if any. */
function ways(bush, job) {
  const choose = (title, choices, done) => edit(title, make('div', { class: 'list' }, ...choices.map((it) => button(it.words, () => done(it)))), button('Back', () => show()));
  const metric = garden.units === 'metric';
  const amount = (title, [unit, ...sizes], done) => {
    let sum = 0;
    const draw = () => edit(`${title}: ${bush.name}, ${bush.id}`, make('p', { role: 'status' }, `${Number(sum.toFixed(2))} ${unit}`),
      make('div', { class: 'row' }, ...sizes.map((size) => button(`+ ${size}`, () => { sum += size; draw(); })), button('0', () => { sum = 0; draw(); })),
      make('div', { class: 'row' }, button('Note it', () => (sum > 0 ? done(`${Number(sum.toFixed(2))}${metric ? '' : ` ${unit}`}`) : say('Tap an amount first.')), { class: 'main' }), button('Back', () => show())));
    draw();
  };
  const plant = bush.id;
  const tell = (entry, values, words) => note([{ entry, ...values }], words, job);
  const count = () => numbers(bush, bush.expected, 'Counted', (them) => (bush.row
    ? tell('canes', { plant, fresh: String(them[1]), fruited: String(them[2]) }, `counted ${plant}`)
    : tell('counted', { plant, stems: stems(them) }, `counted ${plant}`)));
  return {
    counted: ['Counted', count],
    canes: ['Counted', count],
    pruned: ['Cut', (start) => numbers(bush, start ?? Object.fromEntries(Object.keys(bush.expected).map((age) => [age, 0])), 'Cut out',
      (them) => tell('pruned', { plant, stems: stems(them) }, `cut ${plant}`))],
    picked: ['Picked', () => amount('Picked', metric ? ['kg', 0.1, 0.5, 1] : ['lb', 0.25, 1, 5], (kg) => tell('picked', { plant, kg }, `picked ${kg}${metric ? ' kg' : ''} of ${plant}`))],
    moisture: ['Soil felt', () => choose('How does the soil feel, a hand deep?', garden.feels[bush.bed], (it) => tell('moisture', { bed: bush.bed, feel: it.key }, `soil of ${bush.bedName}, ${it.key}`))],
    watered: ['Watered', () => amount('Watered', metric ? ['litres', 1, 5, 10] : ['gal', 0.5, 1, 5], (litres) => tell('watered', { plant, litres }, `watered ${plant}`))],
    seen: ['Seen', () => choose('Which stage?', garden.stages, (it) => tell('seen', { plant, stage: it.key }, `${it.key} on ${plant}`))],
    inspected: ['Looks ill', () => choose('What was found?', garden.findings, (it) => tell('inspected', { plant, finding: it.key }, `${plant}: ${it.words}`))],
    vigour: ['Growth', () => choose('How strongly do the plants of the bed grow?', garden.growth, (it) => tell('vigour', { bed: bush.bed, growth: it.key }, `growth of ${bush.bedName}, ${it.words}`))],
    fed: ['Fed', () => choose('What was given?', garden.materials.fed, (it) => amount(it.words, metric ? ['g', 10, 50, 100] : ['oz', 0.5, 2, 8], (grams) => tell('fed', { plant, material: it.key, grams }, `fed ${plant}`)))],
    mulched: ['Bed mulched', () => choose('With what?', garden.materials.mulched, (it) => amount(it.words, metric ? ['cm', 1, 5] : ['in', 0.5, 2], (depthCm) => tell('mulched', { bed: bush.bed, material: it.key, depthCm }, `mulched ${bush.bedName}`)))],
  };
}

function of(id) {
  show = () => of(id);
  const bush = garden.bushes.find((it) => it.id === id);
  if (!bush) { turn('to-bushes', bushes); return; }
  const { canes, ...all } = ways(bush);
  page(`${bush.name}, ${bush.id}`, make('p', {}, bush.bedName), drawing(bush), bush.taken ? make('p', {}, `To take out: ${bush.taken}.`) : null,
    make('div', { class: 'row' }, ...Object.values(all).map(([words, way]) => button(words, () => way()))),
    button('Back', () => turn('to-bushes', bushes)));
}

function noted() {
  page('Noted today',
    ...kept().map((it) => make('div', { class: 'card' }, make('p', {}, it.refused ? `Not accepted: ${it.words}. ${it.refused}` : `Kept on this phone: ${it.words}`),
      it.refused ? button('Forget it', () => { keep(kept().filter((one) => one.key !== it.key)); tellKept(); noted(); }) : null)),
    garden.noted.length === 0 ? make('p', {}, 'Nothing yet.') : null,
    ...[...new Set(garden.noted.map((it) => it.act))].map((act) => together(garden.noted.filter((it) => it.act === act))));
}

/** What was noted at once, with one button for all of it; one by one it is unfolded. */
function together(them) {
  const [first] = them;
  const gone = first.kind === 'withdrawn';
  const what = (it) => (gone ? `taken back: ${it.words}` : `${it.kind}: ${it.words}`);
  const back = (words, whole, it) => button(words, async () => {
    try {
      const answer = await ask('back', { entry: it.id, whole });
      say(answer.status === 200 ? (gone ? 'It counts again.' : 'Taken back.') : answer.body.said.join(' '));
      await look();
    } catch { say('The program does not answer; try again at home.'); }
  });
  const words = gone ? 'Bring back' : 'Take back';
  const told = (it) => [make('p', {}, what(it)), it.booked.length === 0 ? null : make('details', {}, make('summary', {}, `${it.booked.length} booked with it`), ...it.booked.map((one) => make('p', { class: 'soft' }, one))), back(words, false, it)];
  if (them.length === 1) return make('div', { class: 'card' }, ...told(first));
  return make('div', { class: 'card' },
    make('details', {}, make('summary', {}, `${them.length} noted at once, the last ${what(first)}`),
      ...them.map((it) => make('div', {}, ...told(it)))),
    back(`${words} all ${them.length}`, true, first));
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
  const rows = kept().flatMap((it) => it.rows.map((row) => ({ once: it.key, ...row })));
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  const table = [columns, ...rows.map((row) => columns.map((name) => row[name] ?? ''))]
    .map((line) => line.map((cell) => `"${String(cell).replaceAll('"', '""')}"`).join(',')).join('\n');
  if (rows.length === 0) { edit('Unsent notes', make('p', {}, 'There are none.'), button('Back', () => show())); return; }
  const text = make('textarea', { readonly: '', rows: '8', 'aria-label': 'the notes as a table' }, table);
  edit('Unsent notes', make('p', {}, 'Copy this table, or save it as a file, and give it on the computer to: oldwood note --csv FILE. What was sent in the meantime is not noted twice.'),
    text, make('div', { class: 'row' },
      button('Copy', () => { text.select(); say(document.execCommand('copy') ? 'Copied.' : 'Mark the table and copy it by hand.'); }, { class: 'main' }),
      make('a', { class: 'button', download: 'notes.csv', href: URL.createObjectURL(new Blob([table], { type: 'text/csv' })) }, 'Save as a file'),
      button('Back', () => show())));
});
addEventListener('online', send);
/** Sends what is kept; where nothing is, sees what others noted. Not while numbers are chosen, nor where the key is no good. */
async function again() {
  if (unsent().length > 0) { await send(); return; }
  if (document.hidden || editing || barred) return;
  try { await look(); } catch { silent = true; tellKept('The program does not answer.'); }
}
setInterval(again, 5000);
addEventListener('focus', again);
(async () => {
  if (token === '') { say('Open this page by the link that the program printed: it holds a key.'); return; }
  try { await look(); await send(); } catch { tellKept('The program does not answer.'); }
})();
