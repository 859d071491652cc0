// Takes the pictures: what stands in `what`, of the report of a sample, at a width.
import path from "node:path";
import { createRequire } from "node:module";

const [room, out] = process.argv.slice(2);
const load = createRequire(path.join(process.env.BUILD, "node", "package.json"));
const { chromium } = load("playwright-core");
const pictures = [
  { name: "report", of: "failing", width: 1000, height: 1150 },
  { name: "unfinished", of: "unfinished", width: 1000, height: 620 },
  { name: "standing", of: "standing", width: 1000, height: 520 },
  { name: "telephone", of: "failing", width: 360, height: 760 },
  { name: "roof", of: "failing", width: 760, what: "#figure-roof svg" },
  { name: "one-line", of: "standing", width: 760, what: "#figure-one-line svg" },
  { name: "panel", of: "failing", width: 760, what: "#figure-panel svg" },
  { name: "loads", of: "standing", width: 760, what: "#figure-loads svg" },
  { name: "margins", of: "standing", width: 900, height: 700, at: "#margins" },
  { name: "checklist", of: "failing", width: 900, height: 900, at: ".visit:nth-of-type(2)" },
];
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM || "/usr/bin/chromium",
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
    "--disable-component-update", "--disable-sync"] });
for (const picture of pictures) {
  const page = await browser.newPage({ viewport: { width: picture.width, height: picture.height || 900 } });
  await page.goto(`file://${path.join(room, `${picture.of}.html`)}`);
  const file = path.join(out, `${picture.name}.png`);
  if (picture.what) await page.locator(picture.what).screenshot({ path: file });
  else {
    if (picture.at) await page.locator(picture.at).first().evaluate((one) => one.scrollIntoView());
    await page.screenshot({ path: file });
  }
  if (picture.name === "report") await page.pdf({ path: path.join(room, "letter.pdf"), format: "Letter" });
  await page.close();
}
await browser.close();
