"""Reads every SVG of the given pages as XML and prints, for each page, its name and how many there are.

Each must have a title for readers of the screen, and nothing that runs or fetches.
"""
import re
import sys
import xml.etree.ElementTree as tree

SVG = "{http://www.w3.org/2000/svg}"
for page in sys.argv[1:]:
    with open(page, encoding="utf-8") as file:
        drawings = re.findall(r"<svg\b.*?</svg>", file.read(), re.DOTALL)
    for text in drawings:
        root = tree.fromstring(text if "xmlns=" in text[:300] else text.replace("<svg", '<svg xmlns="http://www.w3.org/2000/svg"', 1))
        assert root.tag == SVG + "svg", root.tag
        assert root.find(SVG + "title") is not None or root.get("aria-label") or root.get("aria-labelledby"), page
        for element in root.iter():
            assert element.tag not in (SVG + "script", SVG + "image", SVG + "foreignObject"), element.tag
            assert not any(name.startswith("on") for name in element.attrib), element.attrib
    print(page.rsplit("/", 1)[-1].replace(" ", "_"), len(drawings))
