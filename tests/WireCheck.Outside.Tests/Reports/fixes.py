"""Applies each fix of the given SARIF files to the file it names, reads the result with PyYAML and prints old and new text.

Usage: fixes.py ROOT FILE.sarif... Files that are not below ROOT are left out.
"""
import json
import os
import sys
import urllib.parse

import yaml

root = sys.argv[1]
for name in sys.argv[2:]:
    with open(name, encoding="utf-8") as file:
        run = json.load(file)["runs"][0]
    for result in run["results"]:
        for fix in result.get("fixes", []):
            change = fix["artifactChanges"][0]
            path = os.path.join(root, urllib.parse.unquote(change["artifactLocation"]["uri"]))
            if not os.path.exists(path):
                continue
            with open(path, encoding="utf-8", newline="") as file:
                text = file.read()
            before = yaml.safe_load(text)
            # Columns count UTF-16 units; from the end, so that earlier places stay.
            for replacement in reversed(change["replacements"]):
                lines = text.split("\n")
                region = replacement["deletedRegion"]
                assert region["startLine"] == region["endLine"], region
                line = lines[region["startLine"] - 1].encode("utf-16-le")
                start, end = 2 * (region["startColumn"] - 1), 2 * (region["endColumn"] - 1)
                old, new = line[start:end].decode("utf-16-le"), replacement["insertedContent"]["text"]
                lines[region["startLine"] - 1] = (line[:start] + new.encode("utf-16-le") + line[end:]).decode("utf-16-le")
                text = "\n".join(lines)
                print(f"{fix['description']['text']}: '{old}' -> '{new}'")
            assert yaml.safe_load(text) != before, fix
