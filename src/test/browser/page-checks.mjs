// What is looked at inside the page. Each function is handed to the browser as it stands, so it uses nothing from outside.

/** Text that overlaps other text, lies under a box to tick, is cut off, or lies outside the page. */
export function textFaults() {
  const lines = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const hidden = (element) => !element.checkVisibility({ opacityProperty: true, visibilityProperty: true });
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    if (!node.data.trim() || node.parentElement.closest('style, defs') || hidden(node.parentElement)) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) {
      if (box.width > 0.5 && box.height > 0.5) lines.push({ node, text: node.data.trim().slice(0, 50), left: box.left, right: box.right, top: box.top + scrollY, bottom: box.bottom + scrollY });
    }
  }
  const faults = [];
  const width = document.documentElement.clientWidth;
  for (const line of lines) {
    if (line.left < -0.5 || line.right > width + 0.5) faults.push(`outside the page: "${line.text}" from ${line.left} to ${line.right} of ${width}`);
    for (let up = line.node.parentElement; up && up !== document.body; up = up.parentElement) {
      const style = getComputedStyle(up);
      if (up instanceof HTMLElement && style.overflowX !== 'visible') {
        const box = up.getBoundingClientRect();
        if (line.right > box.right + 1 || line.left < box.left - 1) faults.push(`cut off: "${line.text}"`);
      }
    }
  }
  lines.sort((a, b) => a.top - b.top);
  // Boxes of letters are higher than the letters: a fifth of the height may be shared above and below.
  for (let i = 0; i < lines.length; i++) {
    const a = lines[i];
    const slack = (a.bottom - a.top) / 5;
    for (let j = i + 1; j < lines.length && lines[j].top < a.bottom; j++) {
      const b = lines[j];
      const down = Math.min(a.bottom, b.bottom) - b.top;
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      if (a.node !== b.node && across > 1 && down > 2 * slack) faults.push(`overlap: "${a.text}" and "${b.text}"`);
    }
  }
  for (const tick of document.querySelectorAll('.tick')) {
    if (hidden(tick)) continue;
    const style = getComputedStyle(tick, '::before');
    const [left, top, edge, inner, innerHigh] = [style.left, style.top, style.borderWidth, style.width, style.height].map(parseFloat);
    const wide = inner + 2 * edge;
    const high = innerHigh + 2 * edge;
    const at = tick.getClientRects()[0];
    const box = { left: at.left + left, top: at.top + scrollY + top, right: at.left + left + wide, bottom: at.top + scrollY + top + high };
    for (const line of lines) {
      const slack = (line.bottom - line.top) / 5;
      if (Math.min(line.right, box.right) - Math.max(line.left, box.left) > 1 && Math.min(line.bottom - slack, box.bottom) - Math.max(line.top + slack, box.top) > 1) faults.push(`box over "${line.text}"`);
    }
  }
  if (document.documentElement.scrollWidth > width) faults.push(`the page is ${document.documentElement.scrollWidth} wide in ${width}`);
  return { faults, lines: lines.length };
}

/** Where the marks of the charts lie, in pixels, and what they claim to show. */
export function marks() {
  const box = (element) => {
    const { left, right } = element.getBoundingClientRect();
    return { left, right, middle: (left + right) / 2 };
  };
  return [...document.querySelectorAll('.chart')].map((chart) => ({
    first: chart.dataset.first,
    end: chart.dataset.end,
    grid: box(chart.querySelector('.grid')),
    ticks: [...chart.querySelectorAll('.grid line:not(.today)')].map((it) => it.getBoundingClientRect().left),
    lot: chart.closest('[data-lot]')?.dataset.lot,
    rows: [...chart.querySelectorAll('[data-row]')].map((row) => ({
      key: row.dataset.row,
      lane: box(row.querySelector('.lane')),
      spans: [...row.querySelectorAll('rect')].map((it) => ({ kind: it.getAttribute('class'), first: it.dataset.first, last: it.dataset.last, ...box(it) })),
      points: [...row.querySelectorAll('[data-day]')].map((it) => ({ kind: it.getAttribute('class'), day: it.dataset.day, ...box(it.firstElementChild) })),
    })),
  }));
}

/** The bars of kilograms: where they lie in their pictures, and what their row says. */
export function bars() {
  return [...document.querySelectorAll('svg.kg')].map((svg) => {
    const whole = svg.getBoundingClientRect();
    const rect = svg.querySelector('rect').getBoundingClientRect();
    const dot = svg.querySelector('circle').getBoundingClientRect();
    return { words: svg.parentElement.innerText, most: Number(svg.dataset.most), width: whole.width, low: rect.left - whole.left, high: rect.right - whole.left, dot: (dot.left + dot.right) / 2 - whole.left };
  });
}

/** The strokes of each bush. */
export function bushes() {
  return [...document.querySelectorAll('.card.cut:has(.wood)')].map((card) => ({
    plants: card.dataset.tasks.split(' ').map((task) => task.split('@')[1]),
    pictures: ['.now', '.then'].map((picture) =>
      Object.fromEntries([...card.querySelectorAll('[data-age]')].map((age) => [age.dataset.age, {
        strokes: age.querySelectorAll(`${picture} use`).length,
        hollow: age.querySelectorAll(`${picture} use[href^="#out"]`).length,
      }]).filter(([, it]) => it.strokes > 0))),
  }));
}
