// Each SARIF file against the published schema; then what the schema cannot ask for.
import fs from "node:fs";
import path from "node:path";
import { createRequire } from "node:module";

const load = createRequire(path.join(process.env.BUILD, "node", "package.json"));
const Ajv = load("ajv/dist/2020").default;
const [schemaFile, ...files] = process.argv.slice(2);
const ajv = new Ajv({ strict: false, allErrors: true });
load("ajv-formats").default(ajv);
const validate = ajv.compile(JSON.parse(fs.readFileSync(schemaFile, "utf8").replace(/^\uFEFF/, "")));
let wrong = 0;
const expect = (is, sentence) => { if (!is) { wrong += 1; console.error(`not so: ${sentence}`); } };

for (const file of files) {
  const name = path.basename(file);
  const log = JSON.parse(fs.readFileSync(file, "utf8"));
  expect(validate(log), `${name} keeps to the schema ${JSON.stringify((validate.errors || []).slice(0, 3))}`);
  const spoiled = structuredClone(log);
  spoiled.runs[0].results = [{ kind: "passed" }];
  expect(!validate(spoiled), "the schema notices what is wrong");
  for (const run of log.runs) {
    const prints = new Set();
    for (const result of run.results) {
      expect(result.kind === "fail" ? ["error", "warning"].includes(result.level) : result.level === "none", `${name}: level goes with kind`);
      expect(run.tool.driver.rules[result.ruleIndex].id === result.ruleId, `${name}: ruleIndex is right`);
      const print = result.partialFingerprints["plumbrule/v1"];
      expect(!prints.has(print), `${name}: a fingerprint stands once (${print})`);
      prints.add(print);
      for (const location of result.locations) {
        const artifact = location.physicalLocation?.artifactLocation;
        if (artifact) expect(run.artifacts[artifact.index].location.uri === artifact.uri, `${name}: the artifact is the file`);
      }
      if (name === "failures.sarif") expect(result.kind === "fail", "failures only");
    }
  }
}
const unread = JSON.parse(fs.readFileSync(files.find((file) => file.endsWith("unread.sarif")), "utf8")).runs[0].invocations[0];
expect(unread.executionSuccessful === false && unread.toolExecutionNotifications.some((one) => one.level === "error"), "what was not read is told");
process.exitCode = wrong ? 1 : 0;
