// Holds files against a JSON Schema with ajv: node validate.cjs SCHEMA FILE… A YAML file is read by YAML 1.2's core
// schema. Prints what does not fit; ends with 1 then.
const fs = require("fs");
const Ajv = require("ajv/dist/2020");
const yaml = require("js-yaml");

const read = (path) => {
  const text = fs.readFileSync(path, "utf8");
  return path.endsWith(".json") ? JSON.parse(text) : yaml.load(text, { schema: yaml.CORE_SCHEMA });
};
const [schema, ...files] = process.argv.slice(2);
const validate = new Ajv({ allErrors: true, allowUnionTypes: true }).compile(read(schema));
let wrong = 0;
for (const file of files) {
  if (validate(read(file))) continue;
  wrong += 1;
  for (const error of validate.errors.slice(0, 5)) console.log(`${file}: ${error.instancePath} ${error.message}`);
}
process.exit(wrong > 0 || files.length === 0 ? 1 : 0);
