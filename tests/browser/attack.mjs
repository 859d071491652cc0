import fs from "node:fs";
import path from "node:path";
import { expect, openPage, withBrowser } from "./open.mjs";

const room = process.argv[2];
const { told, names } = JSON.parse(fs.readFileSync(path.join(room, "told.json"), "utf8"));

// Wherever an attack begins, all of it stands there, to its last letter.
function lookForWhole(text, where, least) {
  const begun = new Set();
  for (const [, number] of text.matchAll(/T(\d+)T /g)) begun.add(Number(number));
  for (const number of begun) {
    let from = text.indexOf(`T${number}T `);
    while (from >= 0) {
      expect(text.startsWith(told[number], from), `${where} shows text ${number} as it was written`, JSON.stringify(text.slice(from, from + 90)));
      from = text.indexOf(`T${number}T `, from + 1);
    }
  }
  expect(begun.size >= least, `${where} shows at least ${least} of the texts`, `${begun.size} of ${told.length}`);
  const seen = names.filter((name) => text.includes(name)).length;
  expect(seen >= least / 2, `${where} shows names as they were written`, `${seen} of ${names.length}`);
}

await withBrowser(async (context) => {
  expect(told.length > 40 && names.length > 30, "there is something to show", `${told.length} ${names.length}`);
  const { page, said } = await openPage(context, `file://${path.join(room, "report.html")}`, { width: 360, height: 800 });
  await page.evaluate(() => document.querySelectorAll("details").forEach((one) => { one.open = true; }));
  await page.waitForTimeout(300);
  expect(await page.evaluate(() => window.hit === undefined), "nothing ran");
  expect(await page.locator("script,img,iframe,object,embed,form,input,b,i,svg[onload]").count() === 0, "no element came in by a text");
  const handlers = await page.$$eval("*", (all) => all.flatMap((one) => [...one.attributes]).filter((one) => one.name.startsWith("on")).length);
  expect(handlers === 0, "no handler came in by a text");
  expect(await page.locator("a:not([href^='#'])").count() === 0, "no link leads out of the report");
  // Drawings break their texts into lines and shorten long ones; that they show them as text is drawings.sh's to see.
  lookForWhole(await page.evaluate(() => {
    const body = document.body.cloneNode(true);
    body.querySelectorAll("figure").forEach((one) => one.remove());
    return body.textContent;
  }), "the report", 25);
  expect((await page.title()).startsWith(told[0]), "the title stands as it was written", await page.title());
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide <= 360, "the report still fits 360 px", `${wide}`);
  expect(said.length === 0, "the page says nothing and fetches nothing", said.join("\n    "));

  const junit = await page.evaluate((xml) => {
    const tree = new DOMParser().parseFromString(xml, "application/xml");
    const tags = [...new Set([...tree.querySelectorAll("*")].map((one) => one.tagName))].sort();
    const text = [...tree.querySelectorAll("*")].flatMap((one) => [...one.attributes].map((a) => a.value)).join("\n") + tree.documentElement.textContent;
    return { tags, text };
  }, fs.readFileSync(path.join(room, "report.junit"), "utf8"));
  expect(junit.tags.every((tag) => ["error", "failure", "properties", "property", "skipped", "system-out", "testcase", "testsuite", "testsuites"].includes(tag)), "JUnit has its own elements only", junit.tags.join(" "));
  lookForWhole(junit.text, "JUnit", 1);

  const strings = [];
  const collect = (value) => { if (typeof value === "string") strings.push(value); else if (value && typeof value === "object") Object.values(value).forEach(collect); };
  collect(JSON.parse(fs.readFileSync(path.join(room, "report.sarif"), "utf8")));
  lookForWhole(strings.join("\n"), "SARIF", 1);
});
