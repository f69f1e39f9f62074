"""Writes every page of the handbook as Markdown into a folder, ready for the site engine.

    python -m build_scripts.pages pages OUT     all pages, tables, scripts and type into OUT
    python -m build_scripts.pages finish SITE   after the engine ran: the search made, leftovers removed

A page in docs/ is a Jinja2 template in Markdown. It may begin with front matter (`title`, `description`, `group`; a
`group` gathers pages on the index of their part; `order`, a number, is the page's place there, and its group's; `moved_from`
names old addresses that lead here, with spaces between them). What a page may call:

    {{ sheet("sling-legs") }}                       the worksheet: form, answer, drawing, working
    {{ answer("sling-legs", "leg_tension") }}       a result in words, of the worksheet's example
    {{ answer("sling-legs", "leg_tension", units="si", load="2 t", legs="2", angle="45") }}  ... of other inputs
    {{ said("sling-legs", load="2 t", ...) }}       the headline of an answer
    {{ figure("sling-legs", load="2 t", ...) }}     its drawing with the caption
    {{ cell("chain-tie-down", grade="70", size_in="3/8", unit="lb") }}   one printed value with its unit; the build
                                                    stops unless exactly one row fits
    {{ stated("hook-limits", item="hook", ...) }}   a printed value in bold with its source in brackets: cell() and cited() in one
    {{ ours }}                                      the mark of the value that this book takes where sources differ
    {% for row in rows("pipe-sizes", schedule="40") %}   rows as the file has them, to put into a worksheet
    {{ cited("hook-limits", item="hook", ...) }}    the source and paragraph of one row, with a word where not read in text
    {{ drawing("force-triangles") }}                a drawing of build_scripts.lessons with its caption, in the reader's units
    {{ draggable("leg-angle") }}                    a drawing of build_scripts.lessons.dragging that the reader can drag
    {{ value("grade-break", grade="80") }}          a value that build_scripts.lessons.values computes, in both units
    {{ printed("charpy-a36-energy") }}              a figure of build_scripts/lessons/printed.csv, in both units
    {{ printed_in("charpy-a36-energy") }}           the source and place of that figure, with a word where not read in text
    {% if there("work-out/hitch.md") %}             whether the book has that page, for links to pages still to be written
    {{ table("chain-tie-down") }}                   the table, whole, on the look-up page that names it in its front matter
    {{ table_view("chain-tie-down", grade="70") }}  the rows of a table that hold these texts
    {{ chart("chain-tie-down") }}                   its chart
    {{ on_paper("gauge-clips") }}                   where the printed sheets of some names are: links to each size of paper
    {{ source("cfr-49-393", "393.108") }}           a link to the card of a source
    {{ caution("warning", "...") }}                 warning, prohibition, mandatory or note
    {{ show(15745, "force") }}                      an SI value in US and SI units; also show(v, "length", "si")
    {{ jobs }}                                      the worksheets of each job, as JSON
    {{ fraction("1-3/8 in") }}                      shop fractions set as fractions
    {{ published("linkwright-tables.zip") }}        a link to a file of all tables, with its size; `published_tables` has them
    {{ changed_figures() }}                         what changed in the tables from edition to edition
    {{ root }}                                      the way up to the top of the site, for links in HTML

An unknown worksheet, result, table, cell or source stops the build with the page's name. Links between pages are
Markdown links to the .md file; a worksheet is at work-out/NAME.md, a table at look-up/NAME.md, whichever page it stands on
(build_scripts/look_up_pages). Where docs/ has a file of the name of a worksheet, that file is its page; it may begin with
{% include "sheet_page.md" %}, which is the generated one. Front matter `moved_from: OLD, ...` leads old addresses on.
"""

from __future__ import annotations

import functools
import json
import os
import re
import shutil
import subprocess
import sys
from collections import Counter, defaultdict
from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import partial
from html import escape, unescape
from pathlib import Path
from typing import Any

import jinja2

from build_scripts import answer_view, charts, paper, ratings_index, runtime, table_words
from build_scripts.answer_view import to_html
from build_scripts.browsers import oldest
from build_scripts.compare_editions import COUNTED, KINDS, records
from build_scripts.lessons import LESSONS, lesson
from build_scripts.lessons.dragging import DRAGGED
from build_scripts.lessons.printed import NoSuchFigure
from build_scripts.lessons.printed import printed as printed_figure
from build_scripts.lessons.values import VALUES
from build_scripts.look_up_pages import (
    LookUpPage,
    WrongPlace,
    lead_links_on,
    look_up_pages,
    mark_of,
    moved,
    page_of,
    split_front_matter,
)
from build_scripts.markup import (
    attribute,
    caution,
    measured,
    ours,
    rich,
    said,
    seen_ring,
    set_spans,
    unit_name,
)
from build_scripts.pseudo_markdown import pseudo_page
from build_scripts.published_tables import ARCHIVE, DATABASE, DOCUMENT, PACKAGE, SOURCES, publish
from build_scripts.search.make import SearchNotMade, make_search
from build_scripts.sheet_form import example_fields, form_inputs
from build_scripts.table_declaration import declared
from build_scripts.table_view import (
    US_UNITS,
    View,
    cited_shortly,
    companions,
    key_text,
    links,
    row_text,
    source_row,
    view,
    zero_of_angles,
)
from build_scripts.wording import language, say, writer
from calc import answering
from calc.quantities import show
from calc.records.jobs import slots as jobs
from calc.records.kit.schema import FILE as KIT_SCHEMA
from calc.tables import NoSuchRow, NoSuchTable, table, table_names
from calc.trees import Node
from calc.words.catalogue import NoWords
from calc.words.compiling import PSEUDO
from calc.words.facts import Listing, message
from calc.words.writer import NoFact, UnitSystem, Writer, plain

ROOT = Path(__file__).resolve().parent.parent
MOST_UPRIGHT_COLUMNS = 7
"""A table with more columns prints across the wide side of the paper."""

GROUPS = {
    "chain": "chain", "hooks-shackles": "hooks-shackles", "slings": "slings", "rope": "slings", "rules": "rules",
    "inspection": "inspection", "heat": "heat", "weights": "weights", "materials": "weights", "tie-down": "tie-down",
    "sources": "sources", "proof": "proof", "steel": "steel",
}  # fmt: skip
"""The groups of tables, and the heading under which each stands: the message `group-HEADING`."""
PARTS = ("look-up", "work-out", "judge", "understand", "about")
"""The parts of the book, each the message `part-PART`."""
IN_ORDER_OF_USE = [
    "load-weight",
    "sling-legs",
    "load-path",
    "hitch",
    "hanging-load",
    "moving-load",
    "lifting-frame",
    "spreader",
    "tripod",
    "lifting-lug",
    "beam-lift",
    "pull-trial",
    "ram-force",
    "straighten",
    "gauge-check",
    "drop-load",
    "trial-log",
    "tie-down",
    "lashing-count",
    "trailer-load",
    "move-it",
    "what-is-it",
    "chain-check",
    "hook-check",
    "shackle-check",
    "sling-check",
    "strap-check",
    "binder-check",
    "anchor-check",
    "hot-work-derate",
    "heat-colour",
    "weld-heat",
    "hook-stress",
    "temper-loss",
    "convert",
    "tag",
]
"""Worksheets as a shop asks for them, room by room; one that is not named comes after them."""

# Type faces: npm package, file, and the name it has on the site. Latin letters only; open font licence.
FACES = (
    ("@fontsource-variable/atkinson-hyperlegible-next", "atkinson-hyperlegible-next-latin-wght-normal.woff2", "text.woff2"),
    ("@fontsource-variable/atkinson-hyperlegible-next", "atkinson-hyperlegible-next-latin-wght-italic.woff2", "text-italic.woff2"),
    ("@fontsource/barlow-condensed", "barlow-condensed-latin-600-normal.woff2", "head.woff2"),
    ("@fontsource/barlow-condensed", "barlow-condensed-latin-700-normal.woff2", "head-bold.woff2"),
)  # fmt: skip
PAGE_SCRIPTS = (
    "early.js",
    "site.js",
    "reader.js",
    "lookup.js",
    "find.js",
    "drag.js",
    "tilt.js",
    "moved.js",
    "from-paper.js",
)


VERDICTS = ("ok", "caution", "stop", "unknown")


def group_title(group: str) -> str:
    """The heading under which a group of tables stands."""
    return say(f"group-{GROUPS[group]}")


def in_both(us: str, si: str) -> str:
    """Words for readers of US and of SI units, of which the page shows one; the words alone where they are the same."""
    if us == si:
        return us
    return f'<span class="us-only">{us}</span><span class="si-only">{si}</span>'


def sheets_of(*kinds: str) -> list[str]:
    """The names of the printed sheets of some kinds."""
    return [sheet.name for sheet in paper.sheets() if sheet.kind in kinds]


class PageError(ValueError):
    """A page cannot be made; the message names the page and what is wrong in it."""


@functools.cache
def made_by(root: Path = ROOT) -> dict[str, str]:
    """Number of the edition, and the letters that name its tables and code."""
    return {"number": runtime.edition(root), "hash": runtime.code_hash(root)}


def edition(root: Path = ROOT) -> str:
    """The edition, date and commit of the sources, as the foot of each page prints them, or that this is a working copy."""
    try:
        done = subprocess.run(
            ["git", "log", "-1", "--format=%cs %h"],
            cwd=root,
            capture_output=True,
            text=True,
            check=True,
        )
    except (OSError, subprocess.CalledProcessError):
        return say("edition-working-copy", **made_by(root))
    date, _, commit = done.stdout.strip().partition(" ")
    if not commit:
        return say("edition-working-copy", **made_by(root))
    return say("edition", date=date, commit=commit, **made_by(root))


# ---------------------------------------------------------------------------------------- what a page may call


@functools.cache
def _answered(name: str, units: UnitSystem, inputs: str) -> dict[str, Any]:
    """The answer in spans to inputs written as JSON, kept while this process lives: a page's words change more often."""
    given = json.loads(inputs) or answering.worksheet(name).example
    return answering.answer_in_spans(name, given, units, language())


class Book:
    """The functions a page may call, bound to the page that is being made."""

    def __init__(self, templates: jinja2.Environment) -> None:
        self.templates = templates
        self._embedded: Counter[str] = Counter()
        self._cautioned: dict[str, list[str]] = defaultdict(list)
        self.shown: dict[str, list[str]] = defaultdict(list)
        self.published_bytes: dict[str, int] = {}

    def functions(self, page: str) -> dict[str, Any]:
        """The names a template of `page` (such as `understand/angle.md`) sees."""
        root = "../" * page.count("/")
        return {
            "sheet": partial(self.sheet, root), "answer": self.answer_for_reader, "said": self.said_for_reader, "figure": partial(self.figure, page=page),
            "cell": self.cell_for_reader, "cited": partial(self.cited, root), "stated": partial(self.stated, root), "ours": ours(), "jobs": json.dumps({job: jobs.sheets_of(job) for job in jobs.JOBS}), "rows": self.rows, "drawing": partial(self.drawing, page=page), "there": self.there,
            "draggable": partial(self.draggable, page=page), "value": self.value, "printed": self.printed, "printed_in": partial(self.printed_in, root),
            "table_view": partial(self.table_html, root, page), "table": partial(self.table, root, page), "chart": charts.chart, "on_paper": partial(self.on_paper, root), "sheets_of": sheets_of,
            "published": partial(self.published, root), "changed_figures": partial(self.changed_figures, root),
            "source": partial(self.source, root), "caution": caution, "show": show, "fraction": rich, "root": root,
            "root_slash": root or "./",
        }  # fmt: skip

    def answer(self, name: str, key: str, units: UnitSystem = "us", **inputs: Any) -> str:
        """One result of a worksheet in words: of the given inputs, or of its example."""
        record = self._record(name, units, inputs)
        if key not in record["results"]:
            raise PageError(f"worksheet {name} has no result {key}; it has {', '.join(record['results'])}")
        return set_spans(record["results"][key]["text"])

    def said(self, name: str, units: UnitSystem = "us", **inputs: Any) -> str:
        """The headline of an answer."""
        return set_spans(self._record(name, units, inputs)["headline"])

    def answer_for_reader(self, name: str, key: str, units: UnitSystem | None = None, **inputs: Any) -> str:
        """A result in the units of the reader's choice; in those asked for, where the page asks."""
        if units:
            return self.answer(name, key, units, **inputs)
        return in_both(self.answer(name, key, "us", **inputs), self.answer(name, key, "si", **inputs))

    def said_for_reader(self, name: str, units: UnitSystem | None = None, **inputs: Any) -> str:
        """The headline of an answer in the units of the reader's choice."""
        if units:
            return self.said(name, units, **inputs)
        return in_both(self.said(name, "us", **inputs), self.said(name, "si", **inputs))

    def cell_for_reader(self, name: str, **conditions: str) -> str:
        """One printed value; for a reader of the other units what it comes to, with the printed one in brackets."""
        printed = self.cell(name, **conditions)
        row = table(name).one(**conditions)
        made = companions(name, row)
        if not made or (row["unit"] in US_UNITS) == (made[-1].unit in US_UNITS):
            return printed
        other = f"≈ {rich(made[-1].text)} ({printed})"
        return in_both(printed, other) if row["unit"] in US_UNITS else in_both(other, printed)

    def figure(self, name: str, units: UnitSystem | None = None, *, page: str = "", **inputs: Any) -> str:
        """The drawing of an answer with its caption, in the units of the reader's choice."""

        def drawn_in(system: UnitSystem) -> tuple[Node, str]:
            drawn = self._record(name, system, inputs)["figure"]
            if drawn is None:
                raise PageError(f"worksheet {name} draws nothing for these inputs")
            return drawn["drawing"], drawn["caption"]

        return self._figure(page, drawn_in, units)

    def _figure(
        self, page: str, drawn_in: Callable[[UnitSystem], tuple[Node, str]], units: UnitSystem | None
    ) -> str:
        """A drawing with its caption, once for each system of units where the two differ: what is not chosen is hidden."""
        if units:
            return self._one_figure(page, *drawn_in(units))
        us, si = drawn_in("us"), drawn_in("si")
        if us == si:
            return self._one_figure(page, *us)
        both = (self._one_figure(page, *us, only="us-only"), self._one_figure(page, *si, only="si-only"))
        return "\n".join(both)

    def _one_figure(self, page: str, drawing: Node, caption: str, only: str = "") -> str:
        """A drawing with its caption; its inner names are made its own, since a page may hold several."""
        self._embedded[page] += 1
        own = _named_apart(drawing, f"d{self._embedded[page]}-")
        kind = f"book-figure {only}".rstrip()
        return tight(
            f'<figure class="{kind}">{to_html([own])}<figcaption>{rich(caption)}</figcaption></figure>'
        )

    def _record(self, name: str, units: UnitSystem, inputs: Mapping[str, Any]) -> dict[str, Any]:
        try:
            return _answered(name, units, json.dumps(dict(inputs)))
        except answering.Refused as refused:
            raise PageError(f"worksheet {name}: {refused}") from refused
        except answering.NoSuchWorksheet as missing:
            raise PageError(str(missing)) from missing

    def cell(self, name: str, **conditions: str) -> str:
        """One printed value with its unit."""
        try:
            row = table(name).one(**conditions)
        except (NoSuchRow, NoSuchTable) as missing:
            raise PageError(str(missing)) from missing
        return rich(measured(row["value"], row["unit"]))

    def rows(self, name: str, **conditions: str) -> tuple[dict[str, str], ...]:
        """The rows of a table that hold the given texts, as the file has them: to put their values into a worksheet."""
        try:
            return table(name).where(**conditions)
        except (NoSuchRow, NoSuchTable) as missing:
            raise PageError(str(missing)) from missing

    def cited(self, root: str, name: str, **conditions: str) -> str:
        """Where one printed value stands: a link to the source's card, the paragraph, and how it was read."""
        try:
            row = table(name).one(**conditions)
        except (NoSuchRow, NoSuchTable) as missing:
            raise PageError(str(missing)) from missing
        return self._cited_row(root, row)

    def _cited_row(self, root: str, row: Mapping[str, str]) -> str:
        place = cited_shortly(row["source"], row["locator"])
        told = row["checked"] == "text" or place.startswith("Common practice")
        seen = "" if told else f" ({said('seen-' + row['checked'] + '.ring')})"
        title = source_row(row["source"])["title"]
        return f'<a href="{root}about/sources.html#{row["source"]}" title="{escape(title)}">{rich(place)}</a>{seen}'

    def draggable(self, name: str, *, page: str = "") -> str:
        """A drawing that the reader can drag, with the sentence of each place; without scripts it stands as first drawn."""
        if name not in DRAGGED:
            raise PageError(f"there is no drawing {name} to drag; there are {', '.join(DRAGGED)}")
        dragged = DRAGGED[name](Writer("us", language()))
        self._embedded[page] += 1
        return tight(
            self.templates.get_template("draggable.html").render(
                mark=f"drag-{self._embedded[page]}",
                dragged=dragged,
                drawing=to_html([dragged.drawing]),
                rich=rich,
                places=json.dumps([vars(place) for place in dragged.places], ensure_ascii=False).replace(
                    "<", "\\u003c"
                ),
            )
        )

    def value(self, name: str, /, **given: str) -> str:
        """A value computed for an explanation, in both units."""
        if name not in VALUES:
            raise PageError(f"there is no value {name}; there are {', '.join(VALUES)}")
        return set_spans(writer().write(VALUES[name](**given)))

    def printed(self, key: str) -> str:
        """A printed figure of the explaining pages, in both units."""
        try:
            return set_spans(writer().write(printed_figure(key).fact))
        except NoSuchFigure as missing:
            raise PageError(str(missing)) from missing

    def printed_in(self, root: str, key: str) -> str:
        """Where a printed figure stands: a link to the source's card, the place in it, and how it was read."""
        try:
            figure = printed_figure(key)
        except NoSuchFigure as missing:
            raise PageError(str(missing)) from missing
        row = {"source": figure.source, "locator": figure.locator, "checked": figure.checked}
        return self._cited_row(root, row)

    def stated(self, root: str, name: str, **conditions: str) -> str:
        """One printed value in bold, its source in brackets after it."""
        return f"<b>{self.cell_for_reader(name, **conditions)}</b> ({self.cited(root, name, **conditions)})"

    def there(self, page: str) -> bool:
        """Whether the book has a page of that name, written or generated."""
        part, _, name = page.removesuffix(".md").partition("/")
        if part == "work-out":
            return name in answering.declared_names()
        return (ROOT / "docs" / page).is_file() or (part == "look-up" and name in table_names())

    def drawing(self, name: str, units: UnitSystem | None = None, *, page: str = "") -> str:
        """A drawing made for an explanation, with its caption, in the units of the reader's choice."""
        if name not in LESSONS:
            raise PageError(f"there is no drawing {name}; there are {', '.join(LESSONS)}")

        def drawn_in(system: UnitSystem) -> tuple[Node, str]:
            drawn = lesson(name, Writer(system, language()))
            return drawn.drawing, drawn.caption

        return self._figure(page, drawn_in, units)

    def on_paper(self, root: str, *names: str) -> str:
        """Links to printed sheets, in each size of paper."""
        known = {sheet.name: sheet for sheet in paper.sheets()}
        lines = []
        for name in names:
            if name not in known:
                raise PageError(f"there is no sheet {name}; there are {', '.join(known)}")
            links = "".join(
                f' <a class="paper-size" href="{root}{paper.FOLDER}/{paper.file_name(name, size)}" type="application/pdf" '
                f'aria-label="{attribute("on-paper-size.label", title=plain(known[name].title), size=say(f"paper-{size}"))}">'
                f"{said(f'paper-{size}')}</a>"
                for size in paper.PAPERS
            )
            lines.append(f"<li><span>{set_spans(known[name].title)}</span>{links}</li>")
        return f'<p class="on-paper-head">{said("on-paper")}</p>\n<ul class="on-paper">{"".join(lines)}</ul>'

    def source(self, root: str, key: str, locator: str = "") -> str:
        """A link to the card of a source."""
        try:
            title = source_row(key)["title"]
        except NoSuchRow as missing:
            raise PageError(str(missing)) from missing
        said_as = cited_shortly(key, locator) if locator else title
        return f'<a href="{root}about/sources.html#{key}" title="{escape(title)}">{rich(said_as)}</a>'

    def published(self, root: str, name: str) -> str:
        """A link to a file in which all tables are published, with its size once it is written."""
        if name not in (ARCHIVE, DATABASE, DOCUMENT, PACKAGE):
            raise PageError(f"there is no published file {name}; published_tables.py lists them")
        size = self.published_bytes.get(name)
        link = f'<a href="{root}look-up/{name}" download>{name}</a>'
        return link if size is None else f"{link} {said('file-size', size=round(size / 1000))}"

    def changed_figures(self, root: str) -> str:
        """What changed in the tables, the newest edition first, from the records of compare_editions."""
        return tight(
            self.templates.get_template("changed_figures.html").render(
                records=records(),
                kinds=[kind for kind in KINDS if kind not in COUNTED],
                rich=rich,
                title=_title_of_table,
                address=partial(_address_of_table, root),
                say=said,
            )
        )

    def table_html(self, root: str, page: str, name: str, **conditions: str) -> str:
        """Some rows of a table as HTML, their sources folded beneath; more than one may stand on a page, so that the name
        that a screen reader says tells which rows.
        """
        seen = view(name, **conditions)
        which = ", ".join(key_text(name, key, value) for key, value in conditions.items())
        seen = replace(seen, title=f"{which}: {seen.title}" if which else seen.title)
        self._embedded[page] += 1
        mark = f"t{self._embedded[page]}-"
        return tight(self._table(seen, mark, self._claims(root, seen, mark)))

    def table(self, root: str, page: str, name: str) -> str:
        """A whole table on its own page: beside it its chart, the cautions that the page has not said yet, its notes."""
        if page != f"look-up/{page_of(name).name}.md":
            raise PageError(
                f"the table {name} stands on look-up/{page_of(name).name}.md; here use table_view"
            )
        self.shown[page].append(name)
        seen, mark = view(name), mark_of(name)
        cautions = []
        for kind, words in seen.cautions:
            if plain(words) not in self._cautioned[page]:
                self._cautioned[page].append(plain(words))
                cautions.append(caution(kind, words))
        return tight(
            self.templates.get_template("table_block.html").render(
                view=seen,
                table_html=self._table(
                    seen, mark, self._claims(root, seen, mark, files=True), page, whole=True
                ),
                chart_html=charts.chart(name),
                cautions=cautions,
                set_spans=set_spans,
            )
        )

    def _table(self, seen: View, mark: str, claims: str, page: str = "", *, whole: bool = False) -> str:
        return self.templates.get_template("table.html").render(
            view=seen,
            mark=mark,
            ring=seen_ring,
            rich=rich,
            links=links,
            whole=whole,
            status=_status(seen) if whole and len(self.shown[page]) > 1 else "",
            claims_html=claims,
            sift_keys={sift.key for sift in seen.sifts},
            mixed=len(seen.counts) > 1,
        )

    def _claims(self, root: str, seen: View, mark: str, *, files: bool = False) -> str:
        return self.templates.get_template("claims.html").render(
            view=seen, mark=mark, ring=seen_ring, rich=rich, set_spans=set_spans, root=root, files=files,
            source_count=len({claim.source for claim in seen.claims}),
        )  # fmt: skip

    def sheet(self, root: str, name: str) -> str:
        """A worksheet with its example's answer."""
        try:
            declared = answering.described(name, language())
            record = answering.answer_in_spans(name, declared.example, "us", language())
        except answering.NoSuchWorksheet as missing:
            raise PageError(str(missing)) from missing
        except answering.Refused as refused:
            raise PageError(f"the example of worksheet {name} is refused: {refused}") from refused
        regions = {
            key: to_html([node])
            for key, node in answer_view.view(record, root, language(), example=True)["regions"].items()
        }
        return tight(
            self.templates.get_template("sheet.html").render(
                sheet=declared,
                inputs=form_inputs(declared),
                example=example_fields(declared),
                verdict=record["verdict"],
                regions=regions,
                root=root,
                set_spans=set_spans,
                say=said,
                unit=unit_name,
                oldest_browsers=oldest(),
                made_by=made_by(),
                job=jobs.job_of(name),
            )
        )


def _title_of_table(name: str) -> str:
    """What a table is called now; its bare name where it is gone."""
    return table_words.question(name) if name in table_names() else name


def _address_of_table(root: str, name: str) -> str:
    """Where a table stands now; the index where it is gone."""
    if name == SOURCES:
        return f"{root}about/sources.html"
    return f"{root}look-up/{name}.html" if name in table_names() else f"{root}look-up/index.html"


def read_page(page: str, root: Path = ROOT) -> str:
    """The text of a page of docs/ in the language of this build; raises PageError where nobody has written it."""
    written = root / "docs" / page
    if language() not in ("en", PSEUDO):
        written = root / "docs" / "words" / language() / "pages" / page
        if not written.is_file():
            raise PageError(f"{page}: there is no {written.relative_to(root)}")
    text = written.read_text(encoding="utf-8")
    return pseudo_page(text) if language() == PSEUDO else text


def _named_apart(node: Node, mark: str) -> Node:
    """A drawing whose inner names, and what points to them, begin with a mark."""
    if isinstance(node, str):
        return node
    tag, attributes, *children = node
    own = {
        name: mark + value if name == "id" else value.replace("url(#", f"url(#{mark}")
        for name, value in attributes.items()
    }
    return [tag, own, *(_named_apart(child, mark) for child in children)]


# The engine's search knows an excluded element by its tag alone, so that one excluded `div` would end at the first `</div>`
# inside it: excluded blocks are sections, lists or calc-sheets that hold none of their own kind.


def tight(html: str) -> str:
    """HTML without blank lines, which would end a block of HTML in Markdown."""
    return "\n".join(line for line in html.splitlines() if line.strip())


def tight_blocks(text: str) -> str:
    """Markdown in which each block of HTML (from its tag at the margin to its end at the margin) has no blank line."""
    return re.sub(
        r"^<(div|section)\b.*?^</\1>$",
        lambda block: tight(block.group(0)),
        text,
        flags=re.DOTALL | re.MULTILINE,
    )


# ---------------------------------------------------------------------------------------------- the pages


def write_pages(out: Path, root: Path = ROOT) -> list[str]:
    """Write every page and what goes with it into `out`; returns the page names. Raises PageError."""
    if out.exists():
        shutil.rmtree(out)
    out.mkdir(parents=True)
    writer = _Writer(out, root)
    writer.tables()
    writer.worksheets()
    writer.sources()
    writer.ratings()
    writer.docs()
    writer.indexes()
    _copy_assets(out, root)
    return sorted(writer.written)


class _Writer:
    def __init__(self, out: Path, root: Path) -> None:
        self.out, self.root = out, root
        loader = jinja2.FileSystemLoader([root / "build_scripts" / "templates", root / "docs"])
        self.jinja = jinja2.Environment(  # noqa: S701 - the templates are ours and write HTML and Markdown themselves
            loader=loader, undefined=jinja2.StrictUndefined, trim_blocks=False, keep_trailing_newline=True
        )
        self.jinja.globals.update(say=said, attr=attribute)
        self.book = Book(self.jinja)
        self.edition = edition(root)
        self.written: dict[str, dict[str, str]] = {}

    def write(self, name: str, text: str, **meta: str) -> None:
        """Write one page with its front matter; `text` may bring its own."""
        own, body = split_front_matter(lead_links_on(text, name))
        meta = {"edition": self.edition, **meta, **own}
        meta.setdefault("title", _first_heading(body))
        if not meta["title"]:
            raise PageError(f"{name}: has neither a title in its front matter nor a heading")
        lines = "\n".join(
            f"{key}: {json.dumps(value, ensure_ascii=False)}" for key, value in meta.items() if value
        )
        path = self.out / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(f"---\n{lines}\n---\n{body}", encoding="utf-8")
        self.written[name] = meta

    def render(self, text: str, page: str, **more: Any) -> str:
        """Run one page's text through Jinja2 with the book's functions."""
        try:
            return self.jinja.from_string(text).render(**self.book.functions(page), **more)
        except (PageError, jinja2.TemplateError, LookupError, ValueError, TypeError) as wrong:
            line = getattr(wrong, "lineno", None)
            raise PageError(f"{page}{f', line {line}' if line else ''}: {wrong}") from wrong

    def own_words(self, page: str) -> str:
        """What docs/ says on a generated page, or nothing."""
        return read_page(page, self.root) if (self.root / "docs" / page).is_file() else ""

    def tables(self) -> None:
        """The look-up pages, and the files of each table."""
        for one in look_up_pages():
            page = f"look-up/{one.name}.md"
            own, body = split_front_matter(self.render(self._look_up_text(one, page), page))
            if sorted(self.book.shown[page]) != sorted(one.tables):
                raise PageError(f"{page}: names the tables {one.tables} and shows {self.book.shown[page]}")
            own |= {"group": say(f"shelf-{one.group}"), "tables": "", "order": ""}
            self.write(page, body, **{**self._look_up_meta(one), **own})
        self.book.published_bytes = publish(self.out / "look-up")

    def _look_up_text(self, one: LookUpPage, page: str) -> str:
        """What docs/ has for the page; a table that no page names stands alone, over the words of its name."""
        text = self.own_words(page)
        if split_front_matter(text)[0]:
            return text
        (name,) = one.tables
        return f'# {table_words.question(name)}\n\n{{{{ table("{name}") }}}}\n\n{text}'

    def _look_up_meta(self, one: LookUpPage) -> dict[str, str]:
        seen = [view(name) for name in one.tables]
        wide = any(len(w.columns) + len(w.head_names) > MOST_UPRIGHT_COLUMNS for v in seen for w in v.wides)
        said = {"title": seen[0].title, "description": seen[0].description or seen[0].title} if seen else {}
        status = (
            _status(seen[0]) if seen and self.book.shown[f"look-up/{one.name}.md"][0] == one.tables[0] else ""
        )
        return {**said, "kind": "table", "wide": "yes" if wide else "", "status": status}

    def worksheets(self) -> None:
        """A page for each worksheet."""
        default = (self.root / "build_scripts" / "templates" / "sheet_page.md").read_text(encoding="utf-8")
        for name in answering.declared_names():
            sheet = answering.described(name, language())
            page = f"work-out/{name}.md"
            text = self.own_words(page)
            html = self.book.sheet("../", name)
            body = self.render(text or default, page, set_spans=set_spans, worksheet=sheet, sheet_html=html)
            meta = {
                "title": sheet.title, "kind": "sheet", "group": say(f"room-{sheet.room}"),
                "description": plain(sheet.summary), "order": _order_of_use(name),
            }  # fmt: skip
            self.write(page, body, **meta)

    def sources(self) -> None:
        """The page of all sources, with what was taken from each and how it was seen, counted."""
        page = "about/sources.md"
        used: dict[str, dict[str, Counter[str]]] = defaultdict(lambda: defaultdict(Counter))
        total: Counter[str] = Counter()
        for name in table_names():
            if name == "sources":
                continue
            for row in table(name).rows:
                used[row["source"]][name][row["checked"]] += 1
                total[row["checked"]] += 1
        _, intro = split_front_matter(self.render(self.own_words(page), page))
        text = self.jinja.get_template("sources_page.md").render(
            groups=_sources_by_subject(used), total=total.total(), source_count=len(used), rich=rich, intro=intro, number=writer().plain,
            counts={k: total[k] for k in ("text", "copy", "memory")}, ring=seen_ring, root="../",
        )  # fmt: skip
        self.write(
            page,
            tight_blocks(text),
            kind="list",
            description=say("sources.description"),
        )

    def ratings(self) -> None:
        """Every rating as a plain page, for when scripts are off."""
        made = ratings_index.entries()
        grouped: dict[str, list[ratings_index.Entry]] = defaultdict(list)
        for entry in made:
            grouped[entry.table].append(entry)
        parts = [f"# {said('every-rating')}", "", f'<p class="lede">{said("every-rating.lede")}</p>\n']
        jumps = "".join(
            f'<li><a href="#of-{name}"><b>{view(name).title}</b> {said("every-rating.count", count=len(lines))}</a></li>'
            for name, lines in grouped.items()
        )
        parts.append(
            f'<nav class="jump" aria-label="{attribute("every-rating.jump")}"><ul>{jumps}</ul></nav>\n'
        )
        for name, lines in grouped.items():
            parts.append(f"## {view(name).title} {{ #of-{name} }}\n")
            parts.append(f'<p class="use">{table_words.text(name, f"use-{view(name).use}")}</p>\n')
            parts.append('<ul class="every" data-search-exclude>')
            parts.extend(
                f'<li><a href="{line.address.removeprefix("look-up/")}">{rich(line.label)}</a> <b>{rich(line.answer)}</b></li>'
                for line in lines
            )
            parts.append("</ul>\n")
        self.write(
            "look-up/every-rating.md", "\n".join(parts), title=say("every-rating"), kind="list", group="",
            description=say("every-rating.description"),
        )  # fmt: skip

    def docs(self) -> None:
        """The pages people wrote."""
        docs = self.root / "docs"
        for path in sorted(docs.rglob("*")) if docs.is_dir() else []:
            page = path.relative_to(docs).as_posix()
            if (
                path.is_dir()
                or page in self.written
                or path.name.startswith("_")
                or page.startswith("words/")
            ):
                continue
            if path.suffix != ".md":
                (self.out / page).parent.mkdir(parents=True, exist_ok=True)
                shutil.copyfile(path, self.out / page)
                continue
            self.write(page, self.render(read_page(page, self.root), page))
        self._moved()

    def _moved(self) -> None:
        """A page at each old address, which leads on: `moved_from` in the front matter of the page that took its place."""
        for page, meta in list(self.written.items()):
            for number, old in enumerate(meta.get("moved_from", "").split(), start=1):
                title = say("page-moved.title", page=meta["title"], number=number)
                link = "../" * old.count("/") + page
                lede = said(
                    "page-moved", page=f'<a href="{link.removesuffix(".md")}.html">{rich(meta["title"])}</a>'
                )
                self.write(
                    old,
                    f'# {rich(title)}\n\n<p class="lede">{lede}</p>\n',
                    title=title, kind="moved", unlisted="yes",
                    leads_to=f"{link.removesuffix('.md')}.html", description=meta["description"],
                )  # fmt: skip

    def indexes(self) -> None:
        """The index of each part: what docs/ says of it, else title and one sentence, then its pages by group."""
        for part in PARTS:
            page, title, lede = f"{part}/index.md", say(f"part-{part}"), say(f"part-{part}.lede")
            own = self.written.pop(page, None)
            grouped = self._grouped(part)
            if not grouped and own is None:
                continue
            if own is None:
                body = [f"# {title}", "", f'<p class="lede">{lede}</p>', ""]
                if part == "look-up":
                    body += [self.jinja.get_template("ask.html").render(root="../", box="ask-box"), ""]
            else:
                body = [split_front_matter((self.out / page).read_text(encoding="utf-8"))[1]]
            if part == "look-up":
                body += self._shelves()
            else:
                order = list(
                    dict.fromkeys(
                        [
                            *map(group_title, GROUPS),
                            *(say(f"room-{room}") for room in answering.ROOMS),
                        ]
                    )
                )
                for group in sorted(
                    grouped, key=lambda g: (g == "", order.index(g) if g in order else 99, g)
                ):
                    body += _index_group(part, group, grouped[group])
            meta = own or {"title": title, "description": lede}
            self.write(page, "\n".join(body), **{**meta, "kind": "list"})

    def _shelves(self) -> list[str]:
        """The look-up pages in the order of use; those that only worksheets rest on stand behind one link."""
        shelves: dict[str, list[tuple[str, dict[str, str]]]] = defaultdict(list)
        for one in look_up_pages():
            page = f"look-up/{one.name}.md"
            shelves[one.group].append((page, self.written[page]))
        behind = shelves.pop("behind", [])
        body: list[str] = []
        for group, pages in shelves.items():
            body += _index_group("look-up", say(f"shelf-{group}"), pages)
        title, description = say("shelf-behind"), say("shelf-behind.description")
        lists = [f"# {title}", "", f'<p class="lede">{said("shelf-behind.lede")}</p>', ""]
        lists += _index_group("look-up", "", behind)
        name = "look-up/numbers-behind-the-worksheets.md"
        meta = {"title": title, "description": description, "group": title}
        self.write(name, "\n".join(lists), **meta, kind="list", unlisted="yes")
        return body + _index_group("look-up", say("shelf-more"), [
            (name, meta), ("look-up/every-rating.md", self.written["look-up/every-rating.md"]),
        ])  # fmt: skip

    def _grouped(self, part: str) -> dict[str, list[tuple[str, dict[str, str]]]]:
        """The pages of a part by group; judging has its worksheets too."""
        grouped: dict[str, list[tuple[str, dict[str, str]]]] = defaultdict(list)
        for name, meta in sorted(self.written.items(), key=lambda page: (_place(page[1]), page[0])):
            if meta.get("unlisted"):
                continue
            if name.startswith(f"{part}/"):
                grouped[meta.get("group", "")].append((name, meta))
            elif (
                part == "judge"
                and name.startswith("work-out/")
                and meta.get("group") == say("room-inspecting")
            ):
                grouped[say("worksheets-that-judge")].append((f"../{name}", meta))
        return grouped


def _order_of_use(worksheet: str) -> str:
    """The place of a worksheet in lists, empty where none is named."""
    return str(IN_ORDER_OF_USE.index(worksheet) + 1) if worksheet in IN_ORDER_OF_USE else ""


def _place(meta: Mapping[str, str]) -> int:
    """Where a page comes in the index of its part; after the others if it does not say."""
    return int(meta.get("order") or 999)


def _index_group(part: str, group: str, pages: list[tuple[str, dict[str, str]]]) -> list[str]:
    lines = [f"## {group}\n"] if group else []
    lines.append(f'<ul class="index-list{" shelf" if part == "look-up" else ""}">')
    for name, meta in pages:
        link = name.removeprefix(f"{part}/").removesuffix(".md") + ".html"
        said = f"<span>{rich(meta['description'])}</span>" if meta.get("description") else ""
        lines.append(f'<li><a href="{link}"><b>{rich(meta["title"])}</b>{said}</a></li>')
    return [*lines, "</ul>\n"]


def recalled_line(seen: View) -> str:
    """The first line of a table with figures that nobody read: how many, and how they are marked; else empty."""
    count = seen.counts.get("memory", 0)
    if not count:
        return ""
    ring = seen_ring("memory")
    return (
        said("recalled.all", ring=ring)
        if count == seen.rows
        else said("recalled", ring=ring, count=count, rows=seen.rows)
    )


SAID_ABOVE = ("lift", "tie_down", "mixed")
"""The uses that are said above a table: a reader could take its figures for more than they are."""


def _status(seen: View) -> str:
    """The one line above a table: what its figures may be used for, and whether they were only recalled."""
    zero = zero_of_angles(declared(seen.name))
    words = f"use-{seen.use}.status" if seen.use == "lift" and not zero else f"use-{seen.use}"
    use = table_words.text(seen.name, words).rstrip(".") if seen.use in SAID_ABOVE else ""
    parts = [
        f"<b>{rich(use)}.</b>" if use else "",
        say(f"angles-{zero.replace('_', '-')}") if zero else "",
        recalled_line(seen),
    ]
    return " ".join(part for part in parts if part)


def _said_counts(seen: Counter[str]) -> str:
    counted = [message(f"counted-{how}", count=seen[how]) for how in SEEN if seen[how]]
    return writer().plain(Listing(tuple(counted)))


SEEN = ("text", "copy", "memory")
"""How a row was read, the surest first."""
_WITHOUT_VALUES = ("worksheets-only", "explaining", "reading-on")


def _sources_by_subject(used: Mapping[str, Mapping[str, Counter[str]]]) -> list[dict[str, Any]]:
    """The cards of the sources under the subject that most was taken from each for, and those that only worksheets rest
    on; in each group the source of most values first.
    """
    seen = {name: view(name) for name in table_names() if name != "sources"}
    cited, cited_by_pages = _cited_by_worksheets(), _cited_by_explaining_pages()
    groups: dict[str, list[dict[str, Any]]] = {subject: [] for subject in GROUPS.values()}
    for row in table("sources").rows:
        taken = used.get(row["key"], {})
        subjects: Counter[str] = Counter()
        for name, how in taken.items():
            subjects[GROUPS[seen[name].group]] += how.total()
        sheets = [
            {"name": n, "title": answering.described(n, language()).title} for n in cited.get(row["key"], [])
        ]
        on_pages = cited_by_pages.get(row["key"], [])
        without = _WITHOUT_VALUES[0 if sheets else 1 if on_pages else 2]
        subject = subjects.most_common(1)[0][0] if subjects else without
        together: Counter[str] = sum(taken.values(), Counter())
        groups.setdefault(subject, []).append({
            **row, "amount": together.total(), "sheets": sheets, "pages": on_pages,
            "seen": _said_counts(together) if together["text"] != together.total() else "",
            "uses": [{"name": n, "title": seen[n].title, "said": _said_counts(how)} for n, how in taken.items()],
        })  # fmt: skip
    return [
        {
            "title": say(f"group-{subject}"), "key": f"from-{subject}",
            "amount": sum(card["amount"] for card in cards),
            "sources": sorted(cards, key=lambda card: (-card["amount"], card["title"].lower())),
        }
        for subject, cards in sorted(groups.items(), key=lambda item: item[0] in _WITHOUT_VALUES) if cards
    ]  # fmt: skip


def _cited_by_worksheets() -> dict[str, list[str]]:
    cited: dict[str, list[str]] = defaultdict(list)
    for name, sheet in answering.declared().items():
        for citation in sheet.citations:
            if name not in cited[citation.source]:
                cited[citation.source].append(name)
    return cited


def _cited_by_explaining_pages() -> dict[str, list[dict[str, str]]]:
    """The pages of Understand that cite a source for a printed figure or by its card, by the source's key."""
    cited: dict[str, list[dict[str, str]]] = defaultdict(list)
    for path in sorted((ROOT / "docs" / "understand").glob("*.md")):
        page = f"understand/{path.name}"
        meta, text = split_front_matter(read_page(page))
        keys = {printed_figure(key).source for key in re.findall(r'printed_in\("([\w-]+)"', text)}
        for key in sorted(keys | set(re.findall(r'source\("([\w-]+)"', text))):
            cited[key].append({"address": page.removesuffix(".md") + ".html", "title": meta["title"]})
    return cited


def _first_heading(text: str) -> str:
    match = re.search(r"^# (.+)$", text, re.MULTILINE)
    return re.sub(r"<[^>]+>", "", match.group(1)).strip() if match else ""


def _copy_assets(out: Path, root: Path) -> None:
    modules = root / "node_modules"
    fonts = out / "assets" / "fonts"
    fonts.mkdir(parents=True)
    for package_name, file_name, served in FACES:
        face = modules / package_name / "files" / file_name
        if not face.is_file():
            raise PageError(f"the type face {package_name} is missing; run npm ci")
        shutil.copyfile(face, fonts / served)
    scripts = out / "scripts"
    scripts.mkdir(parents=True, exist_ok=True)
    for name in PAGE_SCRIPTS:
        shutil.copyfile(root / "build_scripts" / "scripts" / name, scripts / name)


# ------------------------------------------------------------------------------------- after the engine ran


def finish_site(site: Path) -> None:
    """Make the search, which the engine does not, and remove what no page uses: the engine's own look and scripts."""
    for leftover in ("assets/stylesheets", "assets/images", "assets/javascripts", "search"):
        shutil.rmtree(site / leftover, ignore_errors=True)
    for pattern in ("*.map", "*.gz"):
        for file in list(site.rglob(pattern)):
            file.unlink()
    # The engine asks for a site map once; without a fixed address it can only be empty.
    empty_map = '<?xml version="1.0" encoding="UTF-8"?>\n<urlset></urlset>\n'
    (site / "sitemap.xml").write_text(empty_map, encoding="utf-8")
    for page in site.rglob("*.html"):
        text = page.read_text(encoding="utf-8")
        if "<table>" in text:
            page.write_text(_frame_plain_tables(text), encoding="utf-8")
    make_search(site)
    _pack_kit(site, ROOT)
    write_moved(site)
    _make_lighter(site, ROOT)


def write_moved(site: Path) -> None:
    """At the address of each table that shares a page a file that leads on to it; the table stands there plainly."""
    templates = jinja2.Environment(  # noqa: S701 - the template is ours and writes HTML itself
        loader=jinja2.FileSystemLoader(ROOT / "build_scripts" / "templates"), undefined=jinja2.StrictUndefined
    )
    template = templates.get_template("moved.html")
    for old, now in moved().items():
        name = old.removeprefix("look-up/")
        if name not in table_names():
            continue  # a page that people wrote: the engine has made one that leads on
        seen = view(name)
        there = os.path.relpath(now.page, Path(old).parent.as_posix())
        (site / old).parent.mkdir(parents=True, exist_ok=True)
        text = template.render(
            language=language(), there=f"{there}.html", now=now, view=seen, rich=rich, say=said, attr=attribute, root="../",
            title=seen.title, plain=_plain_rows(name),
        )  # fmt: skip
        (site / f"{old}.html").write_text(text, encoding="utf-8")


def _plain_rows(name: str) -> list[tuple[str, str]]:
    """Each row of a table as two texts: what it is, and its value with its unit."""
    return [(row_text(name, row), measured(row["value"], row["unit"])) for row in table(name).rows]


def _frame_plain_tables(html: str) -> str:
    """Tables written in Markdown get what the generated ones have: scopes, and a frame that scrolls and can be reached."""
    return re.sub(r"<table>.*?</table>", _frame_table, html, flags=re.DOTALL)


def _frame_table(found: re.Match[str]) -> str:
    text = re.sub(r"<th(?=[ >])", '<th scope="col"', found.group(0)).replace(
        "<table>", '<table class="plain">'
    )
    heads = [
        re.sub(r"<[^>]+>", "", head).strip() for head in re.findall(r"<th[^>]*>(.*?)</th>", text, re.DOTALL)
    ]
    label = ", ".join(head for head in heads if head).replace('"', "")
    hint = f'<p class="slide-hint">{said("more-columns")}</p>'
    name = attribute("plain-table", heads=unescape(label))
    return f'{hint}<div class="table-frame" role="region" aria-label="{name}">{text}</div>'


def _pack_kit(site: Path, root: Path) -> None:
    """The scripts of the reader's own parts as one file, and the schema of the files that they write."""
    scripts = root / "build_scripts" / "scripts" / "kit"
    _run_node(root, "pack_kit.mjs", scripts, site / "scripts" / "kit.js")
    schema = json.dumps(KIT_SCHEMA, indent=1) + "\n"
    (site / "kit" / "linkwright-kit.schema.json").write_text(schema, encoding="utf-8")


def _make_lighter(site: Path, root: Path) -> None:
    """Comments and blanks are for the people who read the sources; the reader's phone need not fetch them."""
    files = [*(site / "assets").glob("*.css"), *(site / "scripts" / name for name in PAGE_SCRIPTS)]
    _run_node(root, "minify.mjs", *files)


def _run_node(root: Path, script: str, *arguments: Path) -> None:
    command = ["node", str(root / "build_scripts" / script), *map(str, arguments)]
    try:
        subprocess.run(command, cwd=root, check=True, capture_output=True, text=True)
    except FileNotFoundError as missing:
        raise PageError("node is not installed (Debian: apt install npm)") from missing
    except subprocess.CalledProcessError as failed:
        raise PageError(f"style sheet or scripts could not be packed: {failed.stderr.strip()}") from failed


def main(arguments: list[str]) -> int:
    """Command line; 1 and one line on stderr where a page cannot be made."""
    commands: dict[str, Callable[[Path], object]] = {"pages": write_pages, "finish": finish_site}
    if len(arguments) != 2 or arguments[0] not in commands:
        print(__doc__, file=sys.stderr)
        return 2
    try:
        commands[arguments[0]](Path(arguments[1]))
    except (PageError, WrongPlace, NoWords, NoFact, SearchNotMade) as wrong:
        print(f"page not made: {wrong}", file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
