// The ten checks in two rule engines of the JavaScript world: ten.mjs FACTS OUT-DIR PASSES. Facts are in memory before
// the clock starts, rules are added once; nothing is recorded but the verdict, which both give as a word.
import { createRequire } from "node:module";
import fs from "node:fs";
import path from "node:path";

const load = createRequire(path.join(process.env.BUILD, "node", "package.json"));
const jsonLogic = load("json-logic-js");
const { Engine } = load("json-rules-engine");
const [facts, folder, passes] = [process.argv[2], process.argv[3], Number(process.argv[4])];
const inch = 0.0254, foot = 0.3048, psf = 4.4482216152605 / (0.3048 * 0.3048), degree = Math.PI / 180;
// Equal within 1e-9 counts as equal; all limits are above zero.
const most = 1 + 1e-9, least = 1 - 1e-9;

// ---- json-logic-js: one expression per check, which gives its verdict.
const fact = (name) => ({ var: name });
const isMissing = (name) => ({ "===": [fact(name), null] });
const judged = (holds) => ({ if: [holds, "pass", "fail"] });
const open = (missing, then) => ({ if: [missing, "open", then] });
const only = (name, applies, then) => ({ if: [isMissing(name), "open", applies, then, "notApplicable"] });
const atMost = (name, limit) => open(isMissing(name), judged({ "<=": [fact(name), limit * most] }));
const atLeast = (name, limit) => open(isMissing(name), judged({ ">=": [fact(name), limit * least] }));
const feeds = { in: [fact("duty"), ["source", "feeder"]] };
const sum = (list, item) => ({ reduce: [list, { "+": [fact("accumulator"), item] }, 0] });
const logic = {
  racking: { "array-height": atMost("height_above_roof", 6 * inch) },
  busbar: { "busbar-sum": open({ or: [isMissing("protecting_device"), isMissing("breakers"), isMissing("rating"),
    { some: [fact("breakers"), { or: [isMissing("duty"), { and: [feeds, isMissing("rating")] }] }] }] },
  judged({ "<=": [{ "+": [fact("protecting_device"), sum({ filter: [fact("breakers"), feeds] }, fact("current.rating"))] },
    { "*": [1.2 * most, fact("rating")] }] })) },
  circuit: {
    "circuit-device": only("role", { "===": [fact("role"), "inverter output"] },
      open({ or: [isMissing("carries"), isMissing("ocpd_rating"), { some: [fact("carries"), { "===": [fact(""), null] }] }] },
        judged({ ">=": [fact("ocpd_rating"), { "*": [1.25 * least, sum(fact("carries"), fact("current"))] }] }))),
    "ridge-distance": only("on_roof", fact("on_roof"), atLeast("ridge_distance", 18 * inch)),
  },
  roof_plane: {
    "dead-load": open(isMissing("dead_load"), judged({ "<=": [{ "+": [fact("dead_load"), 3 * psf] }, 12 * psf * most] })),
    "shingle-slope": only("covering", { "===": [fact("covering"), "composition shingle"] }, atLeast("slope", 20 * degree)),
  },
  disconnect: { "disconnect-distance": only("role", { "===": [fact("role"), "utility"] }, atMost("distance_to_meter", 10 * foot)) },
  label: { "label-letters": atLeast("letter_height", 0.375 * inch) },
  string: { "module-count": atMost("modules", 10) },
  rapid_shutdown: { "shutdown-voltage": atMost("voltage_inside", 80) },
};

// ---- json-rules-engine: one engine per kind of thing. A rule succeeds where its check passes; what it would miss, and
// whether it applies, are conditions of two more rules where a check needs them. What is summed are facts that are
// functions, as its handbook has it.
const known = (name) => ({ fact: name, operator: "notEqual", value: null });
const unknown = (name) => ({ fact: name, operator: "equal", value: null });
const needs = (check, { names, applies, pass, about }) => {
  const rule = (kind, all) => ({ conditions: all, event: { type: kind, params: { check } } });
  const rules = [rule("pass", { all: [...(applies ?? []), ...names.map(known), pass] })];
  const openNow = { all: [...(applies ?? []), { any: names.map(unknown) }] };
  rules.push(rule("open", about ? { any: [unknown(about), openNow] } : openNow));
  if (applies) rules.push(rule("applies", { any: [unknown(about), ...applies] }));
  return { rules, mayNotApply: Boolean(applies) };
};
const lessOrEqual = (name, value) => ({ fact: name, operator: "lessThanInclusive", value });
const greaterOrEqual = (name, value) => ({ fact: name, operator: "greaterThanInclusive", value });
const is = (name, value) => ({ fact: name, operator: "equal", value });
const simple = (name, pass) => ({ names: [name], pass });
const engines = {
  racking: { "array-height": simple("height_above_roof", lessOrEqual("height_above_roof", 6 * inch * most)) },
  busbar: { "busbar-sum": { names: ["rating", "bus_sum"], pass: lessOrEqual("bus_sum", { fact: "bus_limit" }) } },
  circuit: {
    "circuit-device": { about: "role", applies: [is("role", "inverter output")], names: ["ocpd_rating", "carried"],
      pass: greaterOrEqual("ocpd_rating", { fact: "device_least" }) },
    "ridge-distance": { about: "on_roof", applies: [is("on_roof", true)], names: ["ridge_distance"],
      pass: greaterOrEqual("ridge_distance", 18 * inch * least) },
  },
  roof_plane: {
    "dead-load": simple("dead_load", lessOrEqual("dead_load", 12 * psf * most - 3 * psf)),
    "shingle-slope": { about: "covering", applies: [is("covering", "composition shingle")], names: ["slope"],
      pass: greaterOrEqual("slope", 20 * degree * least) },
  },
  disconnect: { "disconnect-distance": { about: "role", applies: [is("role", "utility")], names: ["distance_to_meter"],
    pass: lessOrEqual("distance_to_meter", 10 * foot * most) } },
  label: { "label-letters": simple("letter_height", greaterOrEqual("letter_height", 0.375 * inch * least)) },
  string: { "module-count": simple("modules", lessOrEqual("modules", 10)) },
  rapid_shutdown: { "shutdown-voltage": simple("voltage_inside", lessOrEqual("voltage_inside", 80 * most)) },
};
const derived = {
  busbar: {
    bus_sum: async (_, almanac) => {
      let all = await almanac.factValue("protecting_device");
      const breakers = await almanac.factValue("breakers");
      if (all === null || breakers === null) return null;
      for (const { duty, rating } of breakers) {
        if (duty === null) return null;
        if (duty !== "source" && duty !== "feeder") continue;
        if (rating === null) return null;
        all += rating;
      }
      return all;
    },
    bus_limit: async (_, almanac) => 1.2 * most * (await almanac.factValue("rating")),
  },
  circuit: {
    carried: async (_, almanac) => {
      const carries = await almanac.factValue("carries");
      return carries === null || carries.includes(null) ? null : carries.reduce((a, b) => a + b, 0);
    },
    device_least: async (_, almanac) => 1.25 * least * (await almanac.factValue("carried")),
  },
};
const made = {};
for (const [kind, list] of Object.entries(engines)) {
  const engine = new Engine();
  const checks = Object.entries(list).map(([check, parts]) => {
    const { rules, mayNotApply } = needs(check, parts);
    rules.forEach((rule) => engine.addRule(rule));
    return { check, mayNotApply };
  });
  for (const [name, value] of Object.entries(derived[kind] ?? {})) engine.addFact(name, value);
  made[kind] = { engine, checks };
}

const designs = fs.readFileSync(facts, "utf8").split("]\n").map((text) => text.trim()).filter(Boolean)
  .map((text) => JSON.parse(`${text}]`));

const passLogic = (tell) => {
  let fails = 0;
  designs.forEach((things, number) => {
    for (const thing of things) {
      const checks = logic[thing.kind];
      for (const check in checks) {
        const verdict = jsonLogic.apply(checks[check], thing);
        if (verdict === "fail") fails += 1;
        if (tell) tell(number, check, thing.name, verdict);
      }
    }
  });
  return fails;
};
const passEngine = async (tell) => {
  let fails = 0;
  for (const [number, things] of designs.entries()) {
    for (const thing of things) {
      const { engine, checks } = made[thing.kind];
      const { events } = await engine.run(thing);
      for (const { check, mayNotApply } of checks) {
        const has = (type) => events.some((event) => event.type === type && event.params.check === check);
        const verdict = has("open") ? "open" : mayNotApply && !has("applies") ? "notApplicable" : has("pass") ? "pass" : "fail";
        if (verdict === "fail") fails += 1;
        if (tell) tell(number, check, thing.name, verdict);
      }
    }
  }
  return fails;
};
const told = { logic: [], engine: [] };
const teller = (list) => (number, check, name, verdict) => list.push(`${number} ${check} ${name} ${verdict}\n`);
passLogic(teller(told.logic));
await passEngine(teller(told.engine));
for (const [name, lines] of Object.entries(told)) fs.writeFileSync(path.join(folder, name), lines.join(""));
for (let pass = 0; pass < passes; pass++) {
  const start = performance.now();
  passLogic();
  const between = performance.now();
  await passEngine();
  console.log(`logic ${((between - start) * 1e3).toFixed(1)}\nengine ${((performance.now() - between) * 1e3).toFixed(1)}`);
}
