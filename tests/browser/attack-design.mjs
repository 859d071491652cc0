// Writes the sample house anew with an attack in every text fact that the object model has, given or not, and in
// every name; the facts come from the one table, so that a new one is attacked from its first day.
import fs from "node:fs";
import path from "node:path";
import { createRequire } from "node:module";

const [top, room] = process.argv.slice(2);
const load = createRequire(path.join(process.env.BUILD, "node", "package.json"));
const YAML = load("yaml");

const kinds = {};
for (const file of fs.readdirSync(path.join(top, "core/design/facts"))) {
  const kind = path.basename(file, ".facts");
  const text = fs.readFileSync(path.join(top, "core/design/facts", file), "utf8");
  kinds[kind] = [...text.matchAll(/^(TEXT|TEXTS|ONE|LIST|REFERENCES?)\((\w+), (\w+)?/gm)].map(([, type, name, of]) => ({ type, name, of }));
}

const attacks = [
  "<script>window.hit=1</script>", "\"><img src=x onerror=\"window.hit=2\">", "]]><svg onload='window.hit=3'/>",
  "</style><script>window.hit=4</script>", "--><b>&amp;&#60;i&#62;</b>", "مرحبا من اليمين \"><u>", "javascript:window.hit=5 🔆☀️",
];
const told = [];
function attack() {
  const text = `T${told.length}T ${attacks[told.length % attacks.length]} E${told.length}E`;
  told.push(text);
  return text;
}

const names = new Map();
function rename(name) {
  if (!names.has(name)) names.set(name, `${name}<i onclick=hit(${names.size})>&'"`.slice(0, 78));
  return names.get(name);
}
const renamePath = (text) => String(text).split("/").map((part) => names.get(part) ?? part).join("/");

function walk(object, kind, visit) {
  visit(object, kind);
  for (const { type, name, of } of kinds[kind]) {
    const inside = object[name];
    if (type === "ONE" && inside && typeof inside === "object") walk(inside, of, visit);
    if (type === "LIST" && Array.isArray(inside)) inside.forEach((one) => walk(one, of, visit));
  }
}

const options = { schema: "failsafe" };
const files = { "design.yaml": path.join(top, "samples/quill-hollow/failing.yaml") };
for (const name of ["modules", "converters", "inverters", "racking"]) files[`${name}.yaml`] = path.join(top, `samples/catalogue/${name}.yaml`);
const trees = Object.entries(files).map(([name, file]) => [name, YAML.parse(fs.readFileSync(file, "utf8"), options)]);
for (const [, tree] of trees) walk(tree, "design", (object) => { if (object.name) object.name = rename(object.name); });
for (const [name, tree] of trees) {
  walk(tree, "design", (object, kind) => {
    for (const fact of kinds[kind]) {
      if (fact.type === "TEXT" && (kind !== "design" || name === "design.yaml")) object[fact.name] = attack();
      if (fact.type === "REFERENCE" && object[fact.name]) object[fact.name] = renamePath(object[fact.name]);
      if (fact.type === "REFERENCES" && Array.isArray(object[fact.name])) object[fact.name] = object[fact.name].map(renamePath);
    }
  });
  fs.writeFileSync(path.join(room, name), YAML.stringify(tree, { ...options, lineWidth: 0 }));
}
fs.writeFileSync(path.join(room, "told.json"), JSON.stringify({ told, names: [...names.values()] }));
