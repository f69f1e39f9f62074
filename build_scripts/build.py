"""Builds the handbook: from tables, calc and docs to a finished `site/`.

The site is made beside its place, in `.build/`, and moved in only when it is whole; a build that is stopped or fails
leaves the last finished `site/` as it was.

Run by build_scripts/handbook.py inside the project's virtual environment: python -m build_scripts.build. With
--language en-XA the pages come in the made-up language that shows what was not taken from the catalogue.
"""

from __future__ import annotations

import argparse
import fcntl
import logging
import os
import shutil
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
WORK = ROOT / ".build"
SITE = ROOT / "site"


class BuildRefused(RuntimeError):
    """The site cannot be built from what is there; the message names file, row, column and reason."""


def _say(line: str) -> None:
    print(line, flush=True)


@contextmanager
def step(title: str, say: Callable[[str], None] = _say) -> Iterator[None]:
    """Announce a step, and its time when it is done."""
    start = time.monotonic()
    yield
    say(f"  {title}: {time.monotonic() - start:.1f} s")


def build(say: Callable[[str], None] = _say) -> None:
    """Build the whole site and put it in place."""
    from build_scripts import describe_tables
    from build_scripts.check_tables import problems
    from build_scripts.table_declaration import TableRefused
    from build_scripts.table_words import MissingWords

    with step("tables checked", say):
        with suppress(TableRefused, MissingWords):  # the check says which
            describe_tables.write(ROOT / "tables")
        found = problems(ROOT / "tables")
        if found:
            raise BuildRefused("the tables cannot be used:\n  " + "\n  ".join(found))
    with step("words checked", say):
        from build_scripts import check_words

        found = check_words.problems(ROOT)
        if found:
            raise BuildRefused("the words cannot be used:\n  " + "\n  ".join(found))
    pages, working = WORK / "pages", WORK / "site.next"
    with step("pages written", say):
        from build_scripts.pages import finish_site, write_pages

        write_pages(pages, ROOT)
    with step("site laid out", say):
        lay_out(pages, working)
        finish_site(working)
    with step("sheets of paper set", say):
        from build_scripts.pages import made_by
        from build_scripts.paper import build_paper

        build_paper(ROOT, working, **made_by(ROOT))
    with step("runtime packed", say):
        from build_scripts.runtime import build_runtime
        from build_scripts.seal import seal

        build_runtime(ROOT, working / "runtime")
        seal(working)
    with step("offline parts written", say):
        from build_scripts.offline import build_offline

        build_offline(ROOT, working)
    put_in_place(working)


@contextmanager
def alone() -> Iterator[None]:
    """Hold off other builds of this checkout until this one is through."""
    WORK.mkdir(exist_ok=True)
    with (WORK / "lock").open("w") as lock:
        try:
            fcntl.flock(lock, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            _say("  another build is running; waiting for it")
            fcntl.flock(lock, fcntl.LOCK_EX)
        yield


class _Listener(logging.Handler):
    """Keeps what the site engine warns of."""

    def __init__(self, heard: list[str]) -> None:
        super().__init__(logging.WARNING)
        self._heard = heard

    def emit(self, record: logging.LogRecord) -> None:
        """Keep one warning."""
        self._heard.append(record.getMessage())


def lay_out(pages: Path, target: Path) -> None:
    """Let MkDocs lay the written pages out in the theme; a warning is an error."""
    from mkdocs.commands.build import build as mkdocs_build
    from mkdocs.config import load_config
    from mkdocs.exceptions import Abort

    warnings: list[str] = []
    listener = _Listener(warnings)
    engine_log = logging.getLogger("mkdocs")
    engine_log.addHandler(listener)
    shutil.rmtree(target, ignore_errors=True)
    config = load_config(
        str(ROOT / "mkdocs.yml"),
        docs_dir=str(pages),
        site_dir=str(target),
        strict=True,
        use_directory_urls=False,
    )
    config["extra"].update(frame_words())
    config["mdx_configs"]["toc"]["permalink_title"] = config["extra"]["say"]("link-to-part")
    try:
        mkdocs_build(config)
    except Abort as refused:
        raise BuildRefused("the pages do not hold together:\n  " + "\n  ".join(warnings)) from refused
    finally:
        engine_log.removeHandler(listener)


def frame_words() -> dict[str, Any]:
    """What the theme's template says and puts into each page for its scripts."""
    from build_scripts.markup import attribute, said
    from build_scripts.places import PLACES
    from build_scripts.runtime import code_hash, inputs_hash
    from build_scripts.wording import language, script_words

    return {
        "language": language(),
        "code": code_hash(ROOT),
        "runtime": inputs_hash(ROOT),
        "say": said,
        "attr": attribute,
        "script_words": script_words(),
        "places": PLACES,
    }


def put_in_place(working: Path) -> None:
    """Swap the finished site in; the one before it is gone only when the new one stands."""
    old = WORK / "site.old"
    shutil.rmtree(old, ignore_errors=True)
    if SITE.exists():
        SITE.rename(old)
    working.rename(SITE)
    shutil.rmtree(old, ignore_errors=True)


def build_words() -> None:
    """Build again after a change of words alone: tables and runtime stay as they are. Refusals are printed."""
    from mkdocs.exceptions import MkDocsException

    from build_scripts.offline import OfflineBuildFailed, build_offline
    from build_scripts.pages import PageError, finish_site, write_pages
    from build_scripts.seal import seal
    from build_scripts.search.make import SearchNotMade
    from calc.words.catalogue import NoWords

    pages, working = WORK / "pages", WORK / "site.next"
    try:
        with alone():
            write_pages(pages, ROOT)
            lay_out(pages, working)
            finish_site(working)
            for kept in ("runtime", "icons", "paper"):
                shutil.copytree(SITE / kept, working / kept, copy_function=os.link)
            seal(working)
            for kept in ("offline-worker.js", "manifest.webmanifest"):
                shutil.copyfile(SITE / kept, working / kept)
            put_in_place(working)
            # The page is there to be seen; the list of files for offline use follows.
            build_offline(ROOT, SITE)
    except (
        BuildRefused,
        PageError,
        NoWords,
        MkDocsException,
        OfflineBuildFailed,
        SearchNotMade,
    ) as refused:
        sys.stderr.write(f"not built: {refused}\n")


def main(arguments: Sequence[str] = ()) -> int:
    """Build, and turn what goes wrong into one readable message."""
    from build_scripts.wording import VARIABLE

    options = argparse.ArgumentParser(prog="python -m build_scripts.build", description="Builds site/.")
    options.add_argument("--language", help=f"language of the pages, else of {VARIABLE}, else en")
    chosen = options.parse_args(arguments).language
    if chosen:
        os.environ[VARIABLE] = chosen
    return _main()


def _main() -> int:
    from mkdocs.exceptions import MkDocsException

    from build_scripts.look_up_pages import WrongPlace
    from build_scripts.offline import OfflineBuildFailed
    from build_scripts.pages import PageError
    from build_scripts.paper.faces import FaceMissing
    from build_scripts.paper.gauges import GaugeRefused
    from build_scripts.paper.typeset import NotSet
    from build_scripts.runtime import RuntimeBuildFailed
    from build_scripts.search.make import SearchNotMade
    from calc.words.catalogue import NoWords
    from calc.words.writer import NoFact

    refusals = (
        BuildRefused,
        PageError,
        WrongPlace,
        NoWords,
        NoFact,
        MkDocsException,
        RuntimeBuildFailed,
        OfflineBuildFailed,
        SearchNotMade,
        FaceMissing,
        GaugeRefused,
        NotSet,
    )

    start = time.monotonic()
    try:
        with alone():
            build()
    except refusals as refused:
        sys.stderr.write(f"not built: {refused}\nsite/ is as it was.\n")
        return 1
    except KeyboardInterrupt:
        sys.stderr.write("stopped. site/ is as it was.\n")
        return 130
    except OSError as trouble:
        where = f" ({trouble.filename})" if trouble.filename else ""
        sys.stderr.write(f"not built: {trouble.strerror or trouble}{where}. site/ is as it was.\n")
        return 1
    _say(f"site/ is ready ({time.monotonic() - start:.1f} s)")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
