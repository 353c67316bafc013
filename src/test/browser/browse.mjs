// The browser that all checks use.
import { existsSync } from 'node:fs';
import puppeteer from 'puppeteer-core';

const chromium = process.env.CHROMIUM ?? ['/usr/bin/chromium', '/usr/bin/chromium-browser'].find(existsSync);

export const browse = () => puppeteer.launch({ executablePath: chromium, args: process.getuid() === 0 ? ['--no-sandbox'] : [], protocolTimeout: 300_000 });
