"""Chromium without a window, driven by Debian's Selenium; nothing leaves the machine."""
import base64
import pathlib
import re
import shutil
import tempfile

from selenium import webdriver
from selenium.webdriver.chrome.service import Service

PAPER = {"A4": (8.27, 11.69), "Letter": (8.5, 11.0)}  # inches

# What a page is made of, as a reader without eyes meets it. Names of foods and formulas (bdi, h1) and of steps of work follow the knowledge
# and the formula: they are left out.
OUTLINE = """
const seen = [];
for (const e of document.querySelectorAll('h1,h2,h3,caption,th[scope=col],section.safety')) {
  if (e.matches('section')) { seen.push('[safety]'); continue; }
  const copy = e.cloneNode(true);
  for (const name of copy.querySelectorAll('bdi')) name.textContent = '~';
  const words = e.matches('h1') || e.closest('.steps') ? '~' : copy.textContent.trim();
  seen.push((e.matches('th') ? '  | ' : e.tagName.toLowerCase() + ' ') + words);
}
return seen;
"""

# Ways to spoil the structure of a page; each gives false where there is nothing to spoil.
SPOILERS = {
    "a heading lost": "const h = [...document.querySelectorAll('h2')].pop(); h?.remove(); return !!h;",
    "a heading become text": "const h = document.querySelector('h2'); const p = document.createElement('p');"
                             "if (h) { p.textContent = h.textContent; h.replaceWith(p); } return !!h;",
    "a column renamed": "const t = document.querySelector('th[scope=col]'); if (t) t.textContent = 'spoiled'; return !!t;",
    "a caption lost": "const c = document.querySelector('caption'); c?.remove(); return !!c;",
    "the safety part moved to the end": "const s = document.querySelector('section.safety'); s?.parentNode.append(s); return !!s;",
}

# On paper: type smaller than it may be, and what may be torn apart between two sheets.
PAPER_FACTS = """
const points = e => parseFloat(getComputedStyle(e).fontSize) * 0.75;
const read = [...document.querySelectorAll('.sheet .big, .sheet .steps h3, .sheet .steps .gauge, .sheet .steps p, .sheet td strong')];
const whole = [...document.querySelectorAll('.sheet tr, .sheet .steps li, .sheet .safety')];
const leading = [...document.querySelectorAll('.sheet h1, .sheet h2')];
return {read: read.length, small: read.filter(e => points(e) < 9.99).map(e => points(e) + ' pt: ' + e.textContent),
  tiny: [...document.querySelectorAll('.sheet main *:not(.src)')].filter(e => e.innerText?.trim() && points(e) < 7.4).map(e => e.textContent.slice(0, 60)),
  torn: whole.filter(e => getComputedStyle(e).breakInside !== 'avoid').map(e => e.textContent.slice(0, 60)),
  alone: leading.filter(e => getComputedStyle(e).breakAfter !== 'avoid').map(e => e.textContent)};
"""

FACTS = """
// By how much a picture's own units are larger or smaller on the screen.
const shrunk = e => e.ownerSVGElement ? e.ownerSVGElement.getBoundingClientRect().width / e.ownerSVGElement.viewBox.baseVal.width : 1;
const levels = [...document.querySelectorAll('h1,h2,h3,h4')].map(h => +h.tagName[1]);
const jumps = levels.filter((l, i) => i > 0 && l > levels[i - 1] + 1).length;
const first = document.querySelector('section.safety'), tables = document.querySelectorAll('table');
return {
  lang: document.documentElement.lang, title: document.title, h1: document.querySelectorAll('h1').length, jumps, first: levels[0],
  wider: document.documentElement.scrollWidth - document.documentElement.clientWidth,
  scripts: document.scripts.length, asked: performance.getEntriesByType('resource').length,
  away: document.querySelectorAll('link,[src],[href^="http"],iframe,object,embed').length,
  untitled: [...document.querySelectorAll('svg[role=img]')].filter(s => !s.querySelector('title')?.textContent).length,
  unspoken: document.querySelectorAll('svg:not([role=img]):not([aria-hidden=true])').length,
  pictures: document.querySelectorAll('svg[role=img]').length,
  headless: [...document.querySelectorAll('th')].filter(t => !t.scope).length,
  safety: !!first && [...tables].every(t => first.compareDocumentPosition(t) & Node.DOCUMENT_POSITION_FOLLOWING),
  place: first ? first.getBoundingClientRect().top + scrollY : -1,
  paper: getComputedStyle(document.body).backgroundColor, ink: getComputedStyle(document.body).color,
  small: [...document.querySelectorAll('body *')].filter(e => !e.children.length && e.textContent.trim() && !e.matches('style,title'))
    .filter(e => parseFloat(getComputedStyle(e).fontSize) * shrunk(e) < 9.5).map(e => e.textContent.trim()),
  text: document.body.innerText,
};
"""

AXE = """
const done = arguments[arguments.length - 1];
const told = v => v.id + ': ' + v.help + ' ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 120)).join(' | ');
axe.run(document, RULES).then(r => done({bad: r.violations.map(told), good: r.passes.length}), e => done({bad: [String(e)], good: 0}));
"""


class Browser:
    def __init__(self, axe):
        binary, driver = shutil.which("chromium"), shutil.which("chromedriver")
        if not binary or not driver:
            raise SystemExit("the page tests need Debian's chromium and chromium-driver")
        options = webdriver.ChromeOptions()
        options.binary_location = binary
        self.profile = tempfile.TemporaryDirectory()
        for flag in ("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--disable-quic", "--no-first-run",
                     "--disable-background-networking", "--disable-component-update", "--disable-sync", "--hide-scrollbars",
                     f"--user-data-dir={self.profile.name}"):
            options.add_argument(flag)
        options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
        self.driver = webdriver.Chrome(service=Service(driver), options=options)
        self.axe = pathlib.Path(axe).read_text(encoding="utf-8")

    def close(self):
        self.driver.quit()
        self.profile.cleanup()

    def show(self, file, width, scheme):
        """Opens the page as wide as `width` in the light or the dark scheme."""
        phone = width < 500
        self.driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride",
                                    {"width": width, "height": 800, "deviceScaleFactor": 1, "mobile": phone})
        self.driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"features": [{"name": "prefers-color-scheme", "value": scheme}]})
        self.driver.get(pathlib.Path(file).resolve().as_uri())

    def facts(self):
        return self.driver.execute_script(FACTS)

    def outline(self):
        return self.driver.execute_script(OUTLINE)

    def spoil(self, how):
        return self.driver.execute_script(SPOILERS[how])

    def on_paper(self):
        """PAPER_FACTS of the page as it is printed."""
        self.driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": "print"})
        facts = self.driver.execute_script(PAPER_FACTS)
        self.driver.execute_cdp_cmd("Emulation.setEmulatedMedia", {"media": ""})
        return facts

    def complaints(self):
        """What the console says."""
        return [entry["message"] for entry in self.driver.get_log("browser")]

    def axe_violations(self, only_contrast):
        """What axe finds wrong, and how many rules it found kept."""
        rules = "{runOnly: {type: 'rule', values: ['color-contrast']}}" if only_contrast else "{}"
        self.driver.execute_script(self.axe)
        result = self.driver.execute_async_script(AXE.replace("RULES", rules))
        return result["bad"], result["good"]

    def printed_pages(self, paper, keep=None):
        width, height = PAPER[paper]
        # The widest face that every system here has: what fits in it fits in others.
        self.driver.execute_script("document.body.style.fontFamily = 'DejaVu Sans'")
        pdf = base64.b64decode(self.driver.execute_cdp_cmd("Page.printToPDF", {
            "paperWidth": width, "paperHeight": height, "preferCSSPageSize": False, "printBackground": False})["data"])
        if keep:
            pathlib.Path(keep).write_bytes(pdf)
        return len(re.findall(rb"/Type\s*/Page[^s]", pdf))

    def picture(self, file):
        """The whole page as PNG."""
        shot = self.driver.execute_cdp_cmd("Page.captureScreenshot", {"captureBeyondViewport": True})
        pathlib.Path(file).write_bytes(base64.b64decode(shot["data"]))
