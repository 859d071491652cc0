// Measures the box of every text of every drawing, alone and as part of a page.
import fs from "node:fs";
import path from "node:path";
import { expect, withBrowser } from "./open.mjs";

const files = process.argv.slice(2);

function meeting() {
  const slack = 0.3; // of a pixel
  const svg = document.querySelector("svg").getBoundingClientRect();
  const texts = [...document.querySelectorAll("svg text")].map((text) => ({
    says: text.lastChild?.textContent, box: text.getBoundingClientRect() }));
  const wrong = [];
  texts.forEach(({ says, box }, i) => {
    if (box.left < svg.left - 1 || box.right > svg.right + 1 || box.top < svg.top - 1 || box.bottom > svg.bottom + 1)
      wrong.push(`"${says}" leaves the sheet`);
    for (const other of texts.slice(i + 1))
      if (box.left < other.box.right - slack && other.box.left < box.right - slack
        && box.top < other.box.bottom - slack && other.box.top < box.bottom - slack)
        wrong.push(`"${says}" meets "${other.says}"`);
  });
  return { count: texts.length, wrong, width: svg.width };
}

function described() {
  const svg = document.querySelector("svg");
  const [title, desc] = svg.getAttribute("aria-labelledby").split(" ").map((id) => document.getElementById(id));
  return { role: svg.getAttribute("role"), title: title?.textContent, desc: desc?.textContent,
    odd: svg.querySelectorAll("script, style, foreignObject, image, a, use, b, i").length,
    handlers: [...svg.querySelectorAll("*")].filter((one) =>
      [...one.attributes].some((attribute) => attribute.name.startsWith("on"))).length };
}

// A bare page proves that the measuring can fail.
async function canFail(page) {
  await page.setContent('<svg width="100"><text y="20">one</text><text y="22">two</text></svg>');
  const { wrong } = await page.evaluate(meeting);
  expect(wrong.length > 0, "two texts on top of each other are noticed");
}

function splitIds(text) {
  return [...text.matchAll(/ id="([^"]*)"/g)].map((match) => match[1]);
}

await withBrowser(async (context) => {
  const page = await context.newPage();
  const said = [];
  page.on("console", (message) => said.push(message.text()));
  page.on("pageerror", (error) => said.push(error.message));
  await canFail(page);
  for (const file of files) {
    const name = path.basename(file);
    const what = name.match(/(roof|one-line|panel|labels|loads)\.svg$/)[1];
    const text = fs.readFileSync(file, "utf8");
    const ids = splitIds(text);
    expect(new Set(ids).size === ids.length && ids.every((id) => id.startsWith(`${what}-`)),
      `${name}: ids are its own and each once`);
    await page.setContent(`<body style="margin:0">${text.replace(/^<\?xml.*?\?>/, "")}</body>`);
    const told = await page.evaluate(described);
    expect(told.role === "img" && told.title && told.desc, `${name}: has a title and a description`);
    expect(told.odd === 0 && told.handlers === 0, `${name}: holds nothing but a drawing`);
    for (const width of [360, 800, 1600]) {
      await page.setViewportSize({ width, height: 700 });
      const { count, wrong } = await page.evaluate(meeting);
      expect(count > 3, `${name}: holds text`);
      expect(wrong.length === 0, `${name} at ${width}: no text meets another`, wrong.slice(0, 4).join("\n    "));
    }
  }
  expect(said.length === 0, "no drawing makes the browser complain", said.join("\n    "));
});
