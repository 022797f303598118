#!/usr/bin/env python3
"""Every knowledge file and every JSON example against its schema, by another reader than the program's own.

    python3 validate_schemas.py
"""
import json
import pathlib
import sys

import jsonschema

root = pathlib.Path(__file__).resolve().parents[2]


def schemas():
    for file in sorted((root / "knowledge" / "schema").glob("*.schema.json")):
        schema = json.loads(file.read_text())
        jsonschema.Draft7Validator.check_schema(schema)
        yield file.name.removesuffix(".schema.json"), jsonschema.Draft7Validator(schema)


def knowledge_files():
    for file in sorted((root / "knowledge").rglob("*.json")):
        inside = file.relative_to(root / "knowledge").parts
        if inside[0] != "schema":
            yield file, inside[0].removesuffix(".json")


def example_files():
    for file in sorted((root / "examples").rglob("*.json")):
        document = json.loads(file.read_text())
        known = {"lines": "formula", "have": "inventory"}
        yield file, next((kind for key, kind in known.items() if key in document), "?")


def complaints(file, validator):
    document = json.loads(file.read_text())
    for error in validator.iter_errors(document):
        place = "".join(f"[{step}]" if isinstance(step, int) else f".{step}" for step in error.absolute_path)
        yield f"{place or 'document'}: {error.message[:300]}"
    if isinstance(document, dict) and validator.is_valid(document | {"not-a-key": 1}):
        yield "the schema lets an unknown key through"


def main():
    known = dict(schemas())
    failed = looked_at = 0
    for file, kind in [*knowledge_files(), *example_files()]:
        looked_at += 1
        found = list(complaints(file, known[kind])) if kind in known else ["no schema is for this file"]
        failed += bool(found)
        for complaint in found[:10]:
            print(f"{file.relative_to(root)}: {complaint}")
    print(f"{looked_at - failed} of {looked_at} files follow their schema")
    return 1 if failed or not looked_at else 0


if __name__ == "__main__":
    sys.exit(main())
