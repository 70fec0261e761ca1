"""No call of the service can be turned by what was handed in into a command, a query or code."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
#: Calls that run what they are given, by the last two parts of their names.
RUNNING = {
    *("eval", "exec", "compile", "__import__", "os.system", "os.popen", "importlib.import_module"),
    *("yaml.load", "shelve.open", "dill.loads", "tempfile.mktemp", "string.Template"),
}
#: Where bytes become objects or a process is begun: only what this very program wrote itself.
OWN = {
    "pickle.loads": {"service/store/reading_along.py"},
    "marshal.loads": {
        *("service/store/reading_along.py", "service/store/waiting_parts.py"),
        "service/store/leftovers.py",
    },
    "subprocess.Popen": {"service/store/reading_along.py"},
}
#: MD5 where a published procedure is made of it and nothing is kept secret by it (RFC 3797).
SPREADING = {"service/counting/draw.py"}
WEAK = {"md5", "sha1", "new"}
#: Statements about tables and pages of this program's own names and numbers, never of what was sent.
OWN_STATEMENTS = {
    *("service/store/cleaning.py", "service/store/engine.py", "service/store/keeping.py"),
    *("service/store/many.py", "service/store/migrations/versions/0002_large_batches.py"),
}
#: What reads XML; only defusedxml's refuse entities.
PARSERS = {"parse", "iterparse", "fromstring", "fromstringlist", "XML", "XMLID", "XMLParser"}


def sources() -> list[tuple[str, str]]:
    found = [
        (path.relative_to(ROOT).as_posix(), path.read_text("utf-8"))
        for path in sorted((ROOT / "service").rglob("*.py"))
    ]
    assert len(found) > 200
    return found


def calls(source: str) -> list[tuple[str, ast.Call]]:
    """Every call, by what is called: "name", or "of.name"."""
    found = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Call):
            name = ast.unparse(node.func)
            found.append((".".join(name.split(".")[-2:]), node))
    return found


def troubles(path: str, source: str) -> list[str]:
    """What in this module could run what was handed in."""
    found = [f"{path}: {name}" for name, call in calls(source) if is_trouble(path, name, call)]
    if path not in OWN_STATEMENTS:
        found += [f"{path}: {name}" for name in mixed_queries(source)]
    return found + [f"{path}: {name}" for name in trusting_parsers(source)]


def is_trouble(path: str, name: str, call: ast.Call) -> bool:
    if name in RUNNING or name.startswith("random."):
        return True
    if name in OWN:
        return path not in OWN[name]
    if name.startswith("hashlib.") and name.removeprefix("hashlib.") in WEAK:
        return path not in SPREADING
    return any(each.arg == "shell" for each in call.keywords)


def mixed_queries(source: str) -> list[str]:
    """SQL that is put together of texts, where a value could become a command."""
    return [
        f"{name}({ast.unparse(call.args[0])})"
        for name, call in calls(source)
        if name.split(".")[-1] in {"text", "exec_driver_sql", "execute", "executescript"}
        and call.args
        and isinstance(call.args[0], ast.JoinedStr | ast.BinOp)
    ]


def trusting_parsers(source: str) -> list[str]:
    """Parsers of XML that follow what a document says about entities."""
    found = [
        name
        for name, _ in calls(source)
        if re.fullmatch(r"(ET|ElementTree)\.\w+", name) and name.split(".")[1] in PARSERS
    ]
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.ImportFrom) and (node.module or "").startswith(("xml", "lxml")):
            found += [each.name for each in node.names if each.name in PARSERS]
    return found


@pytest.mark.parametrize(
    ("path", "source"), [pytest.param(*each, id=each[0]) for each in sources()]
)
def test_nothing_that_was_handed_in_is_run(path: str, source: str) -> None:
    assert troubles(path, source) == []


def test_xml_is_read_by_parsers_that_follow_no_entity() -> None:
    reading = [path for path, source in sources() if "import iterparse" in source]
    assert len(reading) >= 2
    for path in reading:
        assert "from defusedxml.ElementTree import iterparse" in (ROOT / path).read_text("utf-8")


@pytest.mark.parametrize(
    "line",
    [
        "eval(words)",
        "os.system(words)",
        "pickle.loads(words)",
        "subprocess.Popen([words])",
        "run(words, shell=True)",
        "hashlib.md5(words)",
        "random.choice(words)",
        'session.execute(text(f"SELECT {words}"))',
        'connection.exec_driver_sql("SELECT " + words)',
        "ET.fromstring(words)",
        "from xml.etree.ElementTree import iterparse",
    ],
)
def test_a_dangerous_call_is_seen(line: str) -> None:
    assert len(troubles("service/api/x.py", line)) >= 1


def test_a_plain_call_is_let_through() -> None:
    line = (
        'session.execute(text("SELECT :one"), {"one": words}); sha256(words); session.exec(query)'
    )
    assert troubles("service/api/x.py", line) == []
