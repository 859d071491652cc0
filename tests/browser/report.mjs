import fs from "node:fs";
import path from "node:path";
import { execFileSync } from "node:child_process";
import { expect, folder, load, openPage, withBrowser } from "./open.mjs";

const axe = fs.readFileSync(load.resolve("axe-core/axe.min.js"), "utf8");

async function lookAtHeadings(page, name) {
  const levels = await page.$$eval("h1,h2,h3,h4,h5,h6", (all) => all.map((one) => Number(one.tagName[1])));
  expect(levels.filter((level) => level === 1).length === 1 && levels[0] === 1, `${name} has one first heading`);
  levels.forEach((level, at) => expect(at === 0 || level <= levels[at - 1] + 1, `${name}: no heading level is left out`, `${levels}`));
}

async function lookAtFigures(page, name) {
  const figures = await page.$$eval("svg", (all) => all.filter((one) => !one.closest("svg svg") && one.getAttribute("aria-hidden") !== "true").map((one) => {
    const by = (one.getAttribute("aria-labelledby") || "").split(" ").map((id) => document.getElementById(id)?.textContent || "").join("");
    return { role: one.getAttribute("role"), name: by || one.getAttribute("aria-label") || one.querySelector("title")?.textContent, desc: one.querySelector("desc")?.textContent };
  }));
  for (const figure of figures)
    expect(figure.role === "img" && figure.name && figure.desc, `${name}: each figure has a name and a description`, JSON.stringify(figure));
  return figures.length;
}

async function lookWithAxe(page, name) {
  await page.evaluate(axe);
  const result = await page.evaluate(() => window.axe.run(document, { runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa"] }));
  for (const one of result.violations)
    expect(false, `${name}: ${one.id}, ${one.help}`, one.nodes.slice(0, 3).map((node) => `${node.html.slice(0, 160)} ${node.failureSummary}`).join("\n    "));
  expect(result.passes.length > 10, `${name}: axe looked at something`);
}

async function lookByKeyboard(page, name) {
  await page.evaluate(() => { document.querySelectorAll("details").forEach((one) => { one.open = false; }); window.scrollTo(0, 0); });
  const reachable = await page.$$eval("a[href],main>section>section>details>summary", (all) => all.filter((one) => one.offsetParent !== null).length);
  const seen = new Set();
  for (let i = 0; i < 2 * reachable + 60; i += 1) {
    await page.keyboard.press("Tab");
    const at = await page.evaluate(() => {
      const one = document.activeElement;
      if (!one || one === document.body) return null;
      const style = getComputedStyle(one);
      return { tag: one.tagName, text: one.textContent.slice(0, 40), shown: style.outlineStyle !== "none" && parseFloat(style.outlineWidth) > 0 };
    });
    if (!at) break;
    expect(at.shown, `${name}: who has the focus shows it`, JSON.stringify(at));
    seen.add(at.tag);
  }
  for (const tag of ["A", "SUMMARY"]) expect(seen.has(tag), `${name}: ${tag} is reached by keyboard`);
  const summary = page.locator("main summary").first();
  await summary.focus();
  await page.keyboard.press("Enter");
  expect(await summary.evaluate((one) => one.parentElement.open), `${name}: Enter opens what is closed`);
}

// Words of tables stand whole on a telephone, where a table may be moved sideways.
async function lookAtWords(page, name) {
  await page.setViewportSize({ width: 360, height: 800 });
  const broken = await page.evaluate(() => [...document.querySelectorAll("#equipment tbody th, #equipment tbody td")]
    .flatMap((cell) => {
      const text = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT).nextNode();
      return [...(text?.data ?? "").matchAll(/[A-Za-z]{3,}/g)].filter(({ 0: word, index }) => {
        const range = document.createRange();
        range.setStart(text, index);
        range.setEnd(text, index + word.length);
        return new Set([...range.getClientRects()].map((box) => box.top)).size > 1;
      }).map(([word]) => word);
    }));
  expect(broken.length === 0, `${name}: no word is broken`, broken.join(" "));
  await page.setViewportSize({ width: 390, height: 800 });
  const hidden = await page.evaluate(() => [...document.querySelectorAll("#findings details[open] > .wide")]
    .filter((one) => one.clientWidth > 0 && one.querySelector("table")?.rows[0].cells.length === 5 && one.scrollWidth > one.clientWidth)
    .map((one) => one.scrollWidth - one.clientWidth));
  expect(hidden.length === 0, `${name}: whether a comparison holds is seen without moving the table`, hidden.join(" "));
}

async function lookAtWidths(page, name) {
  for (const width of [320, 360, 768, 1200]) {
    await page.setViewportSize({ width, height: 800 });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide <= width, `${name} fits ${width} px`, `it takes ${wide}`);
  }
}

// US Letter and Tabloid; every page has something on it, and nothing runs out of the sheet.
async function lookAtPaper(page, name, parts) {
  for (const [format, most] of [["Letter", 90], ["Tabloid", 60]]) {
    const file = path.join(folder, "print.pdf");
    await page.pdf({ path: file, format, preferCSSPageSize: false });
    const pages = execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" }).split("\f").slice(0, -1);
    expect(pages.length > 0 && pages.length <= most, `${name} on ${format} has at most ${most} pages`, `${pages.length}`);
    pages.forEach((text, at) => expect(text.trim().length > 60, `${name} on ${format}: page ${at + 1} is not empty`));
    for (const part of parts) expect(pages.join("").includes(part), `${name} on ${format} prints "${part}"`);
  }
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: 700, height: 900 });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide <= 700, `${name} stays on a sheet of Letter`, `${wide}`);
  await page.emulateMedia({ media: "screen" });
}

async function look(context, file) {
  const name = path.basename(file, ".html");
  const { page, said } = await openPage(context, `file://${file}`, { width: 1200, height: 900 });
  expect(await page.locator("script").count() === 0, `${name} has no script`);
  await lookAtHeadings(page, name);
  const figures = await lookAtFigures(page, name);
  const isRead = name !== "unread";
  if (isRead) {
    const ids = await page.$$eval("[id]", (all) => all.map((one) => one.id));
    expect(new Set(ids).size === ids.length, `${name}: an id stands once`, ids.filter((id, at) => ids.indexOf(id) !== at).slice(0, 5).join(" "));
    const links = await page.$$eval("a[href^='#']", (all) => all.filter((one) => !document.getElementById(one.getAttribute("href").slice(1))).map((one) => one.getAttribute("href")));
    expect(links.length === 0, `${name}: each link leads somewhere`, links.slice(0, 5).join(" "));
    if (process.env.FIGURES) expect(figures >= Number(process.env.FIGURES), `${name} has its drawings`, `${figures}`);
    await lookByKeyboard(page, name);
    await lookAtPaper(page, name, ["Jobsite safety sheet", "City, rough", "City, final", "Calculation sheets", "SHA-256", "An aid, not an approval"]);
  }
  await lookAtWidths(page, name);
  await lookAtWords(page, name);
  await page.evaluate(() => document.querySelectorAll("details").forEach((one) => { one.open = true; }));
  await lookAtWidths(page, `${name}, all opened`);
  await lookWithAxe(page, name);
  expect(said.length === 0, `${name} says nothing to the console and fetches nothing`, said.join("\n    "));
  expect(fs.statSync(file).size < 1200 * 1024, `${name} is light enough to mail`, `${fs.statSync(file).size}`);
  await page.close();
}

await withBrowser(async (context) => {
  for (const file of process.argv.slice(2)) await look(context, file);
});
