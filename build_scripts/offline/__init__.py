"""Makes the built folder installable and whole without a network: service worker, manifest, icons.

Called last, when every other file of the site is in place: the service worker lists them all.
"""

from __future__ import annotations

import json
import subprocess
from pathlib import Path

from build_scripts.wording import language, say

PAPER = "#f7f3ea"
INK = "#15191d"


class OfflineBuildFailed(RuntimeError):
    """The offline parts could not be built; the message says what was printed."""


def build_offline(root: Path, site_dir: Path) -> dict[str, int]:
    """Write `offline-worker.js`, `manifest.webmanifest` and `icons/` into `site_dir`; gives back files and bytes kept."""
    (site_dir / "icons").mkdir(parents=True, exist_ok=True)
    mark = root / "build_scripts" / "theme" / "assets" / "mark.svg"
    (site_dir / "manifest.webmanifest").write_text(json.dumps(manifest(), indent=2) + "\n", encoding="utf-8")
    script = root / "build_scripts" / "offline" / "make_offline.mjs"
    command = ["node", str(script), str(site_dir), str(mark)]
    done = subprocess.run(command, cwd=root, capture_output=True, text=True, check=False)
    if done.returncode != 0:
        raise OfflineBuildFailed(f"{script.name} failed:\n{done.stderr.strip()[-2000:]}")
    kept: dict[str, int] = json.loads(done.stdout)
    return kept


def manifest() -> dict[str, object]:
    """The web app manifest; every address is relative, so that any folder of a host will do."""
    return {
        "id": "./",
        "name": say("book-long"),
        "short_name": say("book"),
        "description": say("book-description"),
        "lang": language(),
        "dir": "ltr",
        "start_url": "./index.html",
        "scope": "./",
        "display": "standalone",
        "background_color": PAPER,
        "theme_color": INK,
        # The mark keeps inside the middle 80 %, so the same picture serves systems that cut icons to a shape.
        "icons": [
            {"src": "icons/icon-192.png", "type": "image/png", "sizes": "192x192", "purpose": "any"},
            {"src": "icons/icon-512.png", "type": "image/png", "sizes": "512x512", "purpose": "any"},
            {"src": "icons/icon-512.png", "type": "image/png", "sizes": "512x512", "purpose": "maskable"},
        ],
    }
