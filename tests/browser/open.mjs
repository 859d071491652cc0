// The browser that the tests look with, and how they complain.
import { createRequire } from "node:module";
import fs from "node:fs";
import os from "node:os";
import path from "node:path";

const build = process.env.BUILD;
export const load = createRequire(path.join(build, "node", "package.json"));
const { chromium } = load("playwright-core");

export const folder = fs.mkdtempSync(path.join(os.tmpdir(), "plumbrule-"));
let failed = 0;
let done = 0;

export function expect(is, sentence, more = "") {
  done += 1;
  if (is) return;
  failed += 1;
  console.error(`not so: ${sentence}${more ? `\n    ${more}` : ""}`);
}

const flags = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
  "--disable-background-networking", "--disable-component-update", "--disable-sync"];

export async function withBrowser(act) {
  const context = await chromium.launchPersistentContext(path.join(folder, "profile"), {
    executablePath: process.env.CHROMIUM || "/usr/bin/chromium", headless: true, args: flags, bypassCSP: true });
  try {
    await act(context);
  } finally {
    await context.close();
    fs.rmSync(folder, { recursive: true, force: true });
  }
  console.log(`${done} looked at, ${failed} wrong`);
  process.exitCode = failed === 0 && done > 0 ? 0 : 1;
}

// A page that tells of everything it says, breaks on or fetches.
export async function openPage(context, url, viewport) {
  const page = await context.newPage();
  const said = [];
  page.on("console", (message) => said.push(`${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => said.push(`error: ${error.message}`));
  page.on("dialog", (dialog) => { said.push("a dialog"); dialog.dismiss(); });
  page.on("request", (request) => { if (request.url() !== url) said.push(`fetched ${request.url()}`); });
  await page.setViewportSize(viewport);
  await page.goto(url);
  return { page, said };
}
