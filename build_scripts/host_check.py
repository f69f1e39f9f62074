"""Asks a host for every file of the handbook and says what is not as a good host sends it.

    python3 build_scripts/handbook.py host-check https://example.org/handbook/

Holds each file against the checksum in the host's own list of the edition (`offline-worker.js`), and looks at status, media
type, compression, how long it may be kept, the content policy, and at what is said of a page that is not there. Prints one
line for each finding, or that all is well. Uses the standard library alone.
"""

from __future__ import annotations

import gzip
import http.client
import re
import sys
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from pathlib import PurePosixPath
from urllib.parse import quote, urlsplit

from build_scripts.seal import integrity
from build_scripts.serve import CONTENT_POLICY, HEADERS, MEDIA_TYPES, SQUEEZED

LIST = "offline-worker.js"
ENTRY = re.compile(r"\{[^{}]*\}")
FIELD = re.compile(r"[\"']?(url|integrity)[\"']?:\s*[\"']([^\"']+)[\"']")
LEAST_KEPT_S = 30 * 24 * 3600
"""A file whose folder is named by its content may be kept at least so long."""
SMALL = 1000
"""A file of fewer bytes need not be compressed."""
LOCAL = ("127.0.0.1", "localhost", "::1")
PATIENCE_S = 60


class NoAnswer(Exception):
    """The host cannot be asked; the message says why."""


@dataclass(frozen=True)
class Reply:
    """What a host sent: names of headers in small letters, the body unpacked, and how many bytes came."""

    status: int
    headers: Mapping[str, str]
    body: bytes
    sent: int


class Asker:
    """Asks one host over one line."""

    def __init__(self, address: str) -> None:
        parts = urlsplit(address if address.endswith("/") else address + "/")
        if parts.scheme not in ("http", "https") or not parts.hostname:
            raise NoAnswer(f"{address} is no address; one begins with https://")
        kind = http.client.HTTPSConnection if parts.scheme == "https" else http.client.HTTPConnection
        self._line = kind(parts.hostname, parts.port, timeout=PATIENCE_S)
        self.folder = parts.path
        self.is_secure = parts.scheme == "https" or parts.hostname in LOCAL

    def get(self, name: str, **headers: str) -> Reply:
        """Ask for a file of the handbook; raises NoAnswer."""
        asked = {"Accept-Encoding": "gzip", **headers}
        try:
            self._line.request("GET", self.folder + quote(name), headers=asked)
            came = self._line.getresponse()
            data = came.read()
        except (OSError, http.client.HTTPException) as trouble:
            self._line.close()
            raise NoAnswer(f"{name}: the host does not answer ({trouble})") from trouble
        held = {key.lower(): value for key, value in came.getheaders()}
        body = gzip.decompress(data) if held.get("content-encoding") == "gzip" else data
        return Reply(came.status, held, body, len(data))


def listed(worker: str) -> dict[str, str]:
    """The checksum of each file of an edition, by its name, from the list in its service worker."""
    found = (dict(FIELD.findall(entry)) for entry in ENTRY.findall(worker))
    return {entry["url"]: entry["integrity"] for entry in found if {"url", "integrity"} <= entry.keys()}


def policy_faults(policy: str) -> Iterator[str]:
    """What a content policy lacks, or allows beyond ours."""
    held = _directives(policy)
    for name, wanted in _directives(CONTENT_POLICY).items():
        if held.get(name) != wanted:
            yield f"the content policy must say “{' '.join((name, *sorted(wanted)))}”"


def _directives(policy: str) -> dict[str, frozenset[str]]:
    parts = (part.split() for part in policy.split(";"))
    return {name: frozenset(values) for name, *values in (part for part in parts if part)}


def kept_s(cache_control: str) -> int:
    """For how many seconds a browser may keep a file without asking; 0 where it must ask each time."""
    if re.search(r"no-cache|no-store", cache_control):
        return 0
    found = re.search(r"max-age=(\d+)", cache_control)
    return int(found.group(1)) if found else -1


def header_faults(name: str, reply: Reply) -> Iterator[str]:
    """What is wrong with the headers of a file that was sent."""
    suffix = PurePosixPath(name).suffix
    wanted = MEDIA_TYPES.get(suffix, "")
    given = reply.headers.get("content-type", "")
    if wanted and given.split(";")[0].strip() != wanted.split(";")[0]:
        yield f"the media type must be {wanted}, not {given or 'missing'}"
    if suffix in SQUEEZED and len(reply.body) > SMALL and "content-encoding" not in reply.headers:
        yield f"it is sent unpacked ({reply.sent:,} bytes); send it with gzip or Brotli"
    kept = kept_s(reply.headers.get("cache-control", ""))
    is_named_by_content = re.match(r"runtime/[0-9a-f]{16}/", name)
    if is_named_by_content and kept < LEAST_KEPT_S:
        yield "it never changes under its name; send “Cache-Control: public, max-age=31536000, immutable”"
    if not is_named_by_content and kept != 0:
        yield "it changes with an edition; send “Cache-Control: no-cache”"
    for header, value in HEADERS.items():
        if reply.headers.get(header.lower()) != value:
            yield f"send “{header}: {value}”"
    if suffix in (".html", ".js", ".mjs"):
        yield from policy_faults(reply.headers.get("content-security-policy", ""))


def file_faults(name: str, wanted: str, reply: Reply) -> Iterator[str]:
    """What is wrong with one file of the edition."""
    if reply.status != http.client.OK:
        yield f"the host says {reply.status}"
        return
    if integrity(reply.body) != wanted:
        yield "it is not the file of this edition: copy the whole site/ folder again, and let the host change nothing"
    yield from header_faults(name, reply)


def findings(address: str) -> Iterator[str]:
    """Everything that is not as it should be, a line each; raises NoAnswer."""
    asker = Asker(address)
    if not asker.is_secure:
        yield "the address is not https: phones will not keep the book for use without a signal"
    worker = asker.get(LIST)
    if worker.status != http.client.OK:
        raise NoAnswer(f"{LIST}: the host says {worker.status}; is {address} the folder of the handbook?")
    yield from (f"{LIST}: {fault}" for fault in header_faults(LIST, worker))
    files = listed(worker.body.decode("utf-8", "replace"))
    if not files:
        raise NoAnswer(f"{LIST} names no files; build the site again")
    for name, wanted in files.items():
        yield from (f"{name}: {fault}" for fault in file_faults(name, wanted, asker.get(name)))
    tag = asker.get("index.html").headers.get("etag", "")
    if not tag or asker.get("index.html", **{"If-None-Match": tag}).status != http.client.NOT_MODIFIED:
        yield "index.html: a page that has not changed is sent again in full; let the host send ETag and answer 304"
    absent = asker.get("no-such-page.html")
    if absent.status != http.client.NOT_FOUND or b"<html" not in absent.body:
        yield f"a page that is not there: answer 404 with 404.html of the site, not {absent.status}"


def main(arguments: list[str]) -> int:
    """Print the findings, those that many files share once; 1 if there are any, 2 if the host cannot be asked."""
    if len(arguments) != 1:
        sys.stderr.write("usage: handbook.py host-check ADDRESS\n")
        return 2
    shared: dict[str, list[str]] = {}
    try:
        for line in findings(arguments[0]):
            name, _, fault = line.partition(": ")
            shared.setdefault(fault or line, []).append(name if fault else "")
    except NoAnswer as trouble:
        sys.stderr.write(f"{trouble}\n")
        return 2
    for fault, names in shared.items():
        named = ", ".join(names[:3]) + (f" and {len(names) - 3} more" if len(names) > 3 else "")
        print(f"{named}: {fault}" if named else fault)
    print(
        "The host sends the handbook as it should." if not shared else f"{len(shared)} things to set right."
    )
    return 1 if shared else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
