// Makes docs/sheet.png, the picture in README: parts of the demo garden's sheet, as a browser shows them.
// usage, after the packages are there: node picture.mjs SHEET.html PICTURE.png
import puppeteer from 'puppeteer-core';
import { pathToFileURL } from 'node:url';

const [, , sheet, picture] = process.argv;
const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: process.getuid() === 0 ? ['--no-sandbox'] : [] });
const page = await browser.newPage();
await page.setViewport({ width: 1160, height: 900 });
await page.goto(pathToFileURL(sheet).href);
const height = await page.evaluate(() => {
  const keep = (list, wanted) => list.forEach((it) => { if (!wanted(it)) it.remove(); });
  keep([...document.querySelectorAll('main > section')], (it) => ['year', 'bushes'].includes(it.id));
  keep([...document.querySelectorAll('#year .bed')], (it) => it.querySelector('h4').textContent.includes('acid bed') && it.querySelector('[data-row]').closest('.chart').dataset.first === '2026-11-01');
  keep([...document.querySelectorAll('#year .of-season')], (it) => it.textContent.includes('2027'));
  keep([...document.querySelectorAll('#year .chart')].slice(0, 1).flatMap((it) => [...it.querySelectorAll('li')]), (it) => /blackcurrant|blueberry|gooseberry/.test(it.dataset.row));
  keep([...document.querySelectorAll('.bush')], (it) => /\b(bl-1|bc-1)\b/.test(it.dataset.plants));
  document.querySelectorAll('nav, footer, .undrawn, #bushes > h3').forEach((it) => it.remove());
  return Math.ceil(document.documentElement.getBoundingClientRect().height);
});
await page.screenshot({ path: picture, clip: { x: 0, y: 0, width: 1160, height } });
await browser.close();
