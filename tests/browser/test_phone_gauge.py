"""The phone as an angle gauge: what the sensor's turn means, zero on a known level, a held reading, and the doubt of each."""

from __future__ import annotations

from playwright.sync_api import Page, expect

ADDRESS = "understand/reading-a-sling-angle.html"


def turn(page: Page, beta: float | None, gamma: float = 0.0) -> None:
    """What the sensor says, once."""
    page.evaluate(
        "([beta, gamma]) => dispatchEvent(new DeviceOrientationEvent('deviceorientation', {beta, gamma}))",
        [beta, gamma],
    )


def start(page: Page) -> None:
    """Start the sensor and wait until it is listened to: the browser asks whether it may, and that takes its time."""
    page.click("[data-tilt-start]")
    expect(page.locator('[data-tilt-start][aria-pressed="true"]')).to_be_visible()


def said(page: Page) -> list[str]:
    return [page.inner_text(f"[data-tilt-{name}]") for name in ("angle", "doubt", "least")]


def test_the_long_side_of_the_phone_is_read_from_the_horizontal(page: Page, served: str) -> None:
    page.clock.install()
    page.goto(served + ADDRESS)
    start(page)
    turn(page, None)
    expect(page.locator("[data-tilt-on]")).to_be_hidden()
    turn(page, 60)
    assert said(page) == ["60°", "3°", "57°"]
    expect(page.locator("[data-tilt-unset]")).to_be_visible()
    page.clock.fast_forward(2100)
    turn(page, 120, 30)  # the other way over, and rolled: the long side rises as much
    assert said(page)[0] == "60°"
    page.clock.fast_forward(2100)
    turn(page, -44)
    assert said(page) == ["44°", "3°", "41°"]
    expect(page.locator("[data-tilt-careful]")).to_be_visible()
    expect(page.locator("[data-tilt-never]")).to_be_hidden()


def test_zero_is_taken_off_and_what_shakes_is_doubted(page: Page, served: str) -> None:
    page.clock.install()
    page.goto(served + ADDRESS)
    start(page)
    turn(page, 2)
    page.click("[data-tilt-zero]")
    expect(page.locator("[data-tilt-unset]")).to_be_hidden()
    page.clock.fast_forward(2100)
    turn(page, 34)
    assert said(page) == ["32°", "1°", "31°"]
    turn(page, 38)  # four degrees in two seconds: two more of doubt
    assert said(page) == ["36°", "3°", "33°"]
    page.clock.fast_forward(2100)
    turn(page, 32)
    assert said(page) == ["30°", "1°", "29°"]
    expect(page.locator("[data-tilt-never]")).to_be_visible()
    page.click("[data-tilt-hold]")
    turn(page, 80)
    assert said(page)[0] == "30°"


def test_a_slope_is_no_level(page: Page, served: str) -> None:
    page.clock.install()
    page.goto(served + ADDRESS)
    start(page)
    turn(page, 45)
    page.click("[data-tilt-zero]")
    expect(page.locator("[data-tilt-slope]")).to_be_visible()
    expect(page.locator("[data-tilt-unset]")).to_be_visible()
    assert said(page)[0] == "45°"


def test_a_silent_sensor_says_so(page: Page, served: str) -> None:
    page.clock.install()
    page.goto(served + ADDRESS)
    start(page)
    expect(page.locator("[data-tilt-silent]")).to_be_hidden()
    page.clock.fast_forward(3100)
    expect(page.locator("[data-tilt-silent]")).to_be_visible()
    expect(page.locator("[data-tilt-on]")).to_be_hidden()
