// Checks run sheets, the HTML files named on the command line: against the HTML
// standard, and in a real browser as a phone and as a printer would show them.
// With SHEET_SHOTS=FOLDER it leaves pictures of what it saw there.
import fs from "node:fs";
import path from "node:path";
import { HtmlValidate } from "html-validate";
import puppeteer from "puppeteer-core";

const files = process.argv.slice(2).map((f) => path.resolve(f));
const shots = process.env.SHEET_SHOTS;
const browserPath = process.env.CHROMIUM || "/usr/bin/chromium";
const phone = { width: 360, height: 740 };
const faults = [];

function check(holds, file, what) {
  if (!holds) faults.push(`${path.basename(file)}: ${what}`);
}

async function validate(file) {
  const validator = new HtmlValidate({
    root: true,
    extends: ["html-validate:standard", "html-validate:a11y", "html-validate:document"],
    elements: ["html5"],
    rules: { "no-inline-style": "error", "no-redundant-for": "off" },
  });
  const report = await validator.validateFile(file);
  for (const result of report.results) {
    for (const m of result.messages) check(false, file, `line ${m.line}: ${m.message} (${m.ruleId})`);
  }
}

// open makes a page, and counts whatever a file asks for beside itself as a
// fault.
async function open(browser, file, scripts) {
  const page = await browser.newPage();
  const url = "file://" + file;
  page.on("request", (r) => check(r.url() === url || r.url() === "about:blank", file, `fetches ${r.url()}`));
  page.on("console", (m) => check(false, file, `the console says ${m.text()}`));
  page.on("pageerror", (e) => check(false, file, `the script fails: ${e.message}`));
  await page.setJavaScriptEnabled(scripts);
  await page.setViewport(phone);
  await page.goto(url);
  return page;
}

function scheme(page, value) {
  return page.emulateMediaFeatures([{ name: "prefers-color-scheme", value }]);
}

// measure looks at the page from inside.
function measure() {
  const number = (text) => text.match(/[\d.]+/g).map(Number);
  const light = ([r, g, b]) => {
    const part = (v) => (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
    return 0.2126 * part(r) + 0.7152 * part(g) + 0.0722 * part(b);
  };
  const contrast = (a, b) => (Math.max(light(a), light(b)) + 0.05) / (Math.min(light(a), light(b)) + 0.05);
  const ground = (e) => {
    for (; e; e = e.parentElement) {
      const c = number(getComputedStyle(e).backgroundColor);
      if (c.length === 3 || c[3] === 1) return c;
      if (c[3] > 0) return [NaN, NaN, NaN];
    }
    return [255, 255, 255];
  };
  const seen = { least: 99, where: "", smallest: 99, wide: [], low: [], letters: 0 };
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let n = walker.nextNode(); n; n = walker.nextNode()) {
    const e = n.parentElement;
    const box = e.getBoundingClientRect();
    if (!n.data.trim() || /^(script|title|desc)$/i.test(e.tagName) || !box.width || !box.height) continue;
    const style = getComputedStyle(e);
    const colour = number(e instanceof SVGElement ? style.fill : style.color);
    const ratio = contrast(colour, ground(e));
    if (!(ratio >= seen.least)) [seen.least, seen.where] = [ratio, n.data.trim().slice(0, 40)];
    const size = parseFloat(style.fontSize) * (e instanceof SVGElement ? e.ownerSVGElement.getBoundingClientRect().width / 340 : 1);
    seen.smallest = Math.min(seen.smallest, size);
    seen.letters += n.data.trim().length;
    if (box.right > window.innerWidth + 0.5) seen.wide.push(n.data.trim().slice(0, 40));
  }
  for (const e of document.querySelectorAll("label, nav a, button")) {
    const box = e.getBoundingClientRect();
    if (box.height && box.height < 44) seen.low.push(e.textContent.trim().slice(0, 40));
  }
  seen.scrolls = document.documentElement.scrollWidth > document.documentElement.clientWidth;
  seen.boxes = [...document.querySelectorAll("input[type=checkbox]")].filter((e) => e.getBoundingClientRect().width >= 30).length;
  seen.clear = !document.getElementById("clear").hidden;
  return seen;
}

// look reads a file on a phone: light and dark, with scripts and without.
async function look(browser, file) {
  let letters = 0;
  for (const scripts of [true, false]) {
    const page = await open(browser, file, scripts);
    for (const ground of ["light", "dark"]) {
      await scheme(page, ground);
      const seen = await page.evaluate(measure);
      const how = `${ground}, scripts ${scripts ? "on" : "off"}`;
      const own = seen.letters - (seen.clear ? "Clear all ticks and notes".length : 0);
      letters ||= own;
      check(own > 500 && own === letters, file, `${how}: not all of it can be read`);
      check(!seen.scrolls && !seen.wide.length, file, `${how}: wider than ${phone.width} px: ${seen.wide.join(" | ")}`);
      check(seen.least >= 4.5, file, `${how}: contrast ${seen.least.toFixed(2)} at "${seen.where}"`);
      check(seen.smallest >= 14, file, `${how}: text of ${seen.smallest} px`);
      check(!seen.low.length, file, `${how}: too low for a wet thumb: ${seen.low.join(" | ")}`);
      check(seen.boxes >= 5, file, `${how}: ${seen.boxes} boxes to tick`);
      check(seen.clear === scripts, file, `${how}: the button to clear is ${seen.clear ? "there" : "missing"}`);
      if (shots && scripts) await page.screenshot({ path: shot(file, ground + ".png"), fullPage: true });
    }
    if (!scripts) await print(page, file);
    await page.close();
  }
}

function shot(file, ending) {
  return path.join(shots, `${path.basename(file, ".html")}-${ending}`);
}

// print puts a file on paper, from a dark screen.
async function print(page, file) {
  await page.emulateMediaType("print");
  const seen = await page.evaluate(measure);
  check(seen.least >= 4.5, file, `print: contrast ${seen.least.toFixed(2)} at "${seen.where}"`);
  for (const format of ["letter", "a4"]) {
    const pdf = await page.pdf({ format });
    const pages = (Buffer.from(pdf).toString("latin1").match(/\/Type\s*\/Page\b(?!s)/g) || []).length;
    check(pages === 1, file, `${pages} pages of ${format}`);
    if (shots) fs.writeFileSync(shot(file, format + ".pdf"), pdf);
  }
}

// ticks are kept where the browser keeps things, and cleared when asked.
async function tick(browser, file) {
  const state = (page) => page.evaluate(() => [document.getElementById("pack-1").checked, document.getElementById("pen-before").value]);
  let page = await open(browser, file, true);
  await page.click("label[for=pack-1]");
  await page.type("#pen-before", "2.5");
  await page.close();
  page = await open(browser, file, true);
  const kept = await state(page);
  check(kept[0] === true && kept[1] === "2.5", file, `a tick and a reading were not kept: ${kept}`);
  page.on("dialog", (d) => d.accept());
  await page.click("#clear button");
  await page.reload();
  const cleared = await state(page);
  check(cleared[0] === false && cleared[1] === "", file, `cleared, but still ${cleared}`);
  await page.close();
  page = await open(browser, file, false);
  await page.click("label[for=pack-1]");
  check((await state(page))[0] === true, file, "without scripts no box can be ticked");
  await page.close();
}

if (shots) fs.mkdirSync(shots, { recursive: true });
for (const file of files) await validate(file);
const browser = await puppeteer.launch({ executablePath: browserPath, args: ["--no-sandbox", "--disable-dev-shm-usage"] });
try {
  for (const file of files) await look(browser, file);
  await tick(browser, files[0]);
} finally {
  await browser.close();
}
for (const f of faults) console.error(f);
console.log(`${files.length} sheets looked at, ${faults.length} faults`);
process.exit(files.length && !faults.length ? 0 : 1);
