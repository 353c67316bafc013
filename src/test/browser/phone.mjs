// A program that serves the garden's page, and phones that open it.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { program, today } from './gardens.mjs';

/** A port that nobody has: a program that is started anew on it is the same place to the phone. */
export async function freePort() {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address();
  server.close();
  await once(server, 'close');
  return port;
}

/** Opens the page of a garden and gives its link, and ways to stop it. */
export async function serve(folder, port = 0, day = today) {
  const walking = spawn(program, ['walk', '--garden', folder, '--port', String(port), '--today', day], { stdio: ['ignore', 'pipe', 'inherit'] });
  const ended = once(walking, 'exit');
  let printed = '';
  const link = await new Promise((found, failed) => {
    walking.stdout.setEncoding('utf8').on('data', (text) => {
      printed += text;
      const link = /^http:\S+#t=\S+$/m.exec(printed);
      if (link) found(link[0]);
    });
    walking.on('exit', () => failed(new Error(`the program ended: ${printed}`)));
  });
  const stop = async (signal) => {
    walking.kill(signal);
    await ended;
  };
  return { link, address: link.split('#')[0], token: link.split('#t=')[1], stop: () => stop('SIGTERM'), kill: () => stop('SIGKILL') };
}

/** Sends notes as the page does; true once the program says that they stand. */
export async function send({ address, token }, key, ...rows) {
  const answer = await fetch(`${address}notes`, { method: 'POST', headers: { 'X-Oldwood-Token': token }, body: JSON.stringify({ key, rows }) });
  await answer.text();
  return answer.status === 200;
}

export const journal = (folder) => readFileSync(join(folder, 'journal.jsonl'), 'utf8').trim().split('\n').map((it) => JSON.parse(it));

/** One phone of 390 by 844 pixels with a browser and a store of its own. It counts taps, and knows of what it was asked to load. */
export class Phone {
  taps = 0;
  asked = [];
  complaints = [];

  static async at(browser, link) {
    const phone = new Phone();
    phone.context = await browser.createBrowserContext();
    phone.page = await phone.context.newPage();
    await phone.page.setViewport({ width: 390, height: 844, hasTouch: true, isMobile: true, deviceScaleFactor: 1 });
    phone.page.on('request', (it) => phone.asked.push(it.url()));
    phone.page.on('pageerror', (it) => phone.complaints.push(String(it)));
    await phone.page.goto(link);
    await phone.page.waitForSelector('main h2');
    return phone;
  }

  /** A button by its name, within a part of the page. */
  async find(name, within = 'body') {
    const found = await this.page.waitForFunction((words, part) => [...document.querySelectorAll(`${part} :is(button, a.button)`)]
      .find((it) => (it.getAttribute('aria-label') ?? it.textContent) === words), { timeout: 10_000 }, name, within);
    return found.asElement();
  }

  async tap(name, within) {
    const element = await this.find(name, within);
    await element.tap();
    this.taps += 1;
  }

  /** Waits until the line above the page says so. */
  async hears(words) {
    await this.page.waitForFunction((it) => document.getElementById('state').textContent.includes(it), { timeout: 20_000 }, words);
  }

  async shows(words) {
    await this.page.waitForFunction((it) => document.getElementById('main').innerText.includes(it), { timeout: 20_000 }, words);
  }

  async bush(id) {
    await this.tap('Bushes');
    const name = await this.page.evaluate((it) => [...document.querySelectorAll('main button')].find((each) => each.textContent.startsWith(`${it}:`)).textContent, id);
    await this.tap(name);
  }

  /** Ends; nothing was asked of any other host, and nothing complained of but what a lost network brings. */
  async close(address) {
    const foreign = this.asked.filter((it) => !it.startsWith(address) && !/^(data|blob):/.test(it));
    assert.deepEqual(foreign, [], 'requests to other hosts');
    assert.deepEqual(this.complaints, []);
    await this.context.close();
  }
}
