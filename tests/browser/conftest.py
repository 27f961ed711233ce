"""Fixtures of the browser tests: the built site behind a server of this machine, and a browser."""

from __future__ import annotations

import sys
import threading
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

import pytest

sys.path.insert(0, str(Path(__file__).parents[1]))  # so that helpers are imported as `outputs.…`

from browser.looking import Open, Visit
from outputs.building import ROOT, build_site, hostile_project, missing, once, shared

CHROMIUM = Path("/usr/bin/chromium")
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"]
# What a page cannot keep to itself: refusals by its own content policy.
WATCH = """
window.refused = [];
addEventListener("securitypolicyviolation", (e) => {
  window.refused.push(`${e.violatedDirective} ${e.blockedURI}`);
});
"""


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    for item in items:
        if Path(__file__).parent in item.path.parents:
            item.add_marker(pytest.mark.browser)


class _Quiet(SimpleHTTPRequestHandler):
    """Files of a folder, and its own page for addresses that lead nowhere."""

    def log_message(self, format: str, *args: Any) -> None:
        pass

    def send_error(self, code: int, message: str | None = None, explain: str | None = None) -> None:
        body = (Path(self.directory) / "404.html").read_bytes()
        self.send_response(code)
        self.send_header("Content-Type", "text/html; charset=utf-8")
        self.send_header("Content-Length", str(len(body)))
        self.end_headers()
        self.wfile.write(body)


class _Patient(ThreadingHTTPServer):
    def handle_error(self, request: Any, client_address: Any) -> None:
        """A browser that leaves a page hangs up; anything else is told."""
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)


def _served(folder: Path) -> Iterator[str]:
    server = _Patient(("127.0.0.1", 0), partial(_Quiet, directory=str(folder)))
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    yield f"http://127.0.0.1:{server.server_address[1]}/"
    server.shutdown()
    server.server_close()
    thread.join()


@pytest.fixture(scope="session")
def built(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The whole site with its paper."""
    return once(shared(tmp_path_factory), "site", lambda target: build_site(ROOT, target))


@pytest.fixture(scope="session")
def site(built: Path) -> Iterator[str]:
    """The address of the built site."""
    yield from _served(built)


@pytest.fixture(scope="session")
def hostile(tmp_path_factory: pytest.TempPathFactory) -> Iterator[str]:
    """The address of a site made from records that are full of markup."""
    yield from _served(once(shared(tmp_path_factory), "hostile", hostile_project) / "site")


@pytest.fixture(scope="session")
def browser() -> Iterator[Any]:
    """One browser for all tests of a worker."""
    try:
        from playwright.sync_api import sync_playwright
    except ImportError:
        missing("playwright")
    if not CHROMIUM.exists():
        missing(str(CHROMIUM))
    with sync_playwright() as playwright:
        started = playwright.chromium.launch(executable_path=str(CHROMIUM), args=FLAGS)
        yield started
        started.close()


def ended(request: Any) -> bool:
    """Whether a request failed only because its page was left."""
    return "ERR_ABORTED" in (request.failure or "")


@pytest.fixture(scope="module")
def page(browser: Any, site: str) -> Iterator[Visit]:
    """One page at the width of a phone, that all tests of a module share."""
    context = browser.new_context(
        viewport={"width": 390, "height": 844}, reduced_motion="reduce", base_url=site
    )
    context.set_default_timeout(10_000)
    context.add_init_script(WATCH)
    found = Visit(context.new_page(), context)
    found.page.on("console", lambda m: m.type == "error" and found.said.append(m.text))
    found.page.on("pageerror", lambda e: found.said.append(str(e)))
    found.page.on("request", lambda r: found.asked.append(r.url))
    yield found
    context.close()


@pytest.fixture
def visit(browser: Any, site: str) -> Iterator[Open]:
    """Opens a page: `visit("alloys/", width=360, scheme="dark", script=False)`."""
    contexts = []

    def opened(
        address: str = "",
        width: int = 390,
        height: int = 844,
        scheme: str = "light",
        script: bool = True,
        base: str = site,
    ) -> Visit:
        context = browser.new_context(
            viewport={"width": width, "height": height},
            color_scheme=scheme,
            java_script_enabled=script,
            service_workers="block",
            reduced_motion="reduce",
        )
        contexts.append(context)
        context.set_default_timeout(20_000)
        if script:
            context.add_init_script(WATCH)
        page = context.new_page()
        found = Visit(page, context)
        page.on("console", lambda m: m.type in ("error", "warning") and found.said.append(m.text))
        page.on("pageerror", lambda e: found.said.append(str(e)))
        page.on("dialog", lambda d: (found.said.append(f"dialog: {d.message}"), d.dismiss()))
        page.on("request", lambda r: found.asked.append(r.url))
        page.on("requestfailed", lambda r: ended(r) or found.failed.append(r.url))
        page.on(
            "response", lambda r: r.status >= 400 and found.failed.append(f"{r.status} {r.url}")
        )
        page.goto(base + address, wait_until="load")
        return found

    yield opened
    for context in contexts:
        context.close()
