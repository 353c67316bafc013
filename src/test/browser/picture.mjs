// Makes the picture in README: the demo garden's rounds of now and its first cards, as a browser shows them.
// usage, after the packages are there: node picture.mjs SHEET.html PICTURE.png
import puppeteer from 'puppeteer-core';
import { pathToFileURL } from 'node:url';

const [, , sheet, picture] = process.argv;
const width = 960;
const browser = await puppeteer.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: process.getuid() === 0 ? ['--no-sandbox'] : [] });
const page = await browser.newPage();
await page.setViewport({ width, height: 900 });
await page.goto(pathToFileURL(sheet).href);
const height = await page.evaluate(() => {
  [...document.querySelectorAll('.cuts .card')].slice(2).forEach((it) => it.remove());
  document.querySelectorAll('.missed, .ends-of-page, footer').forEach((it) => it.remove());
  return Math.ceil(document.querySelector('.cuts').getBoundingClientRect().bottom + 16);
});
await page.screenshot({ path: picture, clip: { x: 0, y: 0, width, height } });
await browser.close();
