"""Holds YAML files against a JSON Schema with Debian's python3-jsonschema. Prints one line for each misfit."""
import json
import sys

import jsonschema
import yaml


class Yaml12(yaml.SafeLoader):
    """YAML 1.2 as editors read it: yes and no, and days, are plain text."""


LEFT_OUT = ("tag:yaml.org,2002:timestamp", "tag:yaml.org,2002:bool")
Yaml12.yaml_implicit_resolvers = {
    first: [(tag, pattern) for tag, pattern in resolvers if tag not in LEFT_OUT]
    for first, resolvers in yaml.SafeLoader.yaml_implicit_resolvers.items()
}

with open(sys.argv[1], encoding="utf-8") as file:
    schema = json.load(file)
jsonschema.Draft7Validator.check_schema(schema)
validator = jsonschema.Draft7Validator(schema)
for name in sys.argv[2:]:
    with open(name, encoding="utf-8") as file:
        document = yaml.load(file, Yaml12)
    for error in validator.iter_errors(document):
        print(f"{name}: {'/'.join(map(str, error.path))}: {error.message[:200]}")
