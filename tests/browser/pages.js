// Opens pages in headless Chromium and prints, as JSON, what a reader would stumble over in each.
// Usage: node pages.js FILE.html...
const fs = require('fs');
const path = require('path');
const { chromium } = require('playwright-core');

const axe = fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const views = [
  { scheme: 'light', width: 1300 },
  { scheme: 'dark', width: 390 },
];

// Labels of one drawing whose boxes lie over each other, half a pixel of touching allowed.
function overlaps() {
  const found = [];
  for (const svg of document.querySelectorAll('svg')) {
    const boxes = [...svg.querySelectorAll('text')].map(t => [t.textContent, t.getBoundingClientRect()]).sort((a, b) => a[1].left - b[1].left);
    boxes.forEach(([words, a], i) => {
      for (let j = i + 1; j < boxes.length && boxes[j][1].left < a.right - 0.5; j++) {
        const b = boxes[j][1];
        if (b.width > 0 && a.top < b.bottom - 1.5 && b.top < a.bottom - 1.5) {
          found.push(`${words} / ${boxes[j][0]}`);
        }
      }
    });
  }
  return found;
}

// What scrolls sideways must be reachable by keyboard and have a name.
function unreachable() {
  return [...document.querySelectorAll('*')]
    .filter(e => e.scrollWidth > e.clientWidth + 1 && /auto|scroll/.test(getComputedStyle(e).overflowX))
    .filter(e => e.tabIndex < 0 || !e.getAttribute('aria-label'))
    .map(e => e.outerHTML.slice(0, 80));
}

// Names of places on the page that stand twice, so that a link lands at the wrong one, and links that land nowhere.
function lost() {
  const count = {};
  document.querySelectorAll('[id]').forEach(e => { count[e.id] = (count[e.id] || 0) + 1; });
  return [
    ...Object.keys(count).filter(id => count[id] > 1),
    ...[...document.querySelectorAll('a[href^="#"]')].map(a => decodeURIComponent(a.getAttribute('href').slice(1))).filter(id => !count[id]),
  ];
}

async function look(browser, file, view) {
  const context = await browser.newContext({ colorScheme: view.scheme, viewport: { width: view.width, height: 900 } });
  const page = await context.newPage();
  const errors = [];
  const requests = [];
  page.on('console', message => { if (message.type() === 'error') errors.push(message.text()); });
  page.on('pageerror', error => errors.push(String(error)));
  const address = 'file://' + path.resolve(file);
  page.on('request', request => { if (request.url() !== address) requests.push(request.url()); });
  await page.goto(address);
  const result = {
    file: path.basename(file), scheme: view.scheme, width: view.width, errors, requests,
    overlaps: await page.evaluate(overlaps),
    unreachable: await page.evaluate(unreachable),
    lost: await page.evaluate(lost),
    sideways: await page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth),
    ground: await page.evaluate(() => getComputedStyle(document.body).backgroundColor),
  };
  await page.evaluate(axe);
  result.axe = await page.evaluate(async () =>
    (await window.axe.run(document, { resultTypes: ['violations'] })).violations.map(v => `${v.id}: ${v.nodes[0].html.slice(0, 120)}`));
  await context.close();
  return result;
}

(async () => {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
  });
  const results = [];
  for (const file of process.argv.slice(2)) {
    for (const view of views) {
      results.push(await look(browser, file, view));
    }
  }
  await browser.close();
  process.stdout.write(JSON.stringify(results));
})().catch(error => { console.error(String(error)); process.exit(1); });
