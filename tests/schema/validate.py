"""Holds files against a JSON Schema with a validator that is not ours: validate.py SCHEMA FILE…
A YAML file is read as YAML 1.2 does, where yes and on are words; a day becomes its text. Prints what does not
fit; ends with 1 then."""
import datetime
import json
import re
import sys

import jsonschema
import yaml


class Loader(yaml.SafeLoader):
    """True and false are the only truths."""


Loader.yaml_implicit_resolvers = {
    first: [(tag, pattern) for tag, pattern in resolvers if tag != "tag:yaml.org,2002:bool"]
    for first, resolvers in yaml.SafeLoader.yaml_implicit_resolvers.items()
}
Loader.add_implicit_resolver("tag:yaml.org,2002:bool", re.compile(r"^(true|false)$"), list("tf"))


def plain(value):
    if isinstance(value, dict):
        return {str(key): plain(one) for key, one in value.items()}
    if isinstance(value, list):
        return [plain(one) for one in value]
    if isinstance(value, datetime.date):
        return value.isoformat()
    return value


def read(path):
    with open(path, encoding="utf-8") as file:
        return json.load(file) if path.endswith(".json") else plain(yaml.load(file, Loader))


def main():
    schema = read(sys.argv[1])
    kind = jsonschema.validators.validator_for(schema)
    kind.check_schema(schema)
    validator = kind(schema)
    wrong = 0
    for path in sys.argv[2:]:
        for error in validator.iter_errors(read(path)):
            wrong += 1
            print(f"{path}: {'/'.join(str(part) for part in error.absolute_path)}: {error.message[:300]}")
    sys.exit(1 if wrong else 0)


main()
