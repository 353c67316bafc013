// The picture in README: the demo garden's rounds of now and its first cards, as a browser shows them. It carries the words
// that it shows, so that a check sees when the sheet says something else.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const width = 960;
const keyword = 'Source\0';

/** Leaves what the picture shows, and gives its height and a sum of its words. */
async function pose(page, sheet) {
  await page.setViewport({ width, height: 900 });
  await page.goto(pathToFileURL(sheet).href);
  const [height, words] = await page.evaluate(() => {
    [...document.querySelectorAll('.cuts .card')].slice(2).forEach((it) => it.remove());
    document.querySelectorAll('.missed, .plans, .ends-of-page, footer').forEach((it) => it.remove());
    return [Math.ceil(document.querySelector('.cuts').getBoundingClientRect().bottom + 16), document.body.innerText];
  });
  return { height, sum: createHash('sha256').update(words.replace(/\s+/g, ' ')).digest('hex') };
}

/** The sum of the words that a picture was made of. */
export function shown(picture) {
  const octets = readFileSync(picture);
  const at = octets.indexOf(`tEXt${keyword}`);
  return at < 0 ? 'none' : octets.subarray(at + 4 + keyword.length, at + 4 + octets.readUInt32BE(at - 4)).toString('latin1');
}

export async function sumOf(browser, sheet) {
  const page = await browser.newPage();
  const { sum } = await pose(page, sheet);
  await page.close();
  return sum;
}

function crc(octets) {
  let left = ~0;
  for (const octet of octets) {
    left ^= octet;
    for (let bit = 0; bit < 8; bit++) left = (left >>> 1) ^ (left & 1 ? 0xedb88320 : 0);
  }
  return ~left >>> 0;
}

/** Makes the picture, with the sum of its words as a text of the PNG. */
export async function make(browser, sheet, picture) {
  const page = await browser.newPage();
  const { height, sum } = await pose(page, sheet);
  const octets = Buffer.from(await page.screenshot({ clip: { x: 0, y: 0, width, height } }));
  await page.close();
  const text = Buffer.from(`tEXt${keyword}${sum}`, 'latin1');
  const chunk = Buffer.alloc(text.length + 8);
  chunk.writeUInt32BE(text.length - 4, 0);
  text.copy(chunk, 4);
  chunk.writeUInt32BE(crc(text), text.length + 4);
  // after the signature (8 octets) and the header chunk (25)
  writeFileSync(picture, Buffer.concat([octets.subarray(0, 33), chunk, octets.subarray(33)]));
}
