"""Places in C++ where one small thing may be changed, and all the changes of a file written into it at once (mutant.hpp chooses)."""
import re
from dataclasses import dataclass

COMPARISONS = {"<": ("lt", ["le", "gt"]), ">": ("gt", ["ge", "lt"]), "<=": ("le", ["lt", "gt"]), ">=": ("ge", ["gt", "lt"])}
# kind: what is looked for in code. Templates, arrows, shifts and increments are no comparisons or signs.
KINDS = [
    ("comparison", re.compile(r"(?<=[\w)\]] )(<=|>=|<|>)(?= [\w(*-])")),
    ("equality", re.compile(r"(?<=[\w)\]] )(==|!=)(?= )")),
    ("sign", re.compile(r"(?<=[\w)\]] )([+-])(?= [\w(*])")),
    ("product", re.compile(r"(?<=[\w)\]] )([*/])(?= [\w(])")),
    ("logic", re.compile(r"(?<=[\w)\]] )(&&|\|\|)(?= [\w(!*])")),
    ("extreme", re.compile(r"\b(std::min|std::max)(?=\()")),
    ("truth", re.compile(r"(?<=\breturn )(true|false)\b")),
    ("negation", re.compile(r"(?<=[( ])(!)(?=[a-z])")),
    ("constant", re.compile(r"(?<![\w.\[<])(?<![eE]-)(\d+\.\d+|[1-9]\d*)(?![\w.\]>])")),
]


@dataclass(frozen=True)
class Place:
    start: int
    end: int
    kind: str
    new: str  # what stands there instead: an operator's name, a number


def blanked(text):
    """The text with comments, strings and preprocessor lines blanked out, every other place where it was."""
    parts = re.compile(r'//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])*\'|^[ \t]*#[^\n]*', re.S | re.M)
    return parts.sub(lambda m: re.sub(r"[^\n]", " ", m[0]), text)


def instead_of(kind, found):
    if kind == "comparison":
        return COMPARISONS[found][1]
    if kind == "constant":
        return [str(float(found) * 1.25)] if "." in found else [str(int(found) + 1)]
    return [{"==": "ne", "!=": "eq", "+": "sub", "-": "add", "*": "div", "/": "mul"}.get(found, "")]


def places_in(text):
    code = blanked(text)
    return [Place(m.start(1), m.end(1), kind, new) for kind, pattern in KINDS for m in pattern.finditer(code) for new in instead_of(kind, m[1])]


def operand_end(code, at):
    """Where the right operand of `&&` or `||` ends that begins at `at`."""
    depth = 0
    while at < len(code):
        c = code[at]
        if c in "([{":
            depth += 1
        elif c in ")]}":
            depth -= 1
            if depth < 0:
                return at
        elif depth == 0 and (c in ",;?:" and code[at - 1 : at + 1] != "::" and code[at : at + 2] != "::" or code[at : at + 2] in ("&&", "||")):
            return at
        at += 1
    return at


def operator(found, number, new, before, after):
    was = COMPARISONS[found][0] if found in COMPARISONS else {"==": "eq", "!=": "ne", "+": "add", "-": "sub", "*": "mul", "/": "div"}[found]
    return f"{before} mutant_{number} {after}", f"constexpr mutant::Place<{number}, mutant::Op::{was}, mutant::Op::{new}> mutant_{number}{{}};"


def written(text, numbered):
    """`text` with all of {number: place} in it, at most one a spot. Its lines stay where they were."""
    code, cuts, heads = blanked(text), [], []
    for number, p in numbered.items():
        found, head = text[p.start : p.end], ""
        if p.kind == "comparison":
            new, head = operator(found, number, p.new, "<", ">")
        elif p.kind == "equality":
            new, head = operator(found, number, p.new, "==", "==")
        elif p.kind == "sign":
            new, head = operator(found, number, p.new, "+", "+")
        elif p.kind == "product":
            new, head = operator(found, number, p.new, "*", "*")
        elif p.kind == "logic":  # the right side is left out
            new = f"&& (mutant::on({number}) ||" if found == "&&" else f"|| (!mutant::on({number}) &&"
            end = operand_end(code, p.end)
            new += " ("
            cuts.append((end, end, "))"))
        elif p.kind == "extreme":
            new = f"mutant::Extreme<{number}, {'true' if found == 'std::min' else 'false'}>{{}}"
        elif p.kind == "truth":
            new = f"mutant::truth<{number}>({found})"
        elif p.kind == "negation":
            new = f"mutant::Not<{number}>{{}} ->* "
        else:
            new = f"mutant::constant<{number}>({found}, {p.new})"
            line = code.rfind("\n", 0, p.start) + 1
            if code[line : p.start].lstrip().startswith(("constexpr ", "static constexpr ")):
                at = code.index("constexpr", line)
                cuts.append((at, at + len("constexpr"), "const    "))
        cuts.append((p.start, p.end, new))
        heads.append(head)
    for start, end, new in sorted(set(cuts), reverse=True):
        text = text[:start] + new + text[end:]
    quiet = "".join(f'_Pragma("GCC diagnostic ignored \\"-W{w}\\"") ' for w in ("conversion", "parentheses", "extra", "all", "pedantic"))
    return '#include "mutation/mutant.hpp"\n' + quiet + " ".join(heads) + "\n#line 1\n" + text
